"""The order of joining: parents before children, one isolation of each circuit, benches first."""

import pytest

from secondfix.catalogue import Model
from secondfix.house import Schedule
from secondfix.joining import CONTROLLER, Links, Mark, StepKind
from tests.joining.houses import (
    a_box,
    a_house,
    all_heard,
    battery_button,
    fact,
    links,
    plug_in,
    with_front_off,
)
from tests.joining.walking import BACK, RELAY, WREN, in_boxes, joined_order, walked


def two_that_need_each_other(model_key: str) -> tuple[dict[str, object], Links]:
    """D1 and D4 on one circuit, D2 and D3 on the other; 3 carries 1, 1 carries 2, 2 carries 4."""
    parts: dict[str, object] = {
        "boxes": {f"B{n}": a_box("R1", lines=["C1" if n in {1, 4} else "C2"]) for n in (1, 2, 3, 4)},
        "devices": in_boxes(model_key, "B1", "B2", "B3", "B4"),
    }
    heard = {(CONTROLLER, "D3"): 15.0, ("D3", "D1"): 15.0, ("D1", "D2"): 15.0, ("D2", "D4"): 15.0}
    return parts, {"N1": links(["D1", "D2", "D3", "D4"], heard)}


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
