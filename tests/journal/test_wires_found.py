"""What hangs on which gang, as its test found it."""

from typing import Any

import pytest

from secondfix.house import Duty
from secondfix.journal import (
    as_built,
    journal_of,
)
from tests.example_house import document, house
from tests.journal.building import built, says
from tests.journal.writing import HOUSE, entry_id, write


def test_crossed_gangs_are_as_built_as_they_work() -> None:
    b = built(
        write(1, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
        write(2, "function_tested", "gang:B1.2", answered={"L1": "changed"}),
    )
    assert says(b) == [
        "Gang B1.1, duty: the revision says feeds L1; found feeds L2.",
        "Gang B1.2, duty: the revision says feeds L2; found feeds L1.",
    ]


def test_a_load_found_elsewhere_leaves_its_old_gang_not_known() -> None:
    b = built(write(1, "function_tested", "gang:B1.1", answered={"L2": "changed"}))
    assert b.house.boxes["B1"].gangs["2"].duty is Duty.NOT_KNOWN
    assert {d.place: d.entries for d in b.differences} == {"B1.1": (entry_id(1),), "B1.2": (entry_id(1),)}


@pytest.mark.parametrize(
    "fields",
    [
        {"answered": {}},
        {"answered": {"L1": "on"}},
        {"answered": {"L77": "on"}},
        {"answered": {"L2": "on"}, "also_answered": "a bell"},
    ],
)
def test_a_test_that_does_not_settle_the_wire_leaves_the_document(fields: dict[str, Any]) -> None:
    assert built(write(1, "function_tested", "gang:B1.1", **fields)).house is HOUSE


def test_an_output_outside_the_boxes_loses_a_load_that_another_works() -> None:
    plain = document()
    plain["boxes"]["B1"]["gangs"]["1"] = {}
    plain["places"]["P3"] = {"kind": "light_point", "name": "Ceiling rose", "room": "R1"}
    plain["devices"]["D03"] = {"place": "P3", "outputs": {"1": "L1"}}
    test = write(1, "function_tested", "gang:B1.2", answered={"L1": "on"})
    b = as_built(house(plain), journal_of([test]), models={})
    assert b.house.devices["D03"].outputs == {}
    moved = write(2, "fitted", "device:D03", place="P3", outputs={"1": "L1", "2": "L2"})
    assert as_built(house(plain), journal_of([moved]), models={}).told[0].entry == moved.id


def test_the_order_of_a_devices_gangs_is_a_difference() -> None:
    b = built(write(1, "fitted", "device:D01", gangs=["2", "1"]))
    assert says(b) == ["Device D01, gangs: the revision says 1, 2; found 2, 1."]
