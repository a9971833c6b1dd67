"""What `reach` costs: crossings against a plain loop, a block of 300 devices, and ten times the block."""

from __future__ import annotations

import json
from functools import cache
from itertools import combinations

from bench.block import block
from bench.figures import Pair, figure, seconds_side_by_side
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.radio import Paths, find_paths, reach

DEFAULTS = default_assumptions()
LONGEST_MM = DEFAULTS.value("radio_longest_link_m") * 1000


@cache
def rows(devices: int) -> Schedule:
    data = json.dumps(block(devices=devices)).encode()
    house = read_house(data, where="block", models=shipped_models())
    if not isinstance(house, House):
        raise RuntimeError(f"the block is unusable: {house[0]}")
    return schedule(house, house.models)


def plain_loop(house: House) -> set[tuple[str, str, str]]:
    """Every two boxes of a storey against every wall of it, the way one writes it down first."""
    met = set()
    for (a, one), (b, other) in combinations(house.boxes.items(), 2):
        p, q, storey = one.position, other.position, house.rooms[one.room].storey
        if p is None or q is None or house.rooms[other.room].storey != storey:
            continue
        x1, y1, x2, y2 = p.x_mm, p.y_mm, q.x_mm, q.y_mm
        if (x2 - x1) ** 2 + (y2 - y1) ** 2 + (p.height_mm - q.height_mm) ** 2 > LONGEST_MM**2:
            continue
        for key, wall in house.walls.items():
            if wall.storey != storey:
                continue
            (x3, y3), (x4, y4) = wall.from_mm, wall.to_mm
            one_side = (x4 - x3) * (y1 - y3) > (y4 - y3) * (x1 - x3)
            if one_side != ((x4 - x3) * (y2 - y3) > (y4 - y3) * (x2 - x3)):
                above = (x2 - x1) * (y3 - y1) > (y2 - y1) * (x3 - x1)
                if above != ((x2 - x1) * (y4 - y1) > (y2 - y1) * (x4 - x1)):
                    met.add((a, b, key))
    return met


def same_storey(paths: Paths) -> set[tuple[str, str, str]]:
    """What `find_paths` says of the same question."""
    names, level = paths.sites.places, paths.sites.level
    return {
        (names[paths.first[pair]], names[paths.second[pair]], paths.surfaces[surface].id)
        for pair, surface in zip(paths.at_pair, paths.crossed, strict=True)
        if level[paths.first[pair]] == level[paths.second[pair]]
        and "P0" not in {names[paths.first[pair]], names[paths.second[pair]]}
    }


@figure("walls between 120 devices, both storeys, against a plain loop over one storey at a time", unit="s")
def walls_between() -> Pair:
    house = rows(120).house
    if same_storey(find_paths(house, DEFAULTS)) != plain_loop(house):
        raise RuntimeError("the tiles and the plain loop disagree")
    return seconds_side_by_side(lambda: find_paths(house, DEFAULTS), lambda: plain_loop(house), rounds=3)


@figure("reach of 300 devices among 728 walls, all of it, against the same with its paths kept", unit="s")
def three_hundred_devices() -> Pair:
    kept = find_paths(rows(300).house, DEFAULTS)
    return seconds_side_by_side(
        lambda: reach(rows(300), DEFAULTS), lambda: reach(rows(300), DEFAULTS, paths=kept)
    )


@figure("reach of 3000 devices among 6240 walls, against 300 among 728", unit="s")
def three_thousand_devices() -> Pair:
    return seconds_side_by_side(
        lambda: reach(rows(3000), DEFAULTS), lambda: reach(rows(300), DEFAULTS), rounds=3
    )
