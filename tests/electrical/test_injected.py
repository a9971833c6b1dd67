"""Each rule finds its injected fault at its place and nowhere else; a missing fact is never a pass."""

import pytest

from secondfix.electrical import RULES
from secondfix.findings import Outcome
from tests.electrical.faults_wide import CASES
from tests.electrical.sound import HOUSES, answers, put, spoilt, troubles
from tests.example_house import seen

UNKNOWN: dict[str, tuple[dict[str, object], set[tuple[str, str]]]] = {
    "the mains voltage": (
        {"mains_voltage_v": None},
        {
            *(("module_total", d) for d in ("D1", "D8")),
            *(("circuit_load", c) for c in ("C1", "C2")),
            *(("ganged_dimmers", g) for g in ("B5.1", "B5.2")),
            *(("contact", g) for g in ("B1.1", "B1.2", "B2.1", "B3.1", "D5.1", "B5.1", "B5.2")),
            *(("contact", g) for g in ("B6.1", "B6.2", "B7.1")),
        },
    ),
    "the kind of a load": (
        {"loads.L2.kind": None},
        {("contact", "B1.2"), ("module_total", "D1"), ("inrush", "B1.2"), ("circuit_load", "C1")},
    ),
    "the power of a load": (
        {"loads.L3.power_mw": None}, {("contact", "B2.1"), ("least_load", "B2.1"), ("circuit_load", "C1")}
    ),
    "the count of a load": (
        {"loads.L2.count": None}, {("contact", "B1.2"), ("module_total", "D1"), ("circuit_load", "C1")}
    ),
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
            ("neutral_through", "B1"),
            ("multiway_supply", "B1.1"),
        },
    ),
    "the line of a gang": (
        {"boxes.B3.gangs.1.line": None},
        {
            ("board_label", "B3.1"), ("neutral_circuit", "B3.1"), ("borrowed_neutral", "B3.1"),
            ("circuit_load", "C1"), ("circuit_load", "C2"),
        },
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
    "how long a peak lasts": ({"loads.L1.inrush_width_us": None}, {("inrush", "B1.1")}),
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


def test_the_sound_houses_ask_every_rule_and_no_fault_is_found() -> None:
    found = [f for house in HOUSES.values() for f in answers(house)]
    assert troubles(found) == set()
    assert {f.rule for f in found} == {rule.id for rule in RULES}


@pytest.mark.parametrize("name", CASES)
def test_an_injected_fault_is_found_at_its_place_and_nowhere_else(name: str) -> None:
    house, changes, expected = CASES[name]
    assert troubles(answers(spoilt(changes, of=house))) == expected


def test_every_rule_has_an_injected_fault() -> None:
    assert {rule.id for rule in RULES} == {rule for *_, expected in CASES.values() for rule, *_ in expected}


@pytest.mark.parametrize("name", UNKNOWN)
def test_a_missing_fact_is_asked_for_where_it_decides(name: str) -> None:
    changes, expected = UNKNOWN[name]
    found = answers(spoilt(changes))
    assert {(rule, place) for rule, place, _, _ in troubles(found)} == expected
    assert all(f.outcome is Outcome.CANNOT_TELL for f in found if f.outcome is not Outcome.PASSES)


@pytest.mark.parametrize("name", CASES)
def test_a_finding_says_what_where_against_which_limit_and_what_to_do(name: str) -> None:
    house, changes, _ = CASES[name]
    for f in answers(spoilt(changes, of=house)):
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
