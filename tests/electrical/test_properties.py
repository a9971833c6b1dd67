"""On random houses: missing data is never a pass, and a worse house never looks better."""

import random
from collections.abc import Iterable
from copy import deepcopy
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from secondfix.electrical import RULES
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import read_house
from tests.electrical.faults_wide import CASES
from tests.electrical.houses import Plain, houses
from tests.electrical.reads import paths, reads, without
from tests.electrical.sound import HOUSES, answers, spoilt
from tests.example_house import as_bytes

READS = reads()
FIELDS = sorted(set().union(*READS.values()))
GRAVE = {Severity.DANGER, Severity.FAULT}
# A large house costs as much as many small ones: half as many of them.
large = settings(
    max_examples=(settings.default or settings()).max_examples // 2,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)


def usable(plain: Plain) -> bool:
    """Whether the reader takes it."""
    return not isinstance(read_house(as_bytes(plain), where="any.json", models={}), list)


def passed(findings: list[Finding]) -> set[tuple[str, str]]:
    return {(f.rule, f.place) for f in findings if f.outcome is Outcome.PASSES}


def failed(findings: list[Finding], rules: set[str]) -> set[tuple[str, str]]:
    return {
        (f.rule, f.place)
        for f in findings
        if f.rule in rules and f.outcome is Outcome.FAILS and f.severity in GRAVE
    }


def test_the_page_lists_what_every_rule_reads() -> None:
    assert set(READS) == {rule.id for rule in RULES}
    assert all(READS.values())


@large
@given(houses())
def test_one_answer_per_rule_and_place(plain: Plain) -> None:
    found = answers(plain)
    assert len({(f.rule, f.place) for f in found}) == len(found)
    assert found == answers(plain)


def taking_away_makes_no_pass(plain: Plain, data: st.DataObject) -> None:
    """Fields that doubted or failing rules read, two dozen of them, one at a time."""
    found = answers(plain)
    doubted = {f.rule for f in found if f.outcome is not Outcome.PASSES}
    fields = sorted(set().union(*(READS[rule] for rule in doubted)))
    every = [path for field in fields for path in paths(plain, field)]
    for path in data.draw(st.permutations(every))[:24]:
        less = without(plain, path)
        if usable(less):
            assert passed(answers(less)) <= passed(found), path


@large
@given(houses(), st.data())
def test_a_field_taken_away_never_makes_a_pass(plain: Plain, data: st.DataObject) -> None:
    taking_away_makes_no_pass(plain, data)


def some(every: Iterable[Any], most: int) -> list[Any]:
    """The same few of many each time; all where ``most`` allows."""
    ordered = sorted(every)
    return ordered if len(ordered) <= most else random.Random(11).sample(ordered, most)


def mends_nothing(name: str, *, most: int) -> None:
    house, changes, _ = CASES[name]
    plain = spoilt(changes, of=house)
    found = answers(plain)
    rules = {f.rule for f in found if f.outcome is not Outcome.PASSES}
    for path in some({p for rule in rules for field in READS[rule] for p in paths(plain, field)}, most):
        less = without(plain, path)
        if usable(less):
            assert passed(answers(less)) <= passed(found), path


@pytest.mark.parametrize("name", CASES)
def test_no_field_taken_from_a_spoilt_house_mends_it(name: str) -> None:
    mends_nothing(name, most=6)


@pytest.mark.deep
@pytest.mark.parametrize("name", CASES)
def test_none_of_all_fields_taken_from_a_spoilt_house_mends_it(name: str) -> None:
    mends_nothing(name, most=10**6)


def makes_no_pass(field: str, *, most: int) -> None:
    stated = 0
    for plain in HOUSES.values():
        before = passed(answers(plain))
        for path in some(paths(plain, field), most):
            stated += 1
            less = without(plain, path)
            if usable(less):
                assert passed(answers(less)) <= before
    assert stated, "a sound house states every field that a rule reads"


@pytest.mark.parametrize("field", FIELDS)
def test_each_field_taken_from_a_sound_house_makes_no_pass(field: str) -> None:
    makes_no_pass(field, most=2)


@pytest.mark.deep
@pytest.mark.parametrize("field", FIELDS)
def test_each_place_of_a_field_taken_from_a_sound_house_makes_no_pass(field: str) -> None:
    makes_no_pass(field, most=10**6)


@large
@given(houses(), st.data())
def test_a_rule_does_not_hang_on_a_field_that_the_page_does_not_list(
    plain: Plain, data: st.DataObject
) -> None:
    field = data.draw(st.sampled_from(FIELDS))
    outcomes = {(f.rule, f.place): f.outcome for f in answers(plain)}
    for path in list(paths(plain, field))[:4]:
        less = without(plain, path)
        if usable(less):
            after = {(f.rule, f.place): f.outcome for f in answers(less)}
            moved = {rule for rule, place in outcomes.keys() | after.keys()
                     if outcomes.get((rule, place)) != after.get((rule, place))}  # fmt: skip
            assert moved <= {rule for rule, fields in READS.items() if field in fields}


def _assumed(at: Any, *, kept: bool) -> Any:
    """The document with every surveyed fact assumed, or taken away."""
    if isinstance(at, dict):
        if "known" in at:
            return {**at, "known": "assumed"}
        out = {k: _assumed(v, kept=kept) for k, v in at.items()}
        return {k: v for k, v in out.items() if kept or not (isinstance(v, dict) and "known" in v)}
    return at


@large
@given(houses())
def test_an_assumed_fact_is_an_absent_fact(plain: Plain) -> None:
    assert answers(_assumed(plain, kept=True)) == answers(_assumed(plain, kept=False))


def more_load_mends_nothing(plain: Plain, more_pct: int, data: st.DataObject) -> None:
    limits = {
        "contact", "module_total", "inrush", "circuit_load", "breaker_inrush", "ganged_dimmers", "nec_motor",
    }  # fmt: skip
    heavier = deepcopy(plain)
    for load in heavier["loads"].values():
        for field, most in (("power_mw", 20_000_000), ("count", 500), ("inrush_peak_ma", 2_000_000)):
            if field in load and data.draw(st.booleans()):
                more = -(-load[field]["value"] * (100 + more_pct) // 100)
                load[field] = {**load[field], "value": min(more, most)}
    before, after = answers(plain), answers(heavier)
    assert failed(before, limits) <= failed(after, limits)
    assert {k for k in passed(after) if k[0] in limits} <= passed(before)


def less_depth_mends_nothing(plain: Plain, less_mm: int) -> None:
    shallower = deepcopy(plain)
    for box in shallower["boxes"].values():
        for field, least in (("depth_mm", 5), ("set_back_mm", 0)):
            if field in box:
                box[field] = {**box[field], "value": max(least, box[field]["value"] - less_mm)}
    before, after = answers(plain), answers(shallower)
    assert failed(before, {"depth"}) <= failed(after, {"depth"})
    assert {k for k in passed(after) if k[0] == "depth"} <= passed(before)


@large
@given(houses())
def test_random_houses_are_usable(plain: Plain) -> None:
    assert usable(plain)


@large
@given(houses(), st.integers(1, 400), st.data())
def test_more_load_never_mends_a_failure(plain: Plain, more_pct: int, data: st.DataObject) -> None:
    more_load_mends_nothing(plain, more_pct, data)


@large
@given(houses(), st.integers(1, 30))
def test_less_depth_never_mends_a_failure(plain: Plain, less_mm: int) -> None:
    less_depth_mends_nothing(plain, less_mm)


@pytest.mark.deep
@large
@given(houses(), st.integers(1, 400), st.integers(1, 30), st.data())
def test_all_of_it_on_thousands_of_houses(
    plain: Plain, more_pct: int, less_mm: int, data: st.DataObject
) -> None:
    taking_away_makes_no_pass(plain, data)
    more_load_mends_nothing(plain, more_pct, data)
    less_depth_mends_nothing(plain, less_mm)
    assert answers(_assumed(plain, kept=True)) == answers(_assumed(plain, kept=False))
