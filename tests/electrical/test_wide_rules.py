"""What the rules on circuits, dimmers, motors and boxes do where houses are less plain."""

from copy import deepcopy
from typing import Any

import pytest

from secondfix.electrical import RULES
from secondfix.findings import survey_list
from secondfix.house import read_house
from tests.electrical.faults_wide import KEEL, MANY, WINCH, switches, three_dimmers
from tests.electrical.sound import SOUND_NEC, answers, at, model, ratings, spoilt
from tests.example_house import as_bytes, seen

NEC_ONLY = {"nec_motor", "nec_no_neutral", "box_fill", "box_asked"}


def outcome(changes: dict[str, object], rule: str, place: str, *, of: str = "iec") -> str | None:
    found = at(answers(spoilt(changes, of=of)), rule, place)
    return found.outcome.value if found else None


def misfits(changes: dict[str, object], *, of: str = "iec") -> list[str]:
    house = read_house(as_bytes(spoilt(changes, of=of)), where="spoilt.json", models={})
    assert isinstance(house, list)
    return [fault.path for fault in house]


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


@pytest.mark.parametrize(
    ("model", "edge", "expected"),
    [
        ("arc", "leading", "passes"),
        ("arc", "both", "passes"),
        ("arc", "trailing", "fails"),
        ("arc", None, "cannot_tell"),
        ("arch", "trailing", "passes"),
        ("arch", "both", "passes"),
        ("arch", "leading", "fails"),
        ("arch", None, "cannot_tell"),
    ],
)
def test_the_edge_suits_the_transformer(model: str, edge: str | None, expected: str) -> None:
    changes: dict[str, object] = {f"models.orrinby-{model}@1.edge": edge}
    place = "B5.1" if model == "arc" else "B5.2"
    assert outcome(changes, "dimming", place) == "passes"  # its rating is printed, whatever the edge
    changes[f"models.orrinby-{model}@1.ratings"] = ratings(resistive=900)
    assert outcome(changes, "dimming", place) == expected


@pytest.mark.parametrize("kind", ["led_lamp", "led_driver"])
def test_a_leading_edge_wants_a_listing_for_led(kind: str) -> None:
    printed = {"led_lamp": "self_ballasted", "led_driver": "externally_ballasted"}[kind]
    lamps: dict[str, object] = {"loads.L3.kind": seen(kind), "models.orrinby-glow@1.edge": "leading"}
    bare = lamps | {"models.orrinby-glow@1.ratings": ratings(resistive=900)}
    assert outcome(bare, "dimming", "B2.1") == "cannot_tell"
    assert outcome(bare | {"models.orrinby-glow@1.edge": "trailing"}, "dimming", "B2.1") == "passes"
    listed = lamps | {"models.orrinby-glow@1.ratings": ratings(**{printed: 900})}
    assert outcome(listed, "dimming", "B2.1") == "passes"


@pytest.mark.parametrize(
    ("kind", "expected"),
    [
        ("tungsten", "passes"),
        ("resistive", "passes"),
        ("led_driver", "passes"),
        ("fluorescent_electronic", "passes"),
        ("fluorescent_iron", "fails"),
        ("motor", "fails"),
        (None, "cannot_tell"),
    ],
)
def test_what_may_be_dimmed(kind: str | None, expected: str) -> None:
    assert outcome({"loads.L3.kind": seen(kind) if kind else None}, "dimming", "B2.1") == expected


def test_a_dimmer_that_is_listed_for_motors_and_a_fan_control_take_a_motor() -> None:
    glow = "models.orrinby-glow@1"
    motor: dict[str, object] = {"loads.L3.kind": seen("motor"), f"{glow}.ratings": ratings(motor=900)}
    assert outcome(motor, "dimming", "B2.1") == "passes"
    motor |= {f"{glow}.output": "fan_control", f"{glow}.ratings": ratings(resistive=9)}
    assert outcome(motor, "dimming", "B2.1") == "passes"
    assert outcome(motor | {"loads.L3.purpose": "entertainment"}, "dimmed_socket", "B2.1") == "fails"


