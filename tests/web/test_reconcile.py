"""A controller's list on the desk: columns mapped once, differences, a house begun from it."""

import re
from pathlib import Path

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from secondfix.store import door
from secondfix.web.maintaining import shelf

LIST = b"Body,Part,Called,Use\n5A11C04D00317E02,0,Kiln room,\n5A11C04D00317E02,1,Kiln light,lamp\n"
COLUMNS = {
    "column:address": "Body",
    "column:endpoint": "Part",
    "column:name": "Called",
    "column:purpose": "Use",
}


def read(client: Client, url: str, data: bytes = LIST, **more: object) -> str:
    answer = client.post(url, {"list": SimpleUploadedFile("list.csv", data), **more})
    assert answer.status_code == 200
    return answer.content.decode()


def held(page: str) -> str:
    found = re.search(r'name="held" value="([0-9a-f]+)"', page)
    assert found is not None
    return found[1]


def test_the_sheet_says_what_to_do_first(reader: Client, house_id: str) -> None:
    assert "first-step" in reader.get(f"/house/{house_id}/reconcile").content.decode()


def test_columns_are_asked_once_and_remembered(reader: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    page = read(reader, url)
    assert "Which column is what" in page
    assert 'class="outcome"' not in page
    answer = reader.post(url, {"held": held(page), **COLUMNS})
    assert "2 rows, 0 as the book says" in answer.content.decode()
    assert 'class="outcome"' in read(reader, url)  # the same columns again: not asked


def test_what_a_writer_said_is_kept_with_the_house(writer: Client, reader: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    writer.post(url, {"held": held(read(writer, url)), **COLUMNS})
    assert '"name": "Called"' in (door.list_mapping(house_id) or "")
    assert 'class="outcome"' in read(reader, url)  # another person's browser: not asked again


def test_what_a_reader_said_stays_in_the_reader_s_browser(
    writer: Client, reader: Client, house_id: str
) -> None:
    url = f"/house/{house_id}/reconcile"
    reader.post(url, {"held": held(read(reader, url)), **COLUMNS})
    assert door.list_mapping(house_id) is None
    assert "Which column is what" in read(writer, url)


def test_a_list_like_one_of_another_house_is_not_asked_again(
    writer: Client, house_id: str, office: door.Account, tree: Path
) -> None:
    url = f"/house/{house_id}/reconcile"
    writer.post(url, {"held": held(read(writer, url)), **COLUMNS, "network": "N2"})
    door.begin_house((tree / "demo/nec-house.json").read_bytes(), by=office)
    other = next(row.id for row in door.houses() if row.id != house_id)
    page = read(writer, f"/house/{other}/reconcile")
    assert 'class="outcome"' in page
    assert "Which column is what" in page  # the columns stand there to be changed
    assert '"network"' not in (door.list_mapping(other) or "")
    assert "Which column is what" in read(writer, url, LIST.replace(b"Called", b"Known as"))  # no such list


def test_each_difference_stands_with_the_step_that_mends_it(reader: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    page = reader.post(url, {"held": held(read(reader, url)), **COLUMNS}).content.decode()
    assert "Not in the book" in page
    assert "Missing in the list" in page
    assert "leads to no purpose" in page
    assert "write" not in page.partition("Another list")[0].partition("Hold it")[2]  # a reader


def test_words_lead_to_ours_and_the_mapping_can_be_taken_along(reader: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    sent = {"held": held(read(reader, url)), **COLUMNS, "purposes:lamp": "lighting"}
    page = reader.post(url, sent).content.decode()
    assert "leads to no purpose" not in page
    assert "&quot;lamp&quot;: &quot;lighting&quot;" in page


def test_a_mapping_file_is_taken_as_the_command_line_takes_it(
    reader: Client, house_id: str, tree: Path
) -> None:
    mapping = SimpleUploadedFile("mapping.json", (tree / "demo/maintenance/mapping.json").read_bytes())
    data = (tree / "demo/maintenance/list.csv").read_bytes()
    page = read(reader, f"/house/{house_id}/reconcile", data, mapping=mapping)
    assert "9 rows" in page


@pytest.mark.parametrize(
    ("sent", "says"),
    [
        ({}, "the list, chosen once more"),
        ({"held": "0" * 32}, "the list, chosen once more"),
        ({"list": SimpleUploadedFile("l.csv", b"")}, "to put right"),
    ],
)
def test_what_cannot_be_read_is_told(
    reader: Client, house_id: str, sent: dict[str, object], says: str
) -> None:
    answer = reader.post(f"/house/{house_id}/reconcile", sent)
    assert answer.status_code == 422
    assert says in answer.content.decode()


def test_no_column_that_tells_rows_apart_is_told(reader: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    answer = reader.post(url, {"held": held(read(reader, url)), "column:name": "", "column:room": "Called"})
    assert answer.status_code == 422
    assert "at least one of address, node and name" in answer.content.decode()


def test_nobody_has_the_list_of_somebody_else(reader: Client, writer: Client, house_id: str) -> None:
    url = f"/house/{house_id}/reconcile"
    key = held(read(reader, url))
    assert writer.post(url, {"held": key, **COLUMNS}).status_code == 422


def test_a_house_is_begun_from_a_list(writer: Client, office: door.Account, tree: Path) -> None:
    mapping = SimpleUploadedFile("mapping.json", (tree / "demo/maintenance/mapping.json").read_bytes())
    data = (tree / "demo/maintenance/list.csv").read_bytes()
    page = read(writer, "/new-list", data, mapping=mapping)
    assert "Begin this house" in page
    assert door.houses() == ()  # asking begins nothing
    kept = {"held": held(page), "name": "Saltern Row 2", "act": "begin"}
    answer = writer.post("/new-list", kept, follow=True)
    assert "Boxes are to be surveyed" in answer.content.decode()
    (row,) = door.houses()
    assert row.name == "Saltern Row 2"
    assert len(door.open_house(row.id).house.devices) > 0
    assert b'"named"' in door.journal_bytes(row.id)
    assert '"network": "N1"' in (door.list_mapping(row.id) or "")


def test_the_shelf_lets_the_oldest_go(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(shelf, "MOST_BYTES", 10)
    first = shelf.hold("a", b"123456", by="Ilka")
    second = shelf.hold("b", b"123456", by="Ilka")
    assert shelf.held(first, by="Ilka") is None
    assert shelf.held(second, by="Ilka") == shelf.Held("b", b"123456", "Ilka")
