"""The paths of `find_paths` and the counts of `count_crossings` agree where walls and places lie on the grid.

Both follow one rule (docs/decisions/two-counts-of-crossings.md); the paths keep the angle of each crossing in
exact millimetres, the counts are for all pairs at once on half centimetres.
"""

import json
from typing import Any

import numpy as np
import pytest

from bench.manor import manor
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from secondfix.radio import Decks, Panels, Paths, Spots, count_crossings, find_paths
from tests.example_house import seen
from tests.radio.houses import assumed

UNIT_MM = 5
ENDLESS = 10**6


def on_grid(places: int, seed: int) -> House:
    """A manor with every place on an odd half centimetre of its room, clear of walls, at a known height."""
    document = manor(places=places, seed=seed)
    rng = np.random.default_rng(seed)
    for spot in (*document["boxes"].values(), *document["places"].values()):
        (x1, y1), _, (x2, y2), _ = document["rooms"][spot["room"]]["outline_mm"]
        x, y = (
            10 * int(rng.integers(low // 10 + 30, high // 10 - 30)) + 5 for low, high in ((x1, x2), (y1, y2))
        )
        spot["position"] = {"x_mm": x, "y_mm": y, "height_mm": 5 * int(rng.integers(20, 480))}
    house = read_house(json.dumps(document).encode(), where="manor", models=shipped_models())
    assert isinstance(house, House), house
    return house


def stretches(house: House, wall_id: str, number: dict[str, int]) -> list[tuple[int, ...]]:
    """A wall as panels in half centimetres: ends, foot, head, number of the surface."""
    wall = house.walls[wall_id]
    feet = sorted(s.level_mm for s in house.storeys.values())
    foot = house.storeys[wall.storey].level_mm
    head = min((f for f in feet if f > foot), default=ENDLESS * UNIT_MM)
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    along_x, whole = y1 == y2, max(abs(x2 - x1), abs(y2 - y1))

    def panel(near: int, far: int, low: int, high: int, surface: int) -> tuple[int, ...]:
        if far == whole and not near:  # askew, perhaps; then nothing opens in it
            ends = (x1, y1, x2, y2)
        else:
            ends = (x1 + near, y1, x1 + far, y1) if along_x else (x1, y1 + near, x1, y1 + far)
        return (*(at // UNIT_MM for at in (*ends, low, high)), surface)

    out, at = [], 0
    openings = [(k, o) for k, o in (*house.doors.items(), *house.windows.items()) if o.wall == wall_id]
    for key, o in sorted(openings, key=lambda item: item[1].along_mm):
        near, far = o.along_mm, o.along_mm + o.width_mm
        sill, lintel = foot + o.sill_mm, foot + o.sill_mm + o.height_mm
        out.append(panel(at, near, foot, head, number[wall_id]))
        out.append(panel(near, far, foot, sill, number[wall_id]))
        out.append(panel(near, far, sill, lintel, number[key]))
        out.append(panel(near, far, lintel, head, number[wall_id]))
        at = far
    out.append(panel(at, whole, foot, head, number[wall_id]))
    return [p for p in out if p[:2] != p[2:4] and p[4] < p[5]]


def counted(house: House, paths: Paths) -> Any:
    """A row a pair of sites (of `np.triu_indices`), a column a surface."""
    number = {s.id: n for n, s in enumerate(paths.surfaces) if s.id not in house.storeys}
    rows = np.array([p for key in house.walls for p in stretches(house, key, number)], np.int64)
    sites = paths.sites
    spots = Spots(sites.x_mm // UNIT_MM, sites.y_mm // UNIT_MM, sites.z_mm // UNIT_MM)
    floors = [n for n, s in enumerate(paths.surfaces) if s.level]
    feet = sorted({s.level_mm for s in house.storeys.values()})
    decks = Decks(np.array(feet[1:]) // UNIT_MM, np.array(floors[1:]))
    return count_crossings(spots, Panels(*rows.T), decks, kinds=len(paths.surfaces))


def found(paths: Paths) -> Any:
    """The same of `find_paths`, without what stands for walls that are not drawn."""
    n = len(paths.sites.places)
    table = np.zeros((n, n, len(paths.surfaces)), np.int32)
    np.add.at(table, (paths.first[paths.at_pair], paths.second[paths.at_pair], paths.crossed), 1)
    drawn = np.array([not s.words.startswith("between two rooms") for s in paths.surfaces])
    return (table * drawn)[np.triu_indices(n, 1)]


@pytest.mark.parametrize(("places", "seed"), [(60, 1), (60, 2), (60, 5), (150, 3), (150, 6)])
def test_both_tell_the_same_surfaces_between_every_two_places_of_a_house(places: int, seed: int) -> None:
    house = on_grid(places, seed)
    paths = find_paths(house, assumed(radio_longest_link_m=500), [*house.boxes, *house.places])
    assert len(paths.first) == places * (places + 1) // 2
    counts = counted(house, paths)
    assert counts.sum() > 2000
    assert np.array_equal(counts, found(paths))


@pytest.mark.deep
@pytest.mark.parametrize("seed", range(100, 160))
def test_both_tell_the_same_for_many_houses(seed: int) -> None:
    house = on_grid(40 + seed, seed)
    paths = find_paths(house, assumed(radio_longest_link_m=500), [*house.boxes, *house.places])
    assert differing_at_edges(house, paths) <= 2


PITCH_MM = 410  # walls on a lattice, places half a pitch off it: sight lines run through its corners


def lattice(seed: int, *, openings: bool) -> House:
    """A house on a coarse lattice, so that sight lines meet corners, edges and sills again and again."""
    rng = np.random.default_rng(seed)
    walls: dict[str, Any] = {}
    doors: dict[str, Any] = {}
    for n in range(18):
        start, long = rng.integers(0, 12, 2), int(rng.integers(1, 9))
        end = start + np.array([(long, 0), (0, long), 1 + rng.integers(0, 4, 2)][n % 3])
        walls[f"W{n}"] = {
            "storey": f"S{n % 2}",
            "from_mm": (PITCH_MM * start).tolist(),
            "to_mm": (PITCH_MM * end).tolist(),
            "layers": seen([{"material": "wood", "thickness_mm": 40}]),
        }
        if openings and n % 3 < 2 and long > 2:
            doors[f"D{n}"] = {
                "wall": f"W{n}",
                **{
                    "along_mm": PITCH_MM,
                    "width_mm": PITCH_MM,
                    "sill_mm": PITCH_MM,
                    "height_mm": 3 * PITCH_MM,
                },
            }
    places = {}
    for n in range(30):
        x, y = (PITCH_MM * int(at) + PITCH_MM // 2 for at in rng.integers(0, 12, 2))
        at = {"x_mm": x, "y_mm": y, "height_mm": PITCH_MM // 2 * int(rng.integers(0, 13))}
        places[f"P{n}"] = {"kind": "surface", "name": f"P{n}", "room": f"R{n % 2}", "position": at}
    house = {
        "format": 1,
        "id": "0193f2aa-4b10-7c3e-8a51-2f9d60c7be14",
        "name": "Lattice",
        "storeys": {f"S{n}": {"name": f"S{n}", "level_mm": 7 * PITCH_MM * n} for n in range(2)},
        "rooms": {f"R{n}": {"name": f"R{n}", "storey": f"S{n}"} for n in range(2)},
        "walls": walls,
        "doors": doors,
        "boxes": {},
        "places": places,
    }
    read = read_house(json.dumps(house).encode(), where="lattice", models={})
    assert isinstance(read, House), read
    return read


def beside_walls(house: House) -> Paths:
    """Paths between the places that do not sit in a wall, which `find_paths` would move or ask about."""
    paths = find_paths(house, default_assumptions(), house.places)
    inside = {s.id for s in paths.surfaces if s.words.startswith("own wall")}
    return find_paths(house, default_assumptions(), [key for key in house.places if key not in inside])


@pytest.mark.parametrize("seed", range(12))
def test_both_agree_on_corners_and_grazes(seed: int) -> None:
    house = lattice(seed, openings=False)
    paths = beside_walls(house)
    counts = counted(house, paths)
    assert counts.sum() > 300
    assert np.array_equal(counts, found(paths))


def through_an_edge(house: House, paths: Paths, pair: int, opening_id: str) -> bool:
    """Whether a pair's sight line (a row of the counts) runs just through an edge of an opening."""
    o = {**house.doors, **house.windows}[opening_id]
    (x1, y1), (_, y2) = house.walls[o.wall].from_mm, house.walls[o.wall].to_mm
    a, b = (int(ends[pair]) for ends in np.triu_indices(len(paths.sites.places), 1))
    xa, ya, xb, yb = (int(e[n]) for n in (a, b) for e in (paths.sites.x_mm, paths.sites.y_mm))
    edges = [(x1 + at, y1) if y1 == y2 else (x1, y1 + at) for at in (o.along_mm, o.along_mm + o.width_mm)]
    return any((xb - xa) * (y - ya) == (yb - ya) * (x - xa) for x, y in edges)


def differing_at_edges(house: House, paths: Paths) -> int:
    """How many pairs differ; each only in which of wall and opening it crosses, just at an edge of it."""
    counts, told = counted(house, paths), found(paths)
    ids = [s.id for s in paths.surfaces]
    walls = {key: o.wall for key, o in (*house.doors.items(), *house.windows.items())}
    differing = 0
    for pair, surface in zip(*np.nonzero(counts != told), strict=True):
        if ids[surface] in walls:
            both = [surface, ids.index(walls[ids[surface]])]
            assert through_an_edge(house, paths, pair, ids[surface])
            assert counts[pair, both].sum() == told[pair, both].sum() == 1
            differing += 1
    assert np.array_equal(counts.sum(axis=1), told.sum(axis=1))
    return differing


def test_an_edge_hit_exactly_is_the_walls_for_one_and_the_doors_for_the_other() -> None:
    houses = [lattice(seed, openings=True) for seed in range(12)]
    differing = sum(differing_at_edges(house, beside_walls(house)) for house in houses)
    assert differing > 10, "the lattice hits edges, or this shows nothing"
