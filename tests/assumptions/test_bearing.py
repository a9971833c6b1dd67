"""What an answer names as leaned on is all that moves it: each assumption moved over its legal bounds."""

from collections import defaultdict
from pathlib import Path

import pytest

from secondfix.actions.assumptions import listed
from secondfix.actions.check import RULES, check
from secondfix.assumptions import DEFAULTS, Assumption, Assumptions, Override, default_assumptions
from secondfix.files import open_house, shipped_models
from secondfix.findings import Finding, Rule, Severity, fails
from secondfix.house import House

DEMO = Path(__file__).parents[2] / "demo"


def house(name: str) -> House:
    read = open_house(str(DEMO / name), shipped_models())
    assert isinstance(read, House)
    return read.model_copy(update={"assumptions": {}})


HOUSES = {name: house(name) for name in ("house.json", "nec-house-mended.json")}


def found(name: str, assumptions: Assumptions) -> dict[tuple[str, str], list[Finding]]:
    by_place = defaultdict(list)
    for finding in check(HOUSES[name], assumptions=assumptions).findings:
        by_place[finding.rule, finding.place].append(finding)
    return by_place


BASE = {name: found(name, default_assumptions()) for name in HOUSES}


@pytest.mark.parametrize("a", DEFAULTS, ids=lambda a: a.name)
def test_each_has_bounds_around_its_range(a: Assumption) -> None:
    assert a.least is not None
    assert a.most is not None
    assert a.least <= a.low
    assert a.high <= a.most


@pytest.mark.parametrize(
    "name", ["house.json", pytest.param("nec-house-mended.json", marks=pytest.mark.deep)]
)
@pytest.mark.parametrize("a", DEFAULTS, ids=lambda a: a.name)
def test_at_its_bounds_every_answer_stands_and_only_those_that_name_it_move(a: Assumption, name: str) -> None:
    for end in (a.least, a.most):
        moved = default_assumptions().overridden({a.name: Override(end or 0)}, set_by="command line")
        there = found(name, moved)
        for key in BASE[name].keys() | there.keys():
            before, after = BASE[name].get(key, []), there.get(key, [])
            assert before == after or any(a.name in f.assumptions for f in (*before, *after)), key


def test_whatever_is_assumed_something_says_that_it_leans_on_it() -> None:
    assert [one.assumption.name for one in listed(default_assumptions()) if not one.rules + one.answers] == []


@pytest.mark.parametrize("rule", [r for r in RULES if r.leans_on], ids=lambda rule: rule.id)
def test_a_rule_declares_only_what_exists(rule: Rule) -> None:
    assert set(rule.leans_on) <= set(default_assumptions())


def test_an_answer_may_not_lean_on_what_its_rule_does_not_declare() -> None:
    rule = Rule("x", "Is it?", "common practice, no source", may_lean_on=("glow_voltage_v",))
    with pytest.raises(ValueError, match="does not declare that it may lean on radio_spread_db"):
        fails(
            rule, Severity.FAULT, "B1", "No.", value="", limit="", remedy="", assumptions=("radio_spread_db",)
        )
