"""Every address has its right; strangers, readers and writers each get what the table says."""

import pytest
from django.test import Client

from tests.web.addresses import addresses, calls
from tests.web.conftest import signed_in
from secondfix.store import door
from secondfix.web.access import RULES, Who

# ruff: noqa: I001 - the desk begins Django before the door is imported
EVERY = addresses()
ALL = [a for a in EVERY if not a.name.startswith("api:")]  # the pages; a program's calls come below


def test_every_address_has_a_rule_and_every_rule_an_address() -> None:
    assert {a.name for a in EVERY} == set(RULES)


def test_an_address_without_a_rule_is_refused(
    writer: Client, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delitem(RULES, "register")
    assert writer.get("/").status_code == 403


def test_a_stranger_is_led_to_the_door(stranger: Client, house_id: str) -> None:
    for address in ALL:
        for method, who in (("get", RULES[address.name].look), ("post", RULES[address.name].send)):
            if who is not Who.ANYBODY:
                answer = getattr(stranger, method)(address.url(house_id))
                assert (answer.status_code, address.name) == (302, address.name)
                assert answer["Location"].startswith("/sign-in?next=")


def test_a_reader_changes_nothing(reader: Client, house_id: str) -> None:
    for address in ALL:
        rule, url = RULES[address.name], address.url(house_id)
        if rule.look is Who.WRITER:
            assert (reader.get(url).status_code, address.name) == (403, address.name)
        if rule.send is Who.WRITER:
            answer = reader.post(url, {"name": "Marsh End 3", "stage": "test"})
            assert (answer.status_code, address.name) == (403, address.name)
    row = door.house_row(house_id)
    assert (row.number, row.stage, len(door.houses())) == (1, "survey", 1)


# Stand only on a desk that is served to its network, or once a backup or a paper was made.
NOT_YET = {"authority", "backup", "job", "job-file", "page", "page-png", "radio-work"}


def test_a_writer_may_look_at_everything(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/history", {"base": "1"})  # an issue to look at
    for address in ALL:
        status = writer.get(address.url(house_id)).status_code
        allowed = {200, 302, 404, 405} if address.name in NOT_YET else {200, 302, 405}
        assert (status in allowed, address.name, status) == (True, address.name, status)


def test_a_house_that_is_not_there_is_not_found(writer: Client, desk: object) -> None:
    assert writer.get("/house/0190b7c4-5e21-7a3d-9c40-000000000000/").status_code == 404
    assert writer.get("/house/nowhere/").status_code == 404


def test_every_call_is_described_and_every_described_call_has_an_address(house_id: str) -> None:
    named = {a.name for a in EVERY if a.name.startswith("api:")} - {"api:api-root", "api:openapi-json"}
    assert {c.name for c in calls(house_id)} == named


def test_a_stranger_who_calls_is_told_and_not_led(stranger: Client, house_id: str) -> None:
    for address in (a for a in EVERY if a.name.startswith("api:")):
        assert (stranger.get(address.url(house_id)).status_code, address.name) == (401, address.name)
    for call in calls(house_id):
        answer = stranger.generic(call.method, call.url, b"{}", content_type="application/json")
        assert (answer.status_code, call) == (401, call)
        assert answer.json()["faults"][0]["where"] == "call"


def test_a_reader_who_calls_changes_nothing(reader: Client, house_id: str) -> None:
    for call in calls(house_id):
        answer = reader.generic(call.method, call.url, b"{}", content_type="application/json")
        writes = call.method != "get" and RULES[call.name].send is Who.WRITER
        assert (answer.status_code == 403, call) == (writes, call)
    row = door.house_row(house_id)
    assert (row.number, row.stage, len(door.houses())) == (1, "survey", 1)
    assert (door.journal_size(house_id), door.issues(house_id)) == (0, ())


def test_no_call_of_a_writer_is_forbidden(writer: Client, house_id: str) -> None:
    for call in calls(house_id):
        status = writer.generic(call.method, call.url, b"{}", content_type="application/json").status_code
        assert (status in {200, 201, 404, 409, 422}, call, status) == (True, call, status)


def test_a_session_that_calls_needs_the_token_of_a_form(office: door.Account, house_id: str) -> None:
    client = Client(SERVER_NAME="localhost", enforce_csrf_checks=True)
    client.force_login(office, backend="django.contrib.auth.backends.ModelBackend")
    for call in (c for c in calls(house_id) if c.method != "get"):
        answer = client.generic(call.method, call.url, b"{}", content_type="application/json")
        assert (answer.status_code, call) == (403, call)
    assert client.get("/api/houses").status_code == 200
    client.get("/")
    token = client.cookies["csrftoken"].value
    sent = {"text": "34970112332"}
    answer = client.post("/api/code", sent, content_type="application/json", headers={"X-CSRFToken": token})
    assert answer.status_code == 200


def test_a_reader_is_led_to_no_sheet_that_is_closed_to_readers(reader: Client, house_id: str) -> None:
    page = reader.get(f"/house/{house_id}/").content.decode()
    assert 'href="/people"' not in page
    assert 'href="/status"' in page


def test_what_is_not_there_and_what_is_not_allowed_are_told_on_a_sheet_with_a_way_on(
    reader: Client, house_id: str
) -> None:
    for answer, words in (
        (reader.get("/house/nowhere/"), "No such sheet"),
        (reader.get("/nowhere"), "No such sheet"),
        (reader.get("/people"), "Not for this account"),
    ):
        page = answer.content.decode()
        assert words in page
        assert "Nothing was changed" in page
        assert 'href="/"' in page


def test_a_slip_of_the_desk_itself_is_told_on_a_sheet_without_what_it_was(
    office: door.Account, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(*_: object, **__: object) -> None:
        raise RuntimeError("the inner words of a slip")

    client = signed_in(office)
    client.raise_request_exception = False
    monkeypatch.setattr("secondfix.web.register.views.show", fails)
    answer = client.get(f"/house/{house_id}/")
    page = answer.content.decode()
    assert answer.status_code == 500
    assert "The desk could not answer" in page
    assert "inner words" not in page
    assert 'href="/"' in page
