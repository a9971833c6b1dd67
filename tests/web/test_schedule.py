"""The switch schedule on the screen: cells saved with their answers, files out and in, a box as a form."""

import csv
import io
import json
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from tests.desk import PASSWORD
from secondfix.house import Change, House, edited, written
from secondfix.store import door
from secondfix.web.frame.asked import asked, forget
from secondfix.web.schedule.rows import changed_rows, rows_of

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


def typed(client: Client, house_id: str, *cells: list[str], base: int = 1, known: str = "told") -> Any:
    sent = {"base": str(base), "known": known, "cells": json.dumps(cells)}
    return client.post(f"/house/{house_id}/schedule/cells", sent)


def test_every_gang_has_a_row_and_its_answers(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/schedule").content.decode()
    house = door.open_house(house_id).house
    assert page.count("data-place=") == sum(len(b.gangs) for b in house.boxes.values())
    assert "it stays live when C1 is isolated" in page


def test_a_cell_is_saved_and_answered_with_the_rows_that_changed(writer: Client, house_id: str) -> None:
    answer = typed(writer, house_id, ["B14.1", "depth", "61"], known="measured").json()
    assert answer["number"] == 2
    assert "61<small> (measured)</small>" in answer["rows"]["B14.1"]
    assert "is deeper than the box" not in answer["rows"]["B14.1"]
    assert "B01.1" not in answer["rows"]
    assert door.open_house(house_id).house.boxes["B14"].depth_mm.value == 61  # type: ignore[union-attr] # it was just measured


def test_a_slip_is_told_beside_its_cell_and_nothing_is_saved(writer: Client, house_id: str) -> None:
    answer = typed(writer, house_id, ["B14.1", "depth", "deep"], ["B14.1", "finish", "tile"])
    assert answer.status_code == 422
    assert answer.json()["faults"][0]["says"] == "'deep'; expected a figure in mm"
    assert door.house_row(house_id).number == 1


@pytest.mark.parametrize("cells", ["", "{}", "[[1,2,3]]", '[["B01.1","depth"]]', "[" * 5000])
def test_what_is_no_list_of_cells_is_refused(writer: Client, house_id: str, cells: str) -> None:
    answer = writer.post(f"/house/{house_id}/schedule/cells", {"base": "1", "cells": cells})
    assert answer.status_code == 422


def test_two_people_in_different_cells_lose_nothing(writer: Client, house_id: str) -> None:
    typed(writer, house_id, ["B14.1", "depth", "61"])
    answer = typed(writer, house_id, ["B13.1", "depth", "52"], base=1).json()
    assert answer["number"] == 3
    boxes = door.open_house(house_id).house.boxes
    assert [boxes[b].depth_mm.value for b in ("B13", "B14")] == [52, 61]  # type: ignore[union-attr] # both were just told


def test_two_people_in_one_cell_are_led_to_take_a_side(writer: Client, house_id: str) -> None:
    typed(writer, house_id, ["B14.1", "depth", "61"])
    answer = typed(writer, house_id, ["B14.1", "depth", "52"], base=1)
    assert answer.status_code == 409
    assert b"boxes.B14.depth_mm" in writer.get(answer.json()["settle"]).content


def test_out_and_in_again_changes_nothing(writer: Client, house_id: str) -> None:
    for form in ("csv", "xlsx"):
        data = writer.get(f"/house/{house_id}/schedule.{form}").content
        sent = {"base": "1", "known": "told", "file": SimpleUploadedFile(f"s.{form}", data)}
        page = writer.post(f"/house/{house_id}/schedule/back", sent, follow=True).content
        assert b"Nothing in it differs from the sheet" in page
    assert door.house_row(house_id).number == 1


def test_a_spreadsheet_changes_what_differs(writer: Client, house_id: str) -> None:
    data = writer.get(f"/house/{house_id}/schedule.csv").content.decode("utf-8-sig")
    lines = list(csv.reader(io.StringIO(data)))
    lines[1][lines[0].index("Note")] = "'=behind the coats"
    changed = io.StringIO()
    csv.writer(changed).writerows(lines)
    sent = SimpleUploadedFile("s.csv", changed.getvalue().encode())
    writer.post(f"/house/{house_id}/schedule/back", {"base": "1", "known": "told", "file": sent})
    assert door.open_house(house_id).house.boxes["B01"].gangs["1"].note == "=behind the coats"


def test_a_file_that_is_no_sheet_is_told(writer: Client, house_id: str) -> None:
    sent = {"base": "1", "file": SimpleUploadedFile("s.csv", b"Room,Load\nHall,Light\n")}
    answer = writer.post(f"/house/{house_id}/schedule/back", sent)
    assert answer.status_code == 422
    assert b"a column &#x27;Gang&#x27;" in answer.content


def test_a_box_is_filled_in_on_a_form(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/box/B14").content.decode()
    assert "isolate, lock off, prove dead" in page
    sent = {"base": "1", "known": "seen_open", "B14.1:depth": "58", "B14.1:note": "behind the mirror"}
    assert writer.post(f"/house/{house_id}/box/B14", sent)["Location"].endswith("/schedule#B14")
    box = door.open_house(house_id).house.boxes["B14"]
    assert box.depth_mm is not None
    assert (box.depth_mm.value, box.depth_mm.known, box.gangs["1"].note) == (
        58,
        "seen_open",
        "behind the mirror",
    )


def test_a_box_that_is_not_there_is_not_found(writer: Client, house_id: str) -> None:
    assert writer.get(f"/house/{house_id}/box/B99").status_code == 404


def test_words_of_a_house_are_escaped_in_the_rows(writer: Client, house_id: str) -> None:
    answer = typed(writer, house_id, ["B01.1", "note", "<script>alert(1)</script>"]).json()
    assert "<script>" not in answer["rows"]["B01.1"]
    assert "&lt;script&gt;" in writer.get(f"/house/{house_id}/schedule").content.decode()


@pytest.mark.parametrize(
    "cells",
    [
        [["B14.1", "depth", "61"]],
        [["B14.1", "line", "C1"], ["B13.1", "note", "<b>loose</b>"]],
        [["B14.1", "depth", ""], ["B14.1", "depth", "18"], ["B14.1", "note", "shallow"]],
    ],
)
def test_rows_after_an_edit_are_those_of_the_edit_read_from_the_store(
    writer: Client, house_id: str, cells: list[list[str]]
) -> None:
    for number, cell in enumerate(cells, 1):
        assert typed(writer, house_id, cell, base=number).status_code == 200
    held = asked(house_id)
    assert held.number == len(cells) + 1
    rows, findings = rows_of(held), held.checked.findings
    forget()
    again = asked(house_id)
    assert again is not held
    assert (again.house, again.text) == (held.house, held.text)
    assert again.checked.findings == findings
    assert rows_of(again) == rows


def test_a_new_name_of_a_circuit_is_shown_in_every_row_that_names_it(
    writer: Client, house_id: str, office: door.Account
) -> None:
    before = asked(house_id)
    assert rows_of(before)
    made = edited(before.house, [Change("circuits.C1.name", "Larder and scullery")], models={})
    assert isinstance(made, House)
    door.save(house_id, written(made), base=1, by=office)
    changed = changed_rows(before, asked(house_id))
    named = {place for place, row in rows_of(asked(house_id)).items() if "Larder and scullery" in row}
    assert named
    assert named <= set(changed)
