"""The order of joining and the worksheets on the screen, and the same on paper."""

import io
from pathlib import Path

import pypdfium2
import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.house import begin
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


@pytest.fixture
def nec_id(office: door.Account, tree: Path) -> str:
    """The demo house that follows NFPA 70."""
    assert isinstance(door.begin_house((tree / "demo/nec-house.json").read_bytes(), by=office), door.Saved)
    return door.houses()[0].id


def page_of(client: Client, house_id: str, rest: str) -> str:
    return client.get(f"/house/{house_id}/{rest}").content.decode()


def pages_of(data: bytes) -> list[str]:
    with pypdfium2.PdfDocument(io.BytesIO(data)) as pdf:
        return [page.get_textpage().get_text_range() for page in pdf]


def test_cautions_stand_before_any_step(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "walk")
    said = ("Work on mains can kill", "Prove dead at the point", "Isolate circuit C4")
    order = [page.index(words) for words in said]
    assert order == sorted(order)


def test_the_walk_has_every_device_and_what_is_counted(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "walk")
    assert page.count('class="join"') == len(door.open_house(house_id).house.devices) == 25
    assert "<dt>Isolations</dt><dd>4</dd>" in page
    assert "about 164 m, perhaps not the shortest" in page
    assert "Join before fitting, on a bench." in page


def test_a_nec_house_has_its_own_words(writer: Client, nec_id: str) -> None:
    page = page_of(writer, nec_id, "walk")
    assert "<dt>Lockouts</dt>" in page
    assert "De-energize" in page
    assert "Isolate circuit" not in page
    sheet = page_of(writer, nec_id, "worksheets/D04")
    assert "test for absence of voltage" in sheet


def test_every_worksheet_is_listed_with_its_reference_and_no_code(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "worksheets")
    assert page.count("/worksheets/D") == 25
    assert ">K09</td>" in page


def test_a_worksheet_has_its_cautions_before_its_steps(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "worksheets/D09")
    order = [
        page.index(words)
        for words in (
            "Isolate circuits C1",
            "Work on mains can kill",
            "Capture before fitting",
            "kept in the key ring as K09",
            "Press 3 times within 1.5",
            "2 entries must appear",
            "Function test",
            "When nothing appears",
        )
    ]
    assert order == sorted(order)


def test_a_worksheet_knows_its_neighbours(writer: Client, house_id: str) -> None:
    assert "After it: 2, D31" in page_of(writer, house_id, "worksheets/D09")
    assert "Before it: 1, D09" in page_of(writer, house_id, "worksheets/D31")


def test_every_worksheet_can_be_shown(writer: Client, house_id: str, nec_id: str) -> None:
    for each in (house_id, nec_id):
        for device in door.open_house(each).house.devices:
            assert writer.get(f"/house/{each}/worksheets/{device}").status_code == 200


def test_a_light_worked_from_several_places_points_to_its_sheet(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "worksheets/D11")
    assert "Before a conductor is parted: the sheet of Hall light (L01)" in page


def test_one_worksheet_is_printed_after_its_cautions(writer: Client, house_id: str) -> None:
    answer = writer.get(f"/house/{house_id}/worksheets.pdf?device=D04")
    assert answer["Content-Type"] == "application/pdf"
    assert answer["Content-Disposition"] == 'inline; filename="worksheets-D04.pdf"'
    pages = pages_of(answer.content)
    assert "Work on mains can kill" in pages[0]
    assert any("D04" in page for page in pages[1:])
    assert not any("D05 (" in page for page in pages)
    assert any("draft, edit 1" in page for page in pages)


def test_all_together_are_printed_among_the_papers(writer: Client, house_id: str) -> None:
    assert writer.get(f"/house/{house_id}/worksheets.pdf")["Location"] == f"/house/{house_id}/papers"
    assert f'href="/house/{house_id}/papers">All worksheets on paper' in page_of(
        writer, house_id, "worksheets"
    )


@pytest.mark.parametrize("rest", ["worksheets/D99", "worksheets.pdf?device=D99", "worksheets.pdf?stage=40"])
def test_a_worksheet_that_is_not_there_is_not_found(writer: Client, house_id: str, rest: str) -> None:
    assert writer.get(f"/house/{house_id}/{rest}").status_code == 404


def test_a_house_without_devices_says_what_comes_first(writer: Client, office: door.Account) -> None:
    empty = begin(house_id="01938f2a-61d4-7b0e-a5c7-3e9d40b8aa01", name="Bare Yard")
    saved = door.begin_house(empty.model_dump_json(exclude_unset=True).encode(), by=office)
    assert isinstance(saved, door.Saved)
    for sheet in ("walk", "worksheets"):
        assert "No device is chosen yet" in page_of(writer, empty.id, sheet)
