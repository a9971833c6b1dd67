"""The cover sheet: names apart from the house, erased when asked twice."""

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
SENT = {"act": "write", "customer": "Odile Varn", "address": "Pellow Lane 11\r\nTressick", "note": "dog"}


@pytest.fixture
def here(house_id: str) -> str:
    return f"/house/{house_id}/cover"


def test_names_are_kept_apart_from_the_house(writer: Client, here: str, house_id: str) -> None:
    assert writer.post(here, SENT).status_code == 302
    page = writer.get(here)
    assert "Odile Varn" in page.content.decode()
    assert "no-store" in page["Cache-Control"]
    assert door.cover(house_id) == door.Cover("Odile Varn", "Pellow Lane 11\nTressick", "", "dog")
    assert "Odile" not in door.open_house(house_id).text


def test_erasing_is_asked_twice(writer: Client, here: str, house_id: str) -> None:
    writer.post(here, SENT)
    asked = writer.post(here, {"act": "erase"})
    assert b"Erase them for good" in asked.content
    assert door.cover(house_id) is not None
    assert writer.post(here, {"act": "erase", "sure": "yes"}).status_code == 302
    assert door.cover(house_id) is None
    assert b"Odile" not in writer.get(here).content


def test_what_is_too_long_is_told_and_what_was_typed_stays(writer: Client, here: str, house_id: str) -> None:
    answer = writer.post(here, {**SENT, "customer": "V" * 201})
    assert answer.status_code == 422
    assert b"at most 200" in answer.content
    assert b"Tressick" in answer.content
    assert door.cover(house_id) is None


def test_a_reader_sees_the_names_and_changes_none(
    writer: Client, reader: Client, here: str, house_id: str
) -> None:
    assert "No names stand here" in reader.get(here).content.decode()
    writer.post(here, SENT)
    page = reader.get(here).content.decode()
    assert "Odile Varn" in page
    assert "<textarea" not in page
    assert reader.post(here, {"act": "erase", "sure": "yes"}).status_code == 403
    assert door.cover(house_id) is not None
