"""Depth against the sizes of wall boxes and devices that the trade prints."""

import pytest

from tests.electrical.sound import answers, at, spoilt
from tests.example_house import seen

# Box depths: UK metal flush boxes of 16, 25, 35 and 47 mm (secondary; BS 4662), German boxes of 40 to 47 mm
# and 61 to 68 mm, the deep ones recommended for dimmers and electronics (DIN 49073, secondary).
# Device depths: plain mechanism 18 to 25 mm, module behind a switch 15 to 25 mm, flush electronic switch 25
# to 38 mm (common practice, no source). No tolerance: whole millimetres are compared.


def outcome(box: str, model: str, box_mm: int, device_mm: int) -> str:
    changes = {
        f"boxes.{box}.depth_mm": seen(box_mm),
        f"boxes.{box}.set_back_mm": seen(0),
        f"models.{model}.depth_behind_plate_mm": device_mm,
    }
    found = at(answers(spoilt(changes)), "depth", box)
    assert found is not None
    return found.outcome.value


@pytest.mark.parametrize("module_mm", [15, 20, 25])
def test_a_switch_and_a_module_do_not_fit_in_25_mm(module_mm: int) -> None:
    assert outcome("B3", "orrinby-nub@1", 25, module_mm) == "fails"


@pytest.mark.parametrize("device_mm", [25, 31, 38])
def test_no_electronic_switch_fits_in_16_mm(device_mm: int) -> None:
    assert outcome("B2", "orrinby-glow@1", 16, device_mm) == "fails"


@pytest.mark.parametrize("box_mm", [61, 68])
@pytest.mark.parametrize("device_mm", [25, 31, 38])
def test_a_deep_box_takes_every_electronic_switch(box_mm: int, device_mm: int) -> None:
    assert outcome("B2", "orrinby-glow@1", box_mm, device_mm) == "passes"


def test_a_usual_box_takes_the_shallowest_and_not_the_deepest() -> None:
    assert outcome("B2", "orrinby-glow@1", 47, 25) == "passes"
    assert outcome("B2", "orrinby-glow@1", 40, 38) == "fails"


def test_a_deep_box_takes_a_switch_and_a_thin_module() -> None:
    assert outcome("B3", "orrinby-nub@1", 61, 15) == "passes"
    assert outcome("B3", "orrinby-nub@1", 47, 25) == "fails"
