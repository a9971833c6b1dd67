"""Worksheets: everything one device asks for, in walk order, with what is not stated said."""

from typing import Any

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model
from secondfix.house import Schedule
from secondfix.joining import CONTROLLER, Links, Mark, Worksheet, walk, worksheets
from secondfix.joining.sentences import BENCH
from secondfix.naming import names
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
STEPS = {"steps": [{"act": "press", "button": "gang 1", "times": 3, "within_ms": 1500}]}


def sheets(house: Schedule, heard: Links) -> tuple[Worksheet, ...]:
    return worksheets(house, walk(house, heard, DEFAULTS), names(house))


def kitchen(model: Model | None = None, loads: dict[str, Any] | None = None, **device: Any) -> Schedule:
    """One box of two gangs, a sink light and a cove, worked by one device."""
    model = model or a_model()
    fed = {"sink": {"name": "Sink", "room": "R1", "purpose": "lighting"}}
    both = {"L1": fed["sink"], "L2": {"name": "Cove", "room": "R1", "purpose": "lighting"}, **(loads or {})}
    box = a_box("R1", lines=["C1"])
    box["gangs"] = {n: {"duty": "feeds", "load": f"L{n}", "line": fact("C1")} for n in ("1", "2")}
    standing = {"model": model.key, "network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1", "2"]}
    return a_house(
        [model],
        rooms={"R1": {"name": "Kitchen"}},
        boxes={"B1": box},
        loads=both,
        devices={"D1": {**standing, **device}},
    )


def sheet(model: Model | None = None, loads: dict[str, Any] | None = None, **device: Any) -> Worksheet:
    return sheets(kitchen(model, loads, **device), {"N1": all_heard(["D1"])})[0]


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


LAST_OR_OFF = {"settable": ["off", "last"], "as_delivered": "last"}


@pytest.mark.parametrize(
    ("power_loss", "loads", "device", "says"),
    [
        (LAST_OR_OFF, {}, {"after_power_loss": "off"}, "Set for a power loss: returns off"),
        (LAST_OR_OFF, {}, {"after_power_loss": "on"}, "cannot be set so"),
        (
            {"settable": [], "as_delivered": "off"},
            {},
            {"after_power_loss": "off"},
            "As delivered it returns off",
        ),
        (None, {}, {"after_power_loss": "off"}, "not stated whether it can"),
        (LAST_OR_OFF, {}, {}, "what is wanted is not stated"),
        (LAST_OR_OFF, {"L1": {"purpose": "heater_fixed"}}, {}, "Set for a power loss: returns off"),
        (
            LAST_OR_OFF,
            {"L1": {"purpose": "heater_fixed"}, "L2": {"after_power_loss": "last"}},
            {},
            "want different things",
        ),
    ],
)
def test_the_state_after_a_power_loss_is_set_or_said_to_be_open(
    power_loss: Any, loads: dict[str, Any], device: dict[str, Any], says: str
) -> None:
    named = {k: {"name": f"Load {k}", "room": "R1", **v} for k, v in loads.items()}
    assert says in sheet(a_model(power_loss=power_loss), named, **device).power_loss


@pytest.mark.parametrize(
    ("load", "says"),
    [
        ({"purpose": "heater_fixed", "time_limit_s": 5400}, "Set a time limit of 90 min on gang 1 (Towels)."),
        ({"purpose": "heater_fixed", "time_limit_s": 7200}, "Set a time limit of 2 h on gang 1 (Towels)."),
        ({"purpose": "lighting", "time_limit_s": 45}, "Set a time limit of 45 s on gang 1 (Towels)."),
        ({"purpose": "heater_fixed"}, "No time limit is stated for gang 1 (Towels), a fixed heater"),
        ({"purpose": "heater_radiant"}, "Off only for gang 1 (Towels), a radiant heater"),
    ],
)
def test_time_limits_of_heaters_are_set_or_asked_for(load: dict[str, Any], says: str) -> None:
    found = sheet(loads={"L1": {"name": "Towels", "room": "R1", **load}}).time_limits
    assert len(found) == 1
    assert says in found[0]


