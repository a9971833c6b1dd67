"""The handover pack: nothing lost, nothing cut, the same bytes twice."""

import re
from dataclasses import replace
from datetime import date
from unicodedata import normalize

import pypdfium2 as pdfium
import pytest
import zxingcpp

from secondfix.assumptions import default_assumptions
from secondfix.house import House, Schedule, schedule
from secondfix.joining import GENERAL, ISOLATION, walk
from secondfix.naming import names
from secondfix.papers import (
    Setting,
    SheetSize,
    TextFault,
    TitleBlock,
    elevations_svg,
    findings_pdf,
    pack_pdf,
    plan_svg,
    worksheets_pdf,
)
from tests.papers.example import CODE, FINDINGS, HOSTILE, KEYS, house_of, plain_house
from tests.papers.reading import flat, outside, pages, picture, words_of

MM = 72 / 25.4


def made(house: House, setting: Setting, **more: object) -> bytes:
    answer = pack_pdf(schedule(house, house.models), FINDINGS, default_assumptions(), setting=setting, **more)  # type: ignore[arg-type] # a test may pass what it likes
    assert isinstance(answer, bytes), answer
    return answer


def with_names(*loads: str) -> House:
    plain = plain_house()
    for load, name in zip(plain["loads"].values(), loads, strict=False):
        load["name"] = name
    return house_of(plain)


def test_every_gang_load_room_and_device_stands_in_it(pack: bytes, house: Schedule) -> None:
    text = words_of(pack)
    h = house.house
    wanted = [*house.rows, *h.boxes, *h.places, *h.devices, *h.loads]
    wanted += [x.name for kind in (h.rooms, h.storeys, h.loads, h.scenes, h.networks) for x in kind.values()]
    assert [w for w in wanted if flat(w) not in text] == []


def test_every_name_of_an_entry_stands_in_it(pack: bytes, house: Schedule) -> None:
    text = words_of(pack)
    assert [e.name for e in names(house).entries() if flat(e.name) not in text] == []


def test_every_caution_stands_in_it(pack: bytes) -> None:
    text = words_of(pack)
    assert [c.id for c in (*ISOLATION, *GENERAL) if flat(c.words) not in text] == []


def test_every_finding_stands_with_its_remedy_and_a_pass_is_never_called_safe(pack: bytes) -> None:
    text = words_of(pack)
    told = [f for f in FINDINGS if f.severity]
    assert [f.rule for f in told if flat(f.says) not in text] == []
    assert [f.rule for f in told if flat(f.remedy)[1:] not in text] == []
    assert flat("'no fault found': 1") in text
    assert " safe" not in " ".join(p.text for p in pages(pack))


def test_outside_uses_are_listed_on_the_page_for_a_failed_switch(pack: bytes) -> None:
    page = next(p for p in pages(pack) if "Keep this sheet where the board is" in p.text)
    assert flat("The family's own morning routine uses gang 2.") in flat(page.text)
    assert "Isolate, lock off, prove dead" in page.text


def test_every_sheet_has_title_block_number_and_page_count(pack: bytes) -> None:
    sheets = pages(pack)
    for n, page in enumerate(sheets, 1):
        text = " ".join(page.text.split())
        for words in (
            "Quillfen Lane 12",
            "B, 3 edits since",
            "2026-11-19",
            "M. Ilves",
            f"{n} of {len(sheets)}",
        ):
            assert words in text, (n, words)


def test_register_names_the_page_on_which_each_sheet_starts(pack: bytes) -> None:
    sheets = pages(pack)
    register = next(p.text for p in sheets if "Every sheet of this pack" in p.text)
    rows = re.findall(r"^(S\d/\d\d) .+ (\d+)\s*$", register, re.MULTILINE)
    assert len(rows) >= 15
    for number, page in rows:
        assert number in sheets[int(page) - 1].text, number


@pytest.mark.parametrize(
    ("size", "wide_mm", "high_mm"), [(SheetSize.A4, 297.0, 210.0), (SheetSize.LETTER, 279.4, 215.9)]
)
def test_sheets_have_the_size_asked_for_and_no_character_leaves_the_frame(
    house: Schedule, setting: Setting, size: SheetSize, wide_mm: float, high_mm: float
) -> None:
    # ISO 216 A4 and ANSI/ASME Y14.1 Letter; half a point allows for rounding to points.
    pdf = made(house.house, replace(setting, size=size))
    assert outside(pdf, left=15 * MM, other=8 * MM) == []
    for page in pages(pdf):
        assert page.width == pytest.approx(wide_mm * MM, abs=0.5)
        assert page.height == pytest.approx(high_mm * MM, abs=0.5)


def test_same_answers_give_the_same_bytes_and_another_date_does_not(
    pack: bytes, house: Schedule, setting: Setting
) -> None:
    assert made(house.house, setting) == pack
    later = replace(setting, block=TitleBlock("B, 3 edits since", date(2026, 11, 20), "M. Ilves"))
    assert made(house.house, later) != pack


