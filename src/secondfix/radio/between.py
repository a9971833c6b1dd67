"""What lies between the two sites of each pair: walls, openings, floors, and what is not drawn."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints, Lines, along_sight, slant
from secondfix.radio.ground import Ground
from secondfix.radio.walls import through_openings

Passed = tuple[Ints, Ints, Floats]  # row of the pair, number of the surface, cosine from its normal


@dataclass(frozen=True, slots=True, eq=False)
class Batch:
    """Pairs of sites, and which walls each sight line crosses on the plan (``rows`` and ``walls``)."""

    ground: Ground
    first: Ints
    second: Ints
    distance_mm: Floats  # at least 1
    rows: Ints
    walls: Ints

    def passed(self) -> Iterator[Passed]:
        """Everything passed, in no particular order."""
        rows, walls = self._real()
        sight, lines = self._sight(rows), self.ground.walls.lines.take(walls)
        yield rows, self._through(rows, walls, sight, lines), slant(sight, lines, self.distance_mm[rows])
        yield self._open_plan(rows)
        yield from self._floors()
        yield from self._own_walls()
        yield from self._bare_levels()

    def _sight(self, rows: Ints) -> Lines:
        g = self.ground
        first, second = self.first[rows], self.second[rows]
        return Lines(g.x[first], g.y[first], g.x[second], g.y[second])

    def _real(self) -> tuple[Ints, Ints]:
        """Crossings on the plan that are so in space, without the wall in which an end sits."""
        g, rows, walls = self.ground, self.rows, self.walls
        kept = (g.own[self.first[rows]] != walls) & (g.own[self.second[rows]] != walls)
        level = g.sites.level
        kept &= (level[self.first[rows]] == level[self.second[rows]]) | self._at_their_level()
        return rows[kept], walls[kept]

    def _at_their_level(self) -> Bools:
        """Whether the sight line is between the wall's floor and the next one where it crosses."""
        g = self.ground
        low, high = self._levels(self.rows)
        z = self._height(self.rows, self._sight(self.rows), g.walls.lines.take(self.walls))
        level = g.walls.level[self.walls]
        # The lowest and the highest level of a pair hold its ends, whatever their height.
        foot = np.where(level <= low, -np.inf, g.foot[level])
        head = np.where(level >= high, np.inf, g.foot[np.minimum(level + 1, len(g.foot) - 1)])
        return np.asarray((z >= foot) & (z < head))

    def _levels(self, rows: Ints) -> tuple[Ints, Ints]:
        level = self.ground.sites.level
        one, other = level[self.first[rows]], level[self.second[rows]]
        return np.minimum(one, other), np.maximum(one, other)

    def _height(self, rows: Ints, sight: Lines, lines: Lines) -> Floats:
        z = self.ground.sites.z_mm
        za, zb = z[self.first[rows]], z[self.second[rows]]
        return np.asarray(za + along_sight(sight, lines) * (zb - za))

    def _through(self, rows: Ints, walls: Ints, sight: Lines, lines: Lines) -> Ints:
        if not self.ground.walls.openings.surface.size:
            return walls
        return through_openings(self.ground.walls, walls, sight, self._height(rows, sight, lines))

    def _open_plan(self, rows: Ints) -> Passed:
        """Pairs of one level in two rooms with no wall between and no wall of their own to pass."""
        g = self.ground
        parted = np.bincount(rows, minlength=len(self.first)) > 0
        parted |= (g.own[self.first] >= 0) | (g.own[self.second] >= 0)
        level = g.sites.level[self.first]
        alike = (level == g.sites.level[self.second]) & (g.bare[level] < 0)
        two_rooms = g.sites.room[self.first] != g.sites.room[self.second]
        found = np.flatnonzero(~parted & alike & two_rooms)
        return found, g.open_plan[level[found]], np.ones(len(found))

    def _floors(self) -> Iterator[Passed]:
        """One floor for each level between the two."""
        g = self.ground
        low, high = self._levels(np.arange(len(self.first)))
        rise = np.abs(g.sites.z_mm[self.first] - g.sites.z_mm[self.second]) / self.distance_mm
        for level in range(1, len(g.foot)):
            found = np.flatnonzero((low < level) & (level <= high))
            yield found, np.full(len(found), g.floors[level]), rise[found]

    def _own_walls(self) -> Iterator[Passed]:
        """For each end that sits in a wall, side unknown: that wall, passed or not."""
        for end in (self.first, self.second):
            found = np.flatnonzero((self.ground.own[end] >= 0) & (self.first != self.second))
            yield found, self.ground.own_surface[end[found]], np.ones(len(found))

    def _bare_levels(self) -> Iterator[Passed]:
        """For each level without a drawn wall that a pair touches: its missing walls."""
        low, high = self._levels(np.arange(len(self.first)))
        for level in np.flatnonzero(self.ground.bare >= 0):
            touched = (low <= level) & (level <= high) & (self.first != self.second)
            found = np.flatnonzero(touched)
            yield found, np.full(len(found), self.ground.bare[level]), np.ones(len(found))
