"""What a worksheet sets and tests: power loss, time limits, every gang, buttons that start scenes."""

from typing import Any

import pytest

from tests.joining.houses import (
    a_box,
    a_house,
    a_model,
    all_heard,
    battery_button,
    fact,
)
from tests.joining.kitchen import sheet, sheets

LAST_OR_OFF = {"settable": ["off", "last"], "as_delivered": "last"}


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


def test_gangs_that_feed_nothing_are_tested_for_what_they_do() -> None:
    assert gang_of("extends", extends="B1.2") == "What B1.2 works answers: Porch."
    assert gang_of("feeds", load="L2") == "Hatch (Hall) changes each time, and nothing else."
    assert gang_of("capped") == "Nothing answers; its conductor is capped."
    assert gang_of("not_known").startswith("Not known: note every load")
    assert (
        gang_of("scene_only") == "Its entry answers. No load of its own; the scenes it starts: Night (held)."
    )


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
