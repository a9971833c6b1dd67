"""Assumptions: a range, a source, and answers that must hold over the range."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.assumptions import DEFAULTS, Assumption, Override, default_assumptions, over_range


@pytest.mark.parametrize("a", DEFAULTS, ids=lambda a: a.name)
def test_every_default_lies_in_its_range_and_names_unit_meaning_and_source(a: Assumption) -> None:
    assert a.low <= a.value <= a.high
    assert a.unit
    assert a.means
    assert a.source
    assert a.set_by == "default"


def test_the_later_voice_wins_and_is_named() -> None:
    firm = default_assumptions().overridden({"parent_margin_db": Override(12)}, set_by="firm")
    house = firm.overridden({"parent_margin_db": Override(14, 12, 16, "measured here")}, set_by="house")
    assert (firm.span("parent_margin_db"), firm["parent_margin_db"].set_by) == ((12, 12, 12), "firm")
    assert (house.span("parent_margin_db"), house["parent_margin_db"].source) == (
        (12, 14, 16),
        "measured here",
    )
    assert default_assumptions().value("parent_margin_db") == 10


def test_an_unknown_name_and_a_range_upside_down_are_refused() -> None:
    with pytest.raises(KeyError):
        default_assumptions().overridden({"luck": Override(7)}, set_by="firm")
    with pytest.raises(ValueError, match="does not hold"):
        default_assumptions().overridden({"parent_margin_db": Override(7, 8, 9)}, set_by="firm")


@given(st.integers(0, 100), st.integers(0, 100), st.integers(0, 100), st.integers(0, 100))
def test_an_answer_that_changes_inside_the_range_is_no_answer(a: int, b: int, c: int, limit: int) -> None:
    low, value, high = sorted((a, b, c))
    got = over_range(Assumption("x", value, low, high, "", "", ""), lambda v: v <= limit)
    truth = {v <= limit for v in range(low, high + 1)}
    assert got == (truth.pop() if len(truth) == 1 else None)
