"""Draws of links, compiled."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np
from numpy.typing import NDArray

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.drawing import GOLDEN, LIMIT, MOST, PLANES, STEPS, Words

ALL = np.uint64(2**64 - 1)
FAR = LIMIT * STEPS


@kernel
def mix(word: np.uint64) -> np.uint64:
    """See `drawing.mixed`."""
    word = (word ^ (word >> np.uint64(30))) * np.uint64(0xBF58476D1CE4E5B9)
    word = (word ^ (word >> np.uint64(27))) * np.uint64(0x94D049BB133111EB)
    return word ^ (word >> np.uint64(31))


@kernel
def alone(chances: Ints, start: np.uint64, bits: Words) -> None:
    """Fill ``bits`` for links that share nothing: about eight random words decide 64 draws."""
    links, wide = bits.shape
    for link in range(links):
        chance = chances[link]
        if chance <= 0 or chance >= 1 << PLANES:
            bits[link, :] = ALL if chance > 0 else np.uint64(0)
            continue
        last = 0  # below the lowest digit that is 1 nothing more can decide for "works"
        while not (chance >> last) & 1:
            last += 1
        for w in range(wide):
            counter = start + np.uint64((link * wide + w) * PLANES) * GOLDEN
            undecided, works = ALL, np.uint64(0)
            for plane in range(PLANES - last):
                random = mix(counter + np.uint64(plane) * GOLDEN)
                if (chance >> (PLANES - 1 - plane)) & 1:
                    works |= undecided & ~random
                    undecided &= random
                else:
                    undecided &= ~random
                if undecided == 0:
                    break
            bits[link, w] = works


@kernel
def together(
    a: Ints,
    b: Ints,
    margin: Ints,
    scale: Ints,
    around: NDArray[np.int16],
    table: Ints,
    start: np.uint64,
    bits: Words,
) -> None:
    """Fill ``bits`` for links whose devices share part of their shadowing."""
    links, wide = bits.shape
    small = table.astype(np.int32)
    random = np.empty(16, np.uint64)
    parts = random.view(np.uint16)  # four to a word, the lowest first
    at = np.empty(64, np.int32)
    limits = np.empty(64, np.int32)
    flags = np.empty(64, np.uint8)
    eights = flags.view(np.uint64)
    for link in range(links):
        one, other, mid = around[a[link]], around[b[link]], np.int32(margin[link])
        times = np.int32(scale[link])
        for w in range(wide):
            low, high = FAR, -FAR
            for k in range(64):
                here = mid + np.int32(one[w * 64 + k]) + np.int32(other[w * 64 + k])
                here = max(min(here, np.int32(MOST)), np.int32(-MOST))
                here = np.int32(here * times) >> np.int32(8)
                at[k] = np.int32(FAR) + max(min(here, np.int32(FAR)), np.int32(-FAR))
            for k in range(64):
                low, high = min(low, at[k]), max(high, at[k])
            if high == 0 or low == 2 * FAR:
                bits[link, w] = np.uint64(0) if high == 0 else ALL
                continue
            counter = np.uint64((link * wide + w) * 16)
            for k in range(16):
                random[k] = mix(start + (counter + np.uint64(k)) * GOLDEN)
            for k in range(64):
                limits[k] = small[at[k]]
            for k in range(64):
                flags[k] = np.int32(parts[k]) < limits[k]
            works = np.uint64(0)
            for k in range(8):  # eight flags of a byte each become eight bits
                packed = (eights[k] * np.uint64(0x0102040810204080)) >> np.uint64(56)
                works |= packed << np.uint64(8 * k)
            bits[link, w] = works