def test_the_function_test_has_a_row_for_each_gang_and_for_the_whole_device() -> None:
    rows = sheet(a_model(whole_switches="first")).tests
    assert [(r.label, r.answer) for r in rows] == [
        ("gang 1", "Sink (Kitchen) changes each time, and nothing else."),
        ("gang 2", "Cove (Kitchen) changes each time, and nothing else."),
        ("whole device", "Gang 1 follows, and no other."),
    ]
    assert sheet().tests[-1].answer == "The maker does not say: note which gangs follow."


def test_a_whole_device_entry_is_left_alone_where_it_could_reach_what_must_keep_running() -> None:
    row = sheet(loads={"L2": {"name": "Tank pump", "room": "R1", "purpose": "animal_care"}}).tests[-1]
    assert row.press == "Do not switch it: it may reach Tank pump."


def gang_of(duty: str, **gang: Any) -> str:
    relay = a_model(whole_entry=False)
    box = a_box("R1", lines=["C1"])
    box["gangs"] = {
        "1": {"duty": duty, "line": fact("C1"), **gang},
        "2": {"duty": "feeds", "load": "L1", "line": fact("C1")},
    }
    house = a_house(
        [relay],
        boxes={"B1": box},
        loads={"L1": {"name": "Porch", "room": "R1"}, "L2": {"name": "Hatch", "room": "R1"}},
        scenes={"S1": {"name": "Night", "starts": [{"by": "gang", "gang": "B1.1", "press": "held"}]}},
        devices={
            "D1": {"model": relay.key, "network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1", "2"]}
        },
    )
    return sheets(house, {"N1": all_heard(["D1"])})[0].tests[0].answer


def test_gangs_that_feed_nothing_are_tested_for_what_they_do() -> None:
    assert gang_of("extends", extends="B1.2") == "What B1.2 works answers: Porch."
    assert gang_of("feeds", load="L2") == "Hatch (Hall) changes each time, and nothing else."
    assert gang_of("capped") == "Nothing answers; its conductor is capped."
    assert gang_of("not_known").startswith("Not known: note every load")
    assert (
        gang_of("scene_only") == "Its entry answers. No load of its own; the scenes it starts: Night (held)."
    )


def test_a_battery_button_and_a_plug_in_repeater_ask_for_no_isolation() -> None:
    tick, stilt, wren = battery_button(), plug_in(), zigbee_relay()
    house = a_house(
        [tick, stilt, wren],
        places={
            "P1": {"kind": "socket", "name": "Low socket", "room": "R1"},
            "P2": {"kind": "surface", "name": "Shelf", "room": "R1"},
        },
        devices={
            "D1": {"model": stilt.key, "network": "N2", "place": "P1"},
            "D2": {"model": tick.key, "network": "N2", "place": "P2"},
        },
    )
    found = sheets(house, {"N2": all_heard(["D1", "D2"])})
    assert [(s.device, s.isolate, s.circuits, s.cautions) for s in found] == [
        ("D1", "", (), ()),
        ("D2", "", (), ()),
    ]
    assert found[0].entries_words == "1 entry must appear."
    assert found[0].tests[0].label == "this device"


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


