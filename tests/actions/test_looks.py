"""One look, one wording; and none sends hands into a box that may be live."""

import json
import re
from collections.abc import Callable, Iterator
from copy import deepcopy
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.files import Firm, open_firm
from secondfix.findings import SurveyLine
from secondfix.house import DEAD_FIRST, House, read_house
from secondfix.terms import said_around_names

ROOT = Path(__file__).parents[2]
HOUSES = ("demo/house.json", "demo/nec-house.json", "tests/second_house/house.json")
# What is seen in an open box alone; all else is seen from the room, at the board's label or on paper.
IN_A_BOX = re.compile(
    r"gangs\.\d+\.(duty|line)|mounts\.\d+\.(neutral|neutral_through|largest_awg)|depth_mm|set_back_mm|volume_mm3"
    r"|conductors|loops|grounds|clamps|fittings|earthed|shell|circuit|neutral|multiway\..*"
)


def facts(node: Any) -> Iterator[tuple[dict[str, Any], str]]:
    """Every surveyed fact, as the object that holds it and its key."""
    for key, value in node.items() if isinstance(node, dict) else ():
        if isinstance(value, dict) and set(value) == {"value", "known"}:
            yield node, key
        elif isinstance(value, dict):
            yield from facts(value)


def as_it_stands(_: dict[str, Any]) -> None:
    pass


def no_facts(house: dict[str, Any]) -> None:
    for node, key in list(facts({k: v for k, v in house.items() if k != "models"})):
        del node[key]


def no_plan(house: dict[str, Any]) -> None:
    for part in (*house["boxes"].values(), *house["places"].values(), *house["rooms"].values()):
        for key in ("position", "storey", "outline_mm"):
            part.pop(key, None)


def no_duties(house: dict[str, Any]) -> None:
    for box in house["boxes"].values():
        for gang in box.get("gangs", {}).values():
            for key in ("load", "extends", "duty"):
                gang.pop(key, None)
            gang["duty"] = "not_known"


def no_models(house: dict[str, Any]) -> None:
    for device in house["devices"].values():
        device.pop("model", None)


def no_purposes(house: dict[str, Any]) -> None:
    for load in house["loads"].values():
        load.pop("purpose", None)


def no_networks(house: dict[str, Any]) -> None:
    for device in house["devices"].values():
        device.pop("network", None)
    for network in house["networks"].values():
        network.pop("controller_place", None)


CAREFUL = (DEAD_FIRST, said_around_names(DEAD_FIRST, nec=True), "licensed person", "qualified person")
BLANKS: tuple[Callable[[dict[str, Any]], None], ...] = (
    as_it_stands,
    no_facts,
    no_plan,
    no_duties,
    no_models,
    no_purposes,
    no_networks,
)


@cache
def firm() -> Firm:
    opened = open_firm(ROOT / "tests/second_house/firm")
    assert isinstance(opened, Firm)
    return opened


def survey(plain: dict[str, Any]) -> tuple[SurveyLine, ...]:
    house = read_house(json.dumps(plain).encode(), where="blanked", models=firm().models)
    assert isinstance(house, House), house
    return check(house, assumptions=default_assumptions()).survey


@cache
def lines(name: str) -> frozenset[tuple[str, str, str]]:
    """Place, field and words of every survey line of a house, as it stands and with each kind of blank."""
    found = set()
    for blank in BLANKS:
        plain = deepcopy(json.loads((ROOT / name).read_text()))
        blank(plain)
        found |= {(line.place, line.field, line.words) for line in survey(plain)}
    return frozenset(found)


@pytest.mark.parametrize("name", HOUSES)
def test_no_two_lines_name_the_same_fact_in_different_words(name: str) -> None:
    words: dict[tuple[str, str], set[str]] = {}
    for place, field, said in lines(name):
        words.setdefault((place, field), set()).add(said)
    assert {key: said for key, said in words.items() if len(said) > 1} == {}
    assert len(words) > 100


@pytest.mark.parametrize("name", HOUSES)
def test_no_line_sends_hands_into_a_box_that_may_be_live(name: str) -> None:
    inside = [line for line in lines(name) if IN_A_BOX.fullmatch(line[1])]
    assert [line for line in inside if not any(words in line[2] for words in CAREFUL)] == []
    assert {field.split(".")[-1] for _, field, _ in inside} >= {
        "duty",
        "line",
        "neutral",
        "depth_mm",
        "shell",
    }
