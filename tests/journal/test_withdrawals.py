"""Withdrawals, and withdrawals of withdrawals."""

from hypothesis import given
from hypothesis import strategies as st

from secondfix.journal.withdrawals import withdrawn_of


def test_a_withdrawal_withdrawn_lets_the_entry_stand_again() -> None:
    assert withdrawn_of({"w1": "e"}).gone == {"e"}
    assert withdrawn_of({"w1": "e", "w2": "w1"}).gone == {"w1"}
    assert withdrawn_of({"w1": "e", "w2": "w1", "w3": "w2"}).gone == {"e", "w2"}


def test_one_of_two_withdrawals_is_enough() -> None:
    assert withdrawn_of({"w1": "e", "w2": "e", "w3": "w1"}).gone == {"e", "w1"}


@given(st.dictionaries(st.integers(0, 9), st.integers(0, 14), max_size=10))
def test_rings_are_void_and_all_else_follows_its_rule(targets: dict[int, int]) -> None:
    named = {f"e{k}": f"e{v}" for k, v in targets.items()}
    found = withdrawn_of(named)
    for start, first in named.items():
        here = first
        for _ in named:
            if here == start:
                break
            here = named.get(here, here)
        assert (start in found.rings) == (here == start)
    for entry in {*named, *named.values()}:
        standing = [w for w, t in named.items() if t == entry and w not in found.gone | found.rings]
        assert (entry in found.gone) == bool(standing)
