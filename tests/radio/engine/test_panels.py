"""Crossings by class against exact fractions, against a geometry library, and compiled against plain."""

from fractions import Fraction

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio.engine.panels import (
    Decks,
    Panels,
    Spots,
    count_crossings,
    losses_db,
    spots_on_grid,
    walls_on_grid,
)
from tests.radio.engine.meshes import storey

NONE = Decks(np.zeros(0, np.int64), np.zeros(0, np.int64))


def left(a: tuple[int, int], b: tuple[int, int], c: tuple[int, int]) -> bool:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0


def by_fractions(spots: Spots, panels: Panels, decks: Decks, kinds: int) -> list[list[int]]:
    """The rule as it is written, one pair and one panel at a time, in fractions."""
    out = []
    places = list(zip(spots.x.tolist(), spots.y.tolist(), spots.z.tolist(), strict=True))
    for i, one in enumerate(places):
        for other in places[i + 1 :]:
            # Places at one spot of the plan see no wall between them, whichever end is read first.
            (xa, ya, za), (xb, yb, zb) = sorted((one, other), key=lambda p: p[:2])
            row = [0] * kinds
            for x1, y1, x2, y2, foot, head, kind in zip(
                *(
                    getattr(panels, name).tolist()
                    for name in ("x1", "y1", "x2", "y2", "foot", "head", "kind")
                ),
                strict=True,
            ):
                a, b, p, q = (xa, ya), (xb, yb), (x1, y1), (x2, y2)
                if left(p, q, a) != left(p, q, b) and left(a, b, p) != left(a, b, q):
                    dx, dy, ex, ey = xb - xa, yb - ya, x2 - x1, y2 - y1
                    share = Fraction((x1 - xa) * ey - (y1 - ya) * ex, dx * ey - dy * ex)
                    row[kind] += foot <= za + share * (zb - za) < head
            for height, kind in zip(decks.z.tolist(), decks.kind.tolist(), strict=True):
                row[kind] += (za < height) != (zb < height)
            out.append(row)
    return out


@pytest.mark.parametrize("plain", [False, True])
@pytest.mark.parametrize("level", [False, True])
@given(seed=st.integers(0, 10**6), side=st.sampled_from([4, 9, 46_000]))
def test_counts_equal_exact_fractions_corners_and_grazes_too(
    *, plain: bool, level: bool, seed: int, side: int
) -> None:
    spots, panels, decks = storey(places=6, walls=9, seed=seed, side=side, level=level)
    found = count_crossings(spots, panels, decks, kinds=3, plain=plain)
    assert found.tolist() == by_fractions(spots, panels, decks, 3)


@pytest.mark.parametrize("level", [False, True])
def test_compiled_and_plain_count_the_same_in_a_large_storey(*, level: bool) -> None:
    spots, panels, decks = storey(places=90, walls=150, seed=5, side=4000, level=level)
    compiled = count_crossings(spots, panels, decks, kinds=3)
    assert compiled.sum() > 1000
    assert np.array_equal(compiled, count_crossings(spots, panels, decks, kinds=3, plain=True))


@given(seed=st.integers(0, 10**6), places=st.integers(33, 110), side=st.sampled_from([6, 40, 900, 46_000]))
def test_panels_left_out_between_two_tiles_would_not_have_been_crossed(
    seed: int, places: int, side: int
) -> None:
    # Several tiles of places; on the small plans nearly every sight line runs through some corner.
    spots, panels, decks = storey(places=places, walls=60, seed=seed, side=side, level=seed % 2 == 0)
    compiled = count_crossings(spots, panels, decks, kinds=3)
    assert np.array_equal(compiled, count_crossings(spots, panels, decks, kinds=3, plain=True))


def test_a_long_narrow_plan_is_counted_right() -> None:
    # The widest plan in one direction: what lies across is worked out in 64 bits.
    rng = np.random.default_rng(3)
    spots = Spots(2 * rng.integers(0, 2**28, 80) + 1, np.ones(80, np.int64), np.full(80, 9))
    x = 2 * rng.integers(0, 2**28, 50)
    panels = Panels(x, np.zeros(50, np.int64), x, np.full(50, 2), *(np.full(50, v) for v in (0, 540, 0)))
    expected = [
        np.count_nonzero((x > min(a, b)) & (x < max(a, b)))
        for i, a in enumerate(spots.x.tolist())
        for b in spots.x.tolist()[i + 1 :]
    ]
    for plain in (False, True):
        assert count_crossings(spots, panels, NONE, kinds=1, plain=plain)[:, 0].tolist() == expected


