"""Each rule finds its injected fault at its place and nowhere else; a missing fact is never a pass."""

import pytest

from secondfix.electrical import RULES
from secondfix.findings import Outcome
from tests.electrical.sound import SOUND, answers, put, ratings, spoilt, troubles
from tests.example_house import seen

LED = "models.wexcombe-pair@1.ratings"
EXTRA = [ratings(resistive=8000)[0], ratings(tungsten=4000)[0]]

# What is spoilt, and every answer that is then not a pass: (rule, place, outcome, severity).
FAULTS: dict[str, tuple[dict[str, object], set[tuple[str, str, str, str | None]]]] = {
    "a load above the rating for its kind": (
        {"loads.L3.power_mw": seen(30_000)},
        {("contact", "B2.1", "fails", "danger")},
    ),
    "a load at the rating only at the better end of its power factor": (
        {"loads.L3.power_mw": seen(17_000)},
        {("contact", "B2.1", "cannot_tell", "danger")},
    ),
    "more lamps than the contact carries": (
        {"loads.L2.count": seen(23)},
        {("contact", "B1.2", "fails", "danger")},
    ),
    "gangs within their ratings, not within the total": (
        {"models.wexcombe-pair@1.module_total_ma": 1700},
        {("module_total", "D1", "fails", "danger")},
    ),
    "a peak above the contact's": (
        {"loads.L1.inrush_peak_ma": seen(31_000)},
        {("inrush", "B1.1", "fails", "fault")},
    ),
    "a peak that lasts longer than the contact's": (
        {"loads.L1.inrush_width_us": seen(401)},
        {("inrush", "B1.1", "cannot_tell", "fault")},
    ),
    "a driver without a printed peak": (
        {"loads.L1.inrush_peak_ma": None, "loads.L1.inrush_width_us": None},
        {("inrush", "B1.1", "cannot_tell", "fault")},
    ),
    "a load below the least": (
        {"loads.L3.count": seen(2)},
        {("least_load", "B2.1", "fails", "fault")},
    ),
    "no neutral where one is needed": (
        {"boxes.B1.mounts.1.neutral": seen("absent")},
        {("neutral", "D1", "fails", "fault")},
    ),
    "earth for neutral, even where none is needed": (
        {"boxes.B2.mounts.1.neutral": seen("earth")},
        {("earth_as_neutral", "B2", "fails", "danger")},
    ),
    "earth for neutral in a box that nobody works in": (
        {"boxes.B4.mounts.1.neutral": seen("earth")},
        {("earth_as_neutral", "B4", "fails", "danger")},
    ),
    "a neutral of another circuit at the mount": (
        {"boxes.B3.mounts.1.neutral": seen("C1")},
        {("neutral_circuit", "B3.1", "fails", "danger")},
    ),
    "a neutral borrowed at the luminaire": (
        {"loads.L2.neutral": seen("C2")},
        {("borrowed_neutral", "B1.2", "fails", "danger")},
    ),
    "a shallow box": (
        {"boxes.B2.depth_mm": seen(31)},
        {("depth", "B2", "fails", "fault")},
    ),
    "a box that is deep enough only with thin cables": (
        {"boxes.B2.depth_mm": seen(40)},
        {("depth", "B2", "cannot_tell", "fault")},
    ),
    "a module that leaves no room for the switch in front": (
        {"boxes.B3.depth_mm": seen(39)},
        {("depth", "B3", "fails", "fault")},
    ),
    "a fan that runs on behind a contact": (
        {"loads.L5.permanent_supply": seen(True)},
        {("permanent_supply", "D5.1", "fails", "fault")},
    ),
    "an alarm behind a contact": (
        {"loads.L3.purpose": "alarm", "loads.L3.permanent_supply": seen(False)},
        {
            ("permanent_supply", "B2.1", "fails", "danger"),
            ("power_loss", "B2.1", "cannot_tell", "fault"),
        },
    ),
    "a fixed heater without a thermostat of its own": (
        {"loads.L4.own_thermostat": seen(False)},
        {("hazard", "B3.1", "fails", "danger")},
    ),
    "a fixed heater without a time limit": (
        {"loads.L4.time_limit_s": None},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a time limit that hangs on the controller": (
        {"models.orrinby-nub@1.own_time_limit": "no"},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a portable heater, off only": (
        {"loads.L4.purpose": "heater_portable"},
        {("hazard", "B3.1", "fails", "advice")},
    ),
    "a sauna heater": (
        {"loads.L4.purpose": "sauna"},
        {("hazard", "B3.1", "fails", "danger")},
    ),
    "a gate on a plain contact": (
        {"loads.L4.purpose": "gate"},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a heater that returns on": (
        {"devices.D3.after_power_loss": "on"},
        {("power_loss", "B3.1", "fails", "danger")},
    ),
    "a heater whose device may be set to return on": (
        {"devices.D3.after_power_loss": None},
        {("power_loss", "B3.1", "cannot_tell", "danger")},
    ),
    "a lamp that does not return as was asked for": (
        {"loads.L2.after_power_loss": "last"},
        {("power_loss_wanted", "B1.2", "fails", "fault")},
    ),
    "a label that names another room": (
        {"circuits.C2.label_rooms": ["R2"]},
        {("board_label", "B3.1", "fails", "danger")},
    ),
    "a gang that nobody can explain": (
        {
            "boxes.B1.gangs.2.duty": "not_known",
            "boxes.B1.gangs.2.load": None,
        },
        {("duty", "B1.2", "cannot_tell", "danger"), ("module_total", "D1", "cannot_tell", "danger")},
    ),
    "an LED load within a tenth of the rating for filament lamps, none being printed for it": (
        {LED: EXTRA, "loads.L1.power_mw": seen(25_000)},
        {("contact", "B1.1", "fails", "advice")},
    ),
    "an LED load above a tenth of it": (
        {LED: EXTRA},
        {("contact", "B1.1", "cannot_tell", "danger")},
    ),
    "an LED load above the whole of it": (
        {LED: EXTRA, "loads.L1.power_mw": seen(330_000)},
        {("contact", "B1.1", "fails", "danger")},
    ),
    "a motor without a printed rating": (
        {"models.tarnlow-leaf@1.ratings": ratings(resistive=4000)},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
    "a motor above the resistive rating": (
        {"models.tarnlow-leaf@1.ratings": ratings(resistive=100)},
        {("contact", "D5.1", "fails", "danger")},
    ),
    "a rating printed for another mains voltage": (
        {"models.tarnlow-leaf@1.ratings.0.at_voltage_v": 120},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
    "a rating printed for a mains voltage far above": (
        {"models.tarnlow-leaf@1.ratings.0.at_voltage_v": 300},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
}
UNKNOWN: dict[str, tuple[dict[str, object], set[tuple[str, str]]]] = {
    "the mains voltage": (
        {"mains_voltage_v": None},
        {("module_total", "D1"), *(("contact", g) for g in ("B1.1", "B1.2", "B2.1", "B3.1", "D5.1"))},
    ),
    "the kind of a load": (
        {"loads.L2.kind": None},
        {("contact", "B1.2"), ("module_total", "D1"), ("inrush", "B1.2")},
    ),
    "the power of a load": ({"loads.L3.power_mw": None}, {("contact", "B2.1"), ("least_load", "B2.1")}),
    "the count of a load": ({"loads.L2.count": None}, {("contact", "B1.2"), ("module_total", "D1")}),
    "the power factor inside its range": ({"loads.L1.power_factor_permille": None}, set()),
    "the purpose of a load": (
        {"loads.L4.purpose": None},
        {("hazard", "B3.1"), ("power_loss", "B3.1"), ("permanent_supply", "B3.1")},
    ),
    "the thermostat of a heater": ({"loads.L4.own_thermostat": None}, {("hazard", "B3.1")}),
    "whether a fan runs on": ({"loads.L5.permanent_supply": None}, {("permanent_supply", "D5.1")}),
    "whether a lamp needs its supply: nobody asks": ({"loads.L1.permanent_supply": None}, set()),
    "the neutral at a mount": (
        {"boxes.B1.mounts.1.neutral": None},
        {
            ("neutral", "D1"),
            ("earth_as_neutral", "B1"),
            ("neutral_circuit", "B1.1"),
            ("neutral_circuit", "B1.2"),
        },
    ),
    "the line of a gang": (
        {"boxes.B3.gangs.1.line": None},
        {("board_label", "B3.1"), ("neutral_circuit", "B3.1"), ("borrowed_neutral", "B3.1")},
    ),
    "the neutral of a load on another storey": ({"loads.L1.neutral": None}, {("borrowed_neutral", "B1.1")}),
    "the neutral of a load beside its switch: nobody asks": ({"loads.L2.neutral": None}, set()),
    "the label of a circuit": ({"circuits.C2.label_rooms": None}, {("board_label", "B3.1")}),
    "the depth of a box": ({"boxes.B2.depth_mm": None}, {("depth", "B2")}),
    "a set-back that is not needed": ({"boxes.B2.set_back_mm": None, "boxes.B2.depth_mm": seen(48)}, set()),
    "a set-back that decides": ({"boxes.B2.set_back_mm": None}, {("depth", "B2")}),
    "the depth of a device": ({"models.orrinby-glow@1.depth_behind_plate_mm": None}, {("depth", "B2")}),
    "whether a model needs a neutral": (
        {"models.orrinby-glow@1.neutral": None}, {("neutral", "D2")}
    ),
    "the total of a device": ({"models.wexcombe-pair@1.module_total_ma": None}, {("module_total", "D1")}),
    "the peak of a contact": ({"models.wexcombe-pair@1.peak": None}, {("inrush", "B1.1")}),
    "the least load of a dimmer": ({"models.orrinby-glow@1.least_load_mw": None}, {("least_load", "B2.1")}),
    "what a heater's device does after a power loss": (
        {"models.orrinby-nub@1.power_loss": None, "devices.D3.after_power_loss": None},
        {("power_loss", "B3.1")},
    ),
    "whether a device keeps the time limit": (
        {"models.orrinby-nub@1.own_time_limit": None}, {("hazard", "B3.1")}
    ),
    "the rating of a heater's device": (
        {"models.orrinby-nub@1.ratings": None}, {("hazard", "B3.1"), ("contact", "B3.1")}
    ),
}  # fmt: skip


def test_the_sound_house_asks_every_rule_and_finds_no_fault() -> None:
    found = answers(SOUND)
    assert troubles(found) == set()
    assert {f.rule for f in found} == {rule.id for rule in RULES}


@pytest.mark.parametrize("name", FAULTS)
def test_an_injected_fault_is_found_at_its_place_and_nowhere_else(name: str) -> None:
    changes, expected = FAULTS[name]
    assert troubles(answers(spoilt(changes))) == expected


def test_every_rule_has_an_injected_fault() -> None:
    assert {rule.id for rule in RULES} == {rule for _, expected in FAULTS.values() for rule, *_ in expected}


@pytest.mark.parametrize("name", UNKNOWN)
def test_a_missing_fact_is_asked_for_where_it_decides(name: str) -> None:
    changes, expected = UNKNOWN[name]
    found = answers(spoilt(changes))
    assert {(rule, place) for rule, place, _, _ in troubles(found)} == expected
    assert all(f.outcome is Outcome.CANNOT_TELL for f in found if f.outcome is not Outcome.PASSES)


@pytest.mark.parametrize("name", [*FAULTS])
def test_a_finding_says_what_where_against_which_limit_and_what_to_do(name: str) -> None:
    for f in answers(spoilt(FAULTS[name][0])):
        assert f.source
        if f.outcome is not Outcome.PASSES:
            assert f.says.endswith(".")
            assert f.value
            assert f.remedy
        if f.outcome is Outcome.FAILS:
            assert f.limit


def test_an_unknown_that_cannot_change_the_answer_does_not_block_it() -> None:
    unknown_count_fails = spoilt({"loads.L2.count": None, "loads.L2.power_mw": seen(950_000)})
    assert ("contact", "B1.2", "fails", "danger") in troubles(answers(unknown_count_fails))
    unknown_gang = spoilt({"boxes.B1.gangs.2.duty": "not_known", "boxes.B1.gangs.2.load": None})
    over = put(unknown_gang, "models.wexcombe-pair@1.module_total_ma", 500)
    assert ("module_total", "D1", "fails", "danger") in troubles(answers(over))
    one_is_enough = spoilt({"loads.L3.count": None, "loads.L3.power_mw": seen(15_000)})
    assert not any(rule == "least_load" for rule, *_ in troubles(answers(one_is_enough)))
    unknown_kind_fails = spoilt({"loads.L2.kind": None, "loads.L2.power_mw": seen(2_000_000)})
    assert ("contact", "B1.2", "fails", "danger") in troubles(answers(unknown_kind_fails))
