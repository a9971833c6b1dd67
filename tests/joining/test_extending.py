"""The sheet of an extension unit: fitted and tested, never joined."""

from typing import Any

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.joining import Worksheet, walk, worksheets
from secondfix.naming import names
from tests.joining.houses import a_box, a_house, a_model, all_heard, zigbee_relay

UNIT = a_model(
    name="burr",
    title="Brindle Burr, extension unit",
    form="extension_unit",
    protocol=None,
    output="none",
    gangs=1,
    repeats="no",
    whole_entry=False,
    join=None,
)


def stairs(line: str | None = "C1", **parts: Any) -> Schedule:
    """A relay at B1 that feeds a light, and an extension unit at B2 for it."""
    below = a_box("R1", lines=["C1"])
    below["gangs"]["1"] |= {"duty": "feeds", "load": "L1"}
    above = a_box("R1", lines=[line])
    above["gangs"]["1"] |= {"duty": "extends", "extends": "B1.1"}
    relay = zigbee_relay()
    return a_house(
        [relay, UNIT],
        boxes={"B1": below, "B2": above},
        circuits={"C1": {"name": "Lights"}, "C2": {"name": "Heat"}},
        loads={"L1": {"name": "stair light", "room": "R1"}},
        devices={
            "D1": {"model": relay.key, "network": "N2", "box": "B1", "gangs": ["1"]},
            "D2": {"model": UNIT.key, "box": "B2", "gangs": ["1"]},
        },
        **parts,
    )


def sheets(house: Schedule) -> dict[str, Worksheet]:
    ordered = walk(house, {"N2": all_heard(["D1"])}, default_assumptions())
    return {w.device: w for w in worksheets(house, ordered, names(house))}


def test_it_has_a_sheet_for_the_fitting_and_no_word_of_joining() -> None:
    told = sheets(stairs())
    assert set(told) == {"D1", "D2"}
    assert sorted(w.number for w in told.values()) == [1, 2]
    sheet = told["D2"]
    assert not sheet.joins
    assert told["D1"].joins
    assert told["D1"].extending == ()
    assert (sheet.removal, sheet.window, sheet.procedure, sheet.entries) == ((), (), (), ())
    assert (sheet.through, sheet.time, sheet.code, sheet.tell_apart) == ("", "", None, ())
    assert sheet.isolate.startswith("Isolate circuit C1 (Lights): lock off, and prove dead at B2.")


def test_it_says_what_it_extends_by_which_core_and_how_to_test_it() -> None:
    sheet = sheets(stairs())["D2"]
    words = " ".join(sheet.extending)
    assert "Gang 1 extends B1.1, which works stair light (L1): D1 (Brindle Wren, one-gang relay)" in words
    assert "Its signal core: the one that ends at the extension terminal of B1.1 in B1." in words
    assert "both boxes isolated and proved dead" in words
    assert "Both hang on circuit C1" in words
    assert "Brindle sheet 7, page 2" in words
    assert [row.answer for row in sheet.tests] == ["What B1.1 works answers: stair light."]


@pytest.mark.parametrize(
    ("line", "words"),
    [("C2", "Stop: B2.1 hangs on C2, B1.1 on C1."), (None, "on one circuit is not known")],
)
def test_another_circuit_is_a_stop_and_an_unknown_one_a_look(line: str | None, words: str) -> None:
    told = " ".join(sheets(stairs(line))["D2"].extending)
    assert words in told
    assert "Both hang on circuit" not in told


def test_in_an_nec_house_the_core_is_a_traveler() -> None:
    sheet = sheets(stairs(wiring_rules="nec"))["D2"]
    words = " ".join((sheet.isolate, *sheet.extending))
    assert "Its traveler: the one" in words
    assert "both boxes de-energized and tested for absence of voltage" in words
    assert "solat" not in words
