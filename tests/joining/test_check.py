"""The rules of joining: one fault each, found at its place and nowhere else."""

from typing import Any

import pytest

from secondfix.assumptions import Override, default_assumptions
from secondfix.catalogue import Model
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import House, Schedule, schedule
from secondfix.joining import CONTROLLER, RULES, Links, check
from tests.joining.houses import a_box, a_house, a_model, all_heard, battery_button, links, zigbee_relay

DEFAULTS = default_assumptions()


def two(model: Model | None = None, *, boxes: dict[str, Any] | None = None, **device: Any) -> Schedule:
    """Two boxes with a repeating relay each; the second as changed by the arguments."""
    first = a_model()
    second = model or first
    devices: dict[str, Any] = {
        f"D{n}": {"model": m.key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
        for n, m in ((1, first), (2, second))
    }
    devices["D2"] |= device
    devices["D2"] = {k: v for k, v in devices["D2"].items() if v is not None}
    usual = {"B1": a_box("R1", lines=["C1"], at=(0, 0)), "B2": a_box("R1", lines=["C2"], at=(4000, 0))}
    return a_house(
        [first, second],
        boxes={**usual, **(boxes or {})},
        devices=devices,
        circuits={"C1": {"name": "Up"}, "C2": {"name": "Down"}},
    )


HEARD: Links = {"N1": all_heard(["D1", "D2"])}


def faults(house: Schedule, heard: Links = HEARD) -> list[Finding]:
    return [f for f in check(house, heard, DEFAULTS) if f.outcome is not Outcome.PASSES]


def test_a_house_in_order_has_every_rule_answered_and_no_fault() -> None:
    found = check(two(), HEARD, DEFAULTS)
    assert {f.rule for f in found} == {r.id for r in RULES}
    assert faults(two()) == []


def one(found: list[Finding], rule: str) -> Finding:
    assert [(f.rule, f.place) for f in found] == [(rule, "B2")]
    return found[0]


def test_a_device_out_of_reach_has_no_parent() -> None:
    heard = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 9.5})}
    found = one(faults(two(), heard), "no_parent")
    assert (found.outcome, found.severity) == (Outcome.FAILS, Severity.FAULT)
    assert "repeater between" in found.remedy


def test_devices_that_hear_only_one_another_say_so() -> None:
    heard = {"N1": links(["D1", "D2"], {("D1", "D2"): 20.0})}
    found = faults(two(), heard)
    assert [f.place for f in found] == ["B1", "B2"]
    assert "It hears D1, which have none themselves" in found[1].says


def test_a_link_nobody_knows_cannot_be_told() -> None:
    heard = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): None})}
    found = one(faults(two(), heard), "no_parent")
    assert (found.outcome, [k.field for k in found.looks]) == (Outcome.CANNOT_TELL, ["radio"])


def test_an_unknown_link_that_cannot_change_the_answer_does_not_block_it() -> None:
    heard = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20, (CONTROLLER, "D2"): 20, ("D1", "D2"): None})}
    assert faults(two(), heard) == []


def test_a_margin_inside_the_range_of_the_assumption_cannot_be_told() -> None:
    heard = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 11.0})}
    ranged = DEFAULTS.overridden({"parent_margin_db": Override(10, 8, 12)}, set_by="firm")
    found = [f for f in check(two(), heard, ranged) if f.outcome is not Outcome.PASSES]
    assert one(found, "no_parent").outcome is Outcome.CANNOT_TELL


def test_a_device_without_a_position_is_looked_for_there() -> None:
    found = faults(two(boxes={"B2": a_box("R1", lines=["C2"])}), {"N1": links(["D1", "D2"], {
        (CONTROLLER, "D1"): 20.0, ("D1", "D2"): None})})  # fmt: skip
    assert [k.field for k in one(found, "no_parent").looks] == ["position"]


