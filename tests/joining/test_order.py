"""The walk: parents first, circuits as a whole, fewest isolations, then the shortest way."""

import json

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model
from secondfix.house import Schedule
from secondfix.joining import CONTROLLER, Links, Mark, StepKind, Walk, walk, walk_as_json
from tests.joining.houses import (
    a_box,
    a_house,
    a_model,
    all_heard,
    battery_button,
    fact,
    links,
    plug_in,
    with_front_off,
    zigbee_relay,
)

DEFAULTS = default_assumptions()
RELAY, BACK, WREN = a_model(), with_front_off(), zigbee_relay()


def in_boxes(model: str, *boxes: str, network: str = "N1") -> dict[str, dict[str, object]]:
    """Devices D1, D2, … one in each box."""
    return {
        f"D{n}": {"model": model, "network": network, "box": box, "mounts": ["1"], "gangs": ["1"]}
        for n, box in enumerate(boxes, 1)
    }


def walked(house: Schedule, links_: Links) -> Walk:
    return walk(house, links_, DEFAULTS)


def joined_order(found: Walk) -> list[str | None]:
    return [s.device for s in found.joins()]


def test_a_far_switch_waits_for_the_repeater_that_carries_it() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C2"])},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    found = walked(house, {"N1": links(["D1", "D2"], {(CONTROLLER, "D2"): 14, ("D2", "D1"): 12})})
    assert joined_order(found) == ["D2", "D1"]
    last = found.joins()[-1]
    assert (last.parent, last.links, last.margin_db, last.spare) == ("D2", 2, 12, None)
    assert found.isolations == 2


def test_a_link_below_the_wanted_margin_is_no_parent_and_at_it_is() -> None:
    house = a_house([RELAY], boxes={"B1": a_box("R1", lines=["C1"])}, devices=in_boxes(RELAY.key, "B1"))
    at = walked(house, {"N1": links(["D1"], {(CONTROLLER, "D1"): 10.0})}).joins()[0]
    below = walked(house, {"N1": links(["D1"], {(CONTROLLER, "D1"): 9.9})}).joins()[0]
    assert (at.parent, at.marks) == (CONTROLLER, ())
    assert (below.parent, below.marks) == (None, (Mark.NO_GOOD_PARENT,))


def test_circuits_that_meet_in_a_box_are_isolated_together() -> None:
    house = a_house(
        [RELAY],
        boxes={
            "B1": a_box("R1", lines=["C1", "C2"]),
            "B2": a_box("R1", lines=["C2"]),
            "B3": a_box("R1", lines=["C3"]),
        },
        devices=in_boxes(RELAY.key, "B1", "B2", "B3"),
    )
    found = walked(house, {"N1": all_heard(["D1", "D2", "D3"])})
    assert sorted(s.circuits for s in found.stages) == [("C1", "C2"), ("C3",)]
    assert found.isolations == 2
    words = next(s.words for s in found.steps if s.circuits == ("C1", "C2"))
    assert "circuits C1 (Ring C1) and C2 (Ring C2) together (C1 and C2 meet at B1)" in words


def test_a_borrowed_neutral_counts_as_a_circuit_of_the_box() -> None:
    box = a_box("R1", lines=["C1"])
    box["mounts"]["1"]["neutral"] = fact("C2")
    house = a_house(
        [RELAY],
        boxes={"B1": box},
        devices=in_boxes(RELAY.key, "B1"),
        circuits={"C1": {"name": "Lights"}, "C2": {"name": "Sockets"}},
    )
    assert walked(house, {"N1": all_heard(["D1"])}).stages[0].circuits == ("C1", "C2")


def test_every_device_of_a_stage_is_fitted_before_its_circuit_is_energised_and_joined_after() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    kinds = [s.kind.value for s in walked(house, {"N1": all_heard(["D1", "D2"])}).steps]
    assert kinds == [
        "isolate", "fit", "fit", "energise", "join", "function_test", "join", "function_test",
    ]  # fmt: skip


def two_that_need_each_other(model_key: str) -> tuple[dict[str, object], Links]:
    """D1 and D4 on one circuit, D2 and D3 on the other; 3 carries 1, 1 carries 2, 2 carries 4."""
    parts: dict[str, object] = {
        "boxes": {f"B{n}": a_box("R1", lines=["C1" if n in {1, 4} else "C2"]) for n in (1, 2, 3, 4)},
        "devices": in_boxes(model_key, "B1", "B2", "B3", "B4"),
    }
    heard = {(CONTROLLER, "D3"): 15.0, ("D3", "D1"): 15.0, ("D1", "D2"): 15.0, ("D2", "D4"): 15.0}
    return parts, {"N1": links(["D1", "D2", "D3", "D4"], heard)}


