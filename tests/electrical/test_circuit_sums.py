"""What a circuit carries at most, and what its breaker is asked, where houses are less plain."""

import pytest

from tests.electrical.faults_wide import WINCH
from tests.electrical.sound import answers, at, spoilt
from tests.electrical.spoiling import outcome
from tests.example_house import seen


@pytest.mark.parametrize(
    ("interlocked", "expected"), [("yes", "passes"), (None, "cannot_tell"), ("no", "fails")]
)
def test_of_two_directions_that_can_never_both_be_on_the_larger_counts(
    interlocked: str | None, expected: str
) -> None:
    # 95 W at a power factor of 0.7 and 230 V draw 0.59 A: one direction stays below 0.9 A, both do not.
    changes: dict[str, object] = {f"{WINCH}.module_total_ma": 900, f"{WINCH}.interlocked": interlocked}
    changes |= {f"loads.{load}.power_factor_permille": seen(700) for load in ("L8", "L9")}
    assert outcome(changes, "module_total", "D8") == expected


def test_while_nobody_says_what_else_hangs_on_a_circuit_its_sum_never_passes() -> None:
    assert outcome({"circuits.C2.other_load_ma": None}, "circuit_load", "C2") is None
    assert outcome({"circuits.C2.other_load_ma": None, "mains_voltage_v": None}, "circuit_load", "C2") is None


def test_an_unexplained_gang_keeps_its_own_circuit_open_and_no_other() -> None:
    unexplained: dict[str, object] = {"boxes.B1.gangs.2.duty": "not_known", "boxes.B1.gangs.2.load": None}
    assert outcome(unexplained, "circuit_load", "C1") == "cannot_tell"
    assert outcome(unexplained, "circuit_load", "C2") == "passes"
    unexplained["boxes.B1.gangs.2.line"] = None
    assert outcome(unexplained, "circuit_load", "C2") == "cannot_tell"


def test_a_load_of_unknown_circuit_may_hang_on_any() -> None:
    found = at(answers(spoilt({"places.P1.circuit": None})), "circuit_load", "C2")
    assert found is not None
    assert [(look.place, look.field) for look in found.looks] == [("P1", "circuit")]


@pytest.mark.parametrize(
    ("continuous", "expected"), [(True, "fails"), (False, "passes"), (None, "cannot_tell")]
)
def test_a_quarter_counts_for_what_is_continuous(continuous: bool | None, expected: str) -> None:
    changes: dict[str, object] = {"circuits.C1.other_load_ma": seen(7500)}
    changes["loads.L1.continuous"] = None if continuous is None else seen(continuous)
    assert outcome(changes, "circuit_load", "C1", of="nec") == expected
    assert outcome(changes | {"wiring_rules": "iec"}, "circuit_load", "C1", of="nec") == "passes"


# 1610 W at 230 V are 7 A at a power factor of 1: 7.1 A at 0.98 to 14 A at 0.5, the range of LED drivers.
@pytest.mark.parametrize(
    ("breaker_a", "expected"), [(7, "fails"), (8, "cannot_tell"), (13, "cannot_tell"), (14, "passes")]
)
def test_a_circuit_between_its_bounds(breaker_a: int, expected: str) -> None:
    changes: dict[str, object] = {
        "circuits.C2.breaker_a": seen(breaker_a),
        "loads.L4.kind": seen("led_driver"),
        "loads.L4.power_mw": seen(1_610_000),
    }
    assert outcome(changes, "circuit_load", "C2") == expected


def test_a_breaker_of_unknown_curve_is_not_asked_about_peaks() -> None:
    assert outcome({"circuits.C1.curve": None}, "breaker_inrush", "B1.1") is None
    assert outcome({"loads.L1.count": None}, "breaker_inrush", "B1.1") == "cannot_tell"
    assert outcome({"circuits.C1.breaker_a": seen(8)}, "breaker_inrush", "B1.1") == "cannot_tell"
    assert outcome({"circuits.C1.breaker_a": seen(9)}, "breaker_inrush", "B1.1") == "passes"
