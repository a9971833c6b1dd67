"""All pairs of places against all walls, openings and floors: how many of each class lie between."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.engine.choosing import kernels

Small = NDArray[np.int32]
UNIT_MM = 5
WIDEST_AREA = 2**31  # units squared: within it twice any triangle's area fits 32 bits


@dataclass(frozen=True, slots=True, eq=False)
class Spots:
    """Places: x, y on the plan and height, all in half centimetres."""

    x: Ints
    y: Ints
    z: Ints

    def __len__(self) -> int:
        return len(self.x)


@dataclass(frozen=True, slots=True, eq=False)
class Panels:
    """Upright rectangles: a stretch of the plan from (x1, y1) to (x2, y2), from ``foot`` up to ``head``.

    A wall with a window is three above each other where the window is and one on each side. All in half
    centimetres; ``kind`` numbers the class (material and thickness) that a crossing counts for.
    """

    x1: Ints
    y1: Ints
    x2: Ints
    y2: Ints
    foot: Ints
    head: Ints
    kind: Ints


@dataclass(frozen=True, slots=True, eq=False)
class Decks:
    """Level floors that reach everywhere: their height in half centimetres and their class."""

    z: Ints
    kind: Ints


def spots_on_grid(*, x_mm: Ints, y_mm: Ints, z_mm: Ints) -> Spots:
    """Put places on odd half centimetres of the plan (nearest, so within 5 mm), heights on any."""
    return Spots(2 * (x_mm // 10) + 1, 2 * (y_mm // 10) + 1, z_mm // UNIT_MM)


def walls_on_grid(mm: Ints) -> Ints:
    """Put coordinates of walls on even half centimetres: no place lies on a wall along an axis."""
    out: Ints = 2 * ((mm + 5) // 10)
    return out


def count_crossings(spots: Spots, panels: Panels, decks: Decks, *, kinds: int, plain: bool = False) -> Small:
    """Count, for every two places, what lies between: a row a pair (of `np.triu_indices(n, 1)`).

    A column for each class. Exact and half-open in whole numbers, by the rule of `crossing.crossings`: a
    sight line is read from the end of lower (x, y), a point on a line counts as right of it; the foot of
    a panel belongs to it and its head does not; a deck at height z parts below z from z and above. The
    same with the compiled kernel and without (``plain``). Range: a plan of 231 m square (ValueError
    beyond). Leaves out: the angle, which `find_paths` keeps; the two agree, see
    docs/decisions/two-counts-of-crossings.md. Source: plane geometry, ours.
    """
    x_low, x_wide = _extent(spots.x, panels.x1, panels.x2)
    y_low, y_wide = _extent(spots.y, panels.y1, panels.y2)
    if x_wide * y_wide >= WIDEST_AREA:
        raise ValueError(f"a plan of {x_wide * y_wide} square units does not fit; at most {WIDEST_AREA - 1}")
    order = np.lexsort((spots.y, spots.x))
    group = np.lexsort((panels.head, panels.foot, panels.kind))
    x, y = (spots.x[order] - x_low).astype(np.int32), (spots.y[order] - y_low).astype(np.int32)
    ends = tuple(
        (a[group] - low).astype(np.int32)
        for a, low in ((panels.x1, x_low), (panels.y1, y_low), (panels.x2, x_low), (panels.y2, y_low))
    )
    bands = _bands(panels, group)
    n = len(spots)
    counted = np.zeros((n * (n - 1) // 2, kinds), np.int32)
    work = None if plain else kernels("panels_kernel")
    if work:
        strewn = _strewn(x, y, np.searchsorted(np.sort(decks.z), spots.z[order], "right"), work.TILE)
        work.count(order, strewn, x, y, spots.z[order], ends, bands, counted)
    else:
        _count(order, x, y, spots.z[order], ends, bands, counted)
    if len(decks.z):
        first, second = np.triu_indices(n, 1)
    for height, kind in zip(decks.z.tolist(), decks.kind.tolist(), strict=True):
        counted[:, kind] += (spots.z[first] < height) != (spots.z[second] < height)
    return counted


def losses_db(counted: Small, *, each_db: Sequence[float] | Floats) -> Floats:
    """Sum what the crossings cost: counts × dB per class; another loss model asks for no new crossings.

    ``each_db`` may have a column for each of several models or readings.
    """
    out: Floats = counted.astype(np.float64) @ np.asarray(each_db, np.float64)
    return out


def _bands(panels: Panels, group: Ints) -> Ints:
    """Runs of panels alike in class, foot and head: (begin, end, kind, foot, head)."""
    keys = np.stack([panels.kind[group], panels.foot[group], panels.head[group]], axis=1)
    new = np.flatnonzero(np.any(keys[1:] != keys[:-1], axis=1)) + 1
    begin = np.concatenate([[0], new]) if len(keys) else np.zeros(0, np.int64)
    end = np.append(begin[1:], len(keys)) if len(keys) else begin
    return np.ascontiguousarray(np.column_stack([begin, end, keys[begin]]).astype(np.int64))


def _strewn(x: Small, y: Small, level: Ints, tile: int) -> Ints:
    """An order whose runs of ``tile`` places lie close: level by level, in strips along x, by y in each."""
    levels = max(int(level.max(initial=0) - level.min(initial=0)) + 1, 1)
    strips = max(round((len(x) / levels / tile) ** 0.5), 1)
    strip = np.arange(len(x)) * strips // max(len(x), 1)  # places come in the order of x
    return np.lexsort((y, strip, level))


def _across(x: Small, y: Small, end_x: Small, end_y: Small) -> Small:
    out: Small = y[:, None] * end_x - x[:, None] * end_y
    return out


def _extent(*coordinates: Ints) -> tuple[int, int]:
    """The least of all, and how far the greatest lies from it, ends included."""
    some = [c for c in coordinates if len(c)]
    low = min((int(c.min()) for c in some), default=0)
    return low, max((int(c.max()) for c in some), default=0) - low + 1


def _count(
    order: Ints, x: Small, y: Small, z: Ints, ends: tuple[Small, ...], bands: Ints, counted: Small
) -> None:
    """The same as the kernel, a row of places at a time."""
    n = len(x)
    x1, y1, x2, y2 = ends
    # −(a×end) at both ends, and −(twice the area with the place): below 0 where the place lies left.
    at1, at2 = _across(x, y, x1, y1), _across(x, y, x2, y2)
    side: Small = at1 - at2 - (x1 * y2 - y1 * x2)
    for i in range(n - 1):
        low, high = np.minimum(order[i], order[i + 1 :]), np.maximum(order[i], order[i + 1 :])
        row = low * (2 * n - low - 1) // 2 + high - low - 1
        between = (x[i] * y[i + 1 :] - y[i] * x[i + 1 :])[:, None]
        turns = ((at1[i + 1 :] - at1[i] - between) < 0) != ((at2[i + 1 :] - at2[i] - between) < 0)
        met = turns & ((side[i] < 0) != (side[i + 1 :] < 0))
        for begin, end, kind, foot, head in bands.tolist():
            part = met[:, begin:end]
            if np.all((z[i:] >= foot) & (z[i:] < head)):
                counted[row, kind] += part.sum(axis=1, dtype=np.int32)
                continue
            j, w = np.nonzero(part)
            # height at the crossing, times the whole area: za·(a − b) + a·(zb − za), a the side of i
            a = side[i, begin + w].astype(np.int64)
            whole = a - side[i + 1 + j, begin + w]
            height = z[i] * whole + a * (z[i + 1 + j] - z[i])
            sign = np.sign(whole)
            inside = (sign * height >= foot * sign * whole) & (sign * height < head * sign * whole)
            counted[row, kind] += np.bincount(j[inside], minlength=n - 1 - i).astype(np.int32)