def test_a_join_that_needs_no_open_front_comes_later_without_another_isolation() -> None:
    parts, heard = two_that_need_each_other(RELAY.key)
    found = walked(a_house([RELAY], **parts), heard)
    assert joined_order(found) == ["D3", "D1", "D2", "D4"]
    assert found.isolations == 2


def test_a_gesture_with_the_front_off_is_made_on_a_bench_before_anything_is_isolated() -> None:
    parts, heard = two_that_need_each_other(BACK.key)
    found = walked(a_house([BACK], **parts), heard)
    joins = found.joins()
    assert [(s.number, s.stage, s.parent, s.marks) for s in joins] == [
        (n, 0, CONTROLLER, (Mark.BENCH,)) for n in (1, 2, 3, 4)
    ]
    assert all("Not in its wall box by this sheet" in s.words for s in joins)
    assert [(s.number, s.circuits, s.places) for s in found.stages] == [
        (0, (), ()),
        (1, ("C2",), ("B2", "B3")),
        (2, ("C1",), ("B1", "B4")),
    ]
    assert found.isolations == 2


def test_what_was_joined_on_a_bench_is_heard_in_its_place_once_its_parent_stands() -> None:
    parts, heard = two_that_need_each_other(BACK.key)
    found = walked(a_house([BACK], **parts), heard)
    tests = [s for s in found.steps if s.kind is StepKind.FUNCTION_TEST]
    assert [(s.device, s.parent, s.links) for s in tests] == [
        ("D3", CONTROLLER, 1), ("D1", "D3", 2), ("D2", "D1", 3), ("D4", "D2", 4)
    ]  # fmt: skip
    assert tests[1].words.startswith("D1 was included on the bench: see that it is heard at B1, through D3.")


@pytest.mark.parametrize("kind", [with_front_off(), with_front_off(live_parts_front_off="not_stated"), RELAY])
def test_no_step_of_a_walk_leaves_a_front_off_under_power(kind: Model) -> None:
    parts, heard = two_that_need_each_other(kind.key)
    found = walked(a_house([kind], **parts), heard)
    energised = [s.words for s in found.steps if s.kind is StepKind.ENERGISE]
    assert energised
    assert all(words.startswith("See that every front is on.") for words in energised)
    assert not any("front off" in s.words for s in found.steps if Mark.BENCH not in s.marks)


def test_a_front_with_nothing_live_behind_it_is_joined_in_its_place() -> None:
    guarded = with_front_off(live_parts_front_off="no")
    parts, heard = two_that_need_each_other(guarded.key)
    found = walked(a_house([guarded], **parts), heard)
    assert {s.marks for s in found.joins()} == {()}
    assert {s.stage for s in found.joins()} == {1, 2}


def lamp_between(line: str, neutral: str, **more: object) -> Schedule:
    """B1 and B2 with a device and C1 each; B3 without one, its lamp between two circuits."""
    odd = a_box("R1", lines=[line])
    odd["gangs"] = {"1": {"duty": "feeds", "load": "L1", "line": fact(line)}}
    return a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"]), "B3": odd},
        circuits={c: {"name": f"Ring {c}"} for c in ("C1", "C2", "C3")} | more,
        loads={"L1": {"name": "Lamp", "room": "R1", "neutral": fact(neutral)}},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )


def test_a_neutral_shared_in_a_box_that_nobody_opens_still_binds_the_circuits() -> None:
    found = walked(lamp_between("C2", "C1"), {"N1": all_heard(["D1", "D2"])})
    (isolate,) = [s for s in found.steps if s.kind is StepKind.ISOLATE]
    assert isolate.circuits == ("C1", "C2")
    assert "(C2 shares a neutral with C1 at B3.1)" in isolate.words


def test_one_neutral_of_two_circuits_is_told_as_such() -> None:
    multiwire = {"C1": {"name": "Left", "shares_neutral_with": fact(["C3"])}}
    found = walked(lamp_between("C1", "C1", **multiwire), {"N1": all_heard(["D1", "D2"])})
    (isolate,) = [s for s in found.steps if s.kind is StepKind.ISOLATE]
    assert isolate.circuits == ("C1", "C3")
    assert "(C1 and C3 have one neutral)" in isolate.words


def test_circuits_that_share_nothing_are_not_bound() -> None:
    found = walked(lamp_between("C2", "C2"), {"N1": all_heard(["D1", "D2"])})
    assert [s.circuits for s in found.stages] == [("C1",)]


