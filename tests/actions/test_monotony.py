"""Worse never looks better: a number moved to its worse side mends no answer of the rules that read it."""

import json
from collections.abc import Iterable, Iterator
from functools import cache
from itertools import pairwise
from typing import Any

import pytest

from secondfix import electrical
from secondfix.actions.check import RULES, check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import schedule
from tests.actions.directions import GROUNDS, NO_NUMBER, SERIES, WAYS, Way
from tests.actions.test_injected_faults import CASES
from tests.actions.worlds import FILES, Plain, changed, mended, read, troubled

ELECTRICAL = {rule.id for rule in electrical.RULES}
Spot = tuple[str | int, ...]

# From no fault found to the gravest: a doubt that could be a danger is graver than advice, a certain fault
# graver than such a doubt.
RANK = {
    (Outcome.CANNOT_TELL, Severity.ADVICE): 1,
    (Outcome.FAILS, Severity.ADVICE): 2,
    (Outcome.CANNOT_TELL, Severity.FAULT): 3,
    (Outcome.CANNOT_TELL, Severity.DANGER): 4,
    (Outcome.FAILS, Severity.FAULT): 5,
    (Outcome.FAILS, Severity.DANGER): 6,
}


def ranks(findings: Iterable[Finding], rules: tuple[str, ...]) -> dict[tuple[str, str], int]:
    """The gravest answer of each rule at each place."""
    out: dict[tuple[str, str], int] = {}
    for f in findings:
        if f.rule in rules:
            rank = RANK[f.outcome, f.severity] if f.severity else 0
            out[f.rule, f.place] = max(rank, out.get((f.rule, f.place), 0))
    return out


def spots(at: Any, field: str) -> Iterator[Spot]:
    """Every place in a document that a field names; a fact's value stands for the fact."""
    if isinstance(at, dict) and at.keys() == {"value", "known"}:
        yield from (("value", *rest) for rest in spots(at["value"], field))
    elif not field:
        yield ()
    else:
        head, _, tail = field.partition(".")
        inner = dict(enumerate(at)) if isinstance(at, list) else at if isinstance(at, dict) else {}
        for key, value in inner.items():
            if head in {"*", key}:
                yield from ((key, *rest) for rest in spots(value, tail))


def moved(plain: Plain, where: list[Spot], *, times: float = 1, plus: int = 0) -> Plain:
    """A copy with the numbers at these places moved."""
    copy: Plain = json.loads(json.dumps(plain))
    for spot in where:
        at: Any = copy
        for key in spot[:-1]:
            at = at[key]
        old = at[spot[-1]]
        at[spot[-1]] = max(round(old * times), min(old, 1)) + plus  # one lamp is the fewest
    for wall in copy.get("walls", {}).values():  # a wall is as thick as its layers at least
        layers = wall.get("layers", {}).get("value", [])
        wall["thickness_mm"] = max(wall.get("thickness_mm", 0), sum(la["thickness_mm"] for la in layers))
    return copy


def moves(way: Way) -> Iterator[dict[str, Any]]:
    yield from ({"times": t} for t in way.times)
    yield from ({"plus": p} for p in way.plus)


def grounds(world: str, rules: tuple[str, ...]) -> Iterator[str]:
    """The documents in which a way is tried: the sound house, and with a fault of each of these rules."""
    yield json.dumps(mended(world))
    for rule in rules:
        for changes in (GROUNDS.get((rule, world)), CASES.get((rule, world), (None,))[0]):
            if changes is not None:
                yield json.dumps(changed(mended(world), changes))


@cache
def before(text: str, rules: tuple[str, ...]) -> dict[tuple[str, str], int]:
    return asked(json.loads(text), rules) or {}


def asked(plain: Plain, rules: tuple[str, ...]) -> dict[tuple[str, str], int] | None:
    """The gravest answers, of the electrical package alone where that is all; None if it cannot be read."""
    house = read(plain)
    if house is None:
        return None
    if rules and ELECTRICAL.issuperset(rules):
        return ranks(electrical.check(schedule(house, house.models), default_assumptions()), rules)
    return ranks(check(house, assumptions=default_assumptions()).findings, rules)


def mended_by(
    text: str, way: Way, where: list[Spot], by: dict[str, Any]
) -> tuple[int, list[tuple[str, str]]] | None:
    """How many answers are worse once the numbers are moved, and which are better; None if it is unusable."""
    after = asked(moved(json.loads(text), where, **by), way.rules)
    if after is None:
        return None
    first = before(text, way.rules)
    better = [key for key, rank in first.items() if after.get(key, 0) < rank]
    return sum(rank > first.get(key, 0) for key, rank in after.items()), better


def named(way: Way) -> str:
    return f"{way.field}-{way.rules[0]}"


@pytest.mark.parametrize("way", WAYS, ids=named)
def test_all_of_a_kind_moved_to_the_worse_side_mend_nothing_and_harm_something(way: Way) -> None:
    worse = 0
    for world in FILES:
        for text in grounds(world, way.rules[:1]):
            if where := list(spots(json.loads(text), way.field)):
                tried = (mended_by(text, way, where, by) for by in reversed(list(moves(way))))
                harmed, better = next(found for found in tried if found)
                assert better == [], world
                worse += harmed
    assert worse, "a number that harms nothing is not read"


@pytest.mark.deep
@pytest.mark.parametrize("world", sorted(FILES))
@pytest.mark.parametrize("way", WAYS, ids=named)
def test_each_number_moved_to_the_worse_side_mends_nothing(way: Way, world: str) -> None:
    for text in (*grounds(world, way.rules), json.dumps(troubled(world))):
        for spot in spots(json.loads(text), way.field):
            for by in moves(way):
                _, better = mended_by(text, way, [spot], by) or (0, [])
                assert better == [], (spot, by)


@pytest.mark.parametrize(("rule", "world"), SERIES)
def test_each_of_a_series_is_no_better_than_the_one_before_and_the_last_worse(rule: str, world: str) -> None:
    told = [asked(changed(mended(world), change), (rule,)) or {} for change in SERIES[rule, world]]
    for milder, worse in pairwise(told):
        assert [key for key, rank in milder.items() if worse.get(key, 0) < rank] == []
    assert max(told[-1].values()) > max(told[0].values(), default=0)


def test_every_rule_with_a_number_has_a_way_and_every_other_its_reason() -> None:
    ways = {rule for way in WAYS for rule in way.rules} | {rule for rule, _ in SERIES}
    assert ways | NO_NUMBER.keys() == {rule.id for rule in RULES}
    assert ways & NO_NUMBER.keys() == set()