def test_a_relay_is_asked_about_neither_dimming_nor_mixing_nor_its_neighbours() -> None:
    relay: dict[str, object] = {"models.orrinby-arc@1.output": "relay", "models.orrinby-arc@1.edge": None}
    found = answers(spoilt(relay))
    rules = {f.rule for f in found if f.place == "B5.1"}
    assert not rules & {"dimming", "dimmed_socket", "mixed_loads", "ganged_dimmers"}
    # Its iron core needs no least load then, and the dimmer at its side stands alone.
    assert outcome(relay | {"loads.L6.transformer_va": seen(500)}, "transformer", "B5.1") == "passes"
    assert at(found, "ganged_dimmers", "B5.2") is None


def test_mixed_loads_name_the_transformer_as_their_kind() -> None:
    assert misfits({"loads.L3.also_kinds": seen(["iron_transformer"])}) == ["loads.L3.also_kinds"]
    alike: dict[str, object] = {"loads.L6.also_kinds": seen(["iron_transformer", "tungsten"])}
    assert outcome(alike, "mixed_loads", "B5.1") == "passes"
    assert outcome({"loads.L7.also_kinds": seen(["fluorescent_iron"])}, "mixed_loads", "B5.2") == "fails"


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({}, "passes"),
        ({"loads.L7.transformer_va": seen(40)}, "passes"),
        ({"loads.L7.transformer_va": seen(39)}, "fails"),
        ({"loads.L7.transformer_va": None}, "cannot_tell"),
        ({"loads.L7.power_mw": None}, "cannot_tell"),
        ({"loads.L7.transformer_least_mw": None}, "passes"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(30_000)}, "passes"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(20_000)}, "cannot_tell"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(9_999)}, "fails"),
        ({"loads.L7.power_mw": seen(24_999)}, "fails"),
        ({"loads.L7.power_mw": seen(25_000)}, "passes"),
    ],
)
def test_an_electronic_transformer_between_its_bounds(changes: dict[str, object], expected: str) -> None:
    assert outcome(changes, "transformer", "B5.2") == expected


# 45 W on a dimmer: 70 % to 85 % of 53 VA are 37.1 to 45.05 W, of 52 VA up to 44.2 W, of 65 VA from 45.5 W.
@pytest.mark.parametrize(
    ("rated_va", "expected"),
    [
        (None, "cannot_tell"),
        (52, "passes"),
        (53, "cannot_tell"),
        (64, "cannot_tell"),
        (65, "fails"),
        (44, "fails"),
    ],
)
def test_an_iron_core_between_its_bounds(rated_va: int | None, expected: str) -> None:
    changes: dict[str, object] = {"loads.L6.transformer_va": seen(rated_va) if rated_va else None}
    assert outcome(changes, "transformer", "B5.1") == expected


def test_the_dimmer_in_the_middle_has_two_neighbours() -> None:
    found = at(answers(spoilt(three_dimmers())), "ganged_dimmers", "B5.2")
    assert found is not None
    assert "dimmer_two_neighbours_pct" in found.assumptions
    assert found.limit.startswith("0.45 A to 0.72 A of 0.9 A")
    side = at(answers(spoilt(three_dimmers())), "ganged_dimmers", "B5.3")
    assert side is not None
    assert "dimmer_two_neighbours_pct" not in side.assumptions


# 70 % to 90 % of 1 A are 161 to 207 W at 230 V and a power factor of 1.
@pytest.mark.parametrize(
    ("watts", "expected"), [(161, "passes"), (162, "cannot_tell"), (207, "cannot_tell"), (208, "fails")]
)
def test_what_a_dimmer_carries_beside_another(watts: int, expected: str) -> None:
    changes: dict[str, object] = {
        "loads.L6.power_mw": seen(watts * 1000),
        "loads.L6.count": seen(1),
        "loads.L6.power_factor_permille": seen(1000),
    }
    assert outcome(changes, "ganged_dimmers", "B5.1") == expected


def test_a_neighbour_that_is_not_decided_may_be_a_dimmer() -> None:
    heavy: dict[str, object] = {"loads.L6.count": seen(4), "loads.L6.power_factor_permille": seen(1000)}
    assert outcome(heavy | {"devices.D7.model": None}, "ganged_dimmers", "B5.1") == "cannot_tell"
    assert outcome({"devices.D7.model": None}, "ganged_dimmers", "B5.1") == "passes"


