"""Every address has its right; strangers, readers and writers each get what the table says."""

import pytest
from django.test import Client

from tests.web.addresses import addresses
from secondfix.store import door
from secondfix.web.access import RULES, Who

# ruff: noqa: I001 - the desk begins Django before the door is imported
ALL = addresses()


def test_every_address_has_a_rule_and_every_rule_an_address() -> None:
    assert {a.name for a in ALL} == set(RULES)


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


def test_a_writer_may_look_at_everything(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/history", {"base": "1"})  # an issue to look at
    for address in ALL:
        status = writer.get(address.url(house_id)).status_code
        assert (status in {200, 302, 405}, address.name, status) == (True, address.name, status)


def test_a_house_that_is_not_there_is_not_found(writer: Client, desk: object) -> None:
    assert writer.get("/house/0190b7c4-5e21-7a3d-9c40-000000000000/").status_code == 404
    assert writer.get("/house/nowhere/").status_code == 404
