"""What the rules of the NEC alone ask, and where they are silent."""

import pytest

from secondfix.electrical import RULES
from secondfix.findings import survey_list
from tests.electrical.faults_wide import MANY, switches
from tests.electrical.sound import SOUND_NEC, answers, at, model, spoilt
from tests.electrical.spoiling import outcome
from tests.example_house import seen

NEC_ONLY = {"nec_motor", "nec_no_neutral", "box_fill", "box_asked"}


@pytest.mark.parametrize("rules", ["iec", None])
def test_rules_of_the_nec_alone_are_silent_where_all_would_pass_or_others_hold(rules: str | None) -> None:
    found = answers(spoilt({"wiring_rules": rules}, of="nec"))
    assert not {f.rule for f in found} & NEC_ONLY
    assert {f.rule for f in answers(SOUND_NEC)} >= NEC_ONLY
    assert {rule.id for rule in RULES} >= NEC_ONLY


@pytest.mark.parametrize(
    ("rule", "changes"),
    [
        ("box_fill", {"boxes.B1.conductors": seen({"14": 9})}),
        ("box_fill", {"boxes.B1.conductors": None}),
        ("box_asked", {"boxes.B1.volume_mm3": None}),
        ("nec_motor", {"loads.L1.power_mw": None}),
        ("nec_motor", {"loads.L1.power_mw": seen(1_200_000)}),
        ("nec_no_neutral", switches(["C1"] * 5, feeders=True)),
    ],
)
def test_what_would_not_pass_under_the_nec_is_one_cannot_tell_while_no_rules_are_stated(
    rule: str, changes: dict[str, object]
) -> None:
    found = answers(spoilt(changes | {"wiring_rules": None}, of="nec"))
    told = at(found, rule, "house")
    assert told is not None
    assert told.outcome.value == "cannot_tell"
    assert [(look.place, look.field) for look in told.looks] == [("house", "wiring_rules")]
    lines = [line for line in survey_list(found) if line.words == told.looks[0].words]
    assert len(lines) == 1
    assert rule in lines[0].rules


def test_an_extension_unit_is_no_switch_without_neutral() -> None:
    five = switches(["C1"] * 5, feeders=True)
    unit = model("orrinby", "burr", form="extension_unit", output="none", protocol=None, join=None)
    extends: dict[str, object] = {
        "models.orrinby-burr@1": unit,
        "devices.D20": {"model": "orrinby-burr@1", "box": "B20", "mounts": ["1"], "gangs": ["1"]},
        "boxes.B20.gangs.1": {"duty": "extends", "extends": "B1.1", "line": seen("C1")},
    }
    assert outcome(five, "nec_no_neutral", "C1", of="nec") == "fails"
    assert outcome(five | extends, "nec_no_neutral", "C1", of="nec") == "passes"


def test_five_switches_without_neutral_are_few_enough() -> None:
    assert outcome(switches(["C1"] * 4, feeders=True), "nec_no_neutral", "C1", of="nec") == "passes"
    assert outcome(switches(["C1"] * 5, feeders=True), "nec_no_neutral", "C1", of="nec") == "fails"


def test_a_switch_of_unknown_need_or_line_may_be_one_of_them() -> None:
    six = switches(["C1"] * 5, feeders=True)
    for unknown in ("boxes.B21.mounts.1.neutral", "boxes.B21.gangs.1.line", "devices.D21.model"):
        assert outcome(six | {unknown: None}, "nec_no_neutral", "C1", of="nec") == "cannot_tell"
    with_neutral = six | {"boxes.B21.mounts.1.neutral": seen("C1")}
    assert outcome(with_neutral, "nec_no_neutral", "C1", of="nec") == "passes"
    five = switches(["C1"] * 4, feeders=True)
    assert outcome(five | {"boxes.B21.gangs.1.line": None}, "nec_no_neutral", "C1", of="nec") == "passes"


def test_two_feeders_share_the_count() -> None:
    two: dict[str, object] = switches(MANY, feeders=True) | {"circuits.C3.feeder": seen("annexe panel")}
    assert outcome(two, "nec_no_neutral", "house", of="nec") == "passes"
    assert outcome(switches(MANY[:24], feeders=False), "nec_no_neutral", "house", of="nec") is None
    just_enough = {"circuits.C1.feeder": seen("annexe panel")}
    assert (
        outcome(switches(MANY, feeders=True) | just_enough, "nec_no_neutral", "house", of="nec") == "passes"
    )
    assert outcome(two | {"circuits.C4.feeder": None}, "nec_no_neutral", "house", of="nec") == "passes"
    four: dict[str, object] = {f"circuits.C{n}.feeder": None for n in range(4, 6)}
    assert outcome(two | four, "nec_no_neutral", "house", of="nec") == "passes"
    assert outcome(switches(MANY, feeders=True) | four, "nec_no_neutral", "house", of="nec") == "cannot_tell"
