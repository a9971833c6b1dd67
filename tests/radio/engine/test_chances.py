"""Chances of a network: both uncertainties apart, the same compiled, without a compiler, and interpreted."""

import sys
from collections.abc import Iterator

import numpy as np
import pytest

import secondfix.radio.engine.drawing_kernel
import secondfix.radio.engine.gone_kernel
import secondfix.radio.engine.panels_kernel
import secondfix.radio.engine.searching_kernel
from secondfix.assumptions import default_assumptions
from secondfix.radio.answers import scale_of
from secondfix.radio.engine import choosing
from secondfix.radio.engine.chances import DeviceChance, device_chances, wilson
from secondfix.radio.engine.drawing import draw_links
from secondfix.radio.engine.gone import without_each
from secondfix.radio.engine.panels import count_crossings
from secondfix.radio.engine.searching import reached, steps_of
from secondfix.radio.links import Links
from secondfix.radio.question import reach
from secondfix.radio.stations import Stated, Station
from tests.radio.engine.meshes import mesh, storey
from tests.radio.houses import row_of_rooms, rows_of

SCALE = scale_of(default_assumptions())


def network(*, plain: bool = False, draws: int = 2000, seed: int = 8) -> tuple[DeviceChance, ...]:
    ends, margin, forwards = mesh(count=25, seed=3)
    three = np.stack([margin + 5, margin, margin - 5])
    stations = tuple(
        Station(
            f"D{n}",
            f"B{n}",
            (0.0,) * 3,
            (0.0,) * 3,
            (0.0,) * 3,
            Stated.YES if f else Stated.NO,
            plugged=False,
        )
        for n, f in enumerate(forwards)
    )
    nothing = np.zeros(len(margin))
    links = Links(stations, ends.a, ends.b, ends.a, three, nothing, margin, margin)
    return device_chances(links, SCALE, most_links=5, shared=0.4, draws=draws, seed=seed, plain=plain)


def test_what_the_draws_leave_and_what_the_model_leaves_stand_apart() -> None:
    few, many = network(draws=500), network(draws=8000)
    for one, other in zip(few, many, strict=True):
        assert one.id == other.id
        assert one.model_low <= one.reached.share <= one.model_high
        assert one.reached.low <= one.reached.share <= one.reached.high
        assert one.any_gone.share <= one.reached.share
    # Sixteen times the draws quarter the first interval and leave the second where it was.
    width = [np.mean([c.reached.high - c.reached.low for c in run]) for run in (few, many)]
    open_ = [np.mean([c.model_high - c.model_low for c in run]) for run in (few, many)]
    assert width[0] / width[1] == pytest.approx(4, rel=0.15)
    assert open_[0] == pytest.approx(open_[1], rel=0.1)


def test_each_repeater_that_is_missed_lowers_the_chance_and_none_lowers_it_below_any_gone() -> None:
    chances = network()
    assert any(c.gone for c in chances)
    for c in chances:
        for left in c.gone.values():
            assert c.any_gone.share <= left.share < c.reached.share


def test_without_a_compiler_the_answer_is_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    compiled = network(draws=200)
    assert network(draws=200, plain=True) == compiled
    for name in ("drawing", "gone", "panels", "searching"):
        monkeypatch.setitem(sys.modules, f"secondfix.radio.engine.{name}_kernel", None)
        monkeypatch.delattr(f"secondfix.radio.engine.{name}_kernel")
    choosing.kernels.cache_clear()
    try:
        assert choosing.kernels("gone_kernel") is None
        assert network(draws=200) == compiled
    finally:
        choosing.kernels.cache_clear()


def interpreted(module: object) -> Iterator[tuple[str, object]]:
    for name, value in vars(module).items():
        if hasattr(value, "py_func"):
            yield name, value.py_func


def test_the_kernels_say_the_same_interpreted_as_compiled(monkeypatch: pytest.MonkeyPatch) -> None:
    ends, margin, forwards = mesh(count=9, seed=2)
    steps = steps_of(ends, forwards)

    def everything() -> list[list[object]]:
        out: list[list[object]] = []
        for level in (False, True):
            spots, panels, decks = storey(places=6, walls=8, seed=4, side=30, level=level)
            out.append(count_crossings(spots, panels, decks, kinds=3).tolist())
        for shared in (0.0, 0.4):
            drawn = draw_links(ends, margin_db=margin, spread_db=6.0, shared=shared, draws=70, seed=5)
            gone = without_each(steps, drawn, most_links=4)
            out += [
                x.tolist()
                for x in (drawn, reached(steps, drawn, most_links=4), gone.whole, gone.safe, gone.lost)
            ]
        return out

    compiled = everything()
    engine = secondfix.radio.engine
    for module in (engine.drawing_kernel, engine.gone_kernel, engine.panels_kernel, engine.searching_kernel):
        for name, plain in list(interpreted(module)):
            monkeypatch.setattr(module, name, plain)
    with np.errstate(over="ignore"):  # sums and products wrap on purpose
        assert everything() == compiled


def test_wilsons_interval_at_the_ends_and_out_of_range() -> None:
    assert wilson(hits=0, draws=100).low == 0.0
    assert wilson(hits=100, draws=100).high == 1.0
    for hits, draws in ((-1, 5), (6, 5), (0, 0)):
        with pytest.raises(ValueError, match="no share"):
            wilson(hits=hits, draws=draws)


@pytest.mark.parametrize("chance", [0.02, 0.5, 0.97])
def test_wilsons_interval_holds_the_true_chance_nineteen_times_in_twenty(chance: float) -> None:
    hits = np.random.default_rng(6).binomial(400, chance, 4000)
    inside = [w.low <= chance <= w.high for w in (wilson(hits=int(h), draws=400) for h in hits)]
    assert np.mean(inside) == pytest.approx(0.95, abs=0.02)


def test_one_device_alone_has_in_draws_the_chance_that_reach_computes() -> None:
    answer = reach(rows_of(row_of_rooms(1, room_mm=16_000)), default_assumptions())
    (device,) = answer.devices
    assert device.chances is not None
    (drawn,) = device_chances(
        answer.networks["N1"], answer.scale, most_links=1, shared=0.5, draws=40_000, seed=11
    )
    assert drawn.id == device.id
    for found, computed in (
        (drawn.reached.share, device.chances.assumed),
        (drawn.model_low, device.chances.low),
        (drawn.model_high, device.chances.high),
    ):
        assert found == pytest.approx(computed, abs=0.01)
