"""Crossed gangs against brute force: every permutation of up to six gangs."""

from itertools import combinations, permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.journal.crossing import crossings

Order = tuple[int, ...]


def fewest_exchanges(n: int) -> dict[Order, int]:
    """For every permutation, the fewest exchanges of two that lead to the identity: breadth first."""
    start = tuple(range(n))
    steps, edge = {start: 0}, [start]
    while edge:
        ahead = []
        for order in edge:
            for a, b in combinations(range(n), 2):
                other = list(order)
                other[a], other[b] = other[b], other[a]
                if tuple(other) not in steps:
                    steps[tuple(other)] = steps[order] + 1
                    ahead.append(tuple(other))
        edge = ahead
    return steps


def gang(i: int) -> str:
    return f"B{i}.1"


@pytest.mark.parametrize("n", range(1, 7))
def test_every_permutation_is_mended_with_the_fewest_exchanges(n: int) -> None:
    fewest = fewest_exchanges(n)
    designed = {gang(i): f"L{i}" for i in range(n)}
    for order in permutations(range(n)):
        works = {gang(i): f"L{order[i]}" for i in range(n)}
        found = crossings(designed, works)
        assert sum(len(c.exchanges) for c in found) == fewest[order]
        mended = dict(works)
        for a, b in (pair for c in found for pair in c.exchanges):
            mended[a], mended[b] = mended[b], mended[a]
        assert mended == designed
        renamed = [name for c in found for name in c.names]
        assert dict(renamed) == {g: load for g, load in works.items() if load != designed[g]}
        assert len(renamed) == len(dict(renamed))


@given(st.dictionaries(st.integers(0, 8), st.integers(0, 8), max_size=9))
def test_only_rings_are_crossings(works: dict[int, int]) -> None:
    """With gangs untested, dead or doubled: a ring is what comes back to its start, and nothing else is."""
    found = crossings({gang(i): f"L{i}" for i in range(9)}, {gang(i): f"L{k}" for i, k in works.items()})
    in_ring = set()
    for start, first in works.items():
        here, walked = first, 1
        while here != start and here in works and walked < 10:
            here, walked = works[here], walked + 1
        if here == start and walked > 1:
            in_ring.add(gang(start))
    assert {c for crossing in found for c in crossing.channels} == in_ring


def test_a_chain_that_ends_at_a_gang_not_tested_is_no_ring() -> None:
    designed = {"B1.1": "L1", "B1.2": "L2", "B1.3": "L3"}
    assert crossings(designed, {"B1.1": "L2", "B1.2": "L3"}) == ()


def test_a_pair_is_told_from_its_least_gang() -> None:
    (pair,) = crossings({"B2.1": "L1", "B1.1": "L2"}, {"B2.1": "L2", "B1.1": "L1"})
    assert pair.channels == ("B1.1", "B2.1")
    assert pair.exchanges == (("B1.1", "B2.1"),)
    assert pair.names == (("B1.1", "L1"), ("B2.1", "L2"))
