"""The picture in the tutorial is what `pack` and `demo` draw for the parlour of the demo house."""

from pathlib import Path

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.house import House, read_house, schedule
from secondfix.papers import elevations_svg


def test_the_picture_of_the_parlour_is_the_one_drawn_today(tree: Path) -> None:
    house = read_house((tree / "demo/house.json").read_bytes(), where="demo", models={})
    assert isinstance(house, House), house
    found = check(house, assumptions=default_assumptions()).findings
    drawn = elevations_svg(schedule(house, house.models), "R05", found)
    assert drawn == (tree / "docs/pictures/parlour.svg").read_text(encoding="utf-8")
