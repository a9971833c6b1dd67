"""A radio answer names the assumptions that entered it, and no others."""

import json
from pathlib import Path
from typing import Any

import pytest

from secondfix.assumptions import OF_LINKS, OF_MEASURED_LINKS, Override, default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.house import House, read_house, schedule
from secondfix.radio import RULES, reach

DEMO = Path(__file__).parents[2] / "demo"
ALWAYS = {"radio_spread_db", "radio_fading_db", "radio_longest_link_m"}


def answers(plain: dict[str, Any], **set_to: Override) -> dict[str, Finding]:
    """The answer of `radio.reach` for each device."""
    house = read_house(json.dumps(plain).encode(), where="leaning", models={})
    assert isinstance(house, House), house
    assumptions = default_assumptions().overridden(set_to, set_by="house")
    found = reach(schedule(house, house.models), assumptions).findings
    return {f.also[0]: f for f in found if f.rule == "radio.reach"}


def demo() -> dict[str, Any]:
    plain: dict[str, Any] = json.loads((DEMO / "house-mended.json").read_text())
    return plain


BEFORE = answers(demo())


def test_each_answer_names_some_and_what_it_names_is_declared() -> None:
    declared = {name for rule in RULES for name in rule.leans_on}
    assert declared == {*OF_LINKS, *OF_MEASURED_LINKS}
    for found in BEFORE.values():
        assert ALWAYS <= set(found.assumptions) <= declared


def test_what_is_stated_or_not_crossed_is_leaned_on_by_nobody() -> None:
    """Every wall and floor of the mended house is surveyed, and every model states its power."""
    named = {name for found in BEFORE.values() for name in found.assumptions}
    assert not named & {"radio_wall_thickness_mm", "radio_floor_thickness_mm", "radio_transmit_power_dbm"}
    assert "radio_wall_most_db" in named
    assert any("radio_leaf_most_db" not in found.assumptions for found in BEFORE.values())
    assert any("radio_wall_most_db" not in found.assumptions for found in BEFORE.values())


def test_a_wall_of_unknown_material_is_leaned_on_where_it_is_crossed() -> None:
    plain = demo()
    for wall in plain["walls"].values():
        wall.pop("layers", None)
        wall.pop("thickness_mm", None)
    after = answers(plain)
    leaning = {device for device, f in after.items() if "radio_wall_thickness_mm" in f.assumptions}
    assert leaning >= {d for d, f in after.items() if f.outcome is not Outcome.PASSES} != set()
    assert leaning != set(after)


@pytest.mark.parametrize("name", [n for n in OF_LINKS if n not in ALWAYS])
def test_no_value_of_what_is_not_named_takes_a_pass_away(name: str) -> None:
    assumption = default_assumptions()[name]
    for value in (assumption.least, assumption.most):
        after = answers(demo(), **{name: Override(value)})
        lost = {d for d, f in BEFORE.items() if f.outcome is Outcome.PASSES is not after[d].outcome}
        assert [d for d in sorted(lost) if name not in BEFORE[d].assumptions] == []
