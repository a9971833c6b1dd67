"""One more device on a storey: the same losses as the paths, the same counts, and what a case takes away."""

import json

import numpy as np
import pytest

from bench.manor import manor
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house, schedule
from secondfix.radio import cover, find_paths, reach
from secondfix.radio.covering.across import Places, field_of, losses_across_db
from secondfix.radio.losses import BAND_2400_MHZ, path_losses_db
from tests.radio.houses import assumed, row_of_rooms, rows_of


def manor_house(seed: int) -> House:
    house = read_house(
        json.dumps(manor(places=40, seed=seed)).encode(), where="manor", models=shipped_models()
    )
    assert isinstance(house, House), house
    return house


@pytest.mark.parametrize("plain", [True, False])
@pytest.mark.parametrize("seed", [1, 4])
def test_losses_are_those_of_the_paths_between_the_same_places(seed: int, *, plain: bool) -> None:
    house, assumptions = manor_house(seed), default_assumptions()
    paths = find_paths(house, assumptions, [*house.boxes, *house.places])
    lost = path_losses_db(paths, (BAND_2400_MHZ,))
    field = field_of(house, assumptions, list(paths.sites.places), band_mhz=(BAND_2400_MHZ,))
    ground, compared = field.ground, 0
    for n in range(0, len(paths.sites.places), 3):
        if ground.own[n] >= 0:
            continue  # a place that does not know its side of a wall is no place of a grid
        one = slice(n, n + 1)
        at = Places(
            ground.x[one],
            ground.y[one],
            int(ground.sites.z_mm[n]),
            int(ground.sites.level[n]),
            ground.sites.room[one],
        )
        here = losses_across_db(field, at, plain=plain)[:, 0]
        for first, second in ((paths.first, paths.second), (paths.second, paths.first)):
            pairs = np.flatnonzero((first == n) & (second != n))
            # The last digits hang on which end is named first.
            np.testing.assert_allclose(here[:, second[pairs]], lost[:, pairs], atol=1e-9)
            compared += len(pairs)
    assert compared > 200


def test_compiled_and_plain_tell_the_same_of_every_storey() -> None:
    house, assumptions = manor_house(2), default_assumptions()
    rows = schedule(house, house.models)
    answer = reach(rows, assumptions)
    for network in answer.networks:
        for storey in house.storeys:
            quick, plain = (
                cover(rows, assumptions, answer, network, storey, step_mm=500, plain=p) for p in (False, True)
            )
            np.testing.assert_allclose(quick.margin_db, plain.margin_db, atol=1e-9)
            assert quick.inside.any()


def test_a_place_far_behind_walls_is_less_likely_than_one_beside_the_controller() -> None:
    rows, assumptions = rows_of(row_of_rooms(6, wall_mm=300, kind="leaf")), assumed()
    found = cover(rows, assumptions, reach(rows, assumptions), "N1", "S0")
    near, far = (int(np.argmin(np.abs(found.x_mm - x))) for x in (2000, 22000))
    row = int(np.argmin(np.abs(found.y_mm - 3000)))
    assert found.likely[row, near]
    assert not found.likely[row, far]
    assert found.chance[row, near] > found.chance[row, far]
    assert not (found.likely & found.unlikely).any()


def test_without_power_at_the_controller_nothing_is_carried() -> None:
    rows, assumptions = rows_of(row_of_rooms(3)), assumed()
    answer = reach(rows, assumptions)
    found = cover(rows, assumptions, answer, "N1", "S0", gone=["N1"])
    assert np.array_equal(found.unlikely, found.inside)


def test_a_repeater_gone_never_makes_a_place_better() -> None:
    rows, assumptions = rows_of(row_of_rooms(6, wall_mm=300)), assumed()
    answer = reach(rows, assumptions)
    whole = cover(rows, assumptions, answer, "N1", "S0").margin_db
    less = cover(rows, assumptions, answer, "N1", "S0", gone=["D3", "D4"]).margin_db
    assert np.nanmax(less - whole) <= 0
    assert np.nanmin(less - whole) < -1


def test_a_storey_or_network_that_is_not_there_and_a_step_of_nothing_are_refused() -> None:
    rows, assumptions = rows_of(row_of_rooms(2)), assumed()
    answer = reach(rows, assumptions)
    for network, storey in (("N9", "S0"), ("N1", "S9")):
        with pytest.raises(KeyError):
            cover(rows, assumptions, answer, network, storey)
    with pytest.raises(ValueError, match="above 0"):
        cover(rows, assumptions, answer, "N1", "S0", step_mm=0)
