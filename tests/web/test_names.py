"""Names on the screen: by policy, as told from site, with their answers; another policy tried and saved."""

import json

from django.test import Client

from tests.desk import PASSWORD
from secondfix.house import NamePart
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
HTMX = {"HX-Request": "true"}
POLICY = {
    "base": "1",
    "gang_entry.0": "room",
    "gang_entry.1": "load",
    "whole_entry.0": "room",
    "whole_entry.1": "box",
    "place_entry.0": "room",
    "place_entry.1": "device",
    "between": " ",
}


def page_of(client: Client, house_id: str) -> str:
    return client.get(f"/house/{house_id}/names").content.decode()


def test_every_entry_has_its_name_purpose_and_answers(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id)
    assert "<strong>Parlour pump</strong>" in page
    assert "animal care" in page
    assert "provisional name" in page
    assert "Nobody knows what gang B07.3 is for" in page
    assert "Named on site" not in page
    assert "The journal tells of no name" in page


def test_a_name_given_on_site_stands_beside_that_of_the_policy(
    writer: Client, house_id: str, office: door.Account
) -> None:
    line = {
        "format": 1,
        "id": "01938f2a-61d4-7b0e-a5c7-3e9d40b81201",
        "house": house_id,
        "revision": "A",
        "kind": "named",
        "subject": "entry:D08.3",
        "writer": "Ilka",
        "at": "2026-11-20T09:15+00:00",
        "name": "Fish pump",
    }
    posted = door.post_entries(house_id, f"{json.dumps(line)}\n".encode(), by=office)
    assert not posted.faults
    page = page_of(writer, house_id)
    assert "Named on site" in page
    assert 'Fish pump <span class="soft">differs</span>' in page


def test_another_policy_tells_what_it_would_rename_and_saves_nothing(writer: Client, house_id: str) -> None:
    sent = {**POLICY, "gang_entry.0": "load", "gang_entry.1": "room"}
    part = writer.post(f"/house/{house_id}/names", sent, headers=HTMX).content.decode()
    assert "names would differ" in part
    assert "<strong>pump Parlour</strong>" in part
    assert "<html" not in part
    assert door.house_row(house_id).number == 1


def test_a_policy_is_saved_and_every_name_follows_it(writer: Client, house_id: str) -> None:
    sent = {**POLICY, "gang_entry.2": "gang", "between": "-", "spoken_language": "en"}
    page = writer.post(f"/house/{house_id}/names", sent, follow=True).content.decode()
    assert "Saved as edit 2." in page
    assert "<strong>Parlour-pump-3</strong>" in page
    naming = door.open_house(house_id).house.naming
    assert naming.gang_entry == (NamePart.ROOM, NamePart.LOAD, NamePart.GANG)
    assert (naming.between, naming.spoken_language) == ("-", "en")


def test_a_policy_sent_unchanged_makes_no_edit(writer: Client, house_id: str) -> None:
    page = writer.post(f"/house/{house_id}/names", POLICY, follow=True)
    assert b"Nothing differs from what stands." in page.content
    assert door.house_row(house_id).number == 1


def test_a_policy_without_any_part_is_told(writer: Client, house_id: str) -> None:
    sent = {**POLICY, "gang_entry.0": "", "gang_entry.1": ""}
    answer = writer.post(f"/house/{house_id}/names", sent)
    assert answer.status_code == 422
    assert b"naming.gang_entry" in answer.content


def test_a_house_without_devices_says_what_comes_first(writer: Client) -> None:
    begun = writer.post("/new", {"name": "Bare Yard"}, follow=True)
    house_id = begun.redirect_chain[-1][0].split("/")[2]
    page = page_of(writer, house_id)
    assert "No device is chosen yet" in page
    assert '<details class="policy" open>' in page