@pytest.mark.parametrize("seed", range(4))
def test_counts_equal_those_of_a_geometry_library_away_from_degenerate_cases(seed: int) -> None:
    spots, panels, _ = storey(places=40, walls=60, seed=seed, side=30_000, level=True)
    found = count_crossings(spots, panels, NONE, kinds=3)
    ends = np.stack([panels.x1, panels.y1, panels.x2, panels.y2], axis=1).reshape(-1, 2, 2)
    walls = shapely.linestrings(ends)
    a, b = np.triu_indices(len(spots), 1)
    at = np.stack([spots.x, spots.y], axis=1)
    sights = shapely.linestrings(np.stack([at[a], at[b]], axis=1))
    clear = np.ones(len(a), np.bool_)
    for end in (0, 1):  # a wall's end within half a unit of the sight line is left to the exact rule
        near = shapely.distance(sights[:, None], shapely.points(ends[:, end])[None]) < 0.5
        clear &= ~near.any(axis=1)
    clear &= ~(shapely.distance(shapely.points(at)[:, None], walls[None]) < 0.5).any(axis=1)[a]
    clear &= ~(shapely.distance(shapely.points(at)[:, None], walls[None]) < 0.5).any(axis=1)[b]
    assert clear.sum() > 500
    met = shapely.intersects(sights[:, None], walls[None])
    expected = np.stack([met[:, panels.kind == k].sum(axis=1) for k in range(3)], axis=1)
    assert np.array_equal(found[clear], expected[clear])


@given(st.integers(-50, 50), st.integers(-50, 50))
def test_a_wall_in_two_pieces_is_crossed_as_often_as_the_whole(x: int, y: int) -> None:
    spots = Spots(np.array([x, 7]), np.array([y, 33]), np.array([1, 1]))
    whole = Panels(*(np.array([v]) for v in (-40, -20, 40, 20, 0, 9, 0)))
    parts = Panels(*(np.array(v) for v in ([-40, 0], [-20, 0], [0, 40], [0, 20], [0, 0], [9, 9], [0, 0])))
    one, two = (count_crossings(spots, p, NONE, kinds=1)[0, 0] for p in (whole, parts))
    assert one == two


def test_a_window_is_met_at_its_height_and_the_wall_above_and_below_it() -> None:
    # One stretch in three panels: wall to 90 cm, glass to 210 cm, wall to 270 cm; in half centimetres.
    panels = Panels(
        *(np.full(3, v) for v in (0, 0, 0, 400)),
        np.array([0, 180, 420]),
        np.array([180, 420, 540]),
        np.array([0, 1, 0]),
    )
    for height, expected in ((100, [1, 0]), (180, [0, 1]), (419, [0, 1]), (420, [1, 0]), (540, [0, 0])):
        spots = Spots(np.array([-201, 201]), np.array([101, 151]), np.array([height, height]))
        assert count_crossings(spots, panels, NONE, kinds=2).tolist() == [expected]


def test_another_loss_model_needs_no_new_count() -> None:
    spots, panels, decks = storey(places=12, walls=20, seed=1, side=900, level=True)
    counted = count_crossings(spots, panels, decks, kinds=3)
    both = losses_db(counted, each_db=np.array([[3.4, 5.0], [18.3, 12.0], [6.9, 3.0]]))
    assert both[:, 0] == pytest.approx(counted[:, 0] * 3.4 + counted[:, 1] * 18.3 + counted[:, 2] * 6.9)
    assert both[:, 1] == pytest.approx(counted[:, 0] * 5.0 + counted[:, 1] * 12.0 + counted[:, 2] * 3.0)


@given(st.integers(-100_000, 100_000))
def test_the_grid_keeps_every_millimetre_within_five_and_places_off_walls(mm: int) -> None:
    at = np.array([mm])
    place, wall = spots_on_grid(x_mm=at, y_mm=at, z_mm=at).x[0], walls_on_grid(at)[0]
    assert place % 2 == 1
    assert wall % 2 == 0
    assert abs(place * 5 - mm) <= 5
    assert abs(wall * 5 - mm) <= 5


def test_a_plan_too_large_for_the_grid_is_refused() -> None:
    spots = Spots(np.array([0, 50_000]), np.array([0, 50_000]), np.array([0, 0]))
    panels = Panels(*(np.zeros(0, np.int64) for _ in range(7)))
    with pytest.raises(ValueError, match="does not fit"):
        count_crossings(spots, panels, NONE, kinds=1)
