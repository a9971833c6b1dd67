"""Paths over a house: what lies between two places, and what is said where the survey is silent."""

import random
from itertools import combinations
from typing import Any

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.radio import paths as paths_module
from secondfix.radio.paths import Paths, find_paths
from tests.example_house import seen
from tests.radio.houses import brick, key, row_of_rooms, rows_of

Crossed = dict[frozenset[str], set[str]]


def paths_of(plain: dict[str, Any]) -> Paths:
    return find_paths(rows_of(plain).house, default_assumptions())


def crossed(paths: Paths) -> Crossed:
    """Ids of surfaces between every two different places."""
    names = paths.sites.places
    return {
        frozenset((names[a], names[b])): {surface.id for surface in paths.through(n)}
        for n, (a, b) in enumerate(zip(paths.first, paths.second, strict=True))
        if a != b
    }


def between(plain: dict[str, Any], a: str, b: str) -> list[str]:
    paths = paths_of(plain)
    names = paths.sites.places
    pair = next(
        n
        for n, ends in enumerate(zip(paths.first, paths.second, strict=True))
        if {names[end] for end in ends} == {a, b}
    )
    return sorted(surface.words for surface in paths.through(pair))


def turn(a: list[int], b: list[int], c: list[int]) -> int:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def scattered(seed: int) -> dict[str, Any]:
    """Switches and walls strewn over a field wider than two of the longest links."""
    rng = random.Random(seed)
    plain = row_of_rooms(24)
    for wall in plain["walls"].values():
        wall["from_mm"] = [rng.randrange(0, 71_000), rng.randrange(0, 71_000)]
        wall["to_mm"] = [rng.randrange(0, 71_000), rng.randrange(0, 71_000)]
        wall["thickness_mm"] = 1
        wall["layers"] = brick(1)
    for room in plain["rooms"].values():
        del room["outline_mm"]
    for box in plain["boxes"].values():
        box["position"] |= {"x_mm": rng.randrange(0, 71_000), "y_mm": rng.randrange(0, 71_000)}
    return plain


