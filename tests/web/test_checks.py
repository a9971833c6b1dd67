"""Findings, survey list and assumptions on the screen are those of `check`."""

from pathlib import Path

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


@pytest.fixture
def demo(tree: Path) -> House:
    """The house of the fixture, read as the command line reads it."""
    house = read_house((tree / "demo/house.json").read_bytes(), where="h", models=shipped_models())
    assert isinstance(house, House)
    return house


@pytest.mark.parametrize("by", ["severity", "room", "rule", "nonsense"])
def test_every_finding_stands_there_however_they_are_listed(
    writer: Client, house_id: str, demo: House, by: str
) -> None:
    page = writer.get(f"/house/{house_id}/checks?by={by}").content.decode()
    told = [f for f in check(demo, assumptions=default_assumptions()).findings if f.severity]
    assert page.count('<article class="finding">') == len(told)


def test_the_survey_list_is_that_of_check(writer: Client, house_id: str, demo: House) -> None:
    page = writer.get(f"/house/{house_id}/survey").content.decode()
    lines = check(demo, assumptions=default_assumptions()).survey
    assert lines
    assert page.count('class="to-write"') == len(lines)
    assert "isolate, lock off, prove dead" in page


def test_a_house_of_its_own_value_changes_the_answers_and_goes_again(writer: Client, house_id: str) -> None:
    here = f"/house/{house_id}/assumptions"
    sent = {"base": "1", "name": "cable_allowance_mm", "value": "30", "source": "measured in two boxes"}
    assert writer.post(here, sent).status_code == 302
    assert door.open_house(house_id).house.assumptions["cable_allowance_mm"].value == 30
    assert b"measured in two boxes" in writer.get(here).content
    assert writer.post(here, {"base": "2", "name": "cable_allowance_mm", "value": ""}).status_code == 302
    assert door.open_house(house_id).house.assumptions == {}


@pytest.mark.parametrize(
    ("sent", "line"),
    [
        ({"name": "cable_allowance_mm", "value": "deep"}, "a whole number"),
        ({"name": "no_such_thing", "value": "3"}, "the name of an assumption"),
        ({"name": "cable_allowance_mm", "value": "3", "base": "x"}, "the number of an edit"),
    ],
)
def test_a_slip_in_an_assumption_is_told(
    writer: Client, house_id: str, sent: dict[str, str], line: str
) -> None:
    answer = writer.post(f"/house/{house_id}/assumptions", {"base": "1", **sent})
    assert answer.status_code == 422
    assert line in answer.content.decode()
    assert door.house_row(house_id).number == 1


def test_two_people_who_set_one_assumption_take_a_side(writer: Client, house_id: str) -> None:
    here = f"/house/{house_id}/assumptions"
    writer.post(here, {"base": "1", "name": "cable_allowance_mm", "value": "9"})
    answer = writer.post(here, {"base": "1", "name": "cable_allowance_mm", "value": "12"})
    settle = answer["Location"]
    page = writer.get(settle).content.decode()
    assert "As it stands now" in page
    path = "side:assumptions.cable_allowance_mm"
    assert writer.post(settle, {"seen": "2", path: "mine"}).status_code == 302
    assert door.open_house(house_id).house.assumptions["cable_allowance_mm"].value == 12
