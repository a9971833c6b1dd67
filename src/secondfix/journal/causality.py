"""Who knew what: which entries of a subject were written in knowledge of which, with no clock.

Works on plain ids, so that it can be held against a slow, obvious reference.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Known:
    """``later`` lists ids, each before all that it knew; ``rings`` are ids whose knowledge is void."""

    later: tuple[str, ...]
    rings: frozenset[str]


def in_order(knows: Mapping[str, Iterable[str]]) -> Known:
    """Latest first. ``knows`` gives for each id the ids its writer knew, all of them keys. Time linear.

    Ids that lie in a ring, or between two, cannot be honest (nobody knows what is not yet written):
    what they say of one another is void, and they stand as if written apart.
    """
    known_by = dict.fromkeys(knows, 0)
    for parents in knows.values():
        for parent in parents:
            known_by[parent] += 1
    out: list[str] = []
    _take(out, knows, known_by, [i for i, n in known_by.items() if n == 0])
    if len(out) == len(known_by):
        return Known(tuple(out), frozenset())
    rings = _core(knows, {i for i, n in known_by.items() if n})
    for ring in rings:
        for parent in knows[ring]:
            known_by[parent] -= parent in rings
    freed = [i for i in rings if known_by[i] == 0]
    _take(out, knows, known_by, freed, without=rings)
    return Known(tuple(out), rings)


def _take(
    out: list[str],
    knows: Mapping[str, Iterable[str]],
    known_by: dict[str, int],
    free: list[str],
    without: frozenset[str] = frozenset(),
) -> None:
    """Move every id that nobody left knows to ``out``, and what that frees after it."""
    while free:
        here = free.pop()
        out.append(here)
        for parent in knows[here]:
            if here in without and parent in without:
                continue
            known_by[parent] -= 1
            if known_by[parent] == 0:
                free.append(parent)


def _core(knows: Mapping[str, Iterable[str]], left: set[str]) -> frozenset[str]:
    """Of the ids left, those that also know some other one left: rings and what lies between rings."""
    within = {i: [p for p in knows[i] if p in left] for i in left}
    knowers: dict[str, list[str]] = {i: [] for i in left}
    for i, parents in within.items():
        for parent in parents:
            knowers[parent].append(i)
    count = {i: len(parents) for i, parents in within.items()}
    free = [i for i, n in count.items() if n == 0]
    while free:
        here = free.pop()
        left.discard(here)
        for knower in knowers[here]:
            count[knower] -= 1
            if count[knower] == 0:
                free.append(knower)
    return frozenset(left)


def superseded(
    order: Known,
    knows: Mapping[str, Iterable[str]],
    marks: Callable[[str], int],
    yields: Callable[[str], int],
) -> set[str]:
    """Ids whose place a later one has taken.

    ``marks`` gives the bits that an id sets on all that it knew, directly or through others; an id is
    superseded when one of the bits it ``yields`` to is set on it. One pass, latest first.
    """
    seen_by: dict[str, int] = {}
    gone: set[str] = set()
    for here in order.later:
        above = seen_by.pop(here, 0)
        if above & yields(here):
            gone.add(here)
        handed = above | marks(here)
        if handed:
            for parent in knows[here]:
                if not (here in order.rings and parent in order.rings):
                    seen_by[parent] = seen_by.get(parent, 0) | handed
    return gone
