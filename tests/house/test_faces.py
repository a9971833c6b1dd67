"""Walls unfolded: names by the direction one faces, left and right as one faces them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import Position, faces_of, nearest_face

SQUARE = [(0, 0), (4200, 0), (4200, 3100), (0, 3100)]


@pytest.mark.parametrize("outline", [SQUARE, SQUARE[::-1], SQUARE[2:] + SQUARE[:2]])
def test_walls_follow_each_other_to_the_right_from_north(outline: list[tuple[int, int]]) -> None:
    sides = faces_of(outline)
    assert [s.name for s in sides] == ["North wall", "East wall", "South wall", "West wall"]
    assert [s.length_mm for s in sides] == [4200, 3100, 4200, 3100]


def test_left_on_the_sheet_is_left_as_one_faces_the_wall() -> None:
    north, east, south, west = faces_of(SQUARE)
    # Facing north, west is on the left; facing east, north; facing south, east; facing west, south.
    assert (north.left_mm, east.left_mm, south.left_mm, west.left_mm) == (
        (0, 3100),
        (4200, 3100),
        (4200, 0),
        (0, 0),
    )
    assert south.along_mm(4000, 0) == 200


def test_walls_that_face_alike_are_numbered_and_slanting_ones_named_between() -> None:
    shape = [(0, 0), (3000, 0), (3000, 2000), (2000, 2000), (2000, 3000), (0, 3000)]
    assert [s.name for s in faces_of(shape)] == [
        "North wall 1",
        "East wall 1",
        "North wall 2",
        "East wall 2",
        "South wall",
        "West wall",
    ]
    cut = [(0, 0), (3000, 0), (3000, 2000), (2000, 3000), (0, 3000)]
    assert [s.name for s in faces_of(cut)][:2] == ["North wall", "North-east wall"]


def test_a_corner_in_a_straight_wall_or_a_doubled_corner_makes_no_wall() -> None:
    assert len(faces_of([(0, 0), (2000, 0), (4200, 0), (4200, 3100), (4200, 3100), (0, 3100)])) == 4
    assert faces_of([(0, 0), (100, 0), (200, 0)]) == []


@given(
    st.integers(500, 9000),
    st.integers(500, 9000),
    st.floats(0.02, 0.98),
    st.integers(0, 3),
    st.integers(0, 200),
)
def test_a_point_beside_a_wall_is_found_on_it(
    wide: int, high: int, share: float, which: int, off: int
) -> None:
    sides = faces_of([(0, 0), (wide, 0), (wide, high), (0, high)])
    side = sides[which]
    (ax, ay), (bx, by) = side.left_mm, side.right_mm
    length = math.dist(side.left_mm, side.right_mm)
    off = min(off, int(0.01 * min(wide, high)))
    # Into the room is to the right of left-to-right.
    x = ax + share * (bx - ax) + off * (by - ay) / length
    y = ay + share * (by - ay) - off * (bx - ax) / length
    found, away = nearest_face(sides, Position(x_mm=round(x), y_mm=round(y), height_mm=1000))
    assert found == which
    assert away == pytest.approx(off, abs=1.5)  # the document holds whole millimetres
