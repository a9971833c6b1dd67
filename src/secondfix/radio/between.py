"""What lies between the sites of two tiles: walls, openings, floors, and what is not drawn."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints, Lines, along_sight, crossings, sides, slant
from secondfix.radio.ground import Ground
from secondfix.radio.walls import through_openings


@dataclass(frozen=True, slots=True, eq=False)
class TilePair:
    """The pairs of two tiles: ``first`` and ``second`` number sites, ``ia`` and ``ib`` rows of the tiles."""

    ground: Ground
    a: Ints
    b: Ints
    ia: Ints
    ib: Ints
    first: Ints
    second: Ints
    distance_mm: Floats

    def _levels(self) -> range:
        low, high = sorted((int(self.ground.sites.level[self.a[0]]), int(self.ground.sites.level[self.b[0]])))
        return range(low, high + 1)

    def _sight(self, rows: Ints) -> Lines:
        g = self.ground
        first, second = self.first[rows], self.second[rows]
        return Lines(g.x[first], g.y[first], g.x[second], g.y[second])

    def walls(self) -> tuple[Ints, Ints, Floats]:
        """Walls and openings crossed, and a missing partition where two rooms have none between them."""
        rows, walls, cosine = self._crossed_walls()
        g = self.ground
        behind = (g.own[self.first[rows]] == walls) | (g.own[self.second[rows]] == walls)
        rows, walls, cosine = rows[~behind], walls[~behind], cosine[~behind]
        open_rows = self._open_plan(rows)
        sight = self._sight(rows)
        z = g.sites.z_mm[self.first[rows]] + along_sight(sight, g.walls.lines.take(walls)) * (
            g.sites.z_mm[self.second[rows]] - g.sites.z_mm[self.first[rows]]
        )
        met = through_openings(g.walls, walls, sight, z)
        partition = g.open_plan[g.sites.level[self.first[open_rows]]]
        return (
            np.concatenate([rows, open_rows]),
            np.concatenate([met, partition]),
            np.concatenate([cosine, np.ones(len(open_rows))]),
        )

    def _crossed_walls(self) -> tuple[Ints, Ints, Floats]:
        g = self.ground
        near = self._corridor()
        lines = g.walls.lines.take(near)
        left_a, left_b = sides(g.x[self.a], g.y[self.a], lines), sides(g.x[self.b], g.y[self.b], lines)
        every = np.arange(len(self.first))
        rows, columns = crossings(self._sight(every), left_a[self.ia] != left_b[self.ib], lines)
        walls = near[columns]
        if len(self._levels()) > 1:
            kept = self._at_their_level(rows, walls)
            rows, walls = rows[kept], walls[kept]
        sight = self._sight(rows)
        return rows, walls, slant(sight, g.walls.lines.take(walls), self.distance_mm[rows])

    def _at_their_level(self, rows: Ints, walls: Ints) -> Bools:
        """Whether the sight line is between the wall's floor and the next one where it crosses."""
        g = self.ground
        za, zb = g.sites.z_mm[self.first[rows]], g.sites.z_mm[self.second[rows]]
        z = za + along_sight(self._sight(rows), g.walls.lines.take(walls)) * (zb - za)
        level = g.walls.level[walls]
        # The lowest and highest level of a pair hold its ends, whatever their height.
        foot = np.where(level == self._levels()[0], -np.inf, g.foot[level])
        above = np.minimum(level + 1, len(g.foot) - 1)
        head = np.where(level == self._levels()[-1], np.inf, g.foot[above])
        kept: Bools = (z >= foot) & (z < head)
        return kept

    def _corridor(self) -> Ints:
        """Numbers of walls that may lie between the two tiles."""
        g = self.ground
        both = np.concatenate([self.a, self.b])
        x, y = g.x[both], g.y[both]
        near = g.tiles.near((int(x.min()), int(y.min()), int(x.max()), int(y.max())), self._levels())
        ax, ay = float(g.x[self.a].mean()), float(g.y[self.a].mean())
        nx, ny = -(float(g.y[self.b].mean()) - ay), float(g.x[self.b].mean()) - ax
        if not len(near) or (nx == 0 and ny == 0):
            return near
        across = x * nx + y * ny
        lines = g.walls.lines.take(near)
        one, two = lines.x1 * nx + lines.y1 * ny, lines.x2 * nx + lines.y2 * ny
        slack = 1e-9 * (np.abs(across).max() + 1) + 1
        beside = (np.maximum(one, two) < across.min() - slack) | (np.minimum(one, two) > across.max() + slack)
        kept: Ints = near[~beside]
        return kept

    def _open_plan(self, rows: Ints) -> Ints:
        """Pairs of one level in two rooms with no wall between and no wall of their own to pass."""
        g = self.ground
        parted = np.bincount(rows, minlength=len(self.first)) > 0
        parted |= (g.own[self.first] >= 0) | (g.own[self.second] >= 0)
        level = g.sites.level[self.first]
        alike = (level == g.sites.level[self.second]) & (g.bare[level] < 0)
        two_rooms = g.sites.room[self.first] != g.sites.room[self.second]
        return np.flatnonzero(~parted & alike & two_rooms)

    def floors(self) -> Iterator[tuple[Ints, Ints, Floats]]:
        """One floor for each level between the two."""
        g = self.ground
        rows = np.arange(len(self.first))
        rise = np.abs(g.sites.z_mm[self.first] - g.sites.z_mm[self.second])
        for level in self._levels()[1:]:
            yield rows, np.full(len(rows), g.floors[level]), rise / self.distance_mm

    def own_walls(self) -> Iterator[tuple[Ints, Ints, Floats]]:
        """For each end that sits in a wall, side unknown: that wall, passed or not."""
        apart = self.first != self.second
        for end in (self.first, self.second):
            rows = np.flatnonzero((self.ground.own[end] >= 0) & apart)
            yield rows, self.ground.own_surface[end[rows]], np.ones(len(rows))

    def bare_levels(self) -> Iterator[tuple[Ints, Ints, Floats]]:
        """For each level without a drawn wall that the pairs touch: its missing walls."""
        rows = np.flatnonzero(self.first != self.second)
        for level in self._levels():
            if self.ground.bare[level] >= 0:
                yield rows, np.full(len(rows), self.ground.bare[level]), np.ones(len(rows))
