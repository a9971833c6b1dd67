"""Worksheets: one for each device, its head, codes, removal, window, entries."""

import pytest

from secondfix.house import Schedule
from secondfix.joining import CONTROLLER, Links, Mark
from tests.joining.houses import (
    a_box,
    a_house,
    a_model,
    all_heard,
    links,
)
from tests.joining.kitchen import STEPS, kitchen, sheet, sheets


def test_there_is_one_for_each_device_in_walk_order() -> None:
    relay = a_model()
    house = a_house(
        [relay],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C2"])},
        devices={
            f"D{n}": {"model": relay.key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n in (1, 2)
        },
    )
    found = sheets(house, {"N1": links(["D1", "D2"], {(CONTROLLER, "D2"): 20.0, ("D2", "D1"): 20.0})})
    assert [(s.number, s.stage, s.device) for s in found] == [(1, 1, "D2"), (2, 2, "D1")]
    assert found[1].through == "Parent: D2, which must be included and have power. None in reserve."
    assert found[0].through == "Parent: the controller. None in reserve."


def test_place_circuit_and_cautions_head_the_sheet() -> None:
    found = sheet()
    assert (found.place_title, found.where) == ("B1 Kitchen", "position not known: look for it in the room")
    assert found.isolate == "Isolate circuit C1 (Ring C1): lock off, and prove dead at B1."
    assert [c.id for c in found.cautions] == ["live_front"]


def test_the_code_is_named_by_its_place_in_the_key_ring_and_never_shown() -> None:
    coded = a_model(code="zwave_dsk", code_printed_at="inside the front")
    kept, missing = sheet(coded, code_ref="K07").code, sheet(coded).code
    assert kept is not None
    assert missing is not None
    assert (kept.key_ref, kept.printed_at) == ("K07", "inside the front")
    assert "K07" in kept.words
    assert "capture it before fitting" in missing.words
    assert sheet().code is None


@pytest.mark.parametrize(
    ("when", "lead"),
    [
        ("always", "Even when new, remove it first (exclude): have a controller in that mode at hand."),
        ("when_used", "Only if it was in use before: remove it first (exclude)."),
        ("not_stated", "Only if nothing appears: remove it first (exclude); whether it must is not stated."),
    ],
)
def test_removal_comes_first_where_the_model_says_so_or_is_silent(when: str, lead: str) -> None:
    assert sheet(a_model(removal_before_join=when, remove=STEPS)).removal == (
        lead,
        "Press 3 times within 1.5 s: gang 1.",
    )
    assert sheet(a_model(removal_before_join=when)).removal[1] == "How to remove it is not stated."


def test_a_device_that_is_never_removed_first_asks_for_nothing() -> None:
    assert sheet(a_model(removal_before_join="never")).removal == ()


def test_zwave_commonly_wants_one_gesture_twice_to_exclude_and_to_include() -> None:
    # Common practice, no source: the sheet carries the same gesture in both places.
    found = sheet(a_model(removal_before_join="always", remove=STEPS))
    assert found.procedure[0] in found.removal


@pytest.mark.parametrize(
    ("protocol", "window", "note"),
    [
        ("zigbee", "Open the network for joining at the coordinator.", "180 s to 254 s"),
        ("zwave", "Start inclusion at the controller.", "60 s"),
        ("matter_thread", "Start commissioning at the controller.", "code at hand"),
    ],
)
def test_the_window_is_opened_in_the_protocols_own_words(protocol: str, window: str, note: str) -> None:
    model = a_model(protocol=protocol)
    house = kitchen(model)
    nets = {"N1": house.house.networks["N1"].model_copy(update={"protocol": model.protocol})}
    house = Schedule(
        house.house.model_copy(update={"networks": nets}),
        house.models,
        house.rows,
        house.channels_of,
    )
    found = sheets(house, {"N1": all_heard(["D1"])})[0]
    assert found.window[0] == window
    assert note in found.window[1]
    assert found.when_nothing


def test_far_from_the_controller_the_longer_time_is_told() -> None:
    # Common practice, no source: Z-Wave joins take longer far from the controller.
    model = a_model(join={**STEPS, "near_s": 12, "far_s": 75})
    house = a_house(
        [model],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices={
            f"D{n}": {"model": model.key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n in (1, 2)
        },
    )
    heard: Links = {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 20.0})}
    assert [s.time for s in sheets(house, heard)] == [
        "Near the controller about 12 s.",
        "Near the controller about 12 s; here, 2 links away, up to 75 s.",
    ]
    unknown = sheets(house, {"N1": links(["D1", "D2"], {})})
    assert unknown[0].time == "Near the controller about 12 s; far from it up to 75 s."


def test_a_time_that_the_maker_does_not_state_is_said_to_be_missing() -> None:
    assert sheet().time == "Usual time: not stated."


def test_a_two_gang_zwave_switch_shows_three_entries_the_whole_device_among_them() -> None:
    # Common practice, no source: n gangs show n + 1 entries, the whole-device entry named after its place.
    found = sheet()
    assert found.entries_expected == 3
    assert found.entries_words == "3 entries must appear: the whole device, and 2 gangs."
    assert [(e.label, e.endpoint, e.purpose) for e in found.entries] == [
        ("whole device", 0, "no purpose"),
        ("gang 1", 1, "lighting"),
        ("gang 2", 2, "lighting"),
    ]
    whole, sink, _ = found.entries
    assert "never in a scene" in whole.note
    assert "Sink" in sink.name
    assert "B1" in whole.name


def test_entries_are_told_apart_by_address_or_press_and_never_by_order() -> None:
    said = sheet(address="00155F00A1B2C3D4").tell_apart
    assert "00:15:5F:00:A1:B2:C3:D4" in said[0]
    assert "root device (0)" in said[0]
    assert "press one button and watch which entry changes" in said[1]
    assert said[2] == "Never tell them apart by their order in the list."


def test_an_unknown_model_leaves_a_sheet_that_says_what_is_missing() -> None:
    house = a_house(
        boxes={"B1": a_box("R1", lines=[None])},
        devices={"D1": {"network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1"]}},
    )
    found = sheets(house, {"N1": all_heard(["D1"])})[0]
    assert found.procedure == ("Not known: the model is not known.",)
    assert found.entries_expected is None
    assert "not known" in found.entries_words
    assert found.marks == (Mark.CIRCUIT_NOT_KNOWN,)
    assert "treat it as live until proved dead" in found.isolate


def test_no_sentence_of_a_sheet_calls_anything_safe() -> None:
    assert "safe" not in repr(sheet()).lower()


def test_a_reset_is_offered_beside_removal() -> None:
    found = sheet(a_model(removal_before_join="when_used", remove=STEPS, reset=STEPS))
    assert found.removal[2] == "Or reset it:"
    assert len(found.removal) == 4


def test_a_device_of_no_network_and_no_model_says_that_the_window_is_not_known() -> None:
    house = a_house(
        boxes={"B1": a_box("R1", lines=["C1"])},
        devices={"D1": {"box": "B1", "mounts": ["1"], "gangs": ["1"]}},
    )
    found = sheets(house, {})[0]
    assert found.window == ("Not known: neither network nor model is stated.",)
    assert found.through == "No good parent is known for this place."
    assert found.when_nothing == ()
    assert Mark.NETWORK_NOT_STATED in found.marks
