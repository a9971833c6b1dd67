"""Any order, repetition and split over devices of the same entries gives the same as-built house.

Two folds that are often written instead, by arrival and by clock, are kept here to fail these laws.
"""

from collections.abc import Callable
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bench.plain_fold import plain_fold
from secondfix import journal as j
from secondfix.house import as_canonical_json
from secondfix.journal import Entry, Journal, as_built, fold, journal_of, merge
from tests.example_house import models
from tests.journal.random_journals import MISCHIEF, STEPS, Mischief, Step, honest, spoilt
from tests.journal.writing import HOUSE, write

MODELS = models()


def answer(journal: Journal) -> object:
    """All that an as-built house says."""
    built = as_built(HOUSE, journal, models=MODELS)
    return as_canonical_json(built.house), j.as_built_as_json(built), built.folded.current


def laws(steps: list[Step], mischief: Mischief, data: st.DataObject) -> None:
    entries = spoilt(honest(steps), mischief)
    expected = answer(journal_of(entries))
    again = data.draw(st.permutations(entries)) + data.draw(
        st.lists(st.sampled_from(entries or [None]), max_size=3)
    )
    again = [e for e in again if e is not None]
    assert answer(journal_of(again)) == expected
    cut = data.draw(st.integers(0, len(again)))
    phones = [journal_of(again[:cut]), journal_of(again[cut:]), journal_of(entries)]
    assert answer(merge(*data.draw(st.permutations(phones)))) == expected


@given(STEPS, MISCHIEF, st.data())
def test_order_repetition_and_split_do_not_matter(
    steps: list[Step], mischief: Mischief, data: st.DataObject
) -> None:
    laws(steps, mischief, data)


@pytest.mark.deep
@given(STEPS, MISCHIEF, st.data())
def test_order_repetition_and_split_do_not_matter_in_thousands(
    steps: list[Step], mischief: Mischief, data: st.DataObject
) -> None:
    laws(steps, mischief, data)


@given(STEPS, MISCHIEF, st.integers(0, 20), st.integers(0, 20))
def test_merge_is_a_union(steps: list[Step], mischief: Mischief, a: int, b: int) -> None:
    entries = spoilt(honest(steps), mischief)
    x, y, z = journal_of(entries[:a]), journal_of(entries[a : a + b]), journal_of(entries[b:])
    assert merge(x, merge(y, z)) == merge(merge(x, y), z)
    assert merge(x, y) == merge(y, x)
    assert merge(x, x) == x == merge(x)
    assert merge() == journal_of([])


def against_reference(steps: list[Step], mischief: Mischief) -> None:
    entries = spoilt(honest(steps), mischief)
    folded = fold(HOUSE, journal_of(entries))
    current, withdrawn = plain_fold(HOUSE.id, entries)
    assert {r: {e.id for e in found} for r, found in folded.current.items()} == current
    assert folded.withdrawn == withdrawn


@given(STEPS, MISCHIEF)
def test_the_fold_agrees_with_a_slow_and_obvious_one(steps: list[Step], mischief: Mischief) -> None:
    against_reference(steps, mischief)


@pytest.mark.deep
@given(STEPS, MISCHIEF)
def test_the_fold_agrees_with_the_slow_one_in_thousands(steps: list[Step], mischief: Mischief) -> None:
    against_reference(steps, mischief)


def adopting_changes_nothing(steps: list[Step], mischief: Mischief) -> None:
    journal = journal_of(spoilt(honest(steps), mischief))
    built = as_built(HOUSE, journal, models=MODELS)
    again = as_built(built.house, journal, models=MODELS)
    assert as_canonical_json(again.house) == as_canonical_json(built.house)
    assert again.differences == ()


@given(STEPS, MISCHIEF)
def test_folding_over_the_as_built_house_changes_nothing(steps: list[Step], mischief: Mischief) -> None:
    adopting_changes_nothing(steps, mischief)


@pytest.mark.deep
@given(STEPS, MISCHIEF)
def test_folding_over_the_as_built_house_changes_nothing_in_thousands(
    steps: list[Step], mischief: Mischief
) -> None:
    adopting_changes_nothing(steps, mischief)


# Two folds that break the laws, on names of loads alone: subject to name.
def last_to_arrive(entries: list[Entry]) -> dict[str, object]:
    return {e.subject: e.value for e in entries}


def latest_by_clock(entries: list[Entry]) -> dict[str, object]:
    return {e.subject: e.value for e in sorted(entries, key=lambda e: (e.at, e.id))}


def by_knowledge(entries: list[Entry]) -> dict[str, object]:
    """Ours, with the same signature."""
    folded = fold(HOUSE, journal_of(entries))
    return {e.subject: e.value for e in folded.each("named", Entry)}


def named(number: int, name: str, at: str, *, sees: tuple[int, ...] = ()) -> Entry:
    return write(number, "named", "load:L1", name=name, sees=sees).model_copy(update={"at": at})


def order_free(wrong: Callable[[list[Entry]], object], entries: list[Entry]) -> bool:
    return len({repr(wrong(list(order))) for order in permutations(entries)}) == 1


def knowledge_decides(wrong: Callable[[list[Entry]], dict[str, object]]) -> bool:
    """The writer of the second name had read the first; only her phone was two hours behind."""
    first = named(1, "Pendant", "2031-05-06T11:00+02:00")
    second = named(2, "Chandelier", "2031-05-06T09:00+02:00", sees=(1,))
    return wrong([first, second]) == {"load:L1": "Chandelier"}


def neither_of_two_is_hidden(wrong: Callable[[list[Entry]], dict[str, object]]) -> bool:
    """Two writers who did not know of each other: neither name may be taken for the fact."""
    both = [named(1, "Pendant", "2031-05-06T11:00+02:00"), named(2, "Lantern", "2031-05-06T11:05+02:00")]
    return "load:L1" not in wrong(both)


TWO = [named(1, "Pendant", "2031-05-06T11:00+02:00"), named(2, "Lantern", "2031-05-06T11:05+02:00")]


def test_the_last_to_arrive_breaks_the_law_of_order() -> None:
    assert not order_free(last_to_arrive, TWO)
    assert not neither_of_two_is_hidden(last_to_arrive)


def test_the_clock_breaks_the_law_of_knowledge() -> None:
    assert not knowledge_decides(latest_by_clock)
    assert not neither_of_two_is_hidden(latest_by_clock)


def test_the_fold_keeps_all_three() -> None:
    assert order_free(by_knowledge, TWO)
    assert knowledge_decides(by_knowledge)
    assert neither_of_two_is_hidden(by_knowledge)


@given(STEPS, st.data())
def test_clocks_set_anyhow_change_nothing_but_what_is_printed(steps: list[Step], data: st.DataObject) -> None:
    entries = honest(steps)
    hours = data.draw(st.lists(st.integers(0, 23), min_size=len(entries), max_size=len(entries)))
    other = [
        e.model_copy(update={"at": f"1999-12-31T{h:02}:00-11:00"})
        for e, h in zip(entries, hours, strict=True)
    ]
    one, two = (as_built(HOUSE, journal_of(e), models=MODELS) for e in (entries, other))
    assert one.house == two.house
    assert one.differences == two.differences
    assert [c.subject for c in one.folded.conflicts] == [c.subject for c in two.folded.conflicts]