def test_a_free_mount_between_dimmers_leaves_each_alone() -> None:
    apart = three_dimmers()
    apart["devices.D7"] = None
    assert [f.place for f in answers(spoilt(apart)) if f.rule == "ganged_dimmers"] == []


def test_a_module_behind_a_dimmer_does_not_stand_beside_it() -> None:
    behind: dict[str, object] = {
        "devices.D7": None,
        "models.orrinby-arch@1.mounts": 0,
        "models.orrinby-arch@1.form": "in_box_module",
        "devices.D10": {"model": "orrinby-arch@1", "box": "B5", "gangs": ["2"]},
    }
    assert [f.place for f in answers(spoilt(behind)) if f.rule == "ganged_dimmers"] == []


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


def test_a_switch_with_a_neutral_leaves_the_lamps_dark() -> None:
    either: dict[str, object] = {"models.orrinby-glow@1.neutral": "either"}
    assert outcome(either, "glow", "B2.1") == "passes"
    assert outcome(either | {"boxes.B2.mounts.1.neutral": seen("C1")}, "glow", "B2.1") is None
    assert outcome({"models.orrinby-glow@1.neutral": "needed"}, "glow", "B2.1") is None
    assert outcome({"loads.L3.kind": seen("tungsten")}, "glow", "B2.1") is None
    assert outcome({"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(0)}, "glow", "B2.1") is None


@pytest.mark.parametrize("field", ["mains_voltage_v", "mains_frequency_hz"])
def test_a_bypass_is_worked_out_at_a_voltage_and_a_frequency(field: str) -> None:
    found = at(answers(spoilt({"loads.L3.count": seen(2), field: None})), "glow", "B2.1")
    assert found is not None
    assert [look.field for look in found.looks] == [field]


# 400 mW at 230 V are 1.74 mA: 94 nF leave 59 V, 92 nF leave 60.2 V; 554 nF leave 9.99 V, 553 nF 10.01 V.
@pytest.mark.parametrize(
    ("bypass_nf", "expected"), [(92, "fails"), (94, "cannot_tell"), (553, "cannot_tell"), (554, "passes")]
)
def test_a_bypass_between_its_bounds(bypass_nf: int, expected: str) -> None:
    changes: dict[str, object] = {"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(bypass_nf)}
    assert outcome(changes, "glow", "B2.1") == expected


def test_the_remedies_against_glow_stand_in_their_order() -> None:
    changes: dict[str, object] = {"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(10)}
    found = at(answers(spoilt(changes)), "glow", "B2.1")
    assert found is not None
    words = ["neutral", "module at the luminaire", "bypass", "other lamps"]
    assert sorted(words, key=found.remedy.index) == words


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


@pytest.mark.parametrize(
    ("volts", "phase", "expected"),
    [(120, "L2", "passes"), (277, "L1", "passes"), (277, "L2", "fails"), (None, "L2", "cannot_tell")],
)
def test_phases_in_one_box(volts: int | None, phase: str, expected: str) -> None:
    changes: dict[str, object] = {
        "mains_voltage_v": volts,
        "circuits.C2.phase": seen(phase),
        "boxes.B2.mounts.1.neutral": seen("absent"),
    }
    assert outcome(changes, "two_supplies", "B2", of="nec") == expected


def test_one_circuit_in_a_box_is_not_two() -> None:
    assert outcome({"boxes.B2.gangs.2.line": seen("C1")}, "two_supplies", "B2", of="nec") is None
    high: dict[str, object] = {"mains_voltage_v": 277}
    assert outcome(high | {"wiring_rules": "iec"}, "two_supplies", "B2", of="nec") == "passes"
    assert outcome(high | {"wiring_rules": None}, "two_supplies", "B2", of="nec") == "cannot_tell"


@pytest.mark.parametrize(
    ("shell", "plate", "earthed", "expected"),
    [
        ("plastic", "plastic", None, None),
        ("plastic", "plastic", True, "passes"),
        ("metal", "plastic", True, "passes"),
        ("plastic", "metal", False, "fails"),
        ("metal", None, None, "cannot_tell"),
        (None, "plastic", False, "cannot_tell"),
        (None, "plastic", True, "passes"),
        ("plastic", "glass", False, None),
    ],
)
def test_metal_and_earth(
    shell: str | None, plate: str | None, earthed: bool | None, expected: str | None
) -> None:
    facts = {"shell": shell, "plate": plate, "earthed": earthed}
    plain = deepcopy(spoilt({}))
    for key, value in facts.items():
        plain["boxes"]["B1"].pop(key, None)
        if value is not None:
            plain["boxes"]["B1"][key] = seen(value)
    found = at(answers(plain), "metal_earthed", "B1")
    assert (found.outcome.value if found else None) == expected


def test_zones_are_asked_of_bathrooms_with_a_mains_device() -> None:
    assert outcome({"rooms.R2.tags": []}, "bath_zone", "B2") == "passes"
    assert outcome({"rooms.R2.tags": [], "boxes.B2.zone": None}, "bath_zone", "B2") is None
    assert outcome({"boxes.B2.zone": None, "wiring_rules": "nec"}, "bath_zone", "B2") is None
    assert outcome({"boxes.B2.zone": None, "wiring_rules": None}, "bath_zone", "B2") == "cannot_tell"
    assert outcome({"boxes.B4.zone": seen("1")}, "bath_zone", "B4") is None  # nothing is wired there
    battery: dict[str, object] = {
        "boxes.B2.zone": seen("1"),
        "models.orrinby-glow@1.supply": "battery",
        "models.orrinby-glow@1.output": "none",
        "models.orrinby-glow@1.ratings": [],
    }
    assert outcome(battery, "bath_zone", "B2") is None


def test_a_neutral_shared_by_the_word_of_one_circuit_is_shared() -> None:
    rules = (("neutral_circuit", "B7.1"), ("borrowed_neutral", "B7.1"), ("neutral_through", "B7"))
    for silent in ("C3", "C4"):
        for rule, place in rules:
            assert outcome({f"circuits.{silent}.shares_neutral_with": None}, rule, place) == "passes"


@pytest.mark.parametrize("other", ["C3", "C8"])
def test_a_circuit_shares_its_neutral_with_another_that_exists(other: str) -> None:
    path = "circuits.C3.shares_neutral_with.value[0]"
    assert misfits({"circuits.C3.shares_neutral_with": seen([other])}) == [path]


def test_a_yoke_counts_where_a_device_or_an_old_switch_is() -> None:
    """With the box exactly full, each further yoke makes it too small."""
    second: dict[str, object] = {"boxes.B1.mounts.2": {"neutral": seen("absent"), "largest_awg": seen("14")}}
    assert outcome(second, "box_fill", "B1", of="nec") == "passes"
    old: dict[str, object] = second | {
        "boxes.B1.gangs.2": {"mount": "2", "line": seen("C1"), "duty": "capped"}
    }
    assert outcome(old, "box_fill", "B1", of="nec") == "passes"
    old["boxes.B1.gangs.2"] = {"mount": "2", "line": seen("C1"), "duty": "scene_only"}
    assert outcome(old, "box_fill", "B1", of="nec") == "fails"
    wide = second | {f"{KEEL}.mounts": 2, "devices.D1.mounts": ["1", "2"]}
    assert outcome(wide, "box_fill", "B1", of="nec") == "fails"
    behind: dict[str, object] = {f"{KEEL}.yokes": 0, "boxes.B1.conductors": seen({"14": 7})}
    assert outcome(behind, "box_fill", "B1", of="nec") == "passes"


def test_a_size_in_doubt_matters_only_where_it_decides() -> None:
    mixed: dict[str, object] = {
        "boxes.B1.mounts.1.largest_awg": None,
        "boxes.B1.conductors": seen({"14": 3, "12": 1}),
    }
    assert outcome(mixed, "box_fill", "B1", of="nec") == "passes"
    mixed["boxes.B1.conductors"] = seen({"14": 4, "12": 1, "18": 0})
    found = at(answers(spoilt(mixed, of="nec")), "box_fill", "B1")
    assert found is not None
    assert [look.field for look in found.looks] == ["mounts.1.largest_awg"]
    unlisted: dict[str, object] = {"boxes.B1.mounts.1.largest_awg": seen("6")}
    assert misfits(unlisted, of="nec") == ["boxes.B1.mounts.1.largest_awg"]


@pytest.mark.parametrize("field", ["conductors", "loops", "grounds", "clamps", "fittings"])
def test_what_nobody_has_counted_is_asked_for(field: str) -> None:
    found = at(answers(spoilt({f"boxes.B1.{field}": None}, of="nec")), "box_fill", "B1")
    assert found is not None
    assert field in {look.field for look in found.looks}
    too_small: dict[str, object] = {f"boxes.B1.{field}": None, "boxes.B1.volume_mm3": seen(40_000)}
    assert outcome(too_small, "box_fill", "B1", of="nec") == "fails"


def test_a_size_that_nobody_has_counted_adds_nothing_for_certain() -> None:
    """A loop of 14 AWG counts 4.0 in³; the yoke counts 4.0 more only once all conductors are counted."""
    changes: dict[str, object] = {
        "boxes.B1.mounts.1.largest_awg": None,
        "boxes.B1.conductors": None,
        "boxes.B1.loops": seen({"14": 1}),
        "boxes.B1.grounds": seen({}),
        "boxes.B1.clamps": seen(False),
        "boxes.B1.volume_mm3": seen(70_000),
    }
    assert outcome(changes, "box_fill", "B1", of="nec") == "cannot_tell"
    changes |= {"boxes.B1.conductors": seen({"14": 1}), "boxes.B1.loops": None}
    assert outcome(changes, "box_fill", "B1", of="nec") == "cannot_tell"
    changes["boxes.B1.loops"] = seen({})
    assert outcome(changes, "box_fill", "B1", of="nec") == "fails"


def test_makers_ask_for_their_yokes_together() -> None:
    def asked(per_yoke: int | None, yokes: int | None, *, more: dict[str, Any] | None = None) -> str | None:
        changes: dict[str, object] = {f"{KEEL}.box_volume_per_yoke_mm3": per_yoke, f"{KEEL}.yokes": yokes}
        return outcome(changes | (more or {}), "box_asked", "B1", of="nec")

    assert asked(294_967, 1) == "passes"
    assert asked(294_969, 1) == "fails"
    assert asked(294_969, None) == "fails"
    assert asked(294_969, 0) == "passes"
    assert asked(None, 1) is None
    second = {
        "boxes.B1.mounts.2": {"neutral": seen("absent"), "largest_awg": seen("14")},
        "boxes.B1.gangs.2": {"mount": "2", "line": seen("C1"), "duty": "scene_only"},
        "devices.D2": {"model": "marlsett-keel@1", "box": "B1", "mounts": ["2"], "gangs": ["2"]},
    }
    undecided = second | {"devices.D2": {"box": "B1", "mounts": ["2"], "gangs": ["2"]}}
    assert asked(150_000, 1, more=second) == "fails"
    assert asked(147_000, 1, more=second) == "passes"
    assert asked(150_000, 1, more=undecided) == "cannot_tell"
    assert asked(294_969, 1, more=undecided) == "fails"


def test_an_undecided_device_takes_the_place_of_no_dimmer() -> None:
    """Whatever stands behind the dimmers on both sides, both of them are still there."""
    heavy = three_dimmers() | {"loads.L7.count": seen(4), "loads.L7.power_factor_permille": seen(950)}
    capped = {f"boxes.B5.gangs.{n}": {"mount": mount, "duty": "capped"} for n, mount in ((4, "1"), (5, "3"))}
    undecided = {"devices.D11": {"box": "B5", "gangs": ["4", "5"]}}
    assert outcome(heavy | capped | undecided, "ganged_dimmers", "B5.2") == "fails"


@pytest.mark.parametrize(("through", "asked"), [(True, False), (None, True)])
def test_a_neutral_of_no_known_circuit_asks_only_where_it_may_not_go_on_by_itself(
    through: bool | None, asked: bool
) -> None:
    changes: dict[str, object] = {"boxes.B2.mounts.1.neutral": None}
    if through is not None:
        changes["boxes.B2.mounts.1.neutral_through"] = seen(through)
    found = {f.place for f in answers(spoilt(changes)) if f.rule == "neutral_through"}
    assert ("B2" in found) == asked
