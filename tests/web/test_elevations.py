"""Room elevations: the drawing of the papers, in the page's own ink, each plate a way to its rows."""

from django.test import Client


def test_the_first_room_with_a_box_is_shown(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/elevations").content.decode()
    assert "<svg" in page
    assert "var(--ink)" in page
    assert "style=" not in page.split("<svg", 1)[1].split("</svg>", 1)[0]


def test_every_plate_of_a_room_leads_to_its_rows(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/elevations/R01").content.decode()
    for box in ("B01", "B11"):
        assert f'#{box}" aria-label="{box}, 3 gangs"' in page or f'/{house_id}/" aria-label="{box}' in page


def test_a_room_that_is_not_there_is_not_found(writer: Client, house_id: str) -> None:
    assert writer.get(f"/house/{house_id}/elevations/R99").status_code == 404
