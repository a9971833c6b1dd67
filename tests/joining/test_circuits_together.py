"""Which circuits are isolated together: those that meet in a box or share a neutral."""

from secondfix.house import Schedule
from secondfix.joining import StepKind
from tests.joining.houses import (
    a_box,
    a_house,
    all_heard,
    fact,
    zigbee_relay,
)
from tests.joining.walking import RELAY, in_boxes, walked


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
