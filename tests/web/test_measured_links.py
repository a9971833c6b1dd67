"""Measured links on the desk: written by the form, held against what was reckoned, and what they teach."""

import json
from pathlib import Path

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door
from secondfix.web.radio import asking

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
FIVE = (("N1", "D01", "-61"), ("D31", "N1", "\u221274 dBm"), ("D20", "D31", "-58"), ("D12", "D15", "-66"))


@pytest.fixture(autouse=True)
def patient(monkeypatch: pytest.MonkeyPatch) -> None:
    """Wait for every answer, however busy the machine."""
    monkeypatch.setattr(asking, "SOON_S", 120)


def sheet(client: Client, house_id: str, query: str = "") -> str:
    answer = client.get(f"/house/{house_id}/measured-links?{query}")
    assert answer.status_code == 200
    return answer.content.decode()


def write(client: Client, house_id: str, *, status: int = 302, **fields: str) -> str:
    answer = client.post(f"/house/{house_id}/measured-links", {"network": "N1", **fields})
    assert answer.status_code == status, answer.content.decode()
    return answer.content.decode()


def five(client: Client, house_id: str) -> None:
    for a, b, level in FIVE:
        write(client, house_id, a=a, b=b, level=level)
    write(client, house_id, a="N1", b="D20", not_heard="1", note="with the door shut")


def test_before_anything_is_measured_the_sheet_says_what_to_measure_first(
    writer: Client, house_id: str
) -> None:
    told = sheet(writer, house_id)
    assert "Nothing measured yet" in told
    assert "5 more" in told
    assert told.split('id="next"')[1].split("</section>")[0].count("<tr") > 1
    assert "dBm" not in told.split('id="next"')[1].split("</section>")[0]
    assert 'id="taught"' not in told


def test_a_link_written_down_stands_in_the_journal_as_its_form_said(writer: Client, house_id: str) -> None:
    write(writer, house_id, a="N1", b="D01", level="-61", note="door open")
    write(writer, house_id, a="D31", b="D20", not_heard="1")
    lines = door.journal_bytes(house_id).decode().splitlines()
    assert '"subject":"link:P81>D01"' in lines[0].replace('": ', '":')
    assert '"rssi_dbm":-61' in lines[0].replace('": ', '":')
    assert "door open" in lines[0]
    assert '"not_heard":true' in lines[1].replace('": ', '":')
    rows = sheet(writer, house_id).split('id="links"')[1]
    assert "controller at P81" in rows
    assert "not heard" in rows
    assert "as reckoned" in rows


WRONG = (
    ("D01", "D01", "-60", "again"),
    ("D01", "D99", "-60", "D99"),
    ("D01", "", "-60", "heard at"),
    ("D01", "D07", "loud", "loud"),
    ("D01", "D07", "-131", "-131"),
    ("D01", "D07", "", "not heard"),
)


def test_what_cannot_be_a_reading_is_told_and_what_was_typed_stays(writer: Client, house_id: str) -> None:
    for a, b, level, said in WRONG:
        told = write(writer, house_id, status=422, a=a, b=b, level=level)
        assert said in told.split('role="alert"')[1].split("</div>")[0]
        assert f'value="{level}"' in told
    told = write(writer, house_id, status=422, a="D01", b="D07", level="-60", not_heard="1")
    assert "and not heard" in told
    assert door.journal_size(house_id) == 0


def test_a_later_reading_of_a_link_takes_the_place_of_the_one_that_was_seen(
    writer: Client, house_id: str
) -> None:
    write(writer, house_id, a="D20", b="D31", level="-58")
    write(writer, house_id, a="D20", b="D31", level="-63")
    rows = sheet(writer, house_id).split('id="links"')[1]
    assert "\u221258 dBm" not in rows
    assert "\u221263 dBm" in rows


def test_from_five_links_on_the_answers_are_shown_in_numbers(writer: Client, house_id: str) -> None:
    before = writer.get(f"/house/{house_id}/radio").content.decode()
    assert "Nothing is measured yet" in before
    assert "Chance (draws leave)" not in before
    five(writer, house_id)
    told = sheet(writer, house_id)
    assert "5 links measured" in told
    assert "All links lose more than computed by" in told
    after = writer.get(f"/house/{house_id}/radio").content.decode()
    assert "5 links measured" in after
    assert "Chance (draws leave)" in after
    assert 'name="numbers"' not in after  # nothing to ask for any more


def test_what_a_link_taught_changes_who_is_reached(writer: Client, house_id: str) -> None:
    def best(told: str) -> str:
        return told.split('id="D20"', 1)[1].split("</tr>", 1)[0]

    before = best(writer.get(f"/house/{house_id}/radio").content.decode())
    assert "by way of D31" in before
    assert before.count(">likely<") == 2
    for end in ("D31", "D21", "D22", "D11", "D06", "N1"):
        write(writer, house_id, a="D20", b=end, not_heard="1")
    after = best(writer.get(f"/house/{house_id}/radio").content.decode())
    assert after.count(">likely<") == 0


def test_a_reader_sees_the_links_and_has_no_form(writer: Client, reader: Client, house_id: str) -> None:
    write(writer, house_id, a="N1", b="D01", level="-61")
    told = sheet(reader, house_id)
    assert "\u221261 dBm" in told
    assert 'id="add"' not in told
    assert "withdraw" not in told


def test_a_link_to_measure_next_leads_to_the_form_filled_in(writer: Client, house_id: str) -> None:
    told = sheet(writer, house_id).split('id="next"')[1].split("</section>")[0]
    query = told.split('href="?')[1].split("#")[0].replace("&amp;", "&")
    form = sheet(writer, house_id, query).split('id="add"')[1].split("</section>")[0]
    assert form.count(" selected>") == 2


def test_without_positions_it_says_what_to_measure_first(
    writer: Client, office: door.Account, tree: Path
) -> None:
    plain = json.loads((tree / "demo/house.json").read_bytes())
    for thing in (*plain["boxes"].values(), *plain["places"].values()):
        thing.pop("position", None)
    assert isinstance(door.begin_house(json.dumps(plain).encode(), by=office), door.Saved)
    page = sheet(writer, plain["id"])
    assert "fewer than two of this network have a position" in page
    assert "No link would tell more" not in page


def test_what_was_measured_counts_in_the_checks_of_the_house_too(writer: Client, house_id: str) -> None:
    def told() -> str:
        return writer.get(f"/house/{house_id}/checks").content.decode()

    doubt = "Radio may or may not carry D22"
    assert doubt not in told()
    for device in ("D20", "D21", "D22", "D31"):
        write(writer, house_id, a=device, b="N1", not_heard="1")
    assert doubt in told()
