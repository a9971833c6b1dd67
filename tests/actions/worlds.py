"""The two worlds in which every rule is tried: the mended demo houses at 230 V (IEC) and at 120 V (NEC)."""

import json
from copy import deepcopy
from functools import cache
from pathlib import Path
from typing import Any

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.house import House, read_house
from tests.electrical.sound import troubles

Plain = dict[str, Any]
Change = dict[str, object]
# Rule, place, outcome and severity of everything that is not a pass.
Answers = set[tuple[str, str, str, str | None]]

DEMO = Path(__file__).parents[2] / "demo"
FILES = {"iec": "house-mended", "nec": "nec-house-mended"}
TROUBLED_FILES = {"iec": "house", "nec": "nec-house"}


@cache
def _text(name: str) -> str:
    return (DEMO / f"{name}.json").read_text(encoding="utf-8")


def mended(world: str) -> Plain:
    """A fresh copy of the world's house, in which no rule finds a fault."""
    plain: Plain = json.loads(_text(FILES[world]))
    return plain


def troubled(world: str) -> Plain:
    """A fresh copy of the same house before it was mended."""
    plain: Plain = json.loads(_text(TROUBLED_FILES[world]))
    return plain


def changed(plain: Plain, changes: Change) -> Plain:
    """The same document with values put at dotted paths; None takes away what stands there."""
    for path, value in changes.items():
        *way, last = path.split(".")
        at: Any = plain
        for key in way:
            at = at[int(key)] if isinstance(at, list) else at.setdefault(key, {})
        if value is None:
            del at[last]
        else:
            at[last] = deepcopy(value)
    return plain


def read(plain: Plain) -> House | None:
    """The house, or None where the reader refuses it."""
    house = read_house(json.dumps(plain).encode(), where="changed", models={})
    return house if isinstance(house, House) else None


def answers(plain: Plain) -> tuple[Finding, ...]:
    """Every answer of every rule under the default assumptions; an AssertionError shows what is unusable."""
    house = read_house(json.dumps(plain).encode(), where="changed", models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return check(house, assumptions=default_assumptions()).findings


def told(*lines: str) -> Answers:
    """Answers in short: 'depth B10 fault' is a failure, 'depth B10 ?fault' a doubt that could be one."""
    found: Answers = set()
    for line in lines:
        rule, place, severity = line.split(" ")
        found.add((rule, place, "cannot_tell" if severity[0] == "?" else "fails", severity.lstrip("?")))
    return found


def troubles_of(world: str, changes: Change) -> Answers:
    """Everything that is not a pass once the world's mended house is changed."""
    return troubles(list(answers(changed(mended(world), changes))))


def not_passed(findings: tuple[Finding, ...]) -> set[tuple[str, str]]:
    """Rule and place of whatever is not a pass."""
    return {(f.rule, f.place) for f in findings if f.outcome is not Outcome.PASSES}
