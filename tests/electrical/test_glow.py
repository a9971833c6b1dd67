"""Lamps that glow behind a switch without neutral, and the bypass that keeps them dark."""

import pytest

from tests.electrical.sound import answers, at, spoilt
from tests.electrical.spoiling import outcome
from tests.example_house import seen


def test_a_switch_with_a_neutral_leaves_the_lamps_dark() -> None:
    either: dict[str, object] = {"models.orrinby-glow@1.neutral": "either"}
    assert outcome(either, "glow", "B2.1") == "passes"
    assert outcome(either | {"boxes.B2.mounts.1.neutral": seen("C1")}, "glow", "B2.1") is None
    assert outcome({"models.orrinby-glow@1.neutral": "needed"}, "glow", "B2.1") is None
    assert outcome({"loads.L3.kind": seen("tungsten")}, "glow", "B2.1") is None
    assert outcome({"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(0)}, "glow", "B2.1") is None


@pytest.mark.parametrize("field", ["mains_voltage_v", "mains_frequency_hz"])
def test_a_bypass_is_worked_out_at_a_voltage_and_a_frequency(field: str) -> None:
    found = at(answers(spoilt({"loads.L3.count": seen(2), field: None})), "glow", "B2.1")
    assert found is not None
    assert [look.field for look in found.looks] == [field]


# 400 mW at 230 V are 1.74 mA: 94 nF leave 59 V, 92 nF leave 60.2 V; 554 nF leave 9.99 V, 553 nF 10.01 V.
@pytest.mark.parametrize(
    ("bypass_nf", "expected"), [(92, "fails"), (94, "cannot_tell"), (553, "cannot_tell"), (554, "passes")]
)
def test_a_bypass_between_its_bounds(bypass_nf: int, expected: str) -> None:
    changes: dict[str, object] = {"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(bypass_nf)}
    assert outcome(changes, "glow", "B2.1") == expected


def test_the_remedies_against_glow_stand_in_their_order() -> None:
    changes: dict[str, object] = {"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(10)}
    found = at(answers(spoilt(changes)), "glow", "B2.1")
    assert found is not None
    words = ["neutral", "module at the luminaire", "bypass", "other lamps"]
    assert sorted(words, key=found.remedy.index) == words
