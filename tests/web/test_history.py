"""History, the way back, two edits beside each other, issues as they went out."""

import json
from dataclasses import replace
from time import monotonic, sleep

import pytest
from django.test import Client
from pypdfium2 import PdfDocument

from tests.desk import PASSWORD
from secondfix.assumptions import Override
from secondfix.store import door
from secondfix.web.frame import asked as asking
from secondfix.web.frame import jobs
from secondfix.web.history.issued import as_issued

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


def saved(house_id: str, office: door.Account, **fields: object) -> int:
    """One more edit: the house's own fields set."""
    opened = door.open_house(house_id)
    text = json.dumps({**json.loads(opened.text), **fields})
    answer = door.save(house_id, text.encode(), base=opened.number, by=office)
    assert isinstance(answer, door.Saved)
    return answer.number


def page(client: Client, path: str) -> str:
    answer = client.get(path)
    assert answer.status_code == 200
    return answer.content.decode()


def test_every_edit_stands_there_with_who_and_what(
    writer: Client, house_id: str, office: door.Account
) -> None:
    saved(house_id, office, name="Larkholm, Nether Wendleby")
    shown = page(writer, f"/house/{house_id}/history")
    assert "Nether Wendleby" in shown
    assert "Ilka" in shown
    assert shown.count('scope="row" class="figure">') == 2


def test_an_edit_tells_field_by_field_what_it_changed(writer: Client, house_id: str) -> None:
    sent = {"base": "1", "name": "cable_allowance_mm", "value": "30", "source": "measured in two boxes"}
    writer.post(f"/house/{house_id}/assumptions", sent)
    shown = page(writer, f"/house/{house_id}/edit/2")
    assert "cable_allowance_mm" in shown
    assert "What it changed" in shown


def test_an_earlier_edit_becomes_the_house_again_and_nothing_is_lost(
    writer: Client, house_id: str, office: door.Account
) -> None:
    before = door.open_house(house_id).text
    saved(house_id, office, name="Marsh End 3")
    answer = writer.post(f"/house/{house_id}/edit/1", {"base": "2"})
    assert answer.status_code == 302
    assert door.open_house(house_id).text == before
    assert [e.number for e in door.edits(house_id)] == [3, 2, 1]
    assert json.loads(door.edit_bytes(house_id, 2))["name"] == "Marsh End 3"


def test_going_back_without_a_base_is_refused(writer: Client, house_id: str) -> None:
    answer = writer.post(f"/house/{house_id}/edit/1", {"base": "soon"})
    assert answer.status_code == 422
    assert door.house_row(house_id).number == 1


def test_an_edit_set_aside_says_why_and_leads_to_where_it_is_settled(writer: Client, house_id: str) -> None:
    here = f"/house/{house_id}/assumptions"
    writer.post(here, {"base": "1", "name": "cable_allowance_mm", "value": "9"})
    writer.post(here, {"base": "1", "name": "cable_allowance_mm", "value": "12"})
    assert "set aside" in page(writer, f"/house/{house_id}/history")
    shown = page(writer, f"/house/{house_id}/edit/3")
    assert f"/house/{house_id}/settle/3" in shown
    assert "assumptions.cable_allowance_mm" in shown


def test_an_edit_set_aside_for_its_faults_tells_them(
    writer: Client, house_id: str, office: door.Account
) -> None:
    refused = door.save(house_id, b'{"format": 1}', base=1, by=office)
    assert isinstance(refused, door.Refused)
    shown = page(writer, f"/house/{house_id}/edit/2")
    assert f"{len(refused.faults)} things to put right" in shown


def test_two_edits_beside_each_other(writer: Client, house_id: str, office: door.Account) -> None:
    saved(house_id, office, name="Marsh End 3")
    saved(house_id, office, name="Marsh End 4")
    shown = page(writer, f"/house/{house_id}/compare?one=1&other=3")
    assert "Marsh End 4" in shown
    assert "From edit 1 to edit 3: 1 field" in shown
    assert "From edit 2 to edit 3" in page(writer, f"/house/{house_id}/compare?one=77&other=x")


def test_an_edit_that_is_not_there_is_not_found(writer: Client, house_id: str) -> None:
    for path in ("edit/9", "issue/Q"):
        assert writer.get(f"/house/{house_id}/{path}").status_code == 404


def test_the_current_edit_is_issued_under_the_next_letter(writer: Client, house_id: str) -> None:
    answer = writer.post(f"/house/{house_id}/history", {"base": "1", "words": "for pricing"})
    assert answer["Location"] == f"/house/{house_id}/issue/A"
    shown = page(writer, answer["Location"])
    assert "for pricing" in shown
    assert "Checks as they stood" in shown


def test_an_edit_that_is_not_the_latest_is_not_issued(
    writer: Client, house_id: str, office: door.Account
) -> None:
    saved(house_id, office, name="Marsh End 3")
    assert writer.post(f"/house/{house_id}/history", {"base": "1"}).status_code == 409
    assert door.issues(house_id) == ()


def test_an_issue_keeps_the_answers_of_the_assumptions_it_went_out_with(
    writer: Client, house_id: str, office: door.Account, monkeypatch: pytest.MonkeyPatch
) -> None:
    firm = asking.firm()
    theirs = firm.assumptions.overridden({"cable_allowance_mm": Override(31)}, set_by="firm")
    with monkeypatch.context() as then:
        then.setattr(asking, "firm", lambda: replace(firm, assumptions=theirs))
        writer.post(f"/house/{house_id}/history", {"base": "1"})
        went_out = asking.asked(house_id).checked
    asking.forget()
    saved(house_id, office, name="Marsh End 3")
    _, about = as_issued(house_id, "A")
    assert about.checked == went_out
    assert about.house.name == "Larkholm, Upper Wendleby"
    assert asking.asked(house_id).settled["cable_allowance_mm"].value != 31
    assert ": 31 mm, set by firm" in page(writer, f"/house/{house_id}/issue/A")


def test_a_paper_of_an_issue_is_printed_aside_under_its_letter(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/history", {"base": "1"})
    answer = writer.post(f"/house/{house_id}/issue/A/findings")
    job = jobs.find(answer["Location"].rpartition("/")[2], house_id=house_id)
    assert job is not None
    until = monotonic() + 120
    while not job.ended:
        assert monotonic() < until
        sleep(0.02)
    text = "".join(
        page.get_textpage().get_text_range() for page in PdfDocument(job.result.files["findings.pdf"])
    )
    assert "Issue\r\nA\r\n" in text or "Issue A" in text
    assert writer.post(f"/house/{house_id}/issue/A/secrets").status_code == 404


def test_a_reader_sees_the_history_and_changes_nothing(reader: Client, house_id: str) -> None:
    assert "Issue edit" not in page(reader, f"/house/{house_id}/history")
    assert reader.post(f"/house/{house_id}/history", {"base": "1"}).status_code == 403
    assert reader.post(f"/house/{house_id}/edit/1", {"base": "1"}).status_code == 403
