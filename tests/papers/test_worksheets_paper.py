"""Worksheets on paper: everything that a worksheet holds stands on its sheet."""

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.joining import ISOLATION, Walk, walk, worksheets
from secondfix.naming import names
from secondfix.papers import Setting, worksheets_pdf
from secondfix.papers.worksheets_paper import _worksheet
from tests.papers.example import FINDINGS
from tests.papers.reading import flat, outside, pages, words_of

MM = 72 / 25.4


@pytest.fixture(scope="module")
def order(house: Schedule) -> Walk:
    return walk(house, {}, default_assumptions())


@pytest.fixture(scope="module")
def paper(house: Schedule, order: Walk, setting: Setting) -> bytes:
    made = worksheets_pdf(house, order, FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(made, bytes), made
    return made


def test_each_device_has_its_sheet_with_all_that_its_worksheet_holds(
    house: Schedule, order: Walk, paper: bytes
) -> None:
    for w in worksheets(house, order, names(house)):
        own = flat("".join(p.text for p in pages(paper) if f"S7/{w.number:02d}" in p.text))
        wanted = [w.place_title, w.where, w.device_title, w.isolate, w.through, w.time, w.entries_words]
        wanted += [*w.window, *w.procedure, *w.tell_apart, *w.removal, *(c.words for c in w.cautions)]
        wanted += [x for e in w.entries for x in (e.label, e.name, e.purpose, e.note)]
        wanted += [x for t in w.tests for x in (t.label, t.press, t.answer)]
        wanted += [x for t in w.when_nothing for x in (t.seen, t.do[1:])]
        wanted += [w.code.words, w.code.printed_at] if w.code else []
        assert [x for x in wanted if flat(x) not in own] == [], w.device


def test_steps_of_the_walk_stand_in_order(order: Walk, paper: bytes) -> None:
    text = words_of(paper)
    at = [text.index(flat(f"{s.number}{s.words}")) for s in order.steps]
    assert at == sorted(at)


def test_cautions_lead(paper: bytes) -> None:
    first = flat(pages(paper)[0].text)
    assert [c.id for c in ISOLATION if flat(c.words) not in first] == []


def test_sheets_are_upright_and_stay_inside_the_frame(paper: bytes) -> None:
    assert all(p.height > p.width for p in pages(paper))
    assert outside(paper, left=15 * MM, other=8 * MM) == []


def test_same_bytes_twice(house: Schedule, order: Walk, paper: bytes, setting: Setting) -> None:
    assert worksheets_pdf(house, order, FINDINGS, default_assumptions(), setting=setting) == paper


def test_parent_and_reserve_stand_before_the_steps_in_plain_ink(order: Walk, house: Schedule) -> None:
    for w in worksheets(house, order, names(house)):
        blocks = _worksheet(w, (), nec=False).blocks
        at = next(n for n, b in enumerate(blocks) if b.get("words") == w.through)
        assert blocks[at]["style"] == ""
        assert blocks[at - 1]["words"] == "Join"


def test_what_comes_before_any_isolation_is_called_so_in_order_and_on_the_sheet(paper: bytes) -> None:
    text = words_of(paper)
    assert flat("Before any isolation") in text
    assert flat(", before any isolation.") in text
    assert "stage0" not in text.lower()


def test_a_worksheet_fits_one_page_where_it_can(order: Walk, paper: bytes) -> None:
    numbers = [f"S7/{n:02d}" for n in range(1, len(order.joins()) + 1)]
    taken = [sum(number in p.text for p in pages(paper)) for number in numbers]
    assert taken == [1] * len(numbers)


def test_sheets_of_some_devices_come_after_the_cautions_and_without_the_order(
    house: Schedule, order: Walk, setting: Setting
) -> None:
    first, second, *_ = worksheets(house, order, names(house))
    made = worksheets_pdf(
        house, order, FINDINGS, default_assumptions(), setting=setting, only={second.device}
    )
    assert isinstance(made, bytes), made
    text = words_of(made)
    assert flat(ISOLATION[0].words) in flat(pages(made)[0].text)
    assert flat(second.device_title) in text
    assert flat(first.device_title) not in text
    assert flat("Order of work") not in text
