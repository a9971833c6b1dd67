"""Which sight lines cross which walls on the plan, exactly, in whole millimetres."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Ints = NDArray[np.int64]
Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, eq=False)
class Lines:
    """Straight lines on the plan, from (x1, y1) to (x2, y2), in millimetres up to ±10,000,000."""

    x1: Ints
    y1: Ints
    x2: Ints
    y2: Ints

    def __len__(self) -> int:
        return len(self.x1)

    def take(self, index: Ints) -> "Lines":
        """The lines at these indices, in that order."""
        return Lines(self.x1[index], self.y1[index], self.x2[index], self.y2[index])


def sides(x: Ints, y: Ints, walls: Lines) -> Bools:
    """For each point (row) and wall (column): whether it lies to the left; on the line counts as right."""
    left: Bools = orientation(walls, x[:, None], y[:, None]) > 0
    return left


def orientation(lines: Lines, x: Ints, y: Ints) -> Ints:
    """Twice the signed area of the triangle of a line and a point: above 0 where the point lies left.

    Exact: coordinates within ±10,000,000 keep every product below 2⁶³.
    """
    out: Ints = (lines.x2 - lines.x1) * (y - lines.y1) - (lines.y2 - lines.y1) * (x - lines.x1)
    return out


def crossings(sight: Lines, differ: Bools, walls: Lines) -> tuple[Ints, Ints]:
    """Rows of ``sight`` and of ``walls`` that cross.

    ``differ`` tells for each pair whether the two ends of the sight line lie on different sides of the
    wall. Half-open: a point on a line counts as right of it, and a sight line is read in one direction
    whichever end is named first, so the result is that of a line moved by less than any length: a line
    through a corner where two walls meet crosses one of them if it passes from side to side, and both or
    neither if it only grazes; a line along a wall does not cross it.
    """
    rows, columns = np.nonzero(differ)
    turned = (sight.x2 < sight.x1) | ((sight.x2 == sight.x1) & (sight.y2 < sight.y1))
    s, w = sight.take(rows), walls.take(columns)
    sign = np.where(turned[rows], -1, 1)
    first = orientation(s, w.x1, w.y1) * sign > 0
    second = orientation(s, w.x2, w.y2) * sign > 0
    met = first != second
    return rows[met], columns[met]


def along_sight(sight: Lines, walls: Lines) -> Floats:
    """For crossing pairs: the share of the sight line before the wall, 0 to 1."""
    a = orientation(walls, sight.x1, sight.y1).astype(np.float64)
    b = orientation(walls, sight.x2, sight.y2)
    share: Floats = a / (a - b)
    return share


def along_wall_mm(sight: Lines, walls: Lines) -> Floats:
    """For crossing pairs: the distance of the crossing from the wall's start."""
    a = orientation(sight, walls.x1, walls.y1).astype(np.float64)
    b = orientation(sight, walls.x2, walls.y2)
    out: Floats = a / (a - b) * lengths_mm(walls)
    return out


def lengths_mm(lines: Lines) -> Floats:
    """The length of each line."""
    out: Floats = np.hypot(lines.x2 - lines.x1, lines.y2 - lines.y1)
    return out


def slant(sight: Lines, walls: Lines, distance_mm: Floats) -> Floats:
    """For crossing pairs: cosine of the angle between the sight line in space and the wall's normal."""
    turn = (walls.x2 - walls.x1) * (sight.y2 - sight.y1) - (walls.y2 - walls.y1) * (sight.x2 - sight.x1)
    out: Floats = np.abs(turn) / (lengths_mm(walls) * distance_mm)
    return out
