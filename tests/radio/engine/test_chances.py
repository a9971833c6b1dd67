"""Draws of a network: the same compiled, without a compiler, and interpreted; intervals of a share."""

import sys
from collections.abc import Iterator

import numpy as np
import pytest

import secondfix.radio.engine.drawing_kernel
import secondfix.radio.engine.gone_kernel
import secondfix.radio.engine.panels_kernel
import secondfix.radio.engine.searching_kernel
from secondfix.assumptions import default_assumptions
from secondfix.radio.engine import choosing
from secondfix.radio.engine.chances import wilson
from secondfix.radio.engine.drawing import Ends, draw_links
from secondfix.radio.engine.gone import without_each
from secondfix.radio.engine.panels import count_crossings
from secondfix.radio.engine.searching import how_often, reached, steps_of
from secondfix.radio.question import reach
from tests.radio.engine.meshes import mesh, storey
from tests.radio.houses import row_of_rooms, rows_of


def counted(*, plain: bool = False) -> list[list[int]]:
    """Draws of one network, who is reached, and who without each repeater."""
    ends, margin, forwards = mesh(count=25, seed=3)
    steps = steps_of(ends, forwards)
    drawn = draw_links(ends, margin_db=margin, spread_db=6.0, shared=0.4, draws=200, seed=8, plain=plain)
    gone = without_each(steps, drawn, most_links=5, plain=plain)
    there = reached(steps, drawn, most_links=5, plain=plain)
    assert gone.lost.any()
    return [x.tolist() for x in (drawn, there[1:], gone.whole, gone.safe, gone.lost)]


def test_without_a_compiler_the_answer_is_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    compiled = counted()
    assert counted(plain=True) == compiled
    for name in ("drawing", "gone", "panels", "searching"):
        monkeypatch.setitem(sys.modules, f"secondfix.radio.engine.{name}_kernel", None)
        monkeypatch.delattr(f"secondfix.radio.engine.{name}_kernel")
    choosing.kernels.cache_clear()
    try:
        assert choosing.kernels("gone_kernel") is None
        assert counted() == compiled
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
    links, draws = answer.networks["N1"], 40_000
    ends = Ends(2, links.a, links.b)
    steps = steps_of(ends, np.ones(2, np.bool_))
    low, middle, high = answer.scale.spread_db
    # 4 standard deviations of so many draws at a half, the worst: 1 %.
    for reading, spreads, computed, worst in (
        (1, (middle,), device.chances.assumed, min),
        (2, (low, high), device.chances.low, min),
        (0, (low, high), device.chances.high, max),
    ):
        shares = []
        for spread in spreads:
            drawn = draw_links(
                ends, margin_db=links.margin_db[reading], spread_db=spread, shared=0.5, draws=draws, seed=11
            )
            shares.append(int(how_often(reached(steps, drawn, most_links=1))[1]) / draws)
        assert worst(shares) == pytest.approx(computed, abs=0.01)
