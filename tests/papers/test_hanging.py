"""The page of a house for the day a switch fails: which device, what hangs on it, what to have at hand."""

import re
from typing import Any

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import House, schedule
from secondfix.papers import Hanging, Setting, pack_pdf
from secondfix.papers.pack.hanging import hanging_sheet
from secondfix.papers.typeset import typeset
from tests.papers.example import CODE, FINDINGS, house_of, plain_house
from tests.papers.reading import flat, outside, pages, words_of

MM = 72 / 25.4
ALSO = Hanging(
    carries={"D04": ("D03", "D06")},
    fits={"D02": ("tolvarp-fen-2@1", "orrebeck-quad@1"), "D03": ()},
)


def page(house: House, setting: Setting, hanging: Hanging | None = ALSO) -> bytes:
    rows = schedule(house, house.models)
    sheets = [hanging_sheet(rows, hanging, "S8/03")]
    made = typeset(sheets, title="page", house=house, setting=setting, landscape=True)
    assert isinstance(made, bytes), made
    return made


def large(boxes: int) -> House:
    """The example with so many boxes, a switch and a light in each, and every scene on all of them."""
    plain = plain_house()
    for n in range(20, 20 + boxes - len(plain["boxes"])):
        gang: dict[str, Any] = {"duty": "feeds", "load": f"L{n}", "mount": "1"}
        plain["boxes"][f"B{n}"] = {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": gang}}
        plain["loads"][f"L{n}"] = {"name": f"Lamp {n}", "room": "R2", "purpose": "lighting"}
        plain["devices"][f"D{n}"] = {
            "model": "tolvarp-heath-dim@1", "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"],
            "code_ref": f"K{n}",
        }  # fmt: skip
    for n in range(3, 7):
        plain["scenes"][f"X{n}"] = {
            "name": f"Evening {n}", "rules": [{"select": {"every_load": True}, "to": "off"}],
        }  # fmt: skip
    return house_of(plain)


def test_each_device_has_a_row_with_what_hangs_on_it(setting: Setting) -> None:
    house = house_of(plain_house())
    text = words_of(page(house, setting))
    for device, model in ((d, house.devices[d].model) for d in house.devices):
        assert device in text
        assert flat(model or "") in text
    assert flat("scenes X1 X2; extended by B02.1") in text
    assert flat("carries D03 D06") in text
    assert flat("used by U1") in text
    assert flat("The family's own morning routine uses gang 2.") in text
    assert "starts X1" not in text  # B04.2 has no device


def test_spares_name_what_else_would_fit_and_what_was_not_asked(setting: Setting) -> None:
    house = house_of(plain_house())
    text = words_of(page(house, setting))
    assert flat("orrebeck-quad@1") in text
    assert flat("none of the models at hand") in text
    assert flat("not asked") in text
    assert flat("another question") in text


def test_without_other_answers_it_says_that_nobody_asked(setting: Setting) -> None:
    text = words_of(page(house_of(plain_house()), setting, None))
    assert flat("was not asked of radio") in text
    assert "carriesD" not in text


def test_codes_stand_as_references_alone(setting: Setting) -> None:
    text = words_of(page(house_of(plain_house()), setting))
    assert "K01" in text
    assert flat(CODE) not in text


def test_it_warns_first_and_has_a_line_for_whom_to_call(setting: Setting) -> None:
    text = words_of(page(house_of(plain_house()), setting))
    assert text.index(flat("Work on mains can kill")) < text.index(flat("Which device is it?"))
    assert flat("Whom to call") in text


@pytest.mark.parametrize("boxes", [20, 60])
def test_two_pages_hold_a_house_of_sixty_boxes(boxes: int, setting: Setting) -> None:
    house = large(boxes)
    assert len(house.boxes) == boxes
    made = page(house, setting, Hanging(dict.fromkeys(house.devices, ()), dict.fromkeys(house.devices, ())))
    assert len(pages(made)) <= 2
    assert outside(made, left=15 * MM, other=8 * MM) == []


def test_a_pack_without_a_journal_says_so_on_its_cover_and_on_a_sheet(setting: Setting) -> None:
    house = house_of(plain_house())
    pdf = pack_pdf(schedule(house, house.models), FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes)
    told = [n for n, p in enumerate(pages(pdf)) if "No journal was given" in p.text]
    assert told[0] == 0
    assert len(told) == 2
    assert re.search(r"S11/01 +Site record: none", " ".join(pages(pdf)[1].text.split()))
    assert flat("Function test record") not in words_of(pdf)
