"""Crossings of every two places by class, compiled: two subtractions and a sign a test, near walls alone.

Places lie in tiles. For two tiles only the panels that touch the stretch of the plan between them, at a
height between them, are asked: what is left out could not have been crossed, so the count is the same.
"""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.panels import Small

TILE = 32  # places in a tile: what two tiles and the panels between them ask for stays in the cache
LANES = 32  # bands are filled up to so many with panels that nobody crosses: whole steps of the processor


@kernel
def within(a: np.int32, b: np.int32, za: np.int64, zb: np.int64, foot: np.int64, head: np.int64) -> bool:
    """Whether the sight line crosses between foot and head: its height there, times the whole area."""
    whole = np.int64(a) - np.int64(b)
    height = za * whole + np.int64(a) * (zb - za)
    if whole < 0:
        whole, height = -whole, -height
    return bool(foot * whole <= height) and bool(height < head * whole)


@kernel
def stretch(slots: Ints, first: int, held: int, x: Small, y: Small, z: Ints) -> Ints:
    """What two tiles span: x, y and z from and to, then a direction across and from and to along it.

    ``first`` of the ``held`` places are of the one tile, the others of the other; the direction is 0 when
    there is one tile only. Whole numbers, so nothing is lost to rounding.
    """
    far = np.int64(2**62)
    out = np.array([far, -far, far, -far, far, -far, 0, 0, far, -far])
    for c in range(held):
        px, py, pz = np.int64(x[slots[c]]), np.int64(y[slots[c]]), z[slots[c]]
        out[0], out[1] = min(out[0], px), max(out[1], px)
        out[2], out[3] = min(out[2], py), max(out[3], py)
        out[4], out[5] = min(out[4], pz), max(out[5], pz)
        share = first - held if c < first else first
        out[6] -= share * py
        out[7] += share * px
    if first == held:
        out[6] = out[7] = 0
    for c in range(held):
        across = out[6] * np.int64(x[slots[c]]) + out[7] * np.int64(y[slots[c]])
        out[8], out[9] = min(out[8], across), max(out[9], across)
    return out


@kernel
def near(x1: Small, y1: Small, x2: Small, y2: Small, bands: Ints, span: Ints, kept: Small, used: Ints) -> int:
    """Take the panels that touch a stretch into ``kept``, each band up to a whole step; give how many.

    Panels from 0 to 0, which nobody crosses, fill a step. ``used`` takes a row for each band that has some,
    band and how many, and ends with -1.
    """
    lanes, rows = 0, 0
    for k in range(len(bands)):
        if bands[k, 3] > span[5] or bands[k, 4] <= span[4]:
            continue
        begin = lanes
        for w in range(bands[k, 0], bands[k, 1]):
            if max(x1[w], x2[w]) < span[0] or min(x1[w], x2[w]) > span[1]:
                continue
            if max(y1[w], y2[w]) < span[2] or min(y1[w], y2[w]) > span[3]:
                continue
            one = span[6] * np.int64(x1[w]) + span[7] * np.int64(y1[w])
            two = span[6] * np.int64(x2[w]) + span[7] * np.int64(y2[w])
            if max(one, two) >= span[8] and min(one, two) <= span[9]:
                kept[0, lanes], kept[1, lanes], kept[2, lanes], kept[3, lanes] = x1[w], y1[w], x2[w], y2[w]
                lanes += 1
        if lanes > begin:
            while lanes % LANES:
                kept[:, lanes] = 0
                lanes += 1
            used[rows, 0], used[rows, 1] = k, lanes - begin
            rows += 1
    used[rows, 0] = -1
    return lanes


