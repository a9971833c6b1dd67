"""Draws: as often as asked, the same compiled and plain, and shared where they should be."""

from statistics import NormalDist

import numpy as np
import pytest

from secondfix.radio.engine.drawing import Ends, draw_links, draw_way
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.engine.searching import how_often
from tests.radio.engine.meshes import mesh, works


@pytest.mark.parametrize("shared", [0.0, 0.5])
@pytest.mark.parametrize("draws", [1, 64, 130])
def test_compiled_and_plain_draw_the_same_bits(shared: float, draws: int) -> None:
    ends, margin, _ = mesh(count=20, seed=1)
    one, other = (
        draw_links(ends, margin_db=margin, spread_db=7.0, shared=shared, draws=draws, seed=9, plain=plain)
        for plain in (False, True)
    )
    assert 0 < how_often(one).sum() < draws * len(margin)
    assert np.array_equal(one, other)


@pytest.mark.parametrize("shared", [0.0, 0.3, 0.8])
def test_each_link_works_as_often_as_the_normal_law_says(shared: float) -> None:
    margin = np.linspace(-14, 14, 57)
    ends = Ends(114, np.arange(0, 114, 2), np.arange(1, 114, 2))
    draws = 40_000
    share = (
        how_often(draw_links(ends, margin_db=margin, spread_db=8.0, shared=shared, draws=draws, seed=2))
        / draws
    )
    law = np.array([NormalDist().cdf(m / 8.0) for m in margin])
    off = (share - law) / np.sqrt(law * (1 - law) / draws)
    assert np.abs(off).max() < 4
    assert 0.7 < off.std() < 1.3


@pytest.mark.parametrize("shared", [0.0, 0.5])
def test_links_of_one_device_agree_as_far_as_they_share(shared: float) -> None:
    # At margin 0 two normals of correlation r are above 0 together in 1/4 + arcsin(r)/2π of all draws
    # (Sheppard 1899); links that meet in one device share half of what is shared.
    ends = Ends(4, np.array([0, 0, 2]), np.array([1, 2, 3]))
    draws = 60_000
    bits = draw_links(ends, margin_db=np.zeros(3), spread_db=8.0, shared=shared, draws=draws, seed=3)
    for one, other, r in ((0, 1, shared / 2), (1, 2, shared / 2), (0, 2, 0.0)):
        both = how_often((bits[one] & bits[other])[None])[0] / draws
        assert both == pytest.approx(0.25 + np.arcsin(r) / (2 * np.pi), abs=4 * np.sqrt(0.19 / draws))


@pytest.mark.parametrize("plain", [False, True])
@pytest.mark.parametrize("shared", [0.0, 0.4])
def test_certain_links_always_work_and_hopeless_ones_never(*, plain: bool, shared: float) -> None:
    ends = Ends(3, np.array([0, 1]), np.array([1, 2]))
    bits = draw_links(
        ends,
        margin_db=np.array([500.0, -500.0]),
        spread_db=6.0,
        shared=shared,
        draws=100,
        seed=4,
        plain=plain,
    )
    assert how_often(bits).tolist() == [100, 0]


def test_a_seed_tells_the_draws_and_another_seed_tells_others() -> None:
    ends, margin, _ = mesh(count=20, seed=1)
    one, again, other = (
        draw_links(ends, margin_db=margin, spread_db=7.0, shared=0.5, draws=64, seed=s) for s in (1, 1, 2)
    )
    assert np.array_equal(one, again)
    assert not np.array_equal(one, other)
    assert np.array_equal(works(one, 5), works(again, 5))


@pytest.mark.parametrize(
    ("spread", "shared", "draws"), [(0.0, 0.0, 1), (6.0, 1.0, 1), (6.0, -0.1, 1), (6.0, 0.0, 0)]
)
def test_figures_out_of_range_are_refused(spread: float, shared: float, draws: int) -> None:
    ends = Ends(2, np.array([0]), np.array([1]))
    with pytest.raises(ValueError, match=r"spread|draw"):
        draw_links(ends, margin_db=np.zeros(1), spread_db=spread, shared=shared, draws=draws, seed=1)


@pytest.mark.parametrize("plain", [False, True])
def test_each_link_has_its_own_spread_and_each_station_its_own_surroundings(plain: bool) -> None:
    # Station 3's surroundings add nothing; link 2 was measured and spreads little.
    ends = Ends(4, np.array([0, 0, 0]), np.array([1, 2, 3]))
    own, around = np.array([6.0, 2.0, 0.5]), np.array([0.0, 3.0, 4.0, 0.0])
    margin = np.array([5.0, -3.0, 0.4])
    draws = 40_000
    counts = how_often(draw_way(ends, Sampled(margin, own, around), draws=draws, seed=6, plain=plain))
    spread = np.sqrt(own**2 + around[ends.b] ** 2)
    for count, z in zip(counts.tolist(), (margin / spread).tolist(), strict=True):
        p = NormalDist().cdf(z)
        assert abs(count - draws * p) < 4 * (draws * p * (1 - p)) ** 0.5
