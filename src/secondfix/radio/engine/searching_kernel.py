"""Breadth-first search over 64 draws a word, compiled."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.drawing import Words


@kernel
def gain(v: int, from_: Ints, over: Ints, many: int, links: Words, now: Words, after: Words) -> bool:
    """Add to a station what ``many`` sources carry to it, four at a time; tell whether it gained a draw.

    Four sources to a pass: the station's own row is then fetched and stored once for all of them.
    """
    words = np.uint64(
        now.shape[1]
    )  # without a sign: an index that might be negative would be tested each time
    s = 0
    while s + 4 <= many:
        a, b, c, d = from_[s], from_[s + 1], from_[s + 2], from_[s + 3]
        i, j, k, m = over[s], over[s + 1], over[s + 2], over[s + 3]
        for w in range(words):
            two = (now[a, w] & links[i, w]) | (now[b, w] & links[j, w])
            after[v, w] |= two | (now[c, w] & links[k, w]) | (now[d, w] & links[m, w])
        s += 4
    while s < many:
        a, i = from_[s], over[s]
        for w in range(words):
            after[v, w] |= now[a, w] & links[i, w]
        s += 1
    differs = np.uint64(0)
    for w in range(words):
        differs |= after[v, w] ^ now[v, w]
    return bool(differs != 0)


@kernel
def spread(begin: Ints, source: Ints, link: Ints, links: Words, now: Words, most: int) -> Words:
    """See `searching.reached`; only what a station gained in the last round is passed on."""
    count = len(now)
    after = now.copy()
    moved, moving = np.zeros(count, np.bool_), np.zeros(count, np.bool_)
    moved[0] = True
    from_, over = np.zeros(len(source), np.int64), np.zeros(len(source), np.int64)
    for _ in range(most):
        some = False
        for v in range(count):
            many = 0
            for s in range(begin[v], begin[v + 1]):
                if moved[source[s]]:
                    from_[many], over[many] = source[s], link[s]
                    many += 1
            moving[v] = many > 0 and gain(v, from_, over, many, links, now, after)
            some = some or moving[v]
        if not some:
            break
        for v in range(count):  # what did not move stands already in both
            moved[v] = moving[v]
            if moving[v]:
                now[v] = after[v]
    return now
