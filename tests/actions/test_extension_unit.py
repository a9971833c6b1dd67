"""An extension unit is wired and has no radio: fitted and tested like the rest, joined by nobody."""

import json
from pathlib import Path
from typing import Any

import pytest

from secondfix.actions.check import check
from secondfix.actions.names import names
from secondfix.actions.reach import reach
from secondfix.actions.walk import walk
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.findings import Outcome
from secondfix.house import House, read_house
from secondfix.joining import StepKind

DEFAULTS = default_assumptions()


@pytest.fixture(scope="module")
def plain(tree: Path) -> dict[str, Any]:
    """The mended demo house with an extension unit in a box of its own beside B11, for the landing light."""
    house: dict[str, Any] = json.loads((tree / "demo/house-mended.json").read_text(encoding="utf-8"))
    box = json.loads(json.dumps(house["boxes"]["B11"]))
    box["position"]["x_mm"] += 150
    box["gangs"] = {"1": box["gangs"]["1"]}
    house["boxes"]["B61"] = box
    stands = {"model": "murrowfen-burr@1", "box": "B61", "mounts": ["1"], "gangs": ["1"]}
    house["devices"]["D61"] = stands
    house["loads"]["L01"]["multiway"] = {
        "arrangement": {"value": "together", "known": "measured"},
        "gangs": ["B01.1", "B61.1", "B11.1"],
        "others": {"value": "input", "known": "seen_open"},
    }
    return house


def read(plain: dict[str, Any]) -> House | list[tuple[str, str]]:
    found = read_house(json.dumps(plain).encode(), where="x", models=shipped_models())
    return found if isinstance(found, House) else [(f.path, f.expected) for f in found]


@pytest.fixture(scope="module")
def house(plain: dict[str, Any]) -> House:
    found = read(plain)
    assert isinstance(found, House), found
    return found


def test_nothing_is_found_against_it_and_nothing_is_asked_of_its_radio(house: House) -> None:
    found = [f for f in check(house, assumptions=DEFAULTS).findings if f.outcome is not Outcome.PASSES]
    assert [(f.rule, f.place) for f in found] == []


def test_it_shows_no_entry(house: House) -> None:
    assert names(house, assumptions=DEFAULTS).names.of_device["D61"] == ()


def test_radio_does_not_ask_for_it(house: House) -> None:
    assert {d.id for d in reach(house, assumptions=DEFAULTS).devices} == set(house.devices) - {"D61"}


def test_the_walk_fits_and_tests_it_and_never_joins_it(house: House) -> None:
    steps = [s for s in walk(house, assumptions=DEFAULTS).walk.steps if s.device == "D61"]
    assert [s.kind for s in steps] == [StepKind.FIT, StepKind.FUNCTION_TEST]
    assert [s.marks for s in steps] == [(), ()]


@pytest.mark.parametrize(
    ("change", "path", "expected"),
    [
        ({"devices": {"D61": {"network": "N1"}}}, "devices.D61.network", "no radio"),
        (
            {"boxes": {"B61": {"gangs": {"1": {"duty": "scene_only", "extends": None}}}}},
            "devices.D61.gangs[0]",
            "a gang that extends another",
        ),
        (
            {"scenes": {"S1": {"commands": [{"device": "D61", "entry": 1, "to": "off"}]}}},
            "scenes.S1.commands[0].entry",
            "has no radio",
        ),
        (
            {"devices": {"D61": {"box": None, "mounts": [], "gangs": [], "place": "P94"}}},
            "devices.D61.place",
            "a box",
        ),
    ],
)
def test_what_it_cannot_do_is_refused(
    plain: dict[str, Any], change: dict[str, Any], path: str, expected: str
) -> None:
    found = read(merged(plain, change))
    assert isinstance(found, list)
    assert [(at, words) for at, words in found if at == path and expected in words], found


def merged(whole: dict[str, Any], change: dict[str, Any]) -> dict[str, Any]:
    out = dict(whole)
    for key, value in change.items():
        out[key] = merged(out.get(key, {}), value) if isinstance(value, dict) else value
        if value is None:
            del out[key]
    return out
