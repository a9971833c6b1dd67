"""What a worksheet isolates, in which stage, and what is joined on a bench."""

from secondfix.joining import CONTROLLER, Mark, walk, worksheets
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
from tests.joining.kitchen import DEFAULTS, STEPS, sheet, sheets


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
