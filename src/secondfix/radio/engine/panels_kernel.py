"""Crossings of every two places by class, compiled: two subtractions and a sign a test."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.panels import Small

TILE = 32  # rows of places kept near while all others pass by


@kernel
def level(a1: Small, a2: Small, sa: Small, b1: Small, b2: Small, sb: Small, between: np.int32) -> np.int32:
    """How many panels a sight line crosses that stays between foot and head of all of them."""
    many = np.int32(0)
    for w in range(len(a1)):
        one = np.int32(b1[w] - a1[w] - between)
        two = np.int32(b2[w] - a2[w] - between)
        many = np.int32(many + np.int32(((one ^ two) & (sa[w] ^ sb[w])) < 0))
    return many


@kernel
def count(
    order: Ints, x: Small, y: Small, z: Ints, at1: Small, at2: Small, side: Small, bands: Ints, counted: Small
) -> None:
    """Add to ``counted``; see `panels.count_crossings`. Sums wrap in 32 bits and come out exact."""
    n = len(x)
    for k in range(len(bands)):
        begin, end, kind, foot, head = bands[k, 0], bands[k, 1], bands[k, 2], bands[k, 3], bands[k, 4]
        ends1, ends2 = at1[:, begin:end].copy(), at2[:, begin:end].copy()
        sides = side[:, begin:end].copy()
        for tile in range(0, n, TILE):
            for i in range(min(n - 1, tile + TILE)):
                zi, inside = z[i], foot <= z[i] < head
                for j in range(max(tile, i + 1), min(n, tile + TILE)):
                    zj = z[j]
                    if (zi < foot and zj < foot) or (zi >= head and zj >= head):
                        continue
                    between = np.int32(x[i] * y[j] - y[i] * x[j])
                    if inside and foot <= zj < head:
                        many = level(ends1[i], ends2[i], sides[i], ends1[j], ends2[j], sides[j], between)
                    else:
                        many = np.int32(0)
                        for w in range(end - begin):
                            one = np.int32(ends1[j, w] - ends1[i, w] - between)
                            two = np.int32(ends2[j, w] - ends2[i, w] - between)
                            if ((one ^ two) & (sides[i, w] ^ sides[j, w])) < 0:
                                a = np.int64(sides[i, w])
                                whole = a - sides[j, w]
                                height = zi * whole + a * (zj - zi)
                                if whole < 0:
                                    whole, height = -whole, -height
                                if foot * whole <= height < head * whole:
                                    many += np.int32(1)
                    low, high = min(order[i], order[j]), max(order[i], order[j])
                    counted[low * (2 * n - low - 1) // 2 + high - low - 1, kind] += many
