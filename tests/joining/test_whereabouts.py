"""Where a place is, for somebody who stands in the room."""

from typing import Any

import pytest

from secondfix.house import FAR_MM, Position, faces_of, nearest_face
from secondfix.joining.whereabouts import whereabouts
from tests.joining.houses import a_box, a_house


def hall(x_mm: int, y_mm: int, *, outline: bool = True, **parts: Any) -> str:
    """A hall 4 m by 3 m with a wall along each side of x = 4 m; a door in it from y = 1.0 m to 1.8 m."""
    room: dict[str, Any] = {"name": "Hall", "storey": "S0"}
    if outline:
        room["outline_mm"] = [[0, 0], [3950, 0], [3950, 3000], [0, 3000]]
    house = a_house(
        storeys={"S0": {"name": "Ground", "level_mm": 0}},
        rooms={"R1": room},
        walls={"W1": {"storey": "S0", "from_mm": [4000, 0], "to_mm": [4000, 3000], "thickness_mm": 100}},
        doors={"D2": {"wall": "W1", "along_mm": 1000, "width_mm": 800, "height_mm": 2000}},
        boxes={"B1": a_box("R1", lines=["C1"], at=(x_mm, y_mm))},
        **parts,
    )
    return whereabouts(house.house, "B1")


def test_a_plate_past_the_door_is_left_of_it_for_who_faces_the_wall() -> None:
    # Facing along +x, +y is on the left hand.
    assert hall(3950, 2200) == "1.05 m up, on the east wall, 0.4 m left of door D2"


def test_a_plate_before_the_door_is_right_of_it() -> None:
    assert hall(3950, 700) == "1.05 m up, on the east wall, 0.3 m right of door D2"


def test_in_an_nec_house_a_tape_reads_feet_and_inches() -> None:
    # 1050 mm are 41.34 in, 400 mm 15.75 in and 300 mm 11.81 in (1 in = 25.4 mm).
    assert hall(3950, 2200, wiring_rules="nec") == "3'-5 3/8\" up, on the east wall, 1'-4\" left of door D2"
    assert hall(3950, 700, wiring_rules="nec").endswith("1'-0\" right of door D2")


def test_without_an_outline_no_side_is_claimed() -> None:
    assert hall(3950, 700, outline=False) == "1.05 m up, on wall W1, 0.3 m beside door D2"


def test_a_plate_within_the_width_of_an_opening_is_over_or_under_it() -> None:
    assert hall(3950, 1400).endswith("under or over door D2")


def test_the_nearest_opening_is_named() -> None:
    window = {"W7": {"wall": "W1", "along_mm": 2400, "width_mm": 500, "height_mm": 1000}}
    assert hall(3950, 2300, windows=window).endswith("0.1 m right of window W7")


def test_a_plate_far_from_every_wall_has_its_height_alone() -> None:
    assert hall(1000, 1500) == "1.05 m up"


@pytest.mark.parametrize("known", [True, False])
def test_a_place_without_a_position_says_so(known: bool) -> None:
    place: dict[str, Any] = {"kind": "surface", "name": "Shelf", "room": "R1"}
    if known:
        place["position"] = {"x_mm": 5, "y_mm": 5, "height_mm": 900}
    house = a_house(places={"P1": place})
    said = whereabouts(house.house, "P1")
    assert said == ("0.90 m up" if known else "position not known: look for it in the room")


def test_in_a_corner_it_names_the_wall_that_the_elevation_draws() -> None:
    corner = Position(x_mm=3900, y_mm=50, height_mm=1050)  # as near to the south wall as to the east one
    faces = faces_of([(0, 0), (3950, 0), (3950, 3000), (0, 3000)])
    drawn = faces[nearest_face(faces, corner)[0]].name
    assert drawn == "East wall"
    assert hall(3900, 50).startswith(f"1.05 m up, on the {drawn.lower()}, ")


def test_a_plate_far_from_the_wall_of_its_elevation_is_not_said_to_be_on_it() -> None:
    assert "wall" in hall(3950 - FAR_MM, 1500)
    assert "wall" not in hall(3950 - FAR_MM - 1, 1500)


def test_a_plate_in_the_middle_of_a_wall_without_openings_has_its_wall_alone() -> None:
    assert hall(2000, 2990) == "1.05 m up, on the north wall"
