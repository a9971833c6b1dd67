"""The key ring on the screen: codes shown on demand alone, and never where somebody could read along."""

import json
import logging

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
CODE = "83FED3407A939723A5C639B26916D505C3B5"
OTHER = "34028-23669-20938-46346-33746-07431-56821-14554"


@pytest.fixture
def here(house_id: str) -> str:
    return f"/house/{house_id}/keys"


def kept(client: Client, here: str, **also: str) -> int:
    return client.post(here, {"act": "keep", "reference": "K77", "code": CODE, **also}).status_code


def test_the_references_of_the_house_stand_there_without_a_code(writer: Client, here: str) -> None:
    page = writer.get(here).content.decode()
    assert '<tr role="row" id="K01">' in page
    assert "none kept" in page


def test_a_reference_that_the_journal_alone_has_stands_there_too(
    writer: Client, office: door.Account, here: str, house_id: str
) -> None:
    line = {
        "format": 1, "id": "01939087-81e1-76d4-b535-d7685e9305da", "house": house_id, "revision": "A",
        "kind": "fitted", "subject": "device:D08", "code_ref": "K91", "writer": "Una Brackett",
        "at": "2025-02-11T10:05+01:00",
    }  # fmt: skip
    assert door.post_entries(house_id, json.dumps(line).encode(), by=office).faults == ()
    page = writer.get(here).content.decode()
    row = page.split('id="K91"', 1)[1].split("</tr>", 1)[0]
    assert "D08 as Una Brackett fitted it, 2025-02-11" in row


def test_a_code_is_kept_and_shown_only_on_demand_with_its_trail(
    writer: Client, here: str, house_id: str
) -> None:
    assert kept(writer, here) == 302
    assert CODE not in writer.get(here).content.decode()
    shown = writer.post(here, {"act": "show", "reference": "K77"})
    assert CODE in shown.content.decode()
    assert "no-store" in shown["Cache-Control"]
    assert CODE not in shown.content.decode().split("</title>")[0]
    after = writer.get(here)
    assert CODE not in after.content.decode()
    assert "no-store" in after["Cache-Control"]
    assert [(s.reference, s.by) for s in door.shown(house_id)] == [("K77", "Ilka")]


def test_a_code_is_never_asked_for_in_an_address(writer: Client, here: str, house_id: str) -> None:
    kept(writer, here)
    assert CODE not in writer.get(here, {"act": "show", "reference": "K77"}).content.decode()
    assert door.shown(house_id) == ()


def test_a_code_is_replaced_only_when_said(writer: Client, here: str) -> None:
    kept(writer, here)
    assert kept(writer, here, code=OTHER) == 422
    assert kept(writer, here, code=OTHER, replace="on") == 302
    assert OTHER in writer.post(here, {"act": "show", "reference": "K77"}).content.decode()


@pytest.mark.parametrize("code", [CODE[:-1] + "6", "", "7" * 1001])
def test_a_code_with_a_fault_is_refused_and_not_echoed(
    writer: Client, here: str, house_id: str, code: str
) -> None:
    answer = writer.post(here, {"act": "keep", "reference": "K77", "code": code})
    assert answer.status_code == 422
    assert 'value="K77"' in answer.content.decode()
    assert not code or code not in answer.content.decode()
    assert door.references(house_id) == ()


def test_a_reader_is_offered_no_code_and_given_none(
    writer: Client, reader: Client, here: str, house_id: str
) -> None:
    kept(writer, here)
    assert "Show the code" not in reader.get(here).content.decode()
    assert reader.post(here, {"act": "show", "reference": "K77"}).status_code == 403
    assert door.shown(house_id) == ()


@pytest.mark.parametrize(
    "far",
    [
        {"REMOTE_ADDR": "192.168.4.17"},
        {"SERVER_NAME": "localhost", "HTTP_X_FORWARDED_FOR": "192.168.4.17"},
        {"REMOTE_ADDR": "nowhere"},
    ],
    ids=["another machine", "passed on", "no address"],
)
def test_over_plain_http_from_elsewhere_codes_are_neither_shown_nor_taken(
    writer: Client, here: str, house_id: str, far: dict[str, str]
) -> None:
    kept(writer, here)
    shown = writer.post(here, {"act": "show", "reference": "K77"}, **far)
    assert (shown.status_code, CODE in shown.content.decode()) == (403, False)
    sent = {"act": "keep", "reference": "K78", "code": OTHER}
    assert writer.post(here, sent, **far).status_code == 403
    assert "Keep it" not in writer.get(here, **far).content.decode()
    assert (door.shown(house_id), door.references(house_id)) == ((), ("K77",))


def test_encrypted_a_code_may_come_from_anywhere(writer: Client, here: str) -> None:
    sent = {"act": "keep", "reference": "K77", "code": CODE}
    assert writer.post(here, sent, secure=True, REMOTE_ADDR="192.168.4.17").status_code == 302


def test_no_code_reaches_a_log_the_document_or_a_backup_of_texts(
    writer: Client, here: str, house_id: str, caplog: pytest.LogCaptureFixture
) -> None:
    with caplog.at_level(logging.DEBUG):
        kept(writer, here)
        writer.post(here, {"act": "show", "reference": "K77"})
        writer.post(here, {"act": "keep", "reference": "7", "code": CODE})
    assert CODE not in caplog.text
    assert CODE not in door.open_house(house_id).text
