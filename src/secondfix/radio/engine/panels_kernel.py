"""Crossings of every two places by class, compiled: two subtractions and a sign a test."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.panels import Small

TILE = 32  # rows of places kept near while all others pass by
LANES = 64  # bands are filled up to so many with panels that nobody crosses: whole steps of the processor


@kernel
def filled(rows: Small, bands: Ints) -> Small:
    """Each band beginning at a multiple of LANES, and 0 between."""
    steps = 0
    for k in range(len(bands)):
        steps += (bands[k, 1] - bands[k, 0] + LANES - 1) // LANES
    out = np.zeros((len(rows), steps * LANES), np.int32)
    for i in range(len(rows)):
        at = 0
        for k in range(len(bands)):
            for w in range(bands[k, 0], bands[k, 1]):
                out[i, at + w - bands[k, 0]] = rows[i, w]
            at += (bands[k, 1] - bands[k, 0] + LANES - 1) // LANES * LANES
    return out


@kernel
def within(a: np.int32, b: np.int32, za: np.int64, zb: np.int64, foot: np.int64, head: np.int64) -> bool:
    """Whether the sight line crosses between foot and head: its height there, times the whole area."""
    whole = np.int64(a) - np.int64(b)
    height = za * whole + np.int64(a) * (zb - za)
    if whole < 0:
        whole, height = -whole, -height
    return bool(foot * whole <= height) and bool(height < head * whole)


@kernel
def count(
    order: Ints, x: Small, y: Small, z: Ints, at1: Small, at2: Small, side: Small, bands: Ints, counted: Small
) -> None:
    """Add to ``counted``; see `panels.count_crossings`. Sums wrap in 32 bits and come out exact."""
    n = len(x)
    ends1, ends2, sides = filled(at1, bands), filled(at2, bands), filled(side, bands)
    for tile in range(0, n, TILE):
        for i in range(min(n - 1, tile + TILE)):
            for j in range(max(tile, i + 1), min(n, tile + TILE)):
                between = np.int32(x[i] * y[j] - y[i] * x[j])
                low, high = min(order[i], order[j]), max(order[i], order[j])
                row = low * (2 * n - low - 1) // 2 + high - low - 1
                at = np.uint64(0)  # without a sign: an index that might be negative would be tested each time
                for k in range(len(bands)):
                    wide = np.uint64((bands[k, 1] - bands[k, 0] + LANES - 1) // LANES * LANES)
                    foot, head = bands[k, 3], bands[k, 4]
                    many = np.int32(0)
                    if foot <= min(z[i], z[j]) and max(z[i], z[j]) < head:
                        for w in range(at, at + wide):
                            one = np.int32(ends1[j, w] - ends1[i, w] - between)
                            two = np.int32(ends2[j, w] - ends2[i, w] - between)
                            met = ((one ^ two) & (sides[i, w] ^ sides[j, w])) < 0
                            many = np.int32(many + np.int32(met))
                    elif foot <= max(z[i], z[j]) and min(z[i], z[j]) < head:
                        for w in range(at, at + wide):
                            one = np.int32(ends1[j, w] - ends1[i, w] - between)
                            two = np.int32(ends2[j, w] - ends2[i, w] - between)
                            if ((one ^ two) & (sides[i, w] ^ sides[j, w])) < 0:
                                high_enough = within(sides[i, w], sides[j, w], z[i], z[j], foot, head)
                                many = np.int32(many + np.int32(high_enough))
                    counted[row, bands[k, 2]] += many
                    at += wide
