"""Motors, fans and coverings: behind which contact, and in two directions."""

import pytest

from tests.electrical.faults_wide import KEEL, WINCH
from tests.electrical.sound import answers, at, ratings, spoilt
from tests.electrical.spoiling import misfits, outcome
from tests.example_house import seen


def test_a_motor_behind_a_fan_control_is_not_behind_a_snap_switch() -> None:
    fan: dict[str, object] = {f"{KEEL}.output": "fan_control"}
    assert outcome(fan, "nec_motor", "B1.1", of="nec") is None
    assert outcome({"loads.L1.kind": seen("resistive")}, "nec_motor", "B1.1", of="nec") is None


@pytest.mark.parametrize(
    ("standard", "expected"),
    [
        ("IEC 60669-1:2017", "fails"),
        ("EN 60669-1:2018", "fails"),
        ("EN 60669-1:2016", "passes"),
        ("EN 60669-1:1999+A2:2008", "passes"),
        ("IEC 60669-2-1:2021", "cannot_tell"),
        ("BS 60669-12:2017", "cannot_tell"),
    ],
)
def test_motors_by_the_edition_that_the_sheet_names(standard: str, expected: str) -> None:
    changes: dict[str, object] = {
        "models.tarnlow-peg@1.ratings": [{**ratings(resistive=10_000)[0], "standard": standard}],
        "loads.L10.power_mw": seen(700_000),
        "loads.L10.power_factor_permille": seen(850),
    }
    assert outcome(changes, "contact", "B7.1") == expected


def test_a_blind_behind_its_own_kind_of_output_is_no_hazard() -> None:
    assert outcome({}, "hazard", "B6.1") == "passes"
    plain: dict[str, object] = {f"{WINCH}.output": "relay"}
    found = at(answers(spoilt(plain)), "hazard", "B6.1")
    assert found is not None
    assert (found.outcome.value, str(found.severity)) == ("fails", "advice")
    assert outcome(plain, "reversing", "B6.1") == "passes"  # the relay module is interlocked all the same
    assert outcome({"loads.L8.purpose": "pump"}, "hazard", "B6.1") == "fails"


@pytest.mark.parametrize(
    ("reversing", "expected"), [(True, "cannot_tell"), (False, "passes"), (None, "cannot_tell")]
)
def test_a_covering_is_asked_whether_its_motor_turns_both_ways(reversing: bool | None, expected: str) -> None:
    changes: dict[str, object] = {"loads.L8.other_direction": None, "loads.L9.other_direction": None}
    changes["loads.L8.reversing"] = None if reversing is None else seen(reversing)
    assert outcome(changes, "reversing", "B6.1") == expected
    assert outcome(changes | {"loads.L8.kind": None}, "reversing", "B6.1") == expected
    pump: dict[str, object] = {"loads.L8.purpose": "pump", "loads.L8.reversing": None}
    assert outcome(changes | pump, "reversing", "B6.1") is None
    resistive: dict[str, object] = {"loads.L8.kind": seen("resistive")}
    assert outcome(changes | resistive, "reversing", "B6.1") == (None if reversing is None else expected)


def test_what_would_tell_of_a_motor_is_asked_and_no_more() -> None:
    changes: dict[str, object] = {"loads.L8.other_direction": None, "loads.L9.other_direction": None}
    found = at(answers(spoilt(changes)), "reversing", "B6.1")
    assert found is not None
    assert [look.field for look in found.looks] == ["other_direction"]
    found = at(
        answers(spoilt(changes | {"loads.L8.reversing": None, "loads.L8.kind": None})), "reversing", "B6.1"
    )
    assert found is not None
    assert [look.field for look in found.looks] == ["kind", "reversing", "other_direction"]


def test_the_other_direction_is_not_yet_driven() -> None:
    undecided: dict[str, object] = {
        "devices.D8.gangs": ["1"],
        "boxes.B6.mounts.2": {"neutral": seen("C1")},
        "boxes.B6.gangs.2.mount": "2",
        "devices.D10": {"box": "B6", "mounts": ["2"], "gangs": ["2"]},
    }
    found = at(answers(spoilt(undecided)), "reversing", "B6.1")
    assert found is not None
    assert [(look.place, look.field) for look in found.looks] == [("D10", "model")]
    bare: dict[str, object] = {"boxes.B6.gangs.2": {"duty": "capped", "line": seen("C1")}}
    found = at(answers(spoilt(bare)), "reversing", "B6.1")
    assert found is not None
    assert [(look.place, look.field) for look in found.looks] == [("L9", "other_direction")]


def test_two_gangs_are_a_pair_only_from_an_odd_one() -> None:
    wide: dict[str, object] = {
        f"{WINCH}.gangs": 4,
        "boxes.B6.gangs.3": {"duty": "capped", "line": seen("C1")},
        "devices.D8.gangs": ["3", "1", "2"],
    }
    found = at(answers(spoilt(wide)), "reversing", "B6.1")
    assert found is not None
    assert (found.outcome.value, found.value) == ("fails", "by two gangs that are no pair")
    wide["devices.D8.gangs"] = ["1", "3", "2"]
    assert outcome(wide, "reversing", "B6.1") == "fails"
    wide["boxes.B6.gangs.4"] = {"duty": "capped", "line": seen("C1")}
    wide["devices.D8.gangs"] = ["3", "4", "1", "2"]
    assert outcome(wide, "reversing", "B6.1") == "passes"


def test_two_directions_name_each_other_and_only_each_other() -> None:
    both = ["loads.L8.other_direction", "loads.L9.other_direction"]
    assert misfits({"loads.L8.other_direction": "L8"}) == both
    assert misfits({"loads.L8.other_direction": "L77"}) == both
    assert misfits({"loads.L8.reversing": seen(False)}) == ["loads.L8.reversing"]
