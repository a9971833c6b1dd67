"""A path of the document in the words of its sheet."""

from pathlib import Path
from typing import Any

import pytest

from secondfix.exchange import told_field
from secondfix.house import House, read_house

# Path, value in plain JSON; the thing, the heading of its column or field, and the text that its sheet shows.
CASES: dict[str, tuple[str, Any, str, str, str]] = {
    "a fact in the sheet's unit": (
        "loads.L01.power_mw", {"value": 61500, "known": "seen_open"},
        "L01", "Power of one, W", "61.5 (seen open)",
    ),
    "a plain word": ("loads.L01.purpose", "ventilation", "L01", "Purpose", "ventilation"),
    "a thing of the house by its name": ("boxes.B01.room", "R02", "B01", "Room", "R02 Kitchen"),
    "a gang": ("boxes.B01.gangs.2.duty", "scene_only", "B01.2", "Duty", "scene only"),
    "a mount": (
        "boxes.B01.mounts.1.neutral", {"value": "absent", "known": "told"},
        "B01", "Neutral, mount 1", "absent (told)",
    ),
    "the house itself": ("mains_voltage_v", 230, "", "Mains voltage, V", "230"),
    "nothing": ("loads.L01.power_mw", None, "L01", "Power of one, W", "not stated"),
}  # fmt: skip


@pytest.fixture(scope="module")
def house(tree: Path) -> House:
    """The demo house."""
    read = read_house((tree / "demo/house.json").read_bytes(), where="demo", models={})
    assert isinstance(read, House)
    return read


@pytest.mark.parametrize("case", sorted(CASES))
def test_a_field_is_told_as_its_sheet_has_it(house: House, case: str) -> None:
    path, value, thing, heading, text = CASES[case]
    told = told_field(path)
    assert told is not None
    assert (told.thing, told.heading, told.shown(value, house)) == (thing, heading, text)


@pytest.mark.parametrize(
    "path", ["assumptions.cable_allowance_mm", "boxes.B01.gangs.1", "loads.L01", "scenes"]
)
def test_what_no_sheet_has_a_field_for_is_left_to_the_caller(path: str) -> None:
    assert told_field(path) is None
