"""What single rules do where houses are less plain."""

from copy import deepcopy
from fractions import Fraction
from typing import Any

import pytest

from secondfix.electrical.figures import amperes, amperes_between, between, watts
from tests.electrical.sound import LATEST, SOUND, answers, at, model, ratings, spoilt, troubles
from tests.example_house import seen


def outcome(plain: dict[str, Any], rule: str, place: str) -> str | None:
    found = at(answers(plain), rule, place)
    return found.outcome.value if found else None


def test_extensions_carry_no_load_of_their_own() -> None:
    plain = spoilt({"devices.D4": {"model": "orrinby-glow@1", "box": "B4", "mounts": ["1"], "gangs": ["1"]},
                    "boxes.B4.depth_mm": seen(50), "boxes.B4.set_back_mm": seen(0)})  # fmt: skip
    assert outcome(plain, "contact", "B4.1") is None
    assert outcome(plain, "contact", "B1.1") == "passes"
    assert troubles(answers(plain)) == set()


def test_a_box_without_a_device_is_still_looked_at() -> None:
    plain = spoilt({"devices": {}})
    assert {f.rule for f in answers(plain)} == {
        "duty", "board_label", "earth_as_neutral", "borrowed_neutral", "multiway_arrangement",
        "multiway_other_circuit",
        "two_supplies", "metal_earthed",
        "shared_neutral", "circuit_load",
    }  # fmt: skip
    assert troubles(answers(plain)) == set()
    worse = deepcopy(plain)
    worse["boxes"]["B1"]["mounts"]["1"]["neutral"] = seen("earth")
    worse["loads"]["L2"]["neutral"] = seen("C2")
    worse["circuits"]["C2"]["label_rooms"] = []
    assert {(rule, place) for rule, place, _, _ in troubles(answers(worse))} == {
        ("earth_as_neutral", "B1"), ("borrowed_neutral", "B1.2"), ("board_label", "B3.1"),
    }  # fmt: skip


def test_an_undecided_model_is_not_judged_but_its_box_is_asked_about() -> None:
    plain = spoilt({"devices.D2.model": None, "boxes.B2.mounts.1.neutral": None})
    assert outcome(plain, "contact", "B2.1") is None
    assert outcome(plain, "depth", "B2") is None
    assert outcome(plain, "earth_as_neutral", "B2") == "cannot_tell"


def test_a_module_stands_behind_the_switch_of_the_same_mount() -> None:
    plain = deepcopy(SOUND)
    box = plain["boxes"]["B3"]
    box["gangs"]["2"] = {"duty": "scene_only", "mount": "1"}
    plain["devices"]["D6"] = {"model": "orrinby-glow@1", "box": "B3", "mounts": ["1"], "gangs": ["2"]}
    found = at(answers(plain), "depth", "B3")
    assert found is not None
    assert found.outcome.value == "cannot_tell"  # 17 + 29 + 5 to 19 in 61 mm
    assert "plain_mechanism_depth_mm" not in found.assumptions
    box["depth_mm"] = seen(65)
    assert outcome(plain, "depth", "B3") == "passes"


def test_a_box_is_as_deep_as_its_tightest_mount() -> None:
    plain = spoilt(
        {"boxes.B1.mounts.2": {"neutral": seen("C1")}, "boxes.B1.gangs.3": {"mount": "2", "duty": "capped"}}
    )
    plain["models"]["wexcombe-slab@1"] = model(
        "wexcombe", "slab", output="none", neutral="not_needed", depth_behind_plate_mm=41
    )
    plain["devices"]["D6"] = {"model": "wexcombe-slab@1", "box": "B1", "mounts": ["2"], "gangs": ["3"]}
    assert ("depth", "B1", "fails", "fault") in troubles(answers(plain))


def test_a_battery_button_on_the_wall_needs_neither_depth_nor_neutral_nor_line() -> None:
    plain = spoilt({"boxes.B4.mounts.1.neutral": None, "boxes.B4.gangs.1.line": None})
    plain["models"]["tarnlow-dot@1"] = model(
        "tarnlow", "dot", form="battery_button", supply="battery", output="none", mounts=0
    )
    plain["devices"]["D6"] = {"model": "tarnlow-dot@1", "box": "B4", "gangs": ["1"]}
    assert troubles(answers(plain)) == set()
    assert outcome(plain, "depth", "B4") is None


def test_a_spare_gang_is_asked_for_its_line_only_if_its_device_has_no_other() -> None:
    plain = spoilt({"boxes.B1.gangs.2": {"duty": "scene_only"}})
    assert outcome(plain, "neutral_circuit", "B1.2") is None
    alone = spoilt({"boxes.B3.gangs.1": {"duty": "scene_only"}})
    assert outcome(alone, "neutral_circuit", "B3.1") == "cannot_tell"


@pytest.mark.parametrize(
    ("neutral", "expected"),
    [("C1", None), ("absent", "cannot_tell"), ("earth", "cannot_tell"), (None, "cannot_tell")],
)
def test_a_model_that_does_with_or_without_neutral_needs_a_least_load_without(
    neutral: str | None, expected: str | None
) -> None:
    changes: dict[str, object] = {"models.wexcombe-pair@1.neutral": "either"}
    changes["boxes.B1.mounts.1.neutral"] = seen(neutral) if neutral else None
    assert outcome(spoilt(changes), "least_load", "B1.2") == expected


