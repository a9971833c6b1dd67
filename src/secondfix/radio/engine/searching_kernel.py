"""Breadth-first search over 64 draws a word, compiled."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.drawing import Words


@kernel
def spread(begin: Ints, source: Ints, link: Ints, links: Words, now: Words, most: int) -> Words:
    """See `searching.reached`; only what a station gained in the last round is passed on."""
    count = len(now)
    words = np.uint64(
        now.shape[1]
    )  # without a sign: an index that might be negative would be tested each time
    after = now.copy()
    moved, moving = np.zeros(count, np.bool_), np.zeros(count, np.bool_)
    moved[0] = True
    for _ in range(most):
        some = False
        for v in range(count):
            for s in range(begin[v], begin[v + 1]):
                u, k = source[s], link[s]
                if moved[u]:
                    for w in range(words):
                        after[v, w] |= now[u, w] & links[k, w]
            differs = np.uint64(0)
            for w in range(words):
                differs |= after[v, w] ^ now[v, w]
            moving[v] = differs != 0
            some = some or moving[v]
        if not some:
            break
        for v in range(count):  # what did not move stands already in both
            moved[v] = moving[v]
            if moving[v]:
                for w in range(words):
                    now[v, w] = after[v, w]
    return now
