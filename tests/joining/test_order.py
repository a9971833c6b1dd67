"""The walk: parents first, circuits as a whole, fewest isolations, then the shortest way."""

import json

from secondfix.assumptions import default_assumptions
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
    assert found.isolations == found.least_isolations == 2
    assert "together" in next(s.words for s in found.steps if s.circuits == ("C1", "C2"))


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


def test_a_join_behind_a_closed_front_forces_another_isolation() -> None:
    parts, heard = two_that_need_each_other(BACK.key)
    found = walked(a_house([BACK], **parts), heard)
    assert joined_order(found) == ["D3", "D1", "D2", "D4"]
    assert (found.isolations, found.least_isolations) == (4, 2)
    assert [s.again for s in found.stages] == [False, False, True, True]
    assert [s.places for s in found.stages] == [("B2", "B3"), ("B1", "B4"), ("B2",), ("B4",)]
    assert sum("front is still off" in s.words for s in found.steps) == 4


def test_no_live_parts_behind_the_front_means_no_further_isolation() -> None:
    guarded = with_front_off(live_parts_front_off="no")
    parts, heard = two_that_need_each_other(guarded.key)
    assert walked(a_house([guarded], **parts), heard).isolations == 2


def test_live_parts_not_stated_count_as_live() -> None:
    silent = with_front_off(live_parts_front_off="not_stated")
    parts, heard = two_that_need_each_other(silent.key)
    assert walked(a_house([silent], **parts), heard).isolations == 4


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
    assert plain["stages"] == [{"number": 1, "circuits": ["C1"], "places": ["B1"], "again": False}]
    assert plain["isolations"] == 1


def test_a_house_without_devices_has_an_empty_walk() -> None:
    found = walked(a_house(boxes={}), {})
    assert (found.steps, found.stages, found.isolations, found.walked_mm) == ((), (), 0, 0)
