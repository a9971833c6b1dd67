"""The journal: lines in and out, an entry by a form, conflicts, as-built and its adoption, function tests."""

import json
import re
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from tests.desk import PASSWORD
from secondfix.journal import KINDS
from secondfix.store import door
from secondfix.web.frame.site import on_site
from tests.web.conftest import signed_in

# ruff: noqa: I001 - the desk begins Django before the door is imported


@pytest.fixture
def journals(tree: Path, office: door.Account, house_id: str) -> str:
    """The demo house with both journals of its later years; its id."""
    for name in ("pell", "farrow"):
        data = (tree / f"demo/maintenance/journal-{name}.jsonl").read_bytes()
        assert not door.post_entries(house_id, data, by=office).faults
    return house_id


def sheet(client: Client, house_id: str, name: str) -> str:
    answer = client.get(f"/house/{house_id}/{name}")
    assert answer.status_code == 200
    return answer.content.decode()


def hidden(page: str, name: str) -> str:
    found = re.search(rf'name="{name}" value="([^"]*)"', page)
    assert found is not None
    return found[1]


def entries(house_id: str) -> list[dict[str, Any]]:
    return [json.loads(line) for line in door.journal_bytes(house_id).splitlines()]


def write(client: Client, house_id: str, kind: str, **typed: str) -> Any:
    page = sheet(client, house_id, f"journal/{kind}")
    sent = {"shown": hidden(page, "shown"), **typed}
    return client.post(f"/house/{house_id}/journal/{kind}", sent, follow=True)


def test_an_empty_journal_says_what_to_do_first(writer: Client, house_id: str) -> None:
    for name in ("journal", "as-built"):
        assert "first-step" in sheet(writer, house_id, name)


def test_entries_stand_in_words_each_after_what_its_writer_knew(reader: Client, journals: str) -> None:
    page = sheet(reader, journals, "journal?find=D08")
    assert page.index("Fitted: ") < page.index("Joined N2")
    assert "Pell" in page
    assert "withdraw" not in page  # a reader mends nothing


def test_lines_go_out_word_for_word(reader: Client, journals: str) -> None:
    answer = reader.get(f"/house/{journals}/journal.jsonl")
    assert answer.content == door.journal_bytes(journals)
    assert "attachment" in answer["Content-Disposition"]


def test_each_line_of_a_file_is_told_its_fate(
    writer: Client, house_id: str, tree: Path, office: door.Account
) -> None:
    lines = (tree / "demo/maintenance/journal-pell.jsonl").read_bytes().splitlines()
    assert door.post_entries(house_id, lines[0], by=office).taken
    data = b"\n".join(
        [
            lines[0],
            lines[1],
            b"no entry",
            lines[2].replace(house_id.encode(), b"0" * 8 + b"-0000-7000-8000-" + b"0" * 12),
        ]
    )
    file = SimpleUploadedFile("visit.jsonl", data)
    answer = writer.post(f"/house/{house_id}/journal", {"file": file})
    page = answer.content.decode()
    assert answer.status_code == 422
    assert "Taken in: 1. Stood here already: 1. Not taken: 2" in page
    assert "line 3" in page
    assert "line 4, house" in page
    assert len(entries(house_id)) == 2


def test_a_whole_file_again_takes_nothing_twice(writer: Client, journals: str, tree: Path) -> None:
    before = door.journal_bytes(journals)
    file = SimpleUploadedFile("visit.jsonl", (tree / "demo/maintenance/journal-pell.jsonl").read_bytes())
    answer = writer.post(f"/house/{journals}/journal", {"file": file}, follow=True)
    assert "0 entries taken in, 39 stood here already." in answer.content.decode()
    assert door.journal_bytes(journals) == before


def test_no_file_is_told(writer: Client, house_id: str) -> None:
    answer = writer.post(f"/house/{house_id}/journal")
    assert answer.status_code == 422
    assert "a journal file" in answer.content.decode()