def test_a_sheet_isolates_the_whole_group_of_its_stage_and_says_why() -> None:
    # The neutral joint of B1 carries the return current of the lamp in B2, whose line is of C2.
    relay = a_model()
    odd = a_box("R1", lines=["C2"])
    odd["gangs"] = {"1": {"duty": "feeds", "load": "L1", "line": fact("C2")}}
    house = a_house(
        [relay],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": odd, "B3": a_box("R1", lines=["C3"])},
        circuits={c: {"name": f"Ring {c}"} for c in ("C1", "C2", "C3")},
        loads={"L1": {"name": "Lamp", "room": "R1", "neutral": fact("C1")}},
        devices={
            f"D{n}": {"model": relay.key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n in (1, 2, 3)
        },
    )
    heard = {"N1": all_heard(["D1", "D2", "D3"])}
    ordered = walk(house, heard, DEFAULTS)
    told = {s.device: s for s in worksheets(house, ordered, names(house))}
    both = "Isolate circuits C1 (Ring C1) and C2 (Ring C2) together (C2 shares a neutral with C1 at B2.1)"
    for device, box in (("D1", "B1"), ("D2", "B2")):
        assert told[device].isolate == f"{both}: lock off, and prove dead at {box}."
        assert told[device].circuits == ("C1", "C2")
    assert told["D3"].isolate == "Isolate circuit C3 (Ring C3): lock off, and prove dead at B3."
    assert any(s.words.startswith(both) for s in ordered.steps)


def test_a_sheet_says_in_which_stage_a_device_is_fitted_that_is_joined_in_a_later_one() -> None:
    relay = a_model()
    house = a_house(
        [relay],
        boxes={f"B{n}": a_box("R1", lines=[c]) for n, c in ((1, "C1"), (2, "C2"), (3, "C1"))},
        devices={
            f"D{n}": {"model": relay.key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n in (1, 2, 3)
        },
    )
    chain = {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 20.0, ("D2", "D3"): 20.0}
    told = {s.device: s for s in sheets(house, {"N1": links(["D1", "D2", "D3"], chain)})}
    assert {device: s.stage for device, s in told.items()} == {"D1": 2, "D2": 2, "D3": 2}
    assert told["D2"].isolate.endswith("prove dead at B2. It is fitted in stage 1.")
    assert told["D3"].isolate.endswith("prove dead at B3.")


def test_what_is_joined_with_its_front_off_is_joined_on_a_bench_and_its_sheet_says_so() -> None:
    found = sheet(with_front_off(removal_before_join="always", remove=STEPS, reset=STEPS))
    assert found.stage == 0
    reset = found.removal.index("Or reset it:") + 1
    assert found.procedure[0] == found.removal[1] == found.removal[reset] == BENCH
    assert found.procedure[1:] == (
        "Release the front.",
        "Switch the bench lead on; touch nothing but what the next step names.",
        "Press 2 times: the hidden button.",
        "Switch the bench lead off.",
        "Fit the front again before it goes to its place.",
    )
    assert (
        found.through
        == "On the bench, parent: the controller. Once fitted, parent: the controller. None in reserve."
    )
    assert found.marks == (Mark.BENCH,)
    assert "joined_front_off" in {c.id for c in found.cautions}
    assert found.isolate.endswith("It is fitted in stage 1.")


def test_a_reset_behind_the_front_goes_to_the_bench_while_the_join_stays() -> None:
    behind = {"steps": [{"act": "release_front"}, *STEPS["steps"], {"act": "refit_front"}]}
    found = sheet(a_model(remove=STEPS, reset=behind))
    assert found.removal[2:4] == ("Or reset it:", BENCH)
    assert found.removal[1] == found.procedure[0] == "Press 3 times within 1.5 s: gang 1."
    assert found.stage == 1


def button_sheet(**start: Any) -> tuple[str, ...]:
    tick = battery_button(gangs=3)
    house = a_house(
        [tick],
        places={"P1": {"kind": "surface", "name": "Shelf", "room": "R1"}},
        devices={"D1": {"model": tick.key, "network": "N2", "place": "P1"}},
        scenes={"S1": {"name": "Everything off", "starts": [{"by": "sensor", "device": "D1", **start}]}},
    )
    found = sheets(house, {"N2": all_heard(["D1"])})[0]
    assert found.entries_words == "3 entries must appear, one for each button."
    assert [e.label for e in found.entries] == ["button 1", "button 2", "button 3"]
    rows = found.tests
    assert [(r.label, r.press) for r in rows] == [(f"button {n}", f"Press button {n}.") for n in (1, 2, 3)]
    return tuple(r.answer for r in rows)


def test_a_button_is_said_to_start_what_names_that_button_and_nothing_else() -> None:
    nothing = "Its entry answers. No load of its own; nothing assigned that the book knows."
    starts = "Its entry answers. No load of its own; the scenes it starts: Everything off (held)."
    assert button_sheet(button=2, press="held") == (nothing, starts, nothing)


def test_a_start_that_names_no_button_is_claimed_by_none() -> None:
    said = set(button_sheet())
    assert len(said) == 1
    assert said.pop().endswith(
        "nothing assigned that the book knows (one of this device's buttons starts Everything off: which one "
        "is not stated)."
    )