def test_a_chain_too_long_is_advice_for_its_limit_is_second_hand() -> None:
    wren = zigbee_relay()
    ids = [f"D{n}" for n in range(1, 17)]
    house = a_house(
        [wren],
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in range(1, 17)},
        devices={
            d: {"model": wren.key, "network": "N2", "box": f"B{d[1:]}", "mounts": ["1"], "gangs": ["1"]}
            for d in ids
        },
    )
    heard = {"N2": links(ids, dict.fromkeys(zip([CONTROLLER, *ids], ids, strict=False), 20.0))}
    found = faults(house, heard)
    assert [(f.place, f.severity) for f in found] == [("B16", Severity.ADVICE)]


def test_a_device_on_no_network_cannot_be_told() -> None:
    found = one(faults(two(network=None)), "no_parent")
    assert [(k.place, k.field) for k in found.looks] == [("D2", "network")]


def test_a_line_of_an_unknown_circuit_cannot_be_told_and_could_be_a_danger() -> None:
    found = one(
        faults(two(boxes={"B2": a_box("R1", lines=["C2", None], at=(9, 9), duty="not_known")})),
        "circuit_known",
    )
    assert (found.outcome, found.severity) == (Outcome.CANNOT_TELL, Severity.DANGER)
    assert [k.field for k in found.looks] == ["gangs.2.line"]


@pytest.mark.parametrize(
    ("gang", "asked"),
    [({"duty": "not_known"}, True), ({"duty": "capped"}, True), ({"duty": "scene_only"}, False)],
)
def test_only_a_gang_that_may_have_a_line_of_its_own_is_asked_for_it(
    gang: dict[str, Any], asked: bool
) -> None:
    box = a_box("R1", lines=["C2"], at=(9, 9))
    box["gangs"]["2"] = gang
    assert bool(faults(two(boxes={"B2": box}))) is asked


def test_a_neutral_nobody_looked_for_may_belong_to_another_circuit() -> None:
    box = {**a_box("R1", lines=["C2"], at=(9, 9)), "mounts": {"1": {}}}
    found = one(faults(two(boxes={"B2": box})), "circuit_known")
    assert [k.field for k in found.looks] == ["mounts.1.neutral"]


def test_an_assumed_circuit_settles_nothing() -> None:
    box = a_box("R1", lines=["C2"], at=(9, 9))
    box["gangs"]["1"]["line"]["known"] = "assumed"
    assert one(faults(two(boxes={"B2": box})), "circuit_known").outcome is Outcome.CANNOT_TELL


STEPS = {"steps": [{"act": "power_on"}]}


@pytest.mark.parametrize(
    ("when", "how", "outcome"),
    [
        ("always", {}, Outcome.FAILS),
        ("always", {"remove": STEPS}, None),
        ("always", {"reset": STEPS}, None),
        ("not_stated", {}, Outcome.CANNOT_TELL),
        ("not_stated", {"remove": STEPS}, None),
        ("when_used", {}, None),
        ("never", {}, None),
    ],
)
def test_removal_before_joining_needs_a_way(when: str, how: dict[str, Any], outcome: Outcome | None) -> None:
    found = faults(two(a_model(name="newt", removal_before_join=when, **how)))
    assert [f.outcome for f in found if f.rule == "removal_first"] == ([outcome] if outcome else [])


@pytest.mark.parametrize(("ref", "count"), [(None, 1), ("K07", 0)])
def test_a_code_is_captured_before_the_device_goes_into_the_wall(ref: str | None, count: int) -> None:
    coded = a_model(name="coot", code="zwave_dsk", code_printed_at="under the front")
    found = faults(two(coded, code_ref=ref))
    assert len(found) == count
    for f in found:
        assert (f.rule, f.severity) == ("code_captured", Severity.ADVICE)
        assert "capture it before fitting" in f.remedy
        assert "under the front" in f.remedy


def test_an_unknown_model_leaves_removal_and_code_open() -> None:
    undecided = a_house(
        boxes={"B1": a_box("R1", lines=["C1"], at=(0, 0))},
        devices={"D1": {"network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1"]}},
    )
    rules = {f.rule for f in faults(undecided, {"N1": all_heard(["D1"])})}
    assert rules == {"removal_first", "code_captured", "front_on"}