WRITTEN: list[tuple[str, dict[str, str], dict[str, Any]]] = [
    ("excluded", {"subject": "device:D08", "network": "N2"}, {"network": "N2"}),
    ("fitted", {"subject": "device:D11", "mounts": "1", "note": "anew"}, {"mounts": ["1"], "note": "anew"}),
    (
        "function_tested",
        {"subject": "gang:B01.1", "answered": "L01, L03 off"},
        {"answered": {"L01": "changed", "L03": "off"}},
    ),
    (
        "join_failed",
        {"subject": "device:D08", "network": "N2", "note": "no light"},
        {"network": "N2", "note": "no light"},
    ),
    (
        "joined",
        {"subject": "device:D11", "network": "N1", "node": "7", "address": "B2B2B21550EAE2B4"},
        {"node": 7},
    ),
    ("measured", {"subject": "link:D11>D12", "rssi_dbm": "-67"}, {"rssi_dbm": -67}),
    (
        "air_heard",
        {"subject": "box:B01", "transmitters": '[{"channel": 9, "level_dbm": -58, "duty_permille": 40}]'},
        {"transmitters": [{"channel": 9, "level_dbm": -58, "duty_permille": 40}]},
    ),
    ("named", {"subject": "room:R01", "name": "12"}, {"name": "12"}),
    ("purpose_set", {"subject": "load:L01", "purpose": "night_light"}, {"purpose": "night_light"}),
    ("removed", {"subject": "device:D08"}, {}),
    ("signed", {"subject": "room:R01", "name": "M. Ostler", "paper": "worksheets"}, {"paper": "worksheets"}),
    ("skipped", {"subject": "gang:B01.1", "deed": "test", "reason": "locked"}, {"deed": "test"}),
    ("snag_raised", {"subject": "box:B01", "words": "rim bent"}, {"words": "rim bent"}),
    (
        "survey_corrected",
        {"path": "boxes.B01.depth_mm", "found": '{"value": 44, "known": "measured"}'},
        {"found": {"value": 44, "known": "measured"}},
    ),
]


@pytest.mark.parametrize(("kind", "typed", "own"), WRITTEN, ids=[kind for kind, _, _ in WRITTEN])
def test_each_kind_is_written_by_its_form(
    writer: Client, house_id: str, kind: str, typed: dict[str, str], own: dict[str, Any]
) -> None:
    answer = write(writer, house_id, kind, **typed)
    assert answer.status_code == 200
    (one,) = entries(house_id)
    assert one["kind"] == kind
    assert one["writer"] == "Ilka"
    assert one["revision"] == "edit-1"
    assert {k: one[k] for k in own} == own


def test_every_kind_but_adopting_has_a_form(writer: Client, house_id: str) -> None:
    page = sheet(writer, house_id, "journal")
    assert set(re.findall(r'/journal/([a-z_]+)"', page)) == KINDS.keys() - {"adopted"}
    assert writer.get(f"/house/{house_id}/journal/adopted").status_code == 404


def test_a_snag_is_put_right_and_an_entry_withdrawn_from_its_row(writer: Client, house_id: str) -> None:
    write(writer, house_id, "snag_raised", subject="box:B01", words="rim bent")
    page = sheet(writer, house_id, "journal")
    assert "put right" in page
    write(writer, house_id, "snag_cleared", subject="box:B01", words="rim straightened")
    assert entries(house_id)[1]["clears"] == entries(house_id)[0]["id"]
    assert "put right<span" not in sheet(writer, house_id, "journal")
    write(writer, house_id, "withdrawn", subject="box:B01", of=entries(house_id)[1]["id"], reason="slip")
    assert on_site(house_id).record.built.folded.open_snags


def test_what_the_house_cannot_take_is_refused_unless_kept_anyway(writer: Client, house_id: str) -> None:
    answer = write(writer, house_id, "named", subject="room:R99", name="Attic")
    assert answer.status_code == 422
    assert "Keep it anyway" in answer.content.decode()
    assert entries(house_id) == []
    answer = write(writer, house_id, "named", subject="room:R99", name="Attic", anyway="1")
    assert len(entries(house_id)) == 1


@pytest.mark.parametrize(
    ("kind", "typed", "says"),
    [
        ("function_tested", {"subject": "gang:B01.1", "answered": "L01 on off"}, "pairs, each once"),
        ("joined", {"subject": "device:D08", "network": "N2", "node": "seven"}, "a whole number"),
        ("named", {"subject": "room:R01", "name": "x" * 2001}, "2,001 characters"),
        ("named", {"subject": "somewhere", "name": "x"}, "kind:id"),
        ("survey_corrected", {"path": "boxes.B01.colour", "found": "1"}, "a path of the house document"),
    ],
)
def test_what_cannot_be_read_is_told_beside_the_form(
    writer: Client, house_id: str, kind: str, typed: dict[str, str], says: str
) -> None:
    answer = write(writer, house_id, kind, **typed)
    assert answer.status_code == 422
    assert says in answer.content.decode()
    assert entries(house_id) == []