def test_line_and_neutral_of_a_lamp_reach_the_place_where_it_hangs() -> None:
    moth = zigbee_relay(name="moth", form="luminaire_module", mounts=0)
    box = a_box("R1", lines=["C2"])
    box["gangs"] = {"1": {"duty": "feeds", "load": "L1", "line": fact("C2")}}
    house = a_house(
        [moth],
        boxes={"B1": box},
        circuits={c: {"name": f"Ring {c}"} for c in ("C1", "C2", "C3")},
        places={"P1": {"kind": "light_point", "name": "Rose", "room": "R1", "circuit": fact("C1")}},
        loads={"L1": {"name": "Lamp", "room": "R1", "place": "P1", "neutral": fact("C3")}},
        devices={"D1": {"model": moth.key, "network": "N2", "place": "P1"}},
    )
    assert walked(house, {"N2": all_heard(["D1"])}).stages[0].circuits == ("C1", "C2", "C3")


def mixed() -> Schedule:
    stilt, tick = plug_in(), battery_button()
    return a_house(
        [WREN, stilt, tick],
        boxes={"B1": a_box("R1", lines=["C1"])},
        places={
            "P1": {"kind": "socket", "name": "Socket", "room": "R1", "circuit": fact("C9")},
            "P2": {"kind": "surface", "name": "Shelf", "room": "R1"},
        },
        circuits={"C1": {"name": "Lights"}, "C9": {"name": "Sockets"}},
        devices={
            "D1": {"model": WREN.key, "network": "N2", "box": "B1", "mounts": ["1"], "gangs": ["1"]},
            "D2": {"model": stilt.key, "network": "N2", "place": "P1"},
            "D3": {"model": tick.key, "network": "N2", "place": "P2"},
        },
    )


def test_a_plug_in_repeater_comes_before_any_isolation_and_a_battery_button_last() -> None:
    heard = {(CONTROLLER, "D2"): 20.0, ("D2", "D1"): 20.0, ("D2", "D3"): 20.0}
    found = walked(mixed(), {"N2": links(["D1", "D2", "D3"], heard)})
    assert joined_order(found) == ["D2", "D1", "D3"]
    assert [s.stage for s in found.joins()] == [0, 1, 2]
    assert found.isolations == 1
    assert found.steps[0].words.startswith("Plug in D2")


def test_a_plug_in_on_a_circuit_that_is_isolated_waits_for_it() -> None:
    house = mixed()
    places = {**house.house.places}
    places["P1"] = places["P1"].model_copy(update={"circuit": house.house.boxes["B1"].gangs["1"].line})
    house = Schedule(
        house.house.model_copy(update={"places": places}), house.models, house.rows, house.channels_of
    )
    found = walked(house, {"N2": all_heard(["D1", "D2", "D3"])})
    assert {s.device: s.stage for s in found.joins()} == {"D1": 1, "D2": 1, "D3": 2}


def test_a_battery_device_and_a_silent_one_carry_nobody() -> None:
    tick = battery_button()
    house = a_house(
        [WREN, tick],
        boxes={"B1": a_box("R1", lines=["C1"])},
        places={"P2": {"kind": "surface", "name": "Shelf", "room": "R1"}},
        devices={
            "D1": {"model": WREN.key, "network": "N2", "box": "B1", "mounts": ["1"], "gangs": ["1"]},
            "D3": {"model": tick.key, "network": "N2", "place": "P2"},
        },
    )
    heard = {(CONTROLLER, "D3"): 20.0, ("D3", "D1"): 20.0}
    found = walked(house, {"N2": links(["D1", "D3"], heard)})
    assert {s.device: s.marks for s in found.joins()} == {"D1": (Mark.NO_GOOD_PARENT,), "D3": ()}


def chain(model_key: str, count: int, network: str) -> tuple[dict[str, object], Links]:
    ids = [f"D{n}" for n in range(1, count + 1)]
    parts: dict[str, object] = {
        "boxes": {f"B{n}": a_box("R1", lines=["C1"]) for n in range(1, count + 1)},
        "devices": in_boxes(model_key, *(f"B{n}" for n in range(1, count + 1)), network=network),
    }
    heard = dict.fromkeys(zip([CONTROLLER, *ids], ids, strict=False), 20.0)
    return parts, {network: links(ids, heard)}