def test_a_load_on_another_storey_is_asked_for_its_neutral() -> None:
    unknown: dict[str, object] = {"loads.L2.neutral": None}
    assert outcome(spoilt(unknown), "borrowed_neutral", "B1.2") is None
    assert outcome(spoilt(unknown | {"loads.L2.room": "R2"}), "borrowed_neutral", "B1.2") == "cannot_tell"


def test_earth_is_ruled_out_only_where_every_mount_was_seen() -> None:
    half_seen = spoilt({"boxes.B1.mounts.2": {}})
    assert outcome(half_seen, "earth_as_neutral", "B1") == "cannot_tell"
    del half_seen["devices"]["D1"]
    assert outcome(half_seen, "earth_as_neutral", "B1") is None


def test_a_neutral_at_one_mount_serves_a_wide_switch() -> None:
    plain = spoilt({"boxes.B1.mounts.2": {"neutral": seen("absent")}, "models.wexcombe-pair@1.mounts": 2,
                    "devices.D1.mounts": ["2", "1"]})  # fmt: skip
    assert outcome(plain, "neutral", "D1") == "passes"


@pytest.mark.parametrize(
    ("purpose", "needs", "expected"),
    [
        ("refrigeration", None, ("fails", "fault")),
        ("refrigeration", False, ("passes", None)),
        ("animal_care", True, ("fails", "fault")),
        ("network_equipment", None, ("fails", "fault")),
        ("medical", False, ("fails", "danger")),
        ("emergency_light", None, ("fails", "danger")),
        ("lighting", True, ("fails", "fault")),
        ("extract_fan", None, ("cannot_tell", "fault")),
        (None, None, ("cannot_tell", "danger")),
    ],
)
def test_supply_by_purpose(purpose: str | None, needs: bool | None, expected: tuple[str, str | None]) -> None:
    changes: dict[str, object] = {"loads.L5.purpose": purpose}
    changes["loads.L5.permanent_supply"] = None if needs is None else seen(needs)
    found = at(answers(spoilt(changes)), "permanent_supply", "D5.1")
    assert found is not None
    assert (found.outcome.value, found.severity) == expected


@pytest.mark.parametrize(
    ("purpose", "state", "expected"),
    [
        ("heater_radiant", "last", "fails"),
        ("cooking", "on", "fails"),
        ("water_heater", "off", "passes"),
        ("gate", "last", "fails"),
        ("covering", "off", "passes"),
        ("refrigeration", "off", "fails"),
        ("network_equipment", "last", "passes"),
        ("alarm", "on", "passes"),
        ("lighting", "on", None),
        ("pump", "on", None),
    ],
)
def test_what_must_not_start_and_what_must_not_stay_off(
    purpose: str, state: str, expected: str | None
) -> None:
    changes: dict[str, object] = {"loads.L4.purpose": purpose, "devices.D3.after_power_loss": state}
    changes["models.orrinby-nub@1.power_loss"] = {"settable": ["off", "on", "last"], "as_delivered": "off"}
    assert outcome(spoilt(changes), "power_loss", "B3.1") == expected


def test_a_state_that_cannot_be_set_is_the_one_it_comes_with() -> None:
    changes: dict[str, object] = {"devices.D3.after_power_loss": None}
    changes["models.orrinby-nub@1.power_loss"] = {"settable": [], "as_delivered": "last"}
    assert outcome(spoilt(changes), "power_loss", "B3.1") == "fails"
    changes["models.orrinby-nub@1.power_loss"] = {"settable": ["off"], "as_delivered": "off"}
    assert outcome(spoilt(changes), "power_loss", "B3.1") == "passes"


def test_neither_side_prints_a_peak_and_nothing_is_asked() -> None:
    silent = {"loads.L1.inrush_peak_ma": None, "loads.L1.inrush_width_us": None}
    assert outcome(spoilt(silent | {"models.wexcombe-pair@1.peak": None}), "inrush", "B1.1") is None


def test_a_lamp_with_built_in_driver_is_not_asked_for_its_peak() -> None:
    silent = {"loads.L1.inrush_peak_ma": None, "loads.L1.inrush_width_us": None}
    assert outcome(spoilt(silent | {"loads.L1.kind": seen("led_lamp")}), "inrush", "B1.1") is None


def test_one_look_at_a_data_sheet_settles_all_devices_of_the_model() -> None:
    plain = deepcopy(SOUND)
    plain["devices"]["D10"] = {**plain["devices"]["D5"], "outputs": {"1": "L11"}}
    plain["loads"]["L11"] = plain["loads"]["L5"]
    plain["models"]["tarnlow-leaf@1"] = {
        **plain["models"]["tarnlow-leaf@1"],
        "ratings": ratings(resistive=5000),
    }
    looks = {look for f in answers(plain) for look in f.looks}
    assert [(look.place, look.field) for look in looks] == [("tarnlow-leaf@1", "ratings.motor")]


def test_ratings_of_the_same_kind_name_their_standard() -> None:
    found = at(answers(spoilt({"loads.L3.power_mw": seen(50_000)})), "contact", "B2.1")
    assert found is not None
    assert LATEST in found.source


def test_figures_carry_their_units() -> None:
    assert amperes(4350) == "4.35 A"
    assert amperes(16_000) == "16 A"
    assert amperes_between(Fraction(240), None) == "at least 0.24 A"
    assert amperes_between(Fraction(0), None) == "not known"
    assert amperes_between(Fraction(240), Fraction(430)) == "0.24 A to 0.43 A"
    assert watts(12_500) == "12.5 W"
    assert between(5, 15, "mm") == "5 mm to 15 mm"
    assert between(5, None, "mm") == "at least 5 mm"
