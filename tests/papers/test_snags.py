"""Numbers of open answers: one for the whole house, many like answers under one."""

from dataclasses import replace

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.papers import Setting, elevations_svg, findings_pdf, plan_svg
from secondfix.papers.drawing import keynotes, keynotes_for, note_words
from secondfix.papers.findings_paper import tally_words
from secondfix.papers.snags import MOST_APART, snags
from tests.papers.drawing.svg import texts
from tests.papers.example import FINDINGS
from tests.papers.reading import flat, words_of

UNTOLD = FINDINGS[3]


def alike(count: int) -> list[object]:
    return [replace(UNTOLD, place=f"B{n:02d}") for n in range(1, count + 1)]


def test_passes_get_no_number_and_the_worst_comes_first() -> None:
    told = snags(FINDINGS)
    assert [s.number for s in told] == list(range(1, 8))
    assert told[0].findings == (FINDINGS[1],)


@pytest.mark.parametrize(("count", "rows"), [(MOST_APART, MOST_APART), (MOST_APART + 1, 1)])
def test_more_than_ten_like_answers_share_one_number(count: int, rows: int) -> None:
    told = snags(alike(count))  # type: ignore[arg-type] # findings, as made above
    assert len(told) == rows
    assert sum(len(s.findings) for s in told) == count


def test_another_severity_of_the_same_rule_keeps_its_own_number() -> None:
    other = replace(FINDINGS[0], rule=UNTOLD.rule, place="B99")
    told = snags([*alike(12), other])  # type: ignore[list-item] # findings, as made above
    assert [len(s.findings) for s in told] == [1, 12]


def test_list_plan_elevation_and_findings_paper_show_the_same_number(
    house: Schedule, setting: Setting
) -> None:
    number = next(s.number for s in snags(FINDINGS) if s.findings[0].place == "B04")
    assert f"? {number}" in [t.text for t in texts(plan_svg(house, "S1", FINDINGS))]
    assert f"? {number}" in [t.text for t in texts(elevations_svg(house, "R2", FINDINGS))]
    paper = findings_pdf(house, FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(paper, bytes)
    assert flat(f"? {number}B04") in words_of(paper)


def test_like_notes_of_one_room_are_said_once_with_their_places(house: Schedule) -> None:
    many = [replace(UNTOLD, place="B04", rule="like"), *[replace(UNTOLD, place="B05", rule="like")] * 11]
    own = keynotes_for(house.house, keynotes(many), "R2")
    (said,) = note_words(house.house, own)
    assert said.head == "Cannot tell, B04, B05"
    assert said.says.startswith("12 like this: ")


def test_counts_are_said_in_the_plural_where_there_is_one() -> None:
    two = [replace(f, place=f"{f.place}x") for f in FINDINGS[:3]]
    assert tally_words([*FINDINGS[:3], *two]) == "2 dangers, 2 faults, 2 advice."