def test_zwave_goes_through_four_repeaters_and_no_more() -> None:
    parts, heard = chain(RELAY.key, 6, "N1")
    joins = {s.device: s for s in walked(a_house([RELAY], **parts), heard).joins()}
    assert (joins["D5"].parent, joins["D5"].links) == ("D4", 5)
    assert joins["D6"].marks == (Mark.NO_GOOD_PARENT,)


def test_zigbee_goes_fifteen_deep_and_no_more() -> None:
    parts, heard = chain(WREN.key, 16, "N2")
    joins = {s.device: s for s in walked(a_house([WREN], **parts), heard).joins()}
    assert joins["D15"].links == 15
    assert joins["D16"].marks == (Mark.NO_GOOD_PARENT,)


def test_links_nobody_knows_still_give_an_order_marked() -> None:
    house = a_house([RELAY], boxes={"B1": a_box("R1", lines=["C1"])}, devices=in_boxes(RELAY.key, "B1"))
    for nothing in ({}, {"N1": links(["D1"], {(CONTROLLER, "D1"): None})}):
        step = walked(house, nothing).joins()[0]
        assert (step.parent, step.margin_db, step.marks) == (CONTROLLER, None, (Mark.LINK_NOT_KNOWN,))
        assert "not known" in step.words


def test_a_repeater_that_is_not_stated_to_repeat_is_only_hoped_for() -> None:
    silent = a_model(name="mute", repeats="not_stated")
    house = a_house(
        [RELAY, silent],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices={**in_boxes(RELAY.key, "B1", "B2"), **in_boxes(silent.key, "B1")},
    )
    found = walked(house, {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 20.0})})
    assert {s.device: s.marks for s in found.joins()} == {"D1": (), "D2": (Mark.LINK_NOT_KNOWN,)}


def test_a_known_chain_is_preferred_to_a_hoped_one() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    heard = {(CONTROLLER, "D1"): None, (CONTROLLER, "D2"): 20.0, ("D2", "D1"): 20.0}
    found = walked(house, {"N1": links(["D1", "D2"], heard)})
    assert joined_order(found) == ["D2", "D1"]
    assert found.joins()[1].parent == "D2"


def test_a_box_whose_circuit_is_not_known_is_live_until_proved() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=[None]), "B2": a_box("R1", lines=[None])},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    found = walked(house, {"N1": all_heard(["D1", "D2"])})
    isolate = [s for s in found.steps if s.kind is StepKind.ISOLATE]
    assert [s.marks for s in isolate] == [(Mark.CIRCUIT_NOT_KNOWN,)] * 2
    assert all("treat it as live until proved dead" in s.words for s in isolate)


def test_a_device_on_no_network_stands_in_the_order_and_says_so() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"])},
        devices={"D1": {"model": RELAY.key, "box": "B1", "mounts": ["1"], "gangs": ["1"]}},
    )
    step = walked(house, {}).joins()[0]
    assert (step.parent, step.marks) == (None, (Mark.NETWORK_NOT_STATED,))


def two_ways(straight_db: float | None) -> str:
    """D2 hears D1 well, and its controller by as much as is said."""
    house = a_house(
        [RELAY],
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in (1, 2)},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    heard = {(CONTROLLER, "D1"): 30.0, ("D1", "D2"): 25.0, (CONTROLLER, "D2"): straight_db}
    return walked(house, {"N1": links(["D1", "D2"], heard)}).joins()[-1].words


def test_the_controller_is_preferred_to_a_stronger_repeater_while_it_is_a_good_parent() -> None:
    assert two_ways(10.0) == "Include D2 through the controller (in reserve: D1)."


def test_a_straight_link_too_thin_to_join_by_is_told_beside_the_repeater() -> None:
    thin = "It is the best link now: straight to the controller less is in reserve than joining asks for"
    assert two_ways(9.9).startswith(f"Include D2 through D1. {thin}")
    assert two_ways(-0.1) == two_ways(None) == "Include D2 through D1."


def test_the_stronger_parent_is_chosen_and_the_next_kept_in_reserve() -> None:
    house = a_house(
        [RELAY],
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in (1, 2, 3)},
        devices=in_boxes(RELAY.key, "B1", "B2", "B3"),
    )
    heard = {(CONTROLLER, "D1"): 30.0, (CONTROLLER, "D2"): 30.0, ("D1", "D3"): 11.0, ("D2", "D3"): 18.0}
    last = walked(house, {"N1": links(["D1", "D2", "D3"], heard)}).joins()[-1]
    assert (last.device, last.parent, last.spare) == ("D3", "D2", "D1")
    assert "in reserve: D1" in last.words