def test_the_key_ring_is_a_paper_of_its_own_and_no_other_paper_holds_a_code(
    pack: bytes, ring: bytes, house: Schedule, setting: Setting
) -> None:
    order = walk(house, {}, default_assumptions())
    others = [
        pack,
        findings_pdf(house, FINDINGS, default_assumptions(), setting=setting),
        worksheets_pdf(house, order, FINDINGS, default_assumptions(), setting=setting),
    ]
    assert [k.ref for k in KEYS if flat(k.code) not in words_of(ring)] == []
    for other in others:
        assert isinstance(other, bytes)
        assert [k.ref for k in KEYS if flat(k.code) in words_of(other)] == []
        assert zxingcpp.read_barcodes(picture(other, len(pages(other)) - 1)) == []
    for rooms in house.house.rooms:
        assert CODE not in elevations_svg(house, rooms, FINDINGS)
    for storey in house.house.storeys:
        assert CODE not in plan_svg(house, storey, FINDINGS)


def test_code_on_the_key_ring_can_be_scanned(ring: bytes) -> None:
    found = zxingcpp.read_barcodes(picture(ring, 0))
    assert [f.text for f in found] == [f"ZW:{CODE}"]


def test_names_that_look_like_markup_come_out_as_they_are(setting: Setting) -> None:
    text = words_of(made(with_names(*HOSTILE), setting))
    assert [n for n in HOSTILE if flat(n) not in text] == []


def test_long_names_wrap_and_are_never_cut(setting: Setting) -> None:
    long = ["W" * 80, "Ein Name " * 8 + "zu lang", "x" * 79 + "!"]
    plain = plain_house()
    plain["name"] = "M" * 80
    plain["rooms"]["R1"]["name"] = "Q" * 80
    plain["scenes"]["X1"]["name"] = "S" * 80
    plain["networks"]["N1"]["name"] = "N" * 80
    for load, name in zip(plain["loads"].values(), long, strict=False):
        load["name"] = name
    house = house_of(plain)
    pdf = made(house, setting)
    text = words_of(pdf)
    for name in [*long, "M" * 80, "Q" * 80, "S" * 80, "N" * 80]:
        assert flat(name) in text
    assert outside(pdf, left=15 * MM, other=8 * MM) == []


@pytest.mark.parametrize("bad", ["שלום", "中庭", "Hall 🛋", "a\u202eb", "a\u200db", "bell\x07"])
def test_text_that_the_fonts_cannot_draw_is_a_fault_that_names_text_and_character(
    bad: str, setting: Setting
) -> None:
    house = with_names(bad)
    faults = pack_pdf(schedule(house, house.models), FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(faults, list)
    assert any(bad in f.text for f in faults)
    lost = next(c for c in bad if ord(c) > 0x500 or ord(c) < 0x20)
    assert all(isinstance(f, TextFault) for f in faults)
    assert f"U+{ord(lost):04X}" in str(faults[0])


def test_letters_of_latin_greek_and_cyrillic_are_set(setting: Setting) -> None:
    good = ["Škárpa", "Größe ¾", "Кухня", "Αυλή", "e\u0301tage", "5 Ω"]
    text = words_of(made(with_names(*good), setting))
    assert [n for n in good if flat(normalize("NFC", n)) not in text] == []


def test_nec_houses_get_letter_and_their_own_words(setting: Setting) -> None:
    plain = plain_house()
    plain["wiring_rules"] = "nec"
    pdf = made(house_of(plain), setting)
    text = words_of(pdf)
    assert pages(pdf)[0].width == pytest.approx(792, abs=0.5)  # 11 in
    assert "Closeoutpack" in text
    assert "Punchlist" in text
    assert "Handoverpack" not in text
    assert "Snaglist" not in text


def test_file_has_title_date_language_and_tags(pack: bytes) -> None:
    document = pdfium.PdfDocument(pack)
    about = document.get_metadata_dict()
    assert about["Title"] == "Quillfen Lane 12: handover pack"
    assert about["CreationDate"].startswith("D:20261119")
    assert document.is_tagged()
    assert b"/Lang" in pack
    assert b"pdfuaid" in pack


def test_a_house_with_nothing_but_rooms_boxes_and_gangs_has_a_pack(setting: Setting) -> None:
    plain = {
        "format": 1,
        "id": "0192f0c1-7a51-7b3e-9c44-3d5e6f708192",
        "name": "Bare",
        "rooms": {"R1": {"name": "Room"}},
        "boxes": {"B1": {"room": "R1", "mounts": {"1": {}}, "gangs": {"1": {}}}},
    }
    house = house_of(plain)
    pdf = pack_pdf(schedule(house, house.models), (), default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes)
    text = words_of(pdf)
    assert "B1.1" in text
    assert "positionnotknown" in text


def test_long_ids_stay_in_their_column(setting: Setting) -> None:
    plain = plain_house()
    long = "B" + "8" * 15
    plain["boxes"][long] = plain["boxes"].pop("B05")
    pdf = made(house_of(plain), setting)
    assert flat(f"{long}.1") in words_of(pdf)
    page = next(n for n, p in enumerate(pages(pdf)) if "Line and neutral name the circuits" in p.text)
    words = pdfium.PdfDocument(pdf)[page].get_textpage()
    rects = [words.get_rect(i) for i in range(words.count_rects())]
    own = [r for r in rects if (t := flat(words.get_text_bounded(*r))) and set(t) <= {"8"}]
    hall = [r for r in rects if words.get_text_bounded(*r).strip() == "Hall"]
    # The column of ids ends where that of rooms begins.
    assert own
    assert max(r[2] for r in own) < min(r[0] for r in hall)
