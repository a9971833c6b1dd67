"""Taking any statement out of a house never turns another answer into a pass: over all rules at once."""

import json
from collections.abc import Iterator
from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Outcome
from secondfix.house import House, read_house

DEMO = Path(__file__).parents[2] / "demo"
TROUBLED, MENDED = (json.loads((DEMO / f"{name}.json").read_text()) for name in ("house", "house-mended"))
Path_ = tuple[str, ...]


def facts(plain: Any, at: Path_ = ()) -> Iterator[Path_]:
    """Every place that a survey may leave blank: facts with how they are known, and the like."""
    if not isinstance(plain, dict):
        return
    for key, value in plain.items():
        here = (*at, key)
        known = isinstance(value, dict) and set(value) == {"value", "known"}
        if known or key in {
            "position",
            "purpose",
            "outline_mm",
            "controller_place",
            "code_ref",
            "thickness_mm",
        }:
            yield here
        elif here[0] != "models":
            yield from facts(value, here)


def blanked(plain: dict[str, Any], path: Path_) -> dict[str, Any]:
    out = deepcopy(plain)
    node = out
    for key in path[:-1]:
        node = node[key]
    del node[path[-1]]
    return out


def answers(plain: dict[str, Any]) -> dict[tuple[str, str], bool]:
    """Rule and place: whether every answer there is a pass."""
    house = read_house(json.dumps(plain).encode(), where="blanked", models={})
    assert isinstance(house, House), house
    found: dict[tuple[str, str], bool] = {}
    for f in check(house, assumptions=default_assumptions()).findings:
        key = (f.rule, f.place)
        found[key] = found.get(key, True) and f.outcome is Outcome.PASSES
    return found


BEFORE = {id(plain): answers(plain) for plain in (TROUBLED, MENDED)}


def made_passes(plain: dict[str, Any], path: Path_) -> list[tuple[str, str]]:
    after = answers(blanked(plain, path))
    return [key for key, passed in after.items() if passed and not BEFORE[id(plain)].get(key, True)]


@given(st.sampled_from([(h, p) for h in (0, 1) for p in facts((TROUBLED, MENDED)[h])]))
def test_a_blank_never_makes_a_pass(chosen: tuple[int, Path_]) -> None:
    assert made_passes((TROUBLED, MENDED)[chosen[0]], chosen[1]) == []


@pytest.mark.deep
@pytest.mark.parametrize("house", [TROUBLED, MENDED], ids=["troubled", "mended"])
def test_no_blank_of_all_makes_a_pass(house: dict[str, Any]) -> None:
    assert [(path, made) for path in facts(house) if (made := made_passes(house, path))] == []


def test_there_is_much_to_blank() -> None:
    assert len(list(facts(MENDED))) > 500
