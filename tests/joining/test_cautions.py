"""Cautions: which apply where; not stated and not known count as the worse."""

from typing import Any

import pytest

from secondfix.joining import GENERAL, ISOLATION, WHEN_NOTHING, before_boxes, cautions_for, to_mind
from secondfix.terms import Protocol
from tests.joining.houses import a_box, a_house, a_model, battery_button, fact, with_front_off


def told(model: Any, box: dict[str, Any], **parts: Any) -> dict[str, str]:
    house = a_house(
        [model],
        boxes={"B1": box},
        devices={
            "D1": {"model": model.key, "network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1"]},
        },
        **parts,
    )
    return {c.id: c.words for c in cautions_for(house, "D1")}


PLAIN = a_box("R1", lines=["C1"])


@pytest.mark.parametrize(("front", "warned"), [("yes", True), ("not_stated", True), ("no", False)])
def test_live_parts_behind_the_front_are_warned_of_unless_stated_absent(front: str, warned: bool) -> None:
    assert ("live_front" in told(a_model(live_parts_front_off=front), PLAIN)) is warned


def test_a_device_whose_model_is_not_known_has_live_parts() -> None:
    house = a_house(boxes={"B1": PLAIN}, devices={"D1": {"box": "B1", "mounts": ["1"], "gangs": ["1"]}})
    assert [c.id for c in cautions_for(house, "D1")] == ["live_front"]


def test_joining_with_the_front_off_is_warned_of() -> None:
    assert "joined_front_off" in told(with_front_off(), PLAIN)
    assert "joined_front_off" not in told(a_model(), PLAIN)


def test_two_circuits_in_one_box_are_named() -> None:
    words = told(a_model(), a_box("R1", lines=["C1", "C2"]))["two_circuits"]
    assert "C1" in words
    assert "C2" in words
    assert "two_circuits" not in told(a_model(), PLAIN)


def test_an_unknown_circuit_is_live_until_proved_dead() -> None:
    words = told(a_model(), a_box("R1", lines=[None]))["unknown_circuit"]
    assert "live until proved dead" in words
    assert "unknown_circuit" in told(a_model(), a_box("R1", lines=["C1", None]))
    assert "unknown_circuit" not in told(a_model(), PLAIN)


@pytest.mark.parametrize("part", ["shell", "plate"])
def test_metal_is_to_be_earthed(part: str) -> None:
    assert "earth_metal" in told(a_model(), {**PLAIN, part: fact("metal")})
    assert "earth_metal" not in told(a_model(), {**PLAIN, part: fact("plastic")})


def test_an_earth_used_as_neutral_is_told() -> None:
    box = {**PLAIN, "mounts": {"1": {"neutral": fact("earth")}}}
    assert "danger" in told(a_model(), box)["earth_as_neutral"]


def test_a_module_keeps_a_charge() -> None:
    assert "stored_charge" in told(a_model(name="cub", form="in_box_module", mounts=0), PLAIN)
    assert "stored_charge" not in told(a_model(), PLAIN)


@pytest.mark.parametrize(
    ("purpose", "says"),
    [
        ("heater_portable", "off only"),
        ("heater_fixed", "time limit"),
        ("animal_care", "animals depend on it"),
        (None, "purpose is not stated"),
    ],
)
def test_a_load_that_can_do_harm_is_named(purpose: str | None, says: str) -> None:
    load = {"name": "Corner", "room": "R1", **({"purpose": purpose} if purpose else {})}
    gang = {"duty": "feeds", "load": "L1", "line": fact("C1")}
    words = told(a_model(), {**PLAIN, "gangs": {"1": gang}}, loads={"L1": load})
    assert any(says in text and "Corner" in text for text in words.values())


def test_a_wet_room_is_told_by_its_tag() -> None:
    rooms = {"R1": {"name": "Washroom", "tags": ["shower"]}}
    assert "bathroom_here" in told(a_model(), PLAIN, rooms=rooms)


def test_a_battery_button_has_no_caution_of_conductors() -> None:
    tick = battery_button()
    house = a_house(
        [tick],
        places={"P1": {"kind": "surface", "name": "Shelf", "room": "R1"}},
        devices={"D1": {"model": tick.key, "network": "N2", "place": "P1"}},
    )
    assert cautions_for(house, "D1") == ()


def test_the_usual_cautions_hold_every_step_of_isolation_in_order() -> None:
    assert [c.id for c in ISOLATION] == [
        "licensed_person", "every_source", "isolate", "lock_off", "prove_tester", "prove_dead", "prove_again",
        "stored_charge",
    ]  # fmt: skip


def test_an_nec_house_has_the_same_cautions_in_its_own_words_and_sources() -> None:
    house = a_house(wiring_rules="nec").house
    assert [c.id for c in before_boxes(house)] == [c.id for c in ISOLATION]
    assert [c.id for c in to_mind(house)] == [c.id for c in GENERAL]
    text = " ".join(f"{c.words} {c.source}" for c in (*before_boxes(house), *to_mind(house)))
    assert [
        w for w in ("solat", "lock off", "rove dead", "earth", "HSE", "BS 7671", "zones") if w in text
    ] == []
    assert [
        w for w in ("NFPA 70E", "29 CFR 1910.333", "NEC 404", "disconnecting means") if w not in text
    ] == []
    assert (before_boxes(a_house().house), to_mind(a_house().house)) == (ISOLATION, GENERAL)


def test_no_caution_calls_anything_safe_and_each_names_its_source() -> None:
    nec = a_house(wiring_rules="nec").house
    for caution in (*ISOLATION, *GENERAL, *before_boxes(nec), *to_mind(nec)):
        assert "safe" not in caution.words.lower()
        assert caution.source
        assert caution.words.endswith(".")


def test_every_protocol_has_something_to_try_with_its_source() -> None:
    assert set(WHEN_NOTHING) == set(Protocol)
    for tries in WHEN_NOTHING.values():
        assert len(tries) >= 5
        assert all(t.seen and t.do and t.source for t in tries)
        assert "safe" not in " ".join(t.do for t in tries).lower()