BEHIND = {"steps": [{"act": "release_front"}, {"act": "press", "button": "the pin hole", "times": 2}]}


@pytest.mark.parametrize(
    ("front", "procedures", "outcome"),
    [
        ("yes", {"join": BEHIND}, Outcome.FAILS),
        ("not_stated", {"join": BEHIND}, Outcome.CANNOT_TELL),
        ("no", {"join": BEHIND}, None),
        ("yes", {"removal_before_join": "always", "remove": BEHIND}, Outcome.FAILS),
        ("yes", {"removal_before_join": "always", "remove": BEHIND, "reset": STEPS}, None),
        ("yes", {"removal_before_join": "when_used", "remove": BEHIND}, None),
    ],
)
def test_a_gesture_under_power_behind_the_front_is_found_with_its_remedy(
    front: str, procedures: dict[str, Any], outcome: Outcome | None
) -> None:
    found = faults(two(a_model(name="newt", live_parts_front_off=front, **procedures)))
    assert [(f.rule, f.place, f.outcome) for f in found] == ([("front_on", "B2", outcome)] if outcome else [])
    for f in found:
        assert f.severity is Severity.ADVICE
        assert "join it before fitting, on a bench" in f.remedy
        assert [look.field for look in f.looks] in ([], ["models.brindle-newt@1.live_parts_front_off"])


def test_a_battery_button_is_not_asked_for_its_circuit() -> None:
    tick = battery_button()
    house = a_house(
        [tick],
        places={"P1": {"kind": "surface", "name": "Shelf", "room": "R1"}},
        devices={"D1": {"model": tick.key, "network": "N2", "place": "P1"}},
    )
    assert faults(house, {"N2": all_heard(["D1"])}) == []


def test_a_luminaire_point_without_a_circuit_is_asked_for_it() -> None:
    module = zigbee_relay(name="moth", form="luminaire_module", mounts=0)
    house = a_house(
        [module],
        places={"P1": {"kind": "light_point", "name": "Pendant", "room": "R1"}},
        devices={"D1": {"model": module.key, "network": "N2", "place": "P1"}},
    )
    found = faults(house, {"N2": all_heard(["D1"])})
    assert [(f.rule, f.looks[0].field) for f in found] == [("circuit_known", "circuit")]


@pytest.mark.parametrize(
    "path",
    [
        ("boxes", "B2", "gangs", "1", "line"),
        ("boxes", "B2", "mounts", "1", "neutral"),
        ("boxes", "B2", "position"),
        ("devices", "D2", "network"),
        ("devices", "D2", "model"),
        ("devices", "D2", "code_ref"),
        ("models", "brindle-coot@1", "repeats"),
        ("models", "brindle-coot@1", "live_parts_front_off"),
        ("models", "brindle-coot@1", "removal_before_join"),
        ("models", "brindle-coot@1", "reset"),
        ("models", "brindle-coot@1", "code_printed_at"),
    ],
)
@pytest.mark.parametrize("margin_db", [20.0, 5.0, None])
def test_blanking_a_field_turns_no_other_answer_into_a_pass(
    path: tuple[str, ...], margin_db: float | None
) -> None:
    coded = a_model(
        name="coot", code="zwave_dsk", code_printed_at="inside", removal_before_join="always", reset=STEPS,
        join=BEHIND, live_parts_front_off="no",
    )  # fmt: skip
    heard = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): margin_db})}
    whole = two(coded, code_ref="K07")
    plain = whole.house.model_dump(mode="json", exclude_none=True)
    plain["models"] = {k: m.model_dump(mode="json", exclude_none=True) for k, m in whole.models.items()}
    *way, last = path
    node = plain
    for key in way:
        node = node[key]
    del node[last]
    read = House.model_validate(plain)

    def passing(house: Schedule) -> set[tuple[str, str]]:
        return {(f.rule, f.place) for f in check(house, heard, DEFAULTS) if f.outcome is Outcome.PASSES}

    assert passing(schedule(read, read.models)) <= passing(whole)