def test_each_protocol_is_joined_in_its_own_word() -> None:
    thread = zigbee_relay(name="moth", protocol="matter_thread")
    house = a_house(
        [RELAY, WREN, thread],
        networks={
            "N1": {"name": "a", "protocol": "zwave"},
            "N2": {"name": "b", "protocol": "zigbee"},
            "N3": {"name": "c", "protocol": "matter_thread"},
        },
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in (1, 2, 3)},
        devices={
            f"D{n}": {"model": m.key, "network": f"N{n}", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n, m in enumerate((RELAY, WREN, thread), 1)
        },
    )
    found = walked(house, {f"N{n}": all_heard([f"D{n}"]) for n in (1, 2, 3)})
    words = {s.device: s.words for s in found.joins()}
    assert words == {
        "D1": "Include D1 through the controller.",
        "D2": "Join D2 through the coordinator.",
        "D3": "Commission D3 through the controller.",
    }


def test_the_way_is_the_straight_one_and_a_storey_costs_extra() -> None:
    parts: dict[str, object] = {
        "storeys": {"S0": {"name": "Ground", "level_mm": 0}, "S1": {"name": "First", "level_mm": 2700}},
        "rooms": {"R1": {"name": "Hall", "storey": "S0"}, "R2": {"name": "Landing", "storey": "S1"}},
        "boxes": {
            "B1": a_box("R1", lines=["C1"], at=(0, 0)),
            "B2": a_box("R1", lines=["C1"], at=(3000, 4000)),
        },
        "devices": in_boxes(RELAY.key, "B1", "B2"),
    }
    heard = {"N1": all_heard(["D1", "D2"])}
    found = walked(a_house([RELAY], **parts), heard)
    assert (found.walked_mm, found.exact, found.unplaced) == (10_000, True, ())
    parts["boxes"]["B2"]["room"] = "R2"  # type: ignore[index] # a dict built above
    assert walked(a_house([RELAY], **parts), heard).walked_mm == 40_000


def test_places_without_a_position_are_told() -> None:
    house = a_house([RELAY], boxes={"B1": a_box("R1", lines=["C1"])}, devices=in_boxes(RELAY.key, "B1"))
    assert walked(house, {}).unplaced == ("B1",)


def test_the_answer_as_json_is_plain_and_complete() -> None:
    house = a_house([RELAY], boxes={"B1": a_box("R1", lines=["C1"])}, devices=in_boxes(RELAY.key, "B1"))
    found = walked(house, {"N1": all_heard(["D1"])})
    plain = json.loads(json.dumps(walk_as_json(found)))
    assert [s["kind"] for s in plain["steps"]] == [s.kind.value for s in found.steps]
    assert set(plain["steps"][0]) == {
        "number", "stage", "kind", "place", "device", "circuits", "words", "parent", "spare", "links",
        "margin_db", "marks",
    }  # fmt: skip
    assert plain["stages"] == [{"number": 1, "circuits": ["C1"], "places": ["B1"]}]
    assert plain["isolations"] == 1


def test_the_function_test_speaks_of_what_the_device_has() -> None:
    stilt, tick = plug_in(), battery_button()
    fed = a_box("R1", lines=["C1"])
    fed["gangs"] = {
        "1": {"duty": "feeds", "load": "L1", "line": fact("C1")},
        "2": {"duty": "scene_only"},
    }
    house = a_house(
        [RELAY, stilt, tick],
        boxes={"B1": fed},
        loads={"L1": {"name": "Lamp", "room": "R1"}},
        places={
            "P1": {"kind": "socket", "name": "Socket", "room": "R1"},
            "P2": {"kind": "surface", "name": "Shelf", "room": "R1"},
        },
        devices={
            "D1": {"model": RELAY.key, "network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1", "2"]},
            "D2": {"model": stilt.key, "network": "N2", "place": "P1"},
            "D3": {"model": tick.key, "network": "N2", "place": "P2"},
        },
    )
    found = walked(house, {"N1": all_heard(["D1"]), "N2": all_heard(["D2", "D3"])})
    said = {s.device: s.words for s in found.steps if s.kind is StepKind.FUNCTION_TEST}
    assert said["D1"].endswith("and nothing else; of a gang without a load, that its entry answers.")
    assert said["D2"] == "Function test of D2: see that it answers in the network."
    assert said["D3"] == "Function test of D3: press each button and see that its entry answers."


def test_a_house_without_devices_has_an_empty_walk() -> None:
    found = walked(a_house(boxes={}), {})
    assert (found.steps, found.stages, found.isolations, found.walked_mm) == ((), (), 0, 0)
