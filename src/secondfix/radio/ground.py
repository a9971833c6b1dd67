"""What the search for paths reads of a house: sites, walls in tiles, floors, and what is not drawn."""

from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House
from secondfix.radio.crossing import Ints
from secondfix.radio.sites import Sites, levels
from secondfix.radio.surfaces import Surface, floor_surface, missing_partition, missing_walls, own_wall
from secondfix.radio.walls import Tiles, Walls, settle_in_walls, walls_of


@dataclass(frozen=True, slots=True, eq=False)
class Ground:
    """Sites moved out of their own walls, walls, and the surfaces without a line; heights in millimetres."""

    sites: Sites
    x: Ints
    y: Ints
    own: Ints  # number of the wall that a site sits in, its side unknown; else -1
    own_surface: Ints
    walls: Walls
    tiles: Tiles
    floors: Ints  # surface of the floor below each level
    bare: Ints  # surface that stands for the missing walls of a level, or -1
    open_plan: Ints  # surface between two rooms of a level without a wall
    foot: Ints  # height of each level's floor


def ground_of(
    house: House, assumptions: Assumptions, sites: Sites, *, side_mm: int
) -> tuple[Ground, list[Surface]]:
    """Lay out a house for the search, with every surface that a sight line may meet."""
    walls, surfaces = walls_of(house, assumptions)
    tiles = Tiles(walls, side_mm=side_mm)
    x, y, own = settle_in_walls(house, sites, walls, tiles)
    own_surface = np.full(len(own), -1, np.int64)
    for n in np.flatnonzero(own >= 0):
        own_surface[n] = len(surfaces)
        surfaces.append(own_wall(sites.places[n], surfaces[own[n]]))
    floors, bare, open_plan, foot = [], [], [], []
    for number, keys in levels(house).items():
        storeys = {key: house.storeys[key] for key in keys}
        first = next(iter(storeys))
        drawn = bool(np.any(walls.level == number))
        floors.append(len(surfaces))
        open_plan.append(len(surfaces) + 1)
        surfaces += [floor_surface(storeys, assumptions), missing_partition(first, assumptions)]
        bare.append(-1 if drawn else len(surfaces))
        surfaces += [] if drawn else [missing_walls(first)]
        foot.append(storeys[first].level_mm)
    columns = (np.array(column, np.int64) for column in (floors, bare, open_plan, foot))
    return Ground(sites, x, y, own, own_surface, walls, tiles, *columns), surfaces
