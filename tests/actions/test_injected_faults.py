"""Every rule finds its injected fault in both worlds: at its place, and no other rule answers but as said.

The worlds are the mended demo houses at 230 V (IEC) and at 120 V (NEC), asked through the one action that
pages, papers and commands call. More faults of the electrical rules, in small houses, stand in
tests/electrical/faults.py and faults_wide.py.
"""

import pytest

from secondfix.actions.check import RULES
from tests.actions import faults_electrical, faults_other
from tests.actions.faults_more import MORE
from tests.actions.worlds import (
    FILES,
    Answers,
    Change,
    answers,
    changed,
    mended,
    not_passed,
    told,
    troubles_of,
)
from tests.electrical.sound import troubles
from tests.example_house import seen

CASES: dict[tuple[str, str], tuple[Change, Answers]] = {**faults_electrical.ONES, **faults_other.ONES}

# These ask whether something is known at all: their answer is never more than that it is not.
ONLY_DOUBTS = {"duty", "circuit_known", "names.explained", "scenes.decided"}

MOLE = "models.tavrindo-mole@1"


def all_without_neutral() -> Change:
    return {
        f"models.{key}.neutral": "not_needed"
        for key in mended("iec")["models"]
        if "tern" not in key and "wick" not in key
    }


# Rules of the NEC: what each would find in the house at 230 V were it asked there, which it is not.
NOT_ASKED: dict[tuple[str, str], tuple[Change, Answers]] = {
    ("nec_motor", "iec"): (
        {f"{MOLE}.ratings.2.current_ma": 6000, "loads.L16.power_mw": seen(850_000)},
        told("nec_motor B17.1 danger"),
    ),
    ("nec_no_neutral", "iec"): (all_without_neutral(), told("nec_no_neutral C1 fault")),
    ("box_fill", "iec"): (
        {"boxes.B10.volume_mm3": seen(100_000), "boxes.B10.conductors": seen({"14": 9})},
        told("box_fill B10 fault"),
    ),
    ("box_asked", "iec"): (
        {
            "boxes.B10.volume_mm3": seen(100_000),
            "models.ostrabeck-gull-two@2.box_volume_per_yoke_mm3": 200_000,
        },
        told("box_asked B10 fault"),
    ),
}


@pytest.mark.parametrize("world", sorted(FILES))
def test_the_house_is_sound_to_begin_with(world: str) -> None:
    assert not_passed(answers(mended(world))) == set()


@pytest.mark.parametrize(("rule", "world"), CASES)
def test_an_injected_fault_is_found_at_its_place_and_nowhere_else(rule: str, world: str) -> None:
    changes, expected = CASES[rule, world]
    assert troubles_of(world, changes) == expected


@pytest.mark.parametrize("name", MORE)
def test_a_further_fault_is_found_at_its_place_and_nowhere_else(name: str) -> None:
    world, changes, expected = MORE[name]
    assert troubles_of(world, changes) == expected


@pytest.mark.parametrize(("rule", "world"), CASES)
def test_the_table_injects_a_failure_and_not_a_doubt(rule: str, world: str) -> None:
    outcomes = {outcome for name, _, outcome, _ in CASES[rule, world][1] if name == rule}
    assert ("fails" in outcomes) is (rule not in ONLY_DOUBTS)


@pytest.mark.parametrize(("rule", "world"), NOT_ASKED)
def test_a_rule_of_the_other_world_is_not_asked(rule: str, world: str) -> None:
    changes, elsewhere = NOT_ASKED[rule, world]
    plain = changed(mended(world), changes)
    assert {f.rule for f in answers(plain)}.isdisjoint({rule})
    found = troubles(list(answers(plain | {"wiring_rules": "nec"})))
    assert elsewhere <= found


def test_every_rule_stands_in_the_table_for_each_world() -> None:
    assert {*CASES, *NOT_ASKED} == {(rule.id, world) for rule in RULES for world in FILES}
    assert CASES.keys().isdisjoint(NOT_ASKED)