def test_two_who_did_not_see_each_other_are_in_conflict_until_one_who_saw_both_says(
    writer: Client, house_id: str, office: door.Account
) -> None:
    made = door.create_account(username="Orla", password=PASSWORD, right=door.Right.WRITER, by=office)
    assert isinstance(made, door.Account)
    other = signed_in(made)
    url = f"/house/{house_id}/journal/named"
    shown = [hidden(sheet(c, house_id, "journal/named"), "shown") for c in (writer, other)]
    for client, at, name in ((writer, shown[0], "Box room"), (other, shown[1], "Linen room")):
        client.post(url, {"shown": at, "subject": "room:R01", "name": name})
    page = sheet(writer, house_id, "as-built")
    assert "It is as Orla found" in page
    assert "A conflict must be settled first" in page
    orla = next(e for e in entries(house_id) if e["writer"] == "Orla")
    writer.post(f"/house/{house_id}/as-built", {"shown": hidden(page, "shown"), "holds": orla["id"]})
    built = on_site(house_id).record.built
    assert built.folded.conflicts == ()
    assert built.house.rooms["R01"].name == "Linen room"


def test_the_as_built_sheet_tells_differences_by_place(reader: Client, journals: str) -> None:
    page = sheet(reader, journals, "as-built")
    assert page.count('class="across"') >= 2
    assert "isolate" in page
    assert "Adopt the house as built" not in page


def test_adopting_makes_an_equal_edit_and_records_what_it_took_in(writer: Client, house_id: str) -> None:
    write(writer, house_id, "named", subject="room:R01", name="Box room")
    page = sheet(writer, house_id, "as-built")
    sent = {"base": hidden(page, "base"), "size": hidden(page, "size"), "act": "adopt"}
    answer = writer.post(f"/house/{house_id}/as-built", sent, follow=True)
    assert "Adopted as edit 2" in answer.content.decode()
    opened = door.open_house(house_id)
    assert (opened.number, opened.house.rooms["R01"].name) == (2, "Box room")
    assert door.edits(house_id)[0].words == "as-built adopted, 1 entry taken in"
    adopted = entries(house_id)[-1]
    assert (adopted["kind"], adopted["revision"], adopted["to_revision"]) == ("adopted", "edit-1", "edit-2")
    assert adopted["took_in"] == [entries(house_id)[0]["id"]]
    built = on_site(house_id).record.built
    assert built.differences == ()
    assert "house and journal say the same" in sheet(writer, house_id, "as-built")


def test_tests_that_change_nothing_are_taken_in_without_an_edit(writer: Client, house_id: str) -> None:
    write(writer, house_id, "function_tested", subject="gang:B01.1", as_it_should="1")
    page = sheet(writer, house_id, "as-built")
    sent = {"base": hidden(page, "base"), "size": hidden(page, "size"), "act": "adopt"}
    writer.post(f"/house/{house_id}/as-built", sent)
    assert door.open_house(house_id).number == 1
    assert entries(house_id)[-1]["to_revision"] == "edit-1.as-built"


def test_a_sheet_that_is_not_the_latest_adopts_nothing(writer: Client, journals: str) -> None:
    answer = writer.post(f"/house/{journals}/as-built", {"base": "1", "size": "0", "act": "adopt"})
    assert answer.status_code == 422
    assert "look once more" in answer.content.decode()


def test_the_function_test_tells_rings_and_dead_gangs_with_their_caution(
    reader: Client, journals: str
) -> None:
    page = sheet(reader, journals, "function-test")
    assert "are crossed" in page
    assert "works nothing" in page
    assert "prove dead" in page
    assert "Either no box is opened" in page


def test_what_was_pressed_in_a_room_is_written_down_at_once(writer: Client, house_id: str) -> None:
    page = sheet(writer, house_id, "function-test")
    names = re.findall(r'<select [^>]*name="(gang:[^"]+)"', page)
    sent = {"shown": hidden(page, "shown"), "room": hidden(page, "room"), names[0]: "nothing"}
    first = re.search(rf'name="{re.escape(names[1])}">.*?<option value="(L\d+)"', page, re.S)
    assert first is not None
    answer = writer.post(
        f"/house/{house_id}/function-test",
        {**sent, names[1]: first[1], "scene:S1": "as_it_should"},
        follow=True,
    )
    assert "3 tests written down." in answer.content.decode()
    told = {e["subject"]: e["answered"] for e in entries(house_id)}
    assert told[names[0]] == {}
    assert told[names[1]] == {first[1]: "changed"}
    assert told["scene:S1"]


def test_a_reader_writes_nothing(reader: Client, journals: str) -> None:
    before = door.journal_bytes(journals)
    for name in ("journal", "as-built", "function-test"):
        assert reader.post(f"/house/{journals}/{name}", {"act": "adopt"}).status_code == 403
    assert door.journal_bytes(journals) == before
