"""Which stations reach the controller in each draw, within so many links: breadth first, 64 draws at once."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Ints
from secondfix.radio.engine.choosing import kernels
from secondfix.radio.engine.drawing import Ends, Words

ROOT = 0  # the controller is station 0


@dataclass(frozen=True, slots=True, eq=False)
class Steps:
    """One-way steps away from the controller, sorted by target; those into v begin at ``begin[v]``.

    ``source`` passes on to the target over link number ``link``.
    """

    begin: Ints
    source: Ints
    link: Ints

    @property
    def count(self) -> int:
        """How many stations."""
        return len(self.begin) - 1


def steps_of(ends: Ends, forwards: Bools, rows: Ints | None = None) -> Steps:
    """Turn links into steps: from each end that passes on (the controller does), none into the controller.

    ``rows`` are the numbers of the links in the draws where these are not simply counted.
    """
    source, target = np.concatenate([ends.a, ends.b]), np.concatenate([ends.b, ends.a])
    link = np.tile(np.arange(len(ends.a), dtype=np.int64) if rows is None else rows, 2)
    kept = (forwards[source] | (source == ROOT)) & (target != ROOT)
    source, target, link = source[kept], target[kept], link[kept]
    order = np.lexsort((source, target))
    begin = np.searchsorted(target[order], np.arange(ends.count + 1)).astype(np.int64)
    return Steps(begin, source[order], link[order])


def reached(steps: Steps, links: Words, *, most_links: int, plain: bool = False) -> Words:
    """Tell, for each station (row) and draw (bit), whether some route of at most ``most_links`` carries it.

    ``links`` are the draws of `draw_links`; four repeaters are five links. Exact for the draws given: the
    same as a breadth-first search of each; the same with the kernel and without (``plain``). A bit of a
    draw beyond those asked for means nothing in the controller's row and is 0 in all others.
    """
    begun = np.zeros((steps.count, links.shape[1]), np.uint64)
    begun[ROOT] = np.uint64(2**64 - 1)
    work = None if plain else kernels("searching_kernel")
    out: Words = (work.spread if work else _spread)(
        steps.begin, steps.source, steps.link, links, begun, most_links
    )
    return out


def how_often(bits: Words) -> Ints:
    """Count the draws in each row."""
    out: Ints = np.bitwise_count(bits).sum(axis=1, dtype=np.int64)
    return out


def _spread(begin: Ints, source: Ints, link: Ints, links: Words, now: Words, most: int) -> Words:
    moved = np.zeros(len(now), np.bool_)
    moved[ROOT] = True
    into = [np.arange(begin[v], begin[v + 1]) for v in range(len(now))]
    for _ in range(most):
        after, moving = now.copy(), np.zeros_like(moved)
        for v, steps in enumerate(into):
            fresh = steps[moved[source[steps]]]
            if len(fresh):
                after[v] |= np.bitwise_or.reduce(now[source[fresh]] & links[link[fresh]], axis=0)
                moving[v] = not np.array_equal(after[v], now[v])
        if not moving.any():
            break
        now, moved = after, moving
    return now
