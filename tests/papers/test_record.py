"""The pack with a journal: as-built, tests, snags, history, signatures; no row looks tested unseen."""

from datetime import date
from functools import cache
from pathlib import Path

import pytest

from secondfix.actions.pack import Packed, Site, pack, recorded
from secondfix.assumptions import default_assumptions
from secondfix.files import Firm, open_firm, open_house
from secondfix.house import House
from secondfix.journal import Journal, as_built, merge, read_journal
from secondfix.papers import Setting, TitleBlock
from secondfix.papers.record import record_sheets
from secondfix.papers.record.saying import deed_words
from secondfix.papers.typeset import typeset
from tests.journal.writing import journal, write
from tests.papers.reading import flat, outside, pages

DEMO = Path(__file__).resolve().parents[2] / "demo"
MM = 72 / 25.4
SETTING = Setting(TitleBlock("C", date(2026, 11, 19), "M. Ilves"))


@cache
def firm() -> Firm:
    found = open_firm(DEMO / "maintenance" / "firm")
    assert isinstance(found, Firm)
    return found


@cache
def house(name: str = "house.json") -> House:
    found = open_house(str(DEMO / name), firm().models)
    assert isinstance(found, House)
    return found


@cache
def site_journal() -> Journal:
    found = []
    for path in sorted((DEMO / "maintenance").glob("journal-*.jsonl")):
        one, faults = read_journal(path.read_bytes(), where=path.name)
        assert faults == []
        found.append(one)
    return merge(*found)


@cache
def packed() -> Packed:
    site = Site(site_journal())
    made = pack(house(), assumptions=default_assumptions(), setting=SETTING, models=firm().models, site=site)
    assert isinstance(made, Packed), made
    return made


def sheet(number: str) -> str:
    """All words of one sheet of the pack, flattened."""
    told = (p.text for p in pages(packed().files["handover-pack.pdf"]))
    return flat("".join(t for t in told if f"{number} " in " ".join(t.split())[:400] and number != "S0/02"))


def test_every_test_that_stands_has_its_row_with_who_and_when_and_what_answered() -> None:
    text = sheet("S11/02")
    assert flat("B01.2 Hall L02 porch, Hall changed L02 porch, Hall as designed I. Farrow") in text
    assert flat("2024-12-05 09:04 +01:00") in text
    assert flat("the lamp over the log store") in text
    assert flat("found: nobody knew") in text


def test_what_does_not_work_as_designed_is_told_in_words() -> None:
    text = sheet("S11/02")
    assert flat("B10.1 Study L27 desk, Study changed L26 light, Study") in text
    for words in ("works another load", "works nothing", "two tests differ", "did not switch L07 terrace"):
        assert flat(words) in text


def test_what_is_not_yet_tested_is_listed_and_counted() -> None:
    text = sheet("S11/02")
    built = as_built(house(), site_journal(), models=firm().models)
    gangs = sum(len(b.gangs) for b in built.house.boxes.values())
    assert (
        flat(f"Tested: 27 of {gangs + 1} gangs and outputs, 1 of 7 scenes") in text
    )  # and one output, D32.1
    left = text.partition(flat("Not yet tested"))[2]
    for place in ("B02.4", "B09.1", "B16.2", "B20.1", "D32.1", "sceneS1"):
        assert place in left
    assert flat("the workshop was locked") in left
    assert "B01.2" not in left


def test_a_test_that_by_the_clocks_is_older_than_its_device_asks_for_another() -> None:
    text = sheet("S11/02")
    words = flat("by the clocks before D34 was fitted: test again")
    assert text.count(words) == 2  # beside the test, and among what is not yet tested
    assert flat("B08.4 Parlour tank by the clocks") in text


def test_snags_of_the_journal_bear_the_numbers_of_the_list_and_cleared_ones_say_how() -> None:
    own, whole = sheet("S11/03"), sheet("S1/01")
    assert flat("The module stands 6 mm proud of the tiles; the plate rocks.") in own
    assert flat("Strap slackened and set with the level.") in own
    assert flat("withdrawn") in own
    assert flat("Snag open: The module stands 6 mm proud") in whole
    assert flat("The board says 'kitchen' only") in whole
    assert flat("Dead since the storm") not in whole


