"""The test at the box: told exactly when the answers are those of one named arrangement."""

from itertools import product

import pytest

from secondfix.electrical.multiway import LIVE_TEST, QUESTIONS, Told, Untold, as_found, tell
from secondfix.electrical.multiway.graph import Wiring
from secondfix.electrical.multiway.telling import expected
from secondfix.house import Arrangement
from tests.electrical.multiway.oracle import of, table

IDS = [q.id for q in QUESTIONS]

# Written down by hand from the wiring diagrams: permanent line and switched line in the first box, the
# same in the last, permanent line at the luminaire. Two rows where the third core may be used either way.
BY_HAND = {
    Arrangement.TOGETHER: {"11010", "11100"},
    Arrangement.OPPOSITE_ENDS: {"10010"},
    Arrangement.SWITCH_LOOP: {"11011", "11101"},
    Arrangement.FEED_AT_LUMINAIRE: {"10011"},
    Arrangement.SWITCHED_NEUTRAL: {"10100"},
}


def walked(w: Wiring, first: str, last: str) -> str:
    """The same five answers from the truth table."""
    rows = list(table(w))
    nodes = {n for row in rows for n in row.reach} | w.nodes()

    def some(place: str, wanted: list[bool]) -> str:
        live = [[bool(of(r.reach.get(n, set()), "line")) for r in rows] for n in nodes if n[0] == place]
        return str(int(wanted in live))

    always, burning = [True] * len(rows), [row.lamp for row in rows]
    ends = [some(end, wanted) for end in (first, last) for wanted in (always, burning)]
    return "".join([*ends, some("lamp", always)])


@pytest.mark.parametrize("arrangement", BY_HAND)
@pytest.mark.parametrize("places", [2, 3, 4])
def test_expected_answers_are_those_of_the_diagrams_with_any_number_of_intermediates(
    arrangement: Arrangement, places: int
) -> None:
    number = 2 if arrangement is Arrangement.SWITCHED_NEUTRAL else places
    for far in (False, True):
        w = as_found(arrangement, number, line_at_far_end=far)
        told = "".join(str(int(a)) for a in expected(w, "here", last=str(number)))
        assert told == walked(w, "1", str(number))
        assert told in BY_HAND[arrangement]


def turned(answers: str) -> str:
    return answers[2:4] + answers[:2] + answers[4]


def test_every_full_set_of_answers_is_told_if_and_only_if_it_is_one_by_hand() -> None:
    by_hand = {row: (a, "here") for a, rows in BY_HAND.items() for row in rows}
    by_hand |= {turned(row): (a, "there") for row, (a, _) in by_hand.items()}
    for bits in product("01", repeat=5):
        row = "".join(bits)
        told = tell(dict(zip(IDS, (b == "1" for b in row), strict=True)))
        if row not in by_hand:
            assert told == Untold(None, ())
        else:
            arrangement, end = by_hand[row]
            end_told = None if arrangement is Arrangement.SWITCHED_NEUTRAL else end
            assert told == Told(arrangement, end_told)


def test_with_any_answer_missing_it_is_not_told_and_the_next_question_is_a_missing_one() -> None:
    for bits in product((True, False, None), repeat=5):
        given = {q: b for q, b in zip(IDS, bits, strict=True) if b is not None}
        if len(given) == 5:
            continue
        told = tell(given)
        assert isinstance(told, Untold)
        if told.next is None:
            assert told.could_be == ()
        else:
            assert told.next.id not in given
            assert told.could_be


def test_asking_what_is_told_next_ends_in_a_name_or_in_nothing_left() -> None:
    for w in [as_found(a, 2, line_at_far_end=f) for a in BY_HAND for f in (False, True)]:
        answers: dict[str, bool] = {}
        truth = dict(zip(IDS, expected(w, "there"), strict=True))
        while isinstance(told := tell(answers), Untold):
            assert told.next is not None
            answers[told.next.id] = truth[told.next.id]
        assert len(answers) == 5


def test_line_and_load_at_both_ends_has_no_name_here() -> None:
    """It works (test_wirings), but travellers do not lie between its switches."""
    assert tell(dict.fromkeys(IDS, True)) == Untold(None, ())
    assert tell({q: q != "lamp_permanent" for q in IDS}) == Untold(None, ())


def test_a_question_that_is_none_is_refused() -> None:
    with pytest.raises(ValueError, match="colour"):
        tell({"colour": True})


def test_the_test_names_pairs_levers_and_cautions() -> None:
    for question in QUESTIONS:
        assert question.asks.endswith("?")
        assert "two-pole indicator" in question.how
        assert "every combination" in question.how
    words = " ".join(c.words for c in LIVE_TEST)
    for must in ("licensed person", "two-pole", "proving unit", "prove dead", "kill"):
        assert must in words
    assert all(c.source for c in LIVE_TEST)
