"""The catalogue of rules in docs/methods-rules.md and the rules in code hold each other, row by row."""

import ast
import json
import re
from dataclasses import dataclass
from fnmatch import fnmatchcase
from functools import cache
from pathlib import Path

import pytest

from secondfix import selection
from secondfix.actions.check import RULES, check
from secondfix.assumptions import default_assumptions
from secondfix.files import Firm, open_firm
from secondfix.findings import Finding, Mark, Outcome, Rule
from secondfix.house import House, read_house
from tests.actions.faults_more import MORE
from tests.actions.test_injected_faults import CASES, NOT_ASKED
from tests.actions.worlds import Answers
from tests.electrical.faults_wide import CASES as SMALL_HOUSES
from tests.electrical.sound import HOUSES

TREE = Path(__file__).resolve().parents[2]
PAGE = TREE / "docs" / "methods-rules.md"
SEVERITIES = ("danger", "fault", "advice")
EVERY = (*RULES, *selection.RULES)
EXAMPLES = [
    TREE / "demo" / f"{name}.json" for name in ("house", "house-mended", "nec-house", "nec-house-mended")
]
EXAMPLES.append(TREE / "tests" / "second_house" / "house.json")


@dataclass(frozen=True)
class Row:
    """One row of the page, its cells as they stand."""

    asks: str
    source: str
    marks: str
    leans_on: str
    gives: str
    tests: str


@cache
def rows() -> dict[str, Row]:
    lines = PAGE.read_text(encoding="utf-8").splitlines()
    found = [re.split(r" \| ", line.strip("| ")) for line in lines if line.startswith("| `")]
    assert len({cells[0] for cells in found}) == len(found), "a rule stands twice"
    return {cells[0].strip("`"): Row(*cells[1:]) for cells in found}


def told_of(rule: str) -> Answers:
    """Every answer of a rule that a table of injected faults expects."""
    tables: list[Answers] = [
        answers for *_, answers in (*SMALL_HOUSES.values(), *CASES.values(), *MORE.values())
    ]
    return {answer for answers in tables for answer in answers if answer[0] == rule}


def gives(rule: str) -> str:
    """The severities of its failures, and in brackets what only a doubt of it could be."""
    told = told_of(rule)
    surely = {severity for *_, outcome, severity in told if outcome == "fails"}
    maybe = {severity for *_, severity in told} - surely
    shown = [s if s in surely else f"({s})" for s in SEVERITIES if s in surely | maybe]
    return ", ".join(shown)


def expanded(cell: str) -> set[str]:
    """The assumptions that a cell names, ``*`` standing for any part of a name."""
    patterns = re.findall(r"`([^`]+)`", cell)
    names = {name for name in default_assumptions() for p in patterns if fnmatchcase(name, p)}
    assert all(any(fnmatchcase(n, p) for n in names) for p in patterns), f"{cell} names no assumption"
    return names


def test_every_rule_has_a_row_and_every_row_a_rule() -> None:
    assert set(rows()) == {rule.id for rule in EVERY}


@pytest.mark.parametrize("rule", EVERY, ids=lambda rule: rule.id)
def test_the_row_says_what_the_code_says(rule: Rule) -> None:
    row = rows()[rule.id]
    assert (row.asks, row.source) == (rule.asks, rule.source)
    assert row.marks == "; ".join(rule.marks)
    assert rule.marks, "a source carries its mark"
    assert expanded(row.leans_on) == set(rule.leans_on)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_the_row_names_the_severities_that_the_injected_faults_have(rule: Rule) -> None:
    assert rows()[rule.id].gives == gives(rule.id)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_a_limit_from_memory_alone_gives_advice_at_most(rule: Rule) -> None:
    if set(rule.marks) == {Mark.FROM_MEMORY}:
        assert rows()[rule.id].gives == "advice"


@cache
def words_of(path: Path) -> frozenset[str]:
    """Every whole string in a file of tests and in the tables that it takes from beside it."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    words = {n.value for n in ast.walk(tree) if isinstance(n, ast.Constant) and isinstance(n.value, str)}
    for node in tree.body:
        table = TREE.joinpath(*(getattr(node, "module", None) or "-").split(".")).with_suffix(".py")
        if isinstance(node, ast.ImportFrom) and table.is_file():
            words |= words_of(table)
    return frozenset(words)


@cache
def functions_in(path: Path) -> frozenset[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return frozenset(
        n.name for n in ast.walk(tree) if isinstance(n, ast.FunctionDef) and n.name.startswith("test_")
    )


@pytest.mark.parametrize("rule", EVERY, ids=lambda rule: rule.id)
def test_the_tests_of_a_row_exist_and_speak_of_its_rule(rule: Rule) -> None:
    worlds = {world for name, world in CASES if name == rule.id}
    worlds |= {f"not {world}" for name, world in NOT_ASKED if name == rule.id}
    cells = rows()[rule.id].tests.split("; ")
    assert set(filter(None, cells[0].split(", "))) == worlds
    files = [TREE / "tests" / name.strip("` ") for name in cells[1].split("`, `")]
    for path in files:
        assert functions_in(path), path
        assert rule.id in words_of(path), path


@cache
def findings_of(path: Path) -> tuple[Finding, ...]:
    firm = open_firm(path.parent / "firm")
    assert isinstance(firm, Firm)
    house = read_house(path.read_bytes(), where=path.name, models=firm.models)
    assert isinstance(house, House), "\n".join(map(str, house))
    return check(house, assumptions=firm.assumptions).findings


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_no_answer_about_an_example_house_goes_beyond_its_row(path: Path) -> None:
    for f in findings_of(path):
        row = rows()[f.rule]
        assert set(f.assumptions) <= expanded(row.leans_on), f
        if f.outcome is Outcome.FAILS:
            assert f.severity in row.gives.split(", "), f
        elif f.severity:
            assert re.search(rf"\b{f.severity}\b", row.gives), f


@pytest.mark.parametrize("world", HOUSES)
def test_nor_does_any_about_the_small_electrical_houses(world: str) -> None:
    house = read_house(json.dumps(HOUSES[world]).encode(), where=world, models={})
    assert isinstance(house, House)
    for f in check(house, assumptions=default_assumptions()).findings:
        assert set(f.assumptions) <= expanded(rows()[f.rule].leans_on), f
