"""The steps of a walk in words: what is not known, each protocol, the way, the function test."""

import json

from secondfix.joining import Mark, StepKind, walk_as_json
from tests.joining.houses import (
    a_box,
    a_house,
    all_heard,
    battery_button,
    fact,
    plug_in,
    zigbee_relay,
)
from tests.joining.walking import RELAY, WREN, in_boxes, walked


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