@kernel
def turned(slots: Ints, held: int, x: Small, y: Small, kept: Small, out: Small, lanes: int) -> None:
    """For each place and panel kept: −(place × end) at both ends, and −(twice the area of the three)."""
    for c in range(held):
        px, py = x[slots[c]], y[slots[c]]
        for w in range(np.uint64(lanes)):
            one = np.int32(py * kept[0, w] - px * kept[1, w])
            two = np.int32(py * kept[2, w] - px * kept[3, w])
            out[0, c, w], out[1, c, w] = one, two
            out[2, c, w] = np.int32(one - two - np.int32(kept[0, w] * kept[3, w] - kept[1, w] * kept[2, w]))


@kernel
def add_tiles(
    slots: Ints,
    first: int,
    held: int,
    order: Ints,
    x: Small,
    y: Small,
    z: Ints,
    turns: Small,
    bands: Ints,
    used: Ints,
    counted: Small,
) -> None:
    """Add what lies between every two places of two tiles to their row of the counts, band by band."""
    n = len(x)
    for a in range(first):
        for b in range(first if held > first else a + 1, held):
            i, j = (a, b) if slots[a] < slots[b] else (b, a)
            p, q = slots[i], slots[j]
            between = np.int32(x[p] * y[q] - y[p] * x[q])
            lower, upper = min(z[p], z[q]), max(z[p], z[q])
            low, high = min(order[p], order[q]), max(order[p], order[q])
            row = low * (2 * n - low - 1) // 2 + high - low - 1
            at = np.uint64(0)  # without a sign: an index that might be negative would be tested each time
            u = 0
            while used[u, 0] >= 0:
                band, wide = used[u, 0], np.uint64(used[u, 1])
                foot, head = bands[band, 3], bands[band, 4]
                many = np.int32(0)
                if foot <= lower and upper < head:
                    for w in range(at, at + wide):
                        one = np.int32(turns[0, j, w] - turns[0, i, w] - between)
                        two = np.int32(turns[1, j, w] - turns[1, i, w] - between)
                        met = ((one ^ two) & (turns[2, i, w] ^ turns[2, j, w])) < 0
                        many = np.int32(many + np.int32(met))
                elif foot <= upper and lower < head:
                    for w in range(at, at + wide):
                        one = np.int32(turns[0, j, w] - turns[0, i, w] - between)
                        two = np.int32(turns[1, j, w] - turns[1, i, w] - between)
                        if ((one ^ two) & (turns[2, i, w] ^ turns[2, j, w])) < 0:
                            high_enough = within(turns[2, i, w], turns[2, j, w], z[p], z[q], foot, head)
                            many = np.int32(many + np.int32(high_enough))
                counted[row, bands[band, 2]] += many
                at += wide
                u += 1


@kernel
def count(
    order: Ints,
    strewn: Ints,
    x: Small,
    y: Small,
    z: Ints,
    ends: tuple[Small, Small, Small, Small],
    bands: Ints,
    counted: Small,
) -> None:
    """Add to ``counted``; see `panels.count_crossings`. Sums wrap in 32 bits and come out exact.

    ``x``, ``y`` and ``z`` stand in the order in which sight lines are read, ``strewn`` in that of the tiles.
    """
    n = len(x)
    x1, y1, x2, y2 = ends
    most = 0
    for k in range(len(bands)):
        most += (bands[k, 1] - bands[k, 0] + LANES - 1) // LANES * LANES
    used = np.zeros((len(bands) + 1, 2), np.int64)
    kept = np.zeros((4, most), np.int32)
    turns = np.zeros((3, 2 * TILE, most), np.int32)
    slots = np.zeros(2 * TILE, np.int64)
    for s in range(0, n, TILE):
        for t in range(s, n, TILE):
            first = min(TILE, n - s)
            held = first
            slots[:first] = strewn[s : s + first]
            if t > s:
                held += min(TILE, n - t)
                slots[first:held] = strewn[t : t + held - first]
            span = stretch(slots, first, held, x, y, z)
            lanes = near(x1, y1, x2, y2, bands, span, kept, used)
            turned(slots, held, x, y, kept, turns, lanes)
            add_tiles(slots, first, held, order, x, y, z, turns, bands, used, counted)
