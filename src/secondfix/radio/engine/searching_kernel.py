"""Breadth-first search over 64 draws a word, compiled."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.compiling import kernel
from secondfix.radio.engine.drawing import Words


@kernel
def spread(begin: Ints, source: Ints, link: Ints, links: Words, now: Words, most: int) -> Words:
    """See `searching.reached`; only what a station gained in the last round is passed on."""
    count, wide = now.shape
    moved = np.zeros(count, np.bool_)
    moved[0] = True
    for _ in range(most):
        after = now.copy()
        moving = np.zeros(count, np.bool_)
        some = False
        for v in range(count):
            row = after[v]
            for s in range(begin[v], begin[v + 1]):
                if moved[source[s]]:
                    above, bits = now[source[s]], links[link[s]]
                    for w in range(wide):
                        row[w] |= above[w] & bits[w]
            differs = np.uint64(0)
            for w in range(wide):
                differs |= row[w] ^ now[v, w]
            moving[v] = differs != 0
            some = some or moving[v]
        if not some:
            break
        now, moved = after, moving
    return now