def test_history_tells_each_place_in_order_with_what_no_longer_stands() -> None:
    text = sheet("S11/04")
    of_box = text.partition(flat("B08 Parlour"))[2].partition(flat("B09 Parlour"))[0]
    said = [
        "D08 fitted: as the revision has it.",
        "joined N2 Larkholm east, address not written down, node 11",
        "named 'Parlour tank pump'",
        "purpose set: animal care",
        "tested: L20 walls, Parlour changed. a later entry took its place",
        "D34 fitted: Brantock Larch Four",
        "in the place of D08",
        "D34 joined N2 Larkholm east",
    ]
    places = [of_box.index(flat(words)) for words in said]
    assert places == sorted(places)
    assert flat("survey corrected: depth found 56 mm (measured). Plaster proud of the rim.") in text
    assert flat("did not join N2. The light stays green") in text
    assert flat("skipped, join: the workshop was locked.") in text


def test_signatures_and_conflicts_are_shown_and_a_conflict_is_a_finding() -> None:
    assert flat("O. Tennerby") in sheet("S11/05")
    assert flat("swap of D08") in sheet("S11/05")
    assert flat("gang B16.2 Entries differ on 'working'") in sheet("S11/01")
    assert flat("their writers did not know of each other") in sheet("S1/01")


def test_the_pack_rests_on_the_as_built_house_and_its_title_block_says_of_which_revision() -> None:
    files = packed().files
    for name in ("handover-pack.pdf", "findings.pdf", "worksheets.pdf"):
        for page in pages(files[name]):
            assert flat("C, as-built of revision A") in flat(page.text), name
    schedule_ = sheet("S4/01")
    assert flat("D34 gang 1") in schedule_
    assert "D08" not in schedule_
    assert flat("Device D08 no longer stands.") in sheet("S11/01")
    assert flat("Device D34 is not in the revision") in sheet("S11/01")


def test_the_form_leaves_out_what_was_tested_as_designed_and_says_how_many() -> None:
    form = sheet("S8/01")
    assert flat("that the function test record has as designed") in form
    assert "B01.2" not in form
    for place in ("B08.4", "B10.1", "B13.2", "B16.2", "B20.1"):
        assert place in form


def test_no_character_leaves_the_frame_and_the_same_journal_gives_the_same_bytes() -> None:
    made = packed().files["handover-pack.pdf"]
    assert outside(made, left=15 * MM, other=8 * MM) == []
    again = pack(
        house(), assumptions=default_assumptions(), setting=SETTING, models=firm().models,
        site=Site(merge(site_journal(), site_journal())),
    )  # fmt: skip
    assert isinstance(again, Packed)
    assert again.files["handover-pack.pdf"] == made


@pytest.mark.parametrize("kind", ["excluded", "removed", "join_failed", "signed", "measured"])
def test_a_journal_of_a_single_entry_has_its_sheets(kind: str) -> None:
    own = {
        "excluded": ("device:D22", {"network": "N1"}),
        "removed": ("device:D22", {}),
        "join_failed": ("device:D22", {"network": "N1", "note": "no light"}),
        "signed": ("room:R20", {"name": "O. Tennerby", "paper": "snag list"}),
        "measured": ("link:D01>P41", {"rssi_dbm": -71}),
    }[kind]
    entry = write(1, kind, own[0], house=house().id, **own[1])
    record = recorded(house(), Site(journal(entry)), models=firm().models)
    made = typeset(
        record_sheets(record, record.answers),
        title="site",
        house=record.house,
        setting=SETTING,
        landscape=True,
    )
    assert isinstance(made, bytes), made
    text = flat("".join(p.text for p in pages(made)))
    assert flat("Tested: 0 of 48 gangs and outputs, 0 of 7 scenes.") in text
    assert flat("The journal holds no function test.") in text


@pytest.mark.parametrize(
    ("heard", "words"),
    [
        ([], "channel survey: nobody heard."),
        (
            [{"channel": 6, "level_dbm": -71}, {"kind": "mesh", "channel": 24, "level_dbm": -63}],
            "channel survey: 2 heard, the loudest on mesh channel 24 with -63 dBm.",
        ),
    ],
)
def test_a_channel_survey_is_told_by_its_loudest(heard: list[dict[str, object]], words: str) -> None:
    entry = write(1, "air_heard", "place:P41", house=house().id, transmitters=heard)
    record = recorded(house(), Site(journal(entry)), models=firm().models)
    assert deed_words(record, entry) == words
