"""The register: beginning a house, finding one, its stage, away and back."""

from pathlib import Path

from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from secondfix.store import door


def test_an_empty_register_says_what_to_do_first(writer: Client) -> None:
    assert b"Begin with one" in writer.get("/").content


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
    assert b"Larkholm" not in writer.get("/").content
    assert b"Larkholm" in writer.get("/away").content
    writer.post("/away", {"house": house_id})
    assert b"Larkholm" in writer.get("/").content
