"""The engine's arithmetic against published figures: an interval, a generator, a loss by walls counted."""

import numpy as np
import pytest

from secondfix.radio import Decks, Panels, Spots, count_crossings, losses_db, wilson
from secondfix.radio.engine.drawing import GOLDEN, mixed
from secondfix.radio.openspace import free_space_loss_db


@pytest.mark.parametrize(
    ("hits", "draws", "low", "high"),
    [
        # Newcombe, Statistics in Medicine 17 (1998), table I, method 3: Wilson's score (from memory)
        (81, 263, 0.2553, 0.3662),
        (15, 148, 0.0624, 0.1605),
        (0, 20, 0.0, 0.1611),
        (1, 29, 0.0061, 0.1718),
    ],
)
def test_wilsons_interval_is_that_of_the_comparison_of_seven_methods(
    hits: int, draws: int, low: float, high: float
) -> None:
    found = wilson(hits=hits, draws=draws)
    assert (found.low, found.high) == pytest.approx((low, high), abs=5.1e-5)  # the table has four places


def test_the_generator_is_splitmix64() -> None:
    # First outputs from the seed 1234567, as widely printed with the algorithm (from memory).
    printed = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431]
    states = np.uint64(1234567) + np.arange(1, 5, dtype=np.uint64) * GOLDEN
    assert mixed(states).tolist() == printed


def test_two_light_walls_and_a_heavy_one_at_ten_metres_lose_what_cost_231_says() -> None:
    # COST 231 multi-wall: light 3.4, heavy 6.9, floor 18.3 dB at 1800 MHz (3GPP TR 25.952 5.1.1, secondary);
    # the sums 71.25 dB and, a floor more, 89.55 dB were computed by hand from them.
    x = np.array([300, 700, 1500])
    panels = Panels(
        x, np.full(3, -400), x, np.full(3, 400), np.full(3, -1000), np.full(3, 1000), np.array([0, 0, 1])
    )
    near, far = Spots(np.array([1, 2001]), np.array([1, 1]), np.array([200, 200])), np.array([200, 560])
    decks = Decks(np.array([500]), np.array([2]))
    open_db = free_space_loss_db(distance_m=10, frequency_mhz=1800)
    for spots, expected in ((near, 71.25), (Spots(near.x, near.y, far), 89.55)):
        counted = count_crossings(spots, panels, decks, kinds=3)
        assert open_db + losses_db(counted, each_db=[3.4, 6.9, 18.3])[0] == pytest.approx(expected, abs=0.01)