@pytest.mark.parametrize("seed", range(5))
def test_tiles_find_what_every_pair_against_every_wall_finds(seed: int) -> None:
    plain = scattered(seed)
    spots = {k: b["position"] for k, b in {**plain["boxes"], **plain["places"]}.items()}
    expected: Crossed = {}
    for (a, pa), (b, pb) in combinations(spots.items(), 2):
        p, q = [pa["x_mm"], pa["y_mm"]], [pb["x_mm"], pb["y_mm"]]
        rise = pa["height_mm"] - pb["height_mm"]
        if (p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2 + rise**2 > 30_000**2:
            continue
        met = {
            n
            for n, wall in plain["walls"].items()
            if (turn(wall["from_mm"], wall["to_mm"], p) > 0) != (turn(wall["from_mm"], wall["to_mm"], q) > 0)
            and (turn(p, q, wall["from_mm"]) > 0) != (turn(p, q, wall["to_mm"]) > 0)
        }
        one_room = {a, b} == {"B0", "P0"}
        expected[frozenset((a, b))] = met if met or one_room else {"S0"}  # perhaps one is not drawn
    assert crossed(paths_of(plain)) == expected


def test_walls_between_rooms_are_told_in_words() -> None:
    assert between(row_of_rooms(3), "B0", "B2") == ["wall W1: 100 mm brick", "wall W2: 100 mm brick"]


def test_two_devices_at_one_place_are_a_pair_without_a_surface() -> None:
    paths = paths_of(row_of_rooms(1))
    same = [n for n, (a, b) in enumerate(zip(paths.first, paths.second, strict=True)) if a == b]
    assert len(same) == len(paths.sites.places)
    assert all(paths.through(n) == [] and paths.distance_m[n] == 0.1 for n in same)


def test_a_pair_farther_than_the_longest_link_is_left_out() -> None:
    pairs = crossed(paths_of(row_of_rooms(12)))
    assert frozenset(("B0", "B7")) in pairs  # 28 m
    assert frozenset(("B0", "B8")) not in pairs  # 32 m


@pytest.mark.parametrize(
    ("sill_mm", "height_mm", "along_mm", "words"),
    [
        (0, 2000, 0, "door Door1: 40 mm wood"),
        (0, 900, 0, "wall W1: 100 mm brick"),  # the line passes above it
        (0, 2000, 1200, "wall W1: 100 mm brick"),  # and beside it
        (1100, 500, 0, "door Door1: 40 mm wood"),  # its foot belongs to it
        (600, 500, 0, "wall W1: 100 mm brick"),  # its head does not
    ],
)
def test_an_opening_takes_the_place_of_its_wall_where_the_line_passes_through(
    sill_mm: int, height_mm: int, along_mm: int, words: str
) -> None:
    plain = row_of_rooms(2)  # the wall starts at y = -500; the line passes it at 560 mm along, 1100 mm high
    plain["doors"] = {
        "Door1": {
            "wall": "W1",
            "along_mm": along_mm,
            "width_mm": 900,
            "sill_mm": sill_mm,
            "height_mm": height_mm,
            "leaf": seen([{"material": "wood", "thickness_mm": 40}]),
        }
    }
    assert between(plain, "B0", "B1") == [words]


def in_the_wall(*, outlines: bool) -> dict[str, Any]:
    """The switch of room 1 sits on the centre line of the wall to room 0."""
    plain = row_of_rooms(3)
    plain["boxes"]["B1"]["position"]["x_mm"] = 4000
    if not outlines:
        for room in plain["rooms"].values():
            del room["outline_mm"]
    return plain


def test_a_switch_in_a_wall_faces_its_own_room() -> None:
    plain = in_the_wall(outlines=True)
    assert between(plain, "B0", "B1") == ["wall W1: 100 mm brick"]
    assert between(plain, "B1", "B2") == ["wall W2: 100 mm brick"]


def test_without_an_outline_a_switch_in_a_wall_may_face_either_side() -> None:
    plain = in_the_wall(outlines=False)
    assert between(plain, "B0", "B1") == ["own wall of B1: side not known"]
    assert between(plain, "B1", "B2") == ["own wall of B1: side not known", "wall W2: 100 mm brick"]


def upstairs(plain: dict[str, Any], **floor: Any) -> dict[str, Any]:
    """Room 1 one storey up, over room 0 and its neighbours."""
    plain["storeys"]["S1"] = {"name": "Upper", "level_mm": 2800, "height_mm": 2500, **floor}
    plain["rooms"]["R1"]["storey"] = "S1"
    plain["walls"]["W9"] = {"storey": "S1", "from_mm": [-9000, 0], "to_mm": [-9000, 5000]}
    return plain


def test_a_line_between_storeys_passes_a_floor_and_the_walls_at_its_own_height() -> None:
    plain = upstairs(row_of_rooms(3), floor=seen([{"material": "concrete", "thickness_mm": 180}]))
    # From room 0 (x 2000, 1100 high) to room 1 above (x 6000, 3900 high): it meets the wall at x 4000 at
    # 2500, still on the ground floor. From room 2 it meets the wall at x 8000 at the same height.
    assert between(plain, "B0", "B1") == ["floor of S1: 180 mm concrete", "wall W1: 100 mm brick"]
    plain["boxes"]["B0"]["position"]["height_mm"] = 2400
    # Now it meets the wall at 3150: above the ground floor's walls.
    assert between(plain, "B0", "B1") == ["floor of S1: 180 mm concrete"]


def test_an_unknown_floor_is_asked_for() -> None:
    assert between(upstairs(row_of_rooms(3)), "B0", "B1") == [
        "floor of S1: layers not known",
        "wall W1: 100 mm brick",
    ]


def test_a_storey_without_a_wall_is_not_taken_for_an_open_field() -> None:
    plain = upstairs(row_of_rooms(3))
    del plain["walls"]["W9"]
    assert "walls of S1: not drawn" in between(plain, "B0", "B1")
    assert "walls of S1: not drawn" not in between(plain, "B0", "B2")


def test_two_rooms_without_a_wall_between_may_have_one_that_is_not_drawn() -> None:
    plain = row_of_rooms(3)
    del plain["walls"]["W1"]
    assert between(plain, "B0", "B1") == ["between two rooms of S0: no wall drawn"]
    assert between(plain, "B0", "B2") == ["wall W2: 100 mm brick"]


def test_only_places_in_use_are_paired_unless_others_are_asked_for() -> None:
    plain = row_of_rooms(2)
    plain["places"]["P9"] = {
        "kind": "socket",
        "name": "Spare",
        "room": "R1",
        "position": {"x_mm": 7000, "y_mm": 900, "height_mm": 300},
    }
    house = rows_of(plain).house
    assert find_paths(house, default_assumptions()).sites.places == ("B0", "B1", "P0")
    asked = find_paths(house, default_assumptions(), ["B1", "P9"])
    assert crossed(asked) == {frozenset(("B1", "P9")): set()}


def test_a_house_without_a_single_position_has_no_paths() -> None:
    plain = row_of_rooms(1, kind="relay")
    del plain["boxes"]["B0"]["position"]
    del plain["places"]["P0"]["position"]
    assert plain["devices"]["D0"]["model"] == key("relay")
    paths = paths_of(plain)
    assert len(paths.first) == len(paths.sites.places) == 0


def test_a_house_without_storeys_has_no_paths_either() -> None:
    plain = row_of_rooms(2)
    plain["storeys"], plain["walls"] = {}, {}
    for room in plain["rooms"].values():
        del room["storey"]
    assert len(paths_of(plain).first) == 0


def test_a_wall_of_absurd_length_is_still_crossed() -> None:
    plain = row_of_rooms(2)
    plain["walls"]["W1"] |= {"from_mm": [4000, -9_000_000], "to_mm": [4001, 9_000_000]}
    plain["walls"]["W8"] = {
        **plain["walls"]["W1"],
        "from_mm": [-9_000_000, -8_000_000],
        "to_mm": [9_000_000, 8_000_000],
    }
    assert between(plain, "B0", "B1") == ["wall W1: 100 mm brick"]


@pytest.mark.parametrize("pairs", [1, 7, 60])
def test_the_size_of_a_batch_changes_nothing(pairs: int, monkeypatch: pytest.MonkeyPatch) -> None:
    plain = scattered(7)
    whole = paths_of(plain)
    monkeypatch.setattr(paths_module, "BATCH_PAIRS", pairs)
    parts = paths_of(plain)
    assert crossed(parts) == crossed(whole)
    assert parts.distance_m.tolist() == whole.distance_m.tolist()


def test_a_leaf_nobody_has_seen_is_asked_for() -> None:
    plain = row_of_rooms(2)
    opening = {"wall": "W1", "along_mm": 0, "width_mm": 900, "sill_mm": 800, "height_mm": 1200}
    plain["windows"] = {"Win1": opening}
    assert between(plain, "B0", "B1") == ["window Win1: leaf not known"]
