"""The sheet of a light worked from several places, in pack and worksheets."""

from collections.abc import Sequence
from typing import Any

import pytest

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.electrical import LIVE_TEST, QUESTIONS, lights, spoken
from secondfix.findings import Finding
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.joining import walk
from secondfix.papers import Setting, pack_pdf, worksheets_pdf
from secondfix.papers.light_sheet import light_sheets
from tests.electrical.multiway.lights import light
from tests.example_house import as_bytes
from tests.papers.reading import flat, outside, pages

MM = 72 / 25.4


def of(plain: dict[str, Any]) -> tuple[Schedule, Sequence[Finding]]:
    house = read_house(as_bytes(plain), where="light.json", models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return schedule(house, house.models), check(house, assumptions=default_assumptions()).findings


def sheet_text(plain: dict[str, Any], setting: Setting) -> str:
    rows, findings = of(plain)
    pdf = pack_pdf(rows, findings, default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes), pdf
    assert outside(pdf, left=15 * MM, other=8 * MM) == []
    return flat("".join(p.text for p in pages(pdf) if "S4/03" in p.text and "Drawing register" not in p.text))


def has(text: str, *words: str) -> None:
    assert [w for w in words if flat(w) not in text] == []


def lacks(text: str, *words: str) -> None:
    assert [w for w in words if flat(w) in text] == []


@pytest.mark.parametrize("places", [2, 3, 8])
def test_cautions_test_drawing_and_every_conductor_stand_on_it_in_that_order(
    places: int, setting: Setting
) -> None:
    plain = light(places=places)
    text = sheet_text(plain, setting)
    rows, _ = of(plain)
    (one,) = lights(rows, default_assumptions())
    has(text, *(spoken(c.words, None) for c in LIVE_TEST), *(q.asks for q in QUESTIONS))
    made = one.ways[0].made
    has(text, *(c.becomes.value for c in made.changes), "Re-mark: mark it as line (brown, or L) at both ends")
    has(text, "cap it at both ends, one core a cap"[1:], *(s for s in made.steps(cores=False)[-2:]))
    order = [LIVE_TEST[0].words, QUESTIONS[0].asks, "As found", "After", "To do at both ends"]
    at = [text.index(flat(w)) for w in order]
    assert at == sorted(at)


def test_not_told_it_asks_the_test_names_every_pattern_and_draws_nothing(setting: Setting) -> None:
    text = sheet_text(light(arrangement=None, spare=None), setting)
    has(text, "to find which it is", "switched neutral: danger", "feed at the luminaire", "Cannot tell")
    has(text, "None can be drawn", "Not yet told", "ount the cores that no terminal uses")
    lacks(text, "As found", "To do at both ends")


def test_while_a_danger_stands_no_conversion_is_drawn(setting: Setting) -> None:
    text = sheet_text(light(arrangement="switched_neutral"), setting)
    has(text, "Danger", "No conversion is drawn while a danger stands at B1.1")
    lacks(text, "To do at both ends")


def test_the_impossible_is_called_so_with_what_is_possible(setting: Setting) -> None:
    text = sheet_text(light(arrangement="switch_loop", others="radio", neutral_at=frozenset()), setting)
    has(text, "Impossible.", "Possible instead: the module at the luminaire")
    lacks(text, "To do at both ends")


def test_a_house_of_the_nec_reads_its_own_words(setting: Setting) -> None:
    plain = light()
    plain["wiring_rules"] = "nec"
    text = sheet_text(plain, setting)
    has(text, "3-way", "traveler", "not a white core", "lock out and tag")
    lacks(text, "two-way", "strapper", "brown", "NEC:")


def test_it_stands_after_the_worksheet_of_its_box_and_each_box_names_it(setting: Setting) -> None:
    rows, findings = of(light())
    order = walk(rows, {}, default_assumptions())
    pdf = worksheets_pdf(rows, order, findings, default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes), pdf
    ((_, sheet),) = light_sheets(rows, findings, default_assumptions(), wide=600)
    texts = [p.text for p in pages(pdf)]
    worksheet = next(n for n, t in enumerate(texts) if "S7/01" in t)
    first = next(n for n, t in enumerate(texts) if LIVE_TEST[0].words[:40] in " ".join(t.split()))
    assert first > worksheet
    assert flat(f"Before a conductor is parted: sheet {sheet.number}") in flat(texts[worksheet])
    assert outside(pdf, left=15 * MM, other=8 * MM) == []
