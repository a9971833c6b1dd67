"""Distances between phrases: what holds for every pair."""

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.naming.by_ear.dictionary import dictionary, pronounced
from secondfix.naming.by_ear.distance import Said, differing, said, same_rhythm, weighted
from secondfix.naming.by_ear.judge import Limits, Verdict, judged, may_be_near
from secondfix.naming.by_ear.many import Laid
from secondfix.naming.by_ear.phones import COST

WORDS = st.lists(st.sampled_from(sorted(dictionary())), max_size=4).map(tuple)
PERMILLE = st.integers(0, 1000)
LIMITS = st.builds(Limits, st.integers(0, 60), st.integers(0, 60), PERMILLE)
HARSHER = {Verdict.ALIKE: 0, Verdict.NEAR: 1, Verdict.APART: 2}


def spoken(words: Sequence[str]) -> Said:
    phones = [pronounced(word) for word in words]
    return said([p for p in phones if p])


@given(WORDS, WORDS, WORDS)
def test_the_count_of_differing_phones_is_a_metric(
    a: tuple[str, ...], b: tuple[str, ...], c: tuple[str, ...]
) -> None:
    one, other, third = spoken(a), spoken(b), spoken(c)
    assert differing(one, one) == 0
    assert (differing(one, other) == 0) is (one.phones == other.phones)
    assert differing(one, other) == differing(other, one)
    assert differing(one, third) <= differing(one, other) + differing(other, third)
    assert differing(one, other) <= max(len(one.phones), len(other.phones))


@given(WORDS, WORDS, PERMILLE, PERMILLE)
def test_weighting_only_brings_nearer_and_the_more_the_less_an_end_costs(
    a: tuple[str, ...], b: tuple[str, ...], one_permille: int, other_permille: int
) -> None:
    one, other = spoken(a), spoken(b)
    low, high = sorted((one_permille, other_permille))
    near, far = weighted(one, other, final_permille=low), weighted(one, other, final_permille=high)
    assert 0 <= near <= far <= 1000 * differing(one, other)
    assert near == weighted(other, one, final_permille=low)
    assert weighted(one, one, final_permille=low) == 0


def test_the_triangle_holds_for_single_phones() -> None:
    assert all(COST[a][c] <= COST[a][b] + COST[b][c] for a in COST for b in COST for c in COST)
    assert all((COST[a][b] == 0) is (a == b) for a in COST for b in COST)
    assert all(500 <= COST[a][b] <= 1000 for a in COST for b in COST if a != b)


def test_a_lost_final_consonant_costs_what_is_assumed_and_an_inner_one_all() -> None:
    card, car, bed, bet, desk = (spoken([w]) for w in ("card", "car", "bed", "bet", "desk"))
    assert weighted(card, car, final_permille=300) == 300
    assert weighted(bed, bet, final_permille=1000) == 1000 - 432 * 41 // 127
    assert weighted(spoken(["card", "desk"]), spoken(["car", "desk"]), final_permille=300) == 300
    assert weighted(desk, spoken([]), final_permille=300) == 4000


@given(st.lists(st.tuples(WORDS, WORDS), max_size=12), LIMITS)
def test_many_at_once_give_the_same_as_one_by_one(
    pairs: list[tuple[tuple[str, ...], tuple[str, ...]]], limits: Limits
) -> None:
    phrases = {words: spoken(words) for pair in pairs for words in pair}
    one_by_one = [weighted(phrases[a], phrases[b], final_permille=limits.final_permille) for a, b in pairs]
    laid = Laid(limits)
    for half in (list(phrases.items())[::2], list(phrases.items())):  # in two goes, the second over the first
        laid.lay_out(half)
    assert laid.weighted(pairs).tolist() == one_by_one
    kept = [p for p in pairs if judged(phrases[p[0]], phrases[p[1]], limits) is not Verdict.APART]
    assert laid.within_reach(pairs) == kept


@given(WORDS, WORDS, LIMITS, LIMITS)
def test_laxer_limits_never_let_a_pair_go(
    a: tuple[str, ...], b: tuple[str, ...], x: Limits, y: Limits
) -> None:
    strict = Limits(
        min(x.alike_pct, y.alike_pct), min(x.near_pct, y.near_pct), max(x.final_permille, y.final_permille)
    )
    lax = Limits(
        max(x.alike_pct, y.alike_pct), max(x.near_pct, y.near_pct), min(x.final_permille, y.final_permille)
    )
    one, other = spoken(a), spoken(b)
    assert HARSHER[judged(one, other, lax)] <= HARSHER[judged(one, other, strict)]
    assert judged(one, other, lax) == judged(other, one, lax)


@given(WORDS, WORDS)
def test_rhythm_is_symmetric_and_needs_a_stressed_vowel(a: tuple[str, ...], b: tuple[str, ...]) -> None:
    one, other = spoken(a), spoken(b)
    assert same_rhythm(one, other) == same_rhythm(other, one)
    assert same_rhythm(one, one) is bool(one.stressed)
    assert not same_rhythm(spoken([]), spoken([]))


ORDINARY = sorted(
    w for w, p in dictionary().items()
    if len(w) > 2 and set(w) & set("aeiouy") and 0.4 * len(w) - 1 < len(p) <= 1.5 * len(w) + 1
)  # fmt: skip


@given(st.data(), LIMITS)
def test_what_an_unknown_word_cannot_change_no_word_changes(data: st.DataObject, limits: Limits) -> None:
    """A word unknown, then said as any word of as many letters: near only where that was thought possible."""
    before, other = data.draw(WORDS), data.draw(WORDS)
    word = data.draw(st.sampled_from(ORDINARY))
    unknown = "q" * len(word)
    assert pronounced(unknown) is None
    thought = may_be_near((*before, unknown), other, limits)
    assert thought == may_be_near(other, (*before, unknown), limits)
    if judged(spoken((*before, word)), spoken(other), limits) is not Verdict.APART:
        assert thought


@pytest.mark.parametrize(
    ("a", "b", "possible"),
    [
        (("qqqqqq",), ("kitchen",), True),
        (("qqqq",), ("conservatory", "window", "curtain"), False),
        (("qqqqqq",), ("qqqqqxx",), True),
        (("qq", "conservatory"), ("lamp",), False),
        (("kitchen", "qqqqqq"), ("garden", "lantern"), True),
    ],
)
def test_an_unknown_word_counts_where_length_or_rhythm_allow(
    a: tuple[str, ...], b: tuple[str, ...], possible: bool
) -> None:
    assert may_be_near(a, b, Limits(33, 50, 250)) is possible
