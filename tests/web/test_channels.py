"""Channels on the desk: the survey typed, pasted or in a file, and what each channel costs a network."""

import json

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door
from secondfix.web.radio import asking

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
PASTED = "channel;level_dbm;duty_pct;name\n1;-48;20;Fernhill\n6;\u221261;;Osk guest\n11;-70;5;Quarry\n"


@pytest.fixture(autouse=True)
def patient(monkeypatch: pytest.MonkeyPatch) -> None:
    """Wait for every answer, however busy the machine."""
    monkeypatch.setattr(asking, "SOON_S", 120)


def sheet(client: Client, house_id: str, query: str = "") -> str:
    answer = client.get(f"/house/{house_id}/channels?{query}")
    assert answer.status_code == 200
    return answer.content.decode()


def send(client: Client, house_id: str, sent: dict[str, object], *, status: int = 302) -> str:
    answer = client.post(f"/house/{house_id}/channels", sent)
    assert answer.status_code == status, answer.content.decode()
    return answer.content.decode()


def typed(*rows: dict[str, str], **more: str) -> dict[str, object]:
    return {"typed": "1", **more, **{f"{k}.{n}": v for n, row in enumerate(rows, 1) for k, v in row.items()}}


def heard(house_id: str) -> list[dict[str, object]]:
    found: list[dict[str, object]] = json.loads(door.journal_bytes(house_id).splitlines()[-1])["transmitters"]
    return found


def test_without_a_survey_the_sheet_says_what_to_do_first_and_that_nothing_can_be_told(
    writer: Client, house_id: str
) -> None:
    told = sheet(writer, house_id)
    assert "first-step" in told
    assert "no channel of Larkholm mesh is known to be better" in told
    assert "no channel to choose" in told  # Z-Wave
    assert 'class="channels"' not in told


def test_rows_typed_stand_in_the_journal_and_every_channel_is_held_against_them(
    writer: Client, house_id: str
) -> None:
    rows = (
        {"kind": "wifi", "channel": "6", "level_dbm": "-48", "duty_pct": "12.5", "name": "Fernhill"},
        {"kind": "wifi", "channel": "", "level_dbm": ""},
        {"kind": "mesh", "channel": "20", "level_dbm": "\u221261", "width_mhz": "20", "place": "B01"},
    )
    send(writer, house_id, typed(*rows))
    assert [h["channel"] for h in heard(house_id)] == [6, 20]
    assert (heard(house_id)[0]["duty_permille"], heard(house_id)[1]["place"]) == (125, "B01")
    told = sheet(writer, house_id)
    table = told.split('class="channels"')[1].split("</table>")[0]
    assert "20 in use" in table
    assert table.count("<tr>") == 17
    assert " %" not in table
    assert 'value="Fernhill"' in told  # the survey that stands can be mended
    assert " %" in sheet(writer, house_id, "numbers=1").split('class="channels"')[1].split("</table>")[0]


def test_a_later_survey_takes_the_place_of_the_one_that_was_seen(writer: Client, house_id: str) -> None:
    for channel in ("1", "11"):
        send(writer, house_id, typed({"channel": channel, "level_dbm": "-50"}))
    rows = sheet(writer, house_id).split('id="survey"')[1]
    assert 'name="channel.1" aria-label="Row 1, channel" value="11"' in rows
    assert 'value="1"' not in rows.split("<tbody")[1].split("</table>")[0]


def test_faults_name_the_row_of_the_form_and_what_was_typed_stays(writer: Client, house_id: str) -> None:
    rows: tuple[dict[str, str], ...] = ({}, {"channel": "36", "level_dbm": "loud", "name": "Quarry"})
    told = send(writer, house_id, typed(*({"channel": "", **row} for row in rows)), status=422)
    assert "row 2, channel" in told
    assert "row 2, level_dbm" in told
    assert 'value="Quarry"' in told
    assert "nothing" in send(writer, house_id, typed({"channel": ""}), status=422)
    both = typed({"channel": "1", "level_dbm": "-50"}, nobody="1")
    assert "nobody was heard" in send(writer, house_id, both, status=422)
    assert door.journal_size(house_id) == 0


def test_more_rows_keep_what_was_typed_and_write_nothing(writer: Client, house_id: str) -> None:
    told = send(writer, house_id, typed({"channel": "6", "level_dbm": "-48"}, act="more"), status=200)
    assert 'aria-label="Row 1, channel" value="6"' in told
    assert 'name="channel.4"' in told
    assert door.journal_size(house_id) == 0


def test_nobody_heard_is_an_answer_of_the_survey_too(writer: Client, house_id: str) -> None:
    send(writer, house_id, typed({"channel": ""}, nobody="1"))
    assert heard(house_id) == []
    assert "No survey stands" not in sheet(writer, house_id)


def test_a_survey_comes_in_pasted_or_as_a_file(writer: Client, house_id: str) -> None:
    send(writer, house_id, {"text": PASTED})
    assert [h["level_dbm"] for h in heard(house_id)] == [-48, -61, -70]
    file = SimpleUploadedFile("air.csv", PASTED.replace("Quarry", "Mill").encode())
    send(writer, house_id, {"text": "", "file": file})
    assert heard(house_id)[2]["name"] == "Mill"


def test_what_is_no_survey_is_told_by_row_and_stays_in_the_field(writer: Client, house_id: str) -> None:
    told = send(writer, house_id, {"text": "channel;level_dbm\n99;-50\n<b>;-51"}, status=422)
    assert "row 2, channel" in told
    assert "row 3, channel" in told
    assert "<b>" not in told
    assert "&lt;b&gt;;-51" in told
    assert "level_dbm" in send(writer, house_id, {"text": "channel\n6"}, status=422)
    assert "nothing" in send(writer, house_id, {"text": " "}, status=422)
    file = SimpleUploadedFile("air.csv", PASTED.encode())
    assert "one of them" in send(writer, house_id, {"text": PASTED, "file": file}, status=422)


def test_those_heard_are_counted_by_the_draws(writer: Client, house_id: str) -> None:
    before = writer.get(f"/house/{house_id}/radio").content.decode()
    assert "Nothing is counted of others on the air" in before
    send(writer, house_id, {"text": PASTED})
    after = writer.get(f"/house/{house_id}/radio").content.decode()
    assert "Nothing is counted of others on the air" not in after


def test_a_reader_sees_who_was_heard_and_has_no_form(writer: Client, reader: Client, house_id: str) -> None:
    send(writer, house_id, {"text": PASTED})
    told = sheet(reader, house_id)
    assert "Osk guest" in told
    assert 'name="typed"' not in told


def test_the_channel_in_use_is_not_held_against_itself(writer: Client, house_id: str) -> None:
    send(writer, house_id, typed({"kind": "wifi", "channel": "1", "level_dbm": "-52", "duty_pct": "30"}))
    told = sheet(writer, house_id, "numbers=1")
    assert "20 in use, best" in told
    assert "less than channel 20" not in told
