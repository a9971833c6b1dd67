"""Radio on a plan: words and shapes, never over each other; what a case does; what to do first."""

from copy import deepcopy
from typing import Any

from secondfix.house import Schedule
from secondfix.papers import NIGHT, RadioShown, radio_plan_on_screen, radio_svg
from secondfix.radio import Case, CaseKind, cover, reach
from tests.papers.drawing.svg import collisions, texts
from tests.radio.houses import assumed, row_of_rooms, rows_of


def shown(rows: Schedule, case: Case | None = None, *, numbers: bool = False) -> RadioShown:
    answer = reach(rows, assumed())
    return RadioShown(answer, "N1", cover(rows, assumed(), answer, "N1", "S0"), case=case, numbers=numbers)


def said(svg: str) -> str:
    return " ".join(t.text for t in texts(svg))


def weak() -> dict[str, Any]:
    return row_of_rooms(6, wall_mm=300, kind="leaf")


def test_words_of_zones_stand_on_the_plan_and_numbers_only_when_asked_for() -> None:
    rows = rows_of(weak())
    plain, numbered = radio_svg(rows, "S0", shown(rows)), radio_svg(rows, "S0", shown(rows, numbers=True))
    words = [t.text for t in texts(plain)]
    assert "likely here" in words
    assert "doubtful" in words
    assert " dB" not in said(plain)
    assert " dB" in said(numbered)
    assert "Nothing is measured" in said(plain)
    assert collisions(plain) == []


def test_what_a_case_does_is_told_by_mark_and_word() -> None:
    rows = rows_of(row_of_rooms(4))
    case = Case(CaseKind.REPEATER_GONE, "N1", "D1", "D1 gone", ("D1",), {}, ("D2",), ("D3",), -1.0)
    svg = radio_svg(rows, "S0", shown(rows, case))
    words = [t.text for t in texts(svg)]
    for wanted in ("no power", "falls", "rises", "falls in this case"):
        assert wanted in words
    assert 'fill="url(#falls)"' in svg
    assert "falls" not in [t.text for t in texts(radio_svg(rows, "S0", shown(rows)))]


def test_on_a_screen_symbols_lead_to_their_place_and_remarks_stand_apart() -> None:
    rows = rows_of(row_of_rooms(3))
    made = radio_plan_on_screen(rows, "S0", shown(rows), palette=NIGHT, ways={"B1": "/b1", "D2": "/d2"})
    assert 'href="/b1"' in made.svg
    assert 'href="/d2"' in made.svg
    assert 'aria-label="D1 Room 1: likely"' in made.svg
    assert any("plastic box" in r for r in made.remarks)


def test_without_positions_it_says_what_to_do_first() -> None:
    plain = deepcopy(row_of_rooms(2))
    del plain["places"]["P0"]["position"]
    rows = rows_of(plain)
    words = said(radio_svg(rows, "S0", RadioShown(reach(rows, assumed()), "N1")))
    assert "State the position of P0, where the controller of Row stands." in words
