"""Paths: for every two sites near enough, how far apart, and through which surfaces. No device is asked.

Time and space are linear in the area of the house at a given density: sites and walls lie in tiles, and
only tiles within the longest link of each other are paired.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House
from secondfix.radio.between import Batch
from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.ground import Ground, ground_of
from secondfix.radio.sites import Sites, places_in_use, sites_of
from secondfix.radio.surfaces import Surface
from secondfix.radio.tiling import sight_lines, tile_pairs

BATCH_PAIRS = 50_000
NEAREST_MM = 100.0  # two devices in one box: below this the antennas see each other's near field


@dataclass(frozen=True, slots=True, eq=False)
class Paths:
    """Every pair of sites within the longest link, and what lies between.

    ``first[p] <= second[p]`` number ``sites`` (equal: two devices at one place), in the order of
    ``first``; ``crossed`` numbers ``surfaces``, ``at_pair`` the pair of each crossing,
    ``cosine`` its angle from the surface's normal.
    """

    sites: Sites
    surfaces: tuple[Surface, ...]
    first: Ints
    second: Ints
    distance_m: Floats
    at_pair: Ints
    crossed: Ints
    cosine: Floats

    def among(self, sites: Ints) -> Ints:
        """Numbers of the pairs whose both sites are among these; time grows with the pairs of these alone."""
        low, high = np.searchsorted(self.first, [sites, sites + 1])
        many = high - low
        inside = np.zeros(len(self.sites.places), np.bool_)
        inside[sites] = True
        step = np.arange(int(many.sum())) - np.repeat(np.cumsum(many) - many, many)
        pairs: Ints = np.repeat(low, many) + step
        kept: Ints = pairs[inside[self.second[pairs]]]
        return kept

    def through(self, pair: int) -> list[Surface]:
        """The surfaces between the sites of one pair."""
        low, high = np.searchsorted(self.at_pair, [pair, pair + 1])
        return [self.surfaces[n] for n in self.crossed[low:high]]


@dataclass(slots=True)
class _Found:
    """Columns as they grow; the last batch is asked what its pairs pass when it is full."""

    ground: Ground
    first: list[Ints] = field(default_factory=list)
    second: list[Ints] = field(default_factory=list)
    distance_mm: list[Floats] = field(default_factory=list)
    at_pair: list[Ints] = field(default_factory=list)
    crossed: list[Ints] = field(default_factory=list)
    cosine: list[Floats] = field(default_factory=list)
    rows: list[Ints] = field(default_factory=list)
    walls: list[Ints] = field(default_factory=list)
    asked: int = 0  # pairs of earlier batches
    waiting: int = 0  # pairs of this one
    since: int = 0  # tile pairs of earlier batches

    def add(self, first: Ints, second: Ints, distance_mm: Floats, rows: Ints, walls: Ints) -> None:
        """Take the pairs of two tiles, and the walls that they cross on the plan."""
        self.first.append(first)
        self.second.append(second)
        self.distance_mm.append(distance_mm)
        self.rows.append(rows + self.waiting)
        self.walls.append(walls)
        self.waiting += len(first)
        if self.waiting >= BATCH_PAIRS:
            self.ask()

    def ask(self) -> None:
        """Ask the waiting pairs what they pass."""
        batch = Batch(
            self.ground,
            _whole(self.first[self.since :]),
            _whole(self.second[self.since :]),
            np.maximum(_real(self.distance_mm[self.since :]), 1.0),
            _whole(self.rows),
            _whole(self.walls),
        )
        for rows, crossed, cosine in batch.passed():
            self.at_pair.append(rows + self.asked)
            self.crossed.append(crossed)
            self.cosine.append(cosine)
        self.rows, self.walls = [], []
        self.asked, self.waiting, self.since = self.asked + self.waiting, 0, len(self.first)


def find_paths(house: House, assumptions: Assumptions, places: Iterable[str] | None = None) -> Paths:
    """Find what lies between any two of ``places`` (default: those that hold a device or controller).

    Meaning and units as `Paths`. Places that cannot be put on the plan are left out; ask
    `position_needs`. Exact on the plan (whole millimetres, see `crossings`); openings to a floating
    point's last digit. Source: geometry, ours. Leaves out: reflections, what stands in the rooms, and
    that floors may end (a level is taken to cover the one below, split levels too).
    """
    longest_mm = max(assumptions.value("radio_longest_link_m"), 1) * 1000
    sites = sites_of(house, places_in_use(house) if places is None else places)
    side_mm = longest_mm // 2
    ground, surfaces = ground_of(house, assumptions, sites, side_mm=side_mm)
    found = _Found(ground)
    for a, b in tile_pairs(ground, side_mm=side_mm):
        found.add(*sight_lines(ground, a, b, longest_mm=longest_mm))
    found.ask()
    return _sorted(sites, surfaces, found)


def _sorted(sites: Sites, surfaces: list[Surface], found: _Found) -> Paths:
    first, second, at_pair = _whole(found.first), _whole(found.second), _whole(found.at_pair)
    by_first = np.lexsort((second, first))
    place = np.empty(len(first), np.int64)
    place[by_first] = np.arange(len(first))
    at_pair = place[at_pair]
    by_pair = np.argsort(at_pair, kind="stable")
    return Paths(
        sites,
        tuple(surfaces),
        first[by_first],
        second[by_first],
        np.maximum(_real(found.distance_mm), NEAREST_MM)[by_first] / 1000,
        at_pair[by_pair],
        _whole(found.crossed)[by_pair],
        _real(found.cosine)[by_pair],
    )


def _whole(parts: list[Ints]) -> Ints:
    return np.concatenate([np.zeros(0, np.int64), *parts])


def _real(parts: list[Floats]) -> Floats:
    return np.concatenate([np.zeros(0), *parts])
