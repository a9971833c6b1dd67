"""What tests tell of wiring: stated cases, and laws over random wirings."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.journal.feeding import Wiring, as_tested

GANGS = [f"B{i}.1" for i in range(5)]
LOADS = [f"L{i}" for i in range(5)]


@st.composite
def wirings(draw: st.DrawFn) -> Wiring:
    """Each load fed at most once, as the reader of houses holds."""
    loads = draw(st.permutations(LOADS))
    kinds = draw(st.lists(st.sampled_from(["feeds", "open", "other"]), min_size=5, max_size=5))
    feeds = {g: load for g, load, k in zip(GANGS, loads, kinds, strict=True) if k == "feeds"}
    return Wiring(feeds, frozenset(g for g, k in zip(GANGS, kinds, strict=True) if k == "open"))


TESTS = st.dictionaries(st.sampled_from(GANGS), st.sets(st.sampled_from(LOADS), max_size=2))


def hold(wiring: Wiring, tests: dict[str, set[str]]) -> None:
    after = as_tested(wiring, tests)
    assert as_tested(after, tests) == after
    assert len(set(after.feeds.values())) == len(after.feeds)
    assert not after.feeds.keys() & after.open
    assert after.feeds.keys() | after.open == wiring.feeds.keys() | wiring.open
    for gang, load in after.feeds.items():
        found = tests.get(gang)
        assert not found or load in found, "a gang that was tested feeds only what it was found to work"
        for other, theirs in tests.items():
            if other != gang and theirs == {load} and other in wiring.feeds:
                assert found == {load}, "no load is left with a gang that others were found to work alone"


@given(wirings(), TESTS)
def test_asking_again_changes_nothing_and_no_load_is_fed_twice(
    wiring: Wiring, tests: dict[str, set[str]]
) -> None:
    hold(wiring, tests)


@pytest.mark.deep
@given(wirings(), TESTS)
def test_the_same_in_thousands(wiring: Wiring, tests: dict[str, set[str]]) -> None:
    hold(wiring, tests)


TWO = Wiring({"B0.1": "L0", "B1.1": "L1"}, frozenset({"B2.1"}))


@pytest.mark.parametrize(
    ("tests", "feeds"),
    [
        ({}, {"B0.1": "L0", "B1.1": "L1"}),
        ({"B0.1": {"L1"}, "B1.1": {"L0"}}, {"B0.1": "L1", "B1.1": "L0"}),
        ({"B0.1": {"L1"}}, {"B0.1": "L1"}),
        ({"B0.1": {"L1"}, "B1.1": {"L1"}}, {"B1.1": "L1"}),
        ({"B0.1": set()}, {"B0.1": "L0", "B1.1": "L1"}),
        ({"B0.1": {"L0", "L1"}}, {"B0.1": "L0", "B1.1": "L1"}),
        ({"B0.1": {"L3", "L4"}}, {"B1.1": "L1"}),
        ({"B2.1": {"L2"}}, {"B0.1": "L0", "B1.1": "L1", "B2.1": "L2"}),
        ({"B2.1": {"L0"}}, {"B0.1": "L0", "B1.1": "L1"}),
        ({"B2.1": {"L0"}, "B0.1": {"L3"}}, {"B0.1": "L3", "B1.1": "L1", "B2.1": "L0"}),
    ],
    ids=[
        "nothing tested", "crossed", "one tested, the other no longer known", "two work one load",
        "dead keeps what it is said to feed", "works its own and another's", "works two, neither its own",
        "unknown is found", "unknown works a load that another is said to feed", "unknown takes what is left",
    ],
)  # fmt: skip
def test_a_stated_case(tests: dict[str, set[str]], feeds: dict[str, str]) -> None:
    assert as_tested(TWO, tests).feeds == feeds
