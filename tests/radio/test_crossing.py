"""Crossings on the plan against an obvious reference, corners and collinear lines included."""

from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from secondfix.radio.crossing import Lines, Points, along_sight, along_wall_mm, crossings

Point = tuple[int, int]
Segment = tuple[Point, Point]

small = st.tuples(st.integers(-4, 4), st.integers(-4, 4))
large = st.tuples(st.integers(-10_000_000, 10_000_000), st.integers(-10_000_000, 10_000_000))


def lines(segments: list[Segment]) -> Lines:
    table = np.array([(*p, *q) for p, q in segments], np.int64).reshape(-1, 4)
    return Lines(*(np.ascontiguousarray(column) for column in table.T))


def points(of: list[Point]) -> Points:
    table = np.array(of, np.int64).reshape(-1, 2)
    return Points(np.ascontiguousarray(table[:, 0]), np.ascontiguousarray(table[:, 1]))


def found(sight: Segment, walls: list[Segment]) -> list[int]:
    one = np.array([0])
    _, columns = crossings(points([sight[0]]), points([sight[1]]), (one, one), lines(walls))
    return [int(n) for n in columns]


def turn(a: Point, b: Point, c: Point) -> int:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def meet(sight: Segment, wall: Segment) -> Fraction | None:
    """Where the two meet strictly within both, solved by hand as a share of the sight line."""
    (x1, y1), (x2, y2) = sight
    (x3, y3), (x4, y4) = wall
    below = (x2 - x1) * (y4 - y3) - (y2 - y1) * (x4 - x3)
    if below == 0:
        return None
    t = Fraction((x3 - x1) * (y4 - y3) - (y3 - y1) * (x4 - x3), below)
    u = Fraction((x3 - x1) * (y2 - y1) - (y3 - y1) * (x2 - x1), below)
    return t if 0 < t < 1 and 0 < u < 1 else None


def in_general_position(sight: Segment, wall: Segment) -> bool:
    (p, q), (a, b) = sight, wall
    return all(turn(*three) for three in ((p, q, a), (p, q, b), (a, b, p), (a, b, q)))


@given(st.tuples(small, small), st.lists(st.tuples(small, small), min_size=1, max_size=8))
def test_crossings_in_general_position_are_those_solved_by_hand(sight: Segment, walls: list[Segment]) -> None:
    clear = [wall for wall in walls if in_general_position(sight, wall)]
    assume(clear)
    assert found(sight, clear) == [n for n, wall in enumerate(clear) if meet(sight, wall) is not None]


@given(st.tuples(large, large), st.tuples(large, large))
def test_the_largest_coordinates_are_still_exact(sight: Segment, wall: Segment) -> None:
    assume(in_general_position(sight, wall))
    assert bool(found(sight, [wall])) == (meet(sight, wall) is not None)


@given(st.tuples(small, small), st.lists(st.tuples(small, small), max_size=8))
def test_a_sight_line_crosses_the_same_walls_from_either_end(sight: Segment, walls: list[Segment]) -> None:
    assert found(sight, walls) == found((sight[1], sight[0]), walls)


@given(small, small, st.lists(small, min_size=2, max_size=6))
def test_a_chain_of_walls_is_crossed_oddly_if_its_ends_lie_on_different_sides(
    p: Point, q: Point, chain: list[Point]
) -> None:
    # The walls of a chain share corners. A line long enough to lie between its ends meets an odd number of
    # them however many corners it passes through: no corner counts twice, none is slipped through.
    assume(p != q)
    far = (q[0] - p[0]) * 100, (q[1] - p[1]) * 100
    sight = ((p[0] - far[0], p[1] - far[1]), (q[0] + far[0], q[1] + far[1]))
    ends = turn(*sight, chain[0]), turn(*sight, chain[-1])
    assume(ends[0] and ends[1])
    walls = list(pairwise(chain))
    assert (len(found(sight, walls)) % 2 == 1) == ((ends[0] > 0) != (ends[1] > 0))


def test_a_line_through_a_corner_from_side_to_side_crosses_one_of_its_two_walls() -> None:
    corner = [((0, -3), (0, 0)), ((0, 0), (1, 3))]
    assert len(found(((-5, 0), (5, 0)), corner)) == 1


def test_a_line_that_grazes_a_corner_crosses_both_walls_or_neither() -> None:
    corner = [((-3, -3), (0, 0)), ((0, 0), (3, -3))]
    assert len(found(((-5, 0), (5, 0)), corner)) in {0, 2}


@pytest.mark.parametrize("wall", [((1, 0), (3, 0)), ((-9, 0), (9, 0)), ((3, 0), (8, 0))])
def test_a_line_along_a_wall_does_not_cross_it(wall: Segment) -> None:
    assert found(((0, 0), (5, 0)), [wall]) == []


@pytest.mark.parametrize("segment", [((2, 2), (2, 2)), ((0, 0), (0, 0))])
def test_what_has_no_length_crosses_nothing(segment: Segment) -> None:
    assert found(((-5, -5), (5, 5)), [segment]) == []
    assert found(segment, [((-5, 5), (5, -5)), ((2, 0), (2, 9))]) == []


steps = st.integers(1, 9)


@given(small, small, small, st.tuples(steps, steps), st.tuples(steps, steps))
def test_a_crossing_is_told_where_it_lies(
    middle: Point, u: Point, v: Point, on_sight: tuple[int, int], on_wall: tuple[int, int]
) -> None:
    # Both are laid through one point, so many steps to either side of it.
    assume(turn((0, 0), u, v))

    def through(step: Point, back: int, forth: int) -> Segment:
        start = (middle[0] - back * step[0], middle[1] - back * step[1])
        return start, (middle[0] + forth * step[0], middle[1] + forth * step[1])

    sight, wall = lines([through(u, *on_sight)]), lines([through(v, *on_wall)])
    assert along_sight(sight, wall)[0] == pytest.approx(on_sight[0] / sum(on_sight), abs=1e-12)
    away = on_wall[0] * (v[0] ** 2 + v[1] ** 2) ** 0.5
    assert along_wall_mm(sight, wall)[0] == pytest.approx(away, abs=1e-9)


def test_every_pair_is_told_its_own_walls() -> None:
    walls = [((0, -9), (0, 9)), ((4, -9), (4, 9))]
    a, b = points([(-2, 0), (2, 1)]), points([(2, -1), (6, 2), (1, 0)])
    ia, ib = np.array([0, 0, 1, 1]), np.array([0, 1, 1, 2])
    rows, columns = crossings(a, b, (ia, ib), lines(walls))
    met = sorted(zip(rows.tolist(), columns.tolist(), strict=True))
    assert met == [(0, 0), (1, 0), (1, 1), (2, 1)]
