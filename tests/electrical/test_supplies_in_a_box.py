"""Several circuits in one box, shared neutrals, metal and earth, zones."""

from copy import deepcopy

import pytest

from tests.electrical.sound import answers, at, spoilt
from tests.electrical.spoiling import misfits, outcome
from tests.example_house import seen


@pytest.mark.parametrize(
    ("volts", "phase", "expected"),
    [(120, "L2", "passes"), (277, "L1", "passes"), (277, "L2", "fails"), (None, "L2", "cannot_tell")],
)
def test_phases_in_one_box(volts: int | None, phase: str, expected: str) -> None:
    changes: dict[str, object] = {
        "mains_voltage_v": volts,
        "circuits.C2.phase": seen(phase),
        "boxes.B2.mounts.1.neutral": seen("absent"),
    }
    assert outcome(changes, "two_supplies", "B2", of="nec") == expected


def test_one_circuit_in_a_box_is_not_two() -> None:
    assert outcome({"boxes.B2.gangs.2.line": seen("C1")}, "two_supplies", "B2", of="nec") is None
    high: dict[str, object] = {"mains_voltage_v": 277}
    assert outcome(high | {"wiring_rules": "iec"}, "two_supplies", "B2", of="nec") == "passes"
    assert outcome(high | {"wiring_rules": None}, "two_supplies", "B2", of="nec") == "cannot_tell"


@pytest.mark.parametrize(
    ("shell", "plate", "earthed", "expected"),
    [
        ("plastic", "plastic", None, None),
        ("plastic", "plastic", True, "passes"),
        ("metal", "plastic", True, "passes"),
        ("plastic", "metal", False, "fails"),
        ("metal", None, None, "cannot_tell"),
        (None, "plastic", False, "cannot_tell"),
        (None, "plastic", True, "passes"),
        ("plastic", "glass", False, None),
    ],
)
def test_metal_and_earth(
    shell: str | None, plate: str | None, earthed: bool | None, expected: str | None
) -> None:
    facts = {"shell": shell, "plate": plate, "earthed": earthed}
    plain = deepcopy(spoilt({}))
    for key, value in facts.items():
        plain["boxes"]["B1"].pop(key, None)
        if value is not None:
            plain["boxes"]["B1"][key] = seen(value)
    found = at(answers(plain), "metal_earthed", "B1")
    assert (found.outcome.value if found else None) == expected


def test_zones_are_asked_of_bathrooms_with_a_mains_device() -> None:
    assert outcome({"rooms.R2.tags": []}, "bath_zone", "B2") == "passes"
    assert outcome({"rooms.R2.tags": [], "boxes.B2.zone": None}, "bath_zone", "B2") is None
    assert outcome({"boxes.B2.zone": None, "wiring_rules": "nec"}, "bath_zone", "B2") is None
    assert outcome({"boxes.B2.zone": None, "wiring_rules": None}, "bath_zone", "B2") == "cannot_tell"
    assert outcome({"boxes.B4.zone": seen("1")}, "bath_zone", "B4") is None  # nothing is wired there
    battery: dict[str, object] = {
        "boxes.B2.zone": seen("1"),
        "models.orrinby-glow@1.supply": "battery",
        "models.orrinby-glow@1.output": "none",
        "models.orrinby-glow@1.ratings": [],
    }
    assert outcome(battery, "bath_zone", "B2") is None


def test_a_neutral_shared_by_the_word_of_one_circuit_is_shared() -> None:
    rules = (("neutral_circuit", "B7.1"), ("borrowed_neutral", "B7.1"), ("neutral_through", "B7"))
    for silent in ("C3", "C4"):
        for rule, place in rules:
            assert outcome({f"circuits.{silent}.shares_neutral_with": None}, rule, place) == "passes"


@pytest.mark.parametrize("other", ["C3", "C8"])
def test_a_circuit_shares_its_neutral_with_another_that_exists(other: str) -> None:
    path = "circuits.C3.shares_neutral_with.value[0]"
    assert misfits({"circuits.C3.shares_neutral_with": seen([other])}) == [path]


@pytest.mark.parametrize(("through", "asked"), [(True, False), (None, True)])
def test_a_neutral_of_no_known_circuit_asks_only_where_it_may_not_go_on_by_itself(
    through: bool | None, asked: bool
) -> None:
    changes: dict[str, object] = {"boxes.B2.mounts.1.neutral": None}
    if through is not None:
        changes["boxes.B2.mounts.1.neutral_through"] = seen(through)
    found = {f.place for f in answers(spoilt(changes)) if f.rule == "neutral_through"}
    assert ("B2" in found) == asked
