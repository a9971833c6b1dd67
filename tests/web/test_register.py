"""The register: beginning a house, finding one, its stage, away and back."""

import json
from pathlib import Path

from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from secondfix.house import as_canonical_json, begin
from secondfix.store import door


def test_an_empty_register_says_what_to_do_first(writer: Client) -> None:
    page = writer.get("/").content.decode()
    assert "Begin with one" in page
    assert 'name="demo" value="house"' in page


def test_a_house_begins_from_its_name(writer: Client) -> None:
    answer = writer.post("/new", {"name": "Marsh End 3"})
    assert answer["Location"] == f"/house/{door.houses()[0].id}/"
    assert b"Marsh End 3" in writer.get("/").content


def test_a_house_without_a_name_is_refused_in_words(writer: Client) -> None:
    answer = writer.post("/new", {"name": ""})
    assert answer.status_code == 422
    assert b"name" in answer.content
    assert door.houses() == ()


def test_a_house_from_a_file_and_never_a_twin(writer: Client, tree: Path) -> None:
    data = (tree / "demo/house.json").read_bytes()
    for _ in range(2):
        answer = writer.post("/new", {"file": SimpleUploadedFile("house.json", data)})
        assert answer.status_code == 302
    assert len(door.houses()) == 1
    assert b"stands in the register already" in writer.get(answer["Location"]).content


def test_a_file_with_faults_tells_them_all(writer: Client) -> None:
    answer = writer.post("/new", {"file": SimpleUploadedFile("house.json", b'{"format": 1, "name": 7}')})
    assert answer.status_code == 422
    assert answer.content.count(b"expected") >= 3


def test_finding_a_house_by_words_of_its_name_and_stage(writer: Client, house_id: str) -> None:
    assert b"Larkholm" in writer.get("/?find=wendleby+SURVEY").content
    assert b"No house here" in writer.get("/?find=marsh").content


def test_the_stage_is_set_in_words(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/", {"stage": "second_fix"})
    assert b"second fix" in writer.get("/").content


def test_what_is_open_stands_on_the_first_sheet(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/").content.decode()
    assert "3 dangers" in page
    assert "3 faults" in page
    assert "never" in page or "Nothing here calls a circuit safe" in page


def test_a_house_put_away_comes_back_whole(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/", {"act": "away"})
    assert f"/house/{house_id}/" not in writer.get("/").content.decode()
    assert b"Larkholm" in writer.get("/away").content
    writer.post("/away", {"house": house_id})
    assert f"/house/{house_id}/" in writer.get("/").content.decode()


def test_houses_stand_in_the_order_in_which_people_look_for_them(
    writer: Client, office: door.Account
) -> None:
    many(12, office)
    assert [row.name for row in door.find_houses(first=1, most=3).rows] == [
        "Fenwick Row 1", "Fenwick Row 2", "Fenwick Row 3",
    ]  # fmt: skip


def test_a_demo_house_begins_under_an_id_of_its_own_and_is_never_twinned(writer: Client, tree: Path) -> None:
    first = writer.post("/new", {"demo": "house"})
    again = writer.post("/new", {"demo": "house"})
    assert first["Location"] == again["Location"]
    (row,) = door.houses()
    assert row.id != json.loads((tree / "demo/house.json").read_text())["id"]
    writer.post(f"/house/{row.id}/", {"act": "away"})
    assert writer.post("/new", {"demo": "house"})["Location"] != first["Location"]


def test_a_demo_house_that_is_none_is_refused(writer: Client, desk: object) -> None:
    answer = writer.post("/new", {"demo": "../../secret"})
    assert answer.status_code == 422
    assert b"one of house, nec-house" in answer.content


def test_what_is_open_stands_in_the_register_with_the_edit_it_belongs_to(
    writer: Client, house_id: str, office: door.Account
) -> None:
    assert "not asked yet" in writer.get("/").content.decode()
    writer.get(f"/house/{house_id}/checks")
    page = writer.get("/").content.decode()
    assert "3 dangers" in page
    assert "not asked" not in page
    text = json.dumps({**json.loads(door.open_house(house_id).text), "name": "Marsh End 3"})
    door.save(house_id, text.encode(), base=1, by=office)
    assert "not asked since edit 1" in writer.get("/").content.decode()


def test_an_issue_that_is_looked_at_changes_no_count(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/history", {"base": "1"})
    writer.get(f"/house/{house_id}/issue/A")
    assert door.find_houses().rows[0].open is None


def test_thousands_of_houses_come_in_pages(writer: Client, office: door.Account) -> None:
    many(130, office)
    first = writer.get("/").content.decode()
    assert "houses 1 to 50 of 130" in first
    last = writer.get("/?page=3").content.decode()
    assert "houses 101 to 130 of 130" in last
    assert last.count('scope="row">') == 30
    assert "houses 101 to 130 of 130" in writer.get("/?page=99").content.decode()
    found = writer.get("/?find=row+7&by=edit").content.decode()
    assert "find=row+7&amp;by=edit&amp;page=" not in found  # one page of them
    assert found.count('scope="row">') == 22  # 7, 17, … 127 and 70 to 79


def test_the_register_is_ordered_as_asked(writer: Client, office: door.Account) -> None:
    many(3, office)
    ids = {row.name: row.id for row in door.houses()}
    door.set_stage(ids["Fenwick Row 1"], door.Stage.TEST, by=office)
    door.keep_counts(ids["Fenwick Row 2"], door.OpenCounts(1, 2, 0, 0, 0))
    door.keep_counts(ids["Fenwick Row 0"], door.OpenCounts(1, 0, 4, 0, 0))
    door.keep_counts(ids["Fenwick Row 1"], door.OpenCounts(7, 9, 9, 9, 9))  # of an edit that does not stand

    def names(order: door.Order) -> list[str]:
        return [row.name[-1] for row in door.find_houses(order=order).rows]

    assert names("name") == ["0", "1", "2"]
    assert names("edit") == ["2", "1", "0"]
    assert names("stage") == ["0", "2", "1"]
    assert names("open") == ["2", "0", "1"]
    found = door.find_houses("ROW function", order="stage")
    assert ([row.name for row in found.rows], found.count) == (["Fenwick Row 1"], 1)


def many(count: int, by: door.Account) -> None:
    """Houses of one room each: Fenwick Row 0, 1, …"""
    for number in range(count):
        house = begin(house_id=f"01936b1e-7a40-7c21-8f3e-{number:012x}", name=f"Fenwick Row {number}")
        door.begin_house(as_canonical_json(house).encode(), by=by)
