"""Plans: the drawing of the papers in the page's own ink, ways to the rows, and what could not be drawn."""

from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


def test_the_first_storey_is_shown_in_the_ink_of_the_page(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/plans").content.decode()
    assert 'aria-current="page">Ground floor' in page
    drawing = page.split("<svg xmlns", 1)[1].split("</svg>", 1)[0]
    assert "var(--ink)" in drawing
    assert "style=" not in drawing
    assert "#" not in drawing.replace(f"/house/{house_id}/schedule#", "").replace(
        f"/house/{house_id}/building#", ""
    ).replace("url(#", "")


def test_every_symbol_leads_to_the_row_of_what_stands_there(writer: Client, house_id: str) -> None:
    house = door.open_house(house_id).house
    for storey in house.storeys:
        page = writer.get(f"/house/{house_id}/plans/{storey}").content.decode()
        for thing_id, thing in (*house.boxes.items(), *house.places.items()):
            here = house.rooms[thing.room].storey == storey and thing.position is not None
            sheet = "schedule" if thing_id in house.boxes else "building"
            assert (f'<a href="/house/{house_id}/{sheet}#{thing_id}" aria-label' in page) == here


def test_notes_of_the_plan_stand_beneath_it_with_their_numbers(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/plans").content.decode()
    notes = page.split("Notes of this plan", 1)[1]
    assert "it stays live when C1 is isolated" in notes
    assert '<span class="number">1</span>' in notes


def test_what_has_no_position_is_listed_with_the_way_to_its_form(writer: Client, house_id: str) -> None:
    for thing in ("B01", "P01"):
        sent = {"base": str(door.house_row(house_id).number), "x": "", "y": "", "height": ""}
        assert writer.post(f"/house/{house_id}/thing/{thing}", sent).status_code == 302
    page = writer.get(f"/house/{house_id}/plans").content.decode()
    lost = page.split("<h3>Position not known</h3>", 1)[1].split("</ul>", 1)[0]
    assert [f'/thing/{t}"' in lost for t in ("B01", "P01", "B02")] == [True, True, False]


def test_a_room_on_no_storey_is_listed(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/building", {"base": "1", "adds": "room", "name": "Apple loft"})
    page = writer.get(f"/house/{house_id}/plans").content.decode()
    assert "Apple loft" in page.split("On no storey yet", 1)[1]


def test_a_house_without_storeys_is_told_what_to_do_first(writer: Client) -> None:
    writer.post("/new", {"name": "Marsh End 3"})
    page = writer.get(f"/house/{door.houses()[0].id}/plans").content.decode()
    assert "No storey stands in the book yet" in page


def test_a_storey_that_is_not_there_is_not_found(writer: Client, house_id: str) -> None:
    assert writer.get(f"/house/{house_id}/plans/X9").status_code == 404
