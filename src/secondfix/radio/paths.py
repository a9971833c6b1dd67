"""Paths: for every two sites near enough, how far apart, and through which surfaces. No device is asked.

Time and space are linear in the area of the house at a given density: sites and walls lie in tiles, and
only tiles within the longest link of each other are paired.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House
from secondfix.radio.between import TilePair
from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.ground import Ground, ground_of
from secondfix.radio.sites import Sites, places_in_use, sites_of
from secondfix.radio.surfaces import Surface

NEAREST_MM = 100.0  # two devices in one box: below this the antennas see each other's near field


@dataclass(frozen=True, slots=True, eq=False)
class Paths:
    """Every pair of sites within the longest link, and what lies between.

    ``first[p] <= second[p]`` number ``sites`` (equal: two devices at one place); ``crossed`` numbers
    ``surfaces``, ``at_pair`` the pair of each crossing, ``cosine`` its angle from the surface's normal.
    """

    sites: Sites
    surfaces: tuple[Surface, ...]
    first: Ints
    second: Ints
    distance_m: Floats
    at_pair: Ints
    crossed: Ints
    cosine: Floats

    def through(self, pair: int) -> list[Surface]:
        """The surfaces between the sites of one pair."""
        low, high = np.searchsorted(self.at_pair, [pair, pair + 1])
        return [self.surfaces[n] for n in self.crossed[low:high]]


@dataclass(slots=True)
class _Found:
    """Columns as they grow, one entry of each list for one pair of tiles."""

    first: list[Ints] = field(default_factory=list)
    second: list[Ints] = field(default_factory=list)
    distance_mm: list[Floats] = field(default_factory=list)
    at_pair: list[Ints] = field(default_factory=list)
    crossed: list[Ints] = field(default_factory=list)
    cosine: list[Floats] = field(default_factory=list)
    pairs: int = 0


def find_paths(house: House, assumptions: Assumptions, places: Iterable[str] | None = None) -> Paths:
    """Find what lies between any two of ``places`` (default: those that hold a device or controller).

    Meaning and units as `Paths`. Places that cannot be put on the plan are left out; ask
    `position_needs`. Exact on the plan (whole millimetres, see `crossings`); openings to a floating
    point's last digit. Source: geometry, ours. Leaves out: reflections, what stands in the rooms, and
    that floors may end (a level is taken to cover the one below, split levels too).
    """
    longest_mm = assumptions.value("radio_longest_link_m") * 1000
    sites = sites_of(house, places_in_use(house) if places is None else places)
    ground, surfaces = ground_of(house, assumptions, sites, side_mm=max(longest_mm // 2, 1))
    found = _Found()
    for a, b in _tile_pairs(ground, side_mm=max(longest_mm // 2, 1)):
        _between(ground, a, b, longest_mm, found)
    order = np.argsort(_whole(found.at_pair), kind="stable")
    return Paths(
        sites,
        tuple(surfaces),
        _whole(found.first),
        _whole(found.second),
        np.maximum(_real(found.distance_mm), NEAREST_MM) / 1000,
        _whole(found.at_pair)[order],
        _whole(found.crossed)[order],
        _real(found.cosine)[order],
    )


def _whole(parts: list[Ints]) -> Ints:
    return np.concatenate([np.zeros(0, np.int64), *parts])


def _real(parts: list[Floats]) -> Floats:
    return np.concatenate([np.zeros(0), *parts])


def _tile_pairs(ground: Ground, *, side_mm: int) -> Iterator[tuple[Ints, Ints]]:
    """Sites of every two tiles near enough, each two once; the same tile twice stands for its own pairs."""
    cells: dict[tuple[int, int, int], list[int]] = {}
    rows = zip(
        ground.sites.level.tolist(),
        (ground.x // side_mm).tolist(),
        (ground.y // side_mm).tolist(),
        strict=True,
    )
    for n, cell in enumerate(rows):
        cells.setdefault(cell, []).append(n)
    members = {cell: np.array(numbers, np.int64) for cell, numbers in cells.items()}
    # A tile is half the longest link, so sites three tiles apart are farther from each other than that.
    steps = range(-2, 3)
    for cell, here in members.items():
        for level in range(len(ground.foot)):
            for column in steps:
                for row in steps:
                    other = (level, cell[1] + column, cell[2] + row)
                    if other >= cell and other in members:
                        yield here, members[other]


def _between(ground: Ground, a: Ints, b: Ints, longest_mm: int, found: _Found) -> None:
    """Add the pairs of two tiles and what lies between them."""
    ia, ib = (grid.ravel() for grid in np.meshgrid(np.arange(len(a)), np.arange(len(b)), indexing="ij"))
    if a is b:
        ia, ib = ia[ia <= ib], ib[ia <= ib]
    first, second = a[ia], b[ib]
    dx, dy = ground.x[first] - ground.x[second], ground.y[first] - ground.y[second]
    dz = ground.sites.z_mm[first] - ground.sites.z_mm[second]
    square = dx * dx + dy * dy + dz * dz
    near = square <= longest_mm**2
    if not near.any():
        return
    ia, ib, first, second, square = ia[near], ib[near], first[near], second[near], square[near]
    distance = np.sqrt(square.astype(np.float64))
    swap = first > second
    found.first.append(np.where(swap, second, first))
    found.second.append(np.where(swap, first, second))
    found.distance_mm.append(distance)
    tile = TilePair(ground, a, b, ia, ib, first, second, np.maximum(distance, 1.0))
    for rows, crossed, cosine in (tile.walls(), *tile.floors(), *tile.own_walls(), *tile.bare_levels()):
        found.at_pair.append(rows + found.pairs)
        found.crossed.append(crossed)
        found.cosine.append(cosine)
    found.pairs += len(first)
