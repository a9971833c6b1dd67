"""Repeaters that all routes of a station share, 64 draws at a time, compiled."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np
from numpy.typing import NDArray

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.drawing import Words

Sets = NDArray[np.uint64]  # station × draw × words of repeaters
ONE = np.uint64(1)
BLOCK = 8  # words of a link read at once: a line of the processor's memory


@kernel
def ones(word: np.uint64) -> np.int64:
    """How many bits are set."""
    word = word - ((word >> ONE) & np.uint64(0x5555555555555555))
    word = (word & np.uint64(0x3333333333333333)) + ((word >> np.uint64(2)) & np.uint64(0x3333333333333333))
    word = (word + (word >> np.uint64(4))) & np.uint64(0x0F0F0F0F0F0F0F0F)
    return np.int64((word * np.uint64(0x0101010101010101)) >> np.uint64(56))


@kernel
def lowest(word: np.uint64) -> np.int64:
    """The place of the lowest bit set."""
    return ones((word & (~word + ONE)) - ONE)


@kernel
def shared_by_all(
    begin: Ints,
    source: Ints,
    link: Ints,
    seat: Ints,
    links: Words,
    most: int,
    whole: Ints,
    safe: Ints,
    lost: Ints,
) -> None:
    """Add to ``whole``, ``safe`` and ``lost``; see `gone.without_each`."""
    total, wide = links.shape
    near = np.empty((BLOCK, total), np.uint64)
    count = len(begin) - 1
    long = (len(lost) + 63) // 64
    before = np.empty((count, 64, long), np.uint64)
    after = np.empty((count, 64, long), np.uint64)
    for first in range(0, wide, BLOCK):
        many = min(BLOCK, wide - first)
        for e in range(total):
            for k in range(many):
                near[k, e] = links[e, first + k]
        for k in range(many):
            reach, certain = one_word(begin, source, link, seat, near[k], most, before, after)
            for v in range(1, count):
                whole[v] += ones(reach[v])
                safe[v] += ones(certain[v])
                hangs = reach[v] & ~certain[v]
                while hangs != 0:
                    draw = lowest(hangs)
                    hangs &= hangs - ONE
                    for part in range(long):
                        held = after[v, draw, part]
                        while held != 0:
                            lost[part * 64 + lowest(held), v] += 1
                            held &= held - ONE


@kernel
def one_word(  # noqa: C901, PLR0912, PLR0915 - one loop over bits: a call for each costs what it does
    begin: Ints, source: Ints, link: Ints, seat: Ints, bits: Words, most: int, before: Sets, after: Sets
) -> tuple[Words, Words]:
    """For 64 draws: who is reached, and who whichever repeater is gone; sets of the others in ``after``.

    A set holds from the round before in ``before`` while this round's is written into ``after``. Two live
    parents that hang on nobody settle a station without a set.
    """
    count = len(begin) - 1
    reach, certain = np.zeros(count, np.uint64), np.zeros(count, np.uint64)
    moved, settled = np.zeros(count, np.uint64), np.zeros(count, np.uint64)  # in the round before
    one = np.zeros(count, np.uint64)  # has a live parent that hangs on nobody
    moved[0] = settled[0] = reach[0] = certain[0] = ~np.uint64(0)
    for _ in range(most):
        next_reach, next_certain = reach.copy(), certain.copy()
        next_moved = np.zeros(count, np.uint64)
        some = np.uint64(0)
        for v in range(1, count):
            unsafe = ~certain[v]
            if unsafe == 0:
                continue
            found = np.uint64(0)
            for s in range(begin[v], begin[v + 1]):
                alive = bits[link[s]] & settled[source[s]]
                if source[s] == 0:
                    found |= alive
                else:
                    found |= one[v] & alive
                    one[v] |= alive
            found &= unsafe
            unsafe &= ~found
            next_certain[v] |= found
            next_reach[v] |= found
            next_moved[v] |= found
            for s in range(begin[v], begin[v + 1]):
                u = source[s]
                if u == 0:
                    continue
                fresh = bits[link[s]] & moved[u] & unsafe
                own, own_bit = seat[u] // 64, ONE << np.uint64(seat[u] % 64)
                while fresh != 0:
                    draw = lowest(fresh)
                    flag = fresh & (~fresh + ONE)
                    fresh ^= flag
                    here, above = after[v, draw], before[u, draw]
                    bare = (certain[u] & flag) != 0
                    if (next_reach[v] & flag) == 0:
                        for part in range(len(here)):
                            here[part] = np.uint64(0) if bare else above[part]
                        here[own] |= own_bit
                        next_reach[v] |= flag
                        next_moved[v] |= flag
                        continue
                    left, lost = np.uint64(0), np.uint64(0)
                    for part in range(len(here)):
                        kept = np.uint64(0) if bare else above[part]
                        if part == own:
                            kept |= own_bit
                        lost |= here[part] & ~kept
                        here[part] &= kept
                        left |= here[part]
                    if lost != 0:
                        next_moved[v] |= flag
                    if left == 0:
                        next_certain[v] |= flag
                        unsafe &= ~flag
            some |= next_moved[v]
        if some == 0:
            break
        for v in range(1, count):
            settled[v] = next_certain[v] & ~certain[v]
            copied = next_moved[v] & ~next_certain[v]
            while copied != 0:
                draw = lowest(copied)
                copied &= copied - ONE
                for part in range(before.shape[2]):
                    before[v, draw, part] = after[v, draw, part]
        settled[0] = 0
        reach, certain, moved = next_reach, next_certain, next_moved
    return reach, certain
