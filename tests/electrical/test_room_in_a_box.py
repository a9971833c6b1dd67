"""Whether a box has room, by counts that are sure, in doubt or missing."""

from typing import Any

import pytest

from tests.electrical.faults_wide import KEEL
from tests.electrical.sound import answers, at, spoilt
from tests.electrical.spoiling import misfits, outcome
from tests.example_house import seen


def test_a_yoke_counts_where_a_device_or_an_old_switch_is() -> None:
    """With the box exactly full, each further yoke makes it too small."""
    second: dict[str, object] = {"boxes.B1.mounts.2": {"neutral": seen("absent"), "largest_awg": seen("14")}}
    assert outcome(second, "box_fill", "B1", of="nec") == "passes"
    old: dict[str, object] = second | {
        "boxes.B1.gangs.2": {"mount": "2", "line": seen("C1"), "duty": "capped"}
    }
    assert outcome(old, "box_fill", "B1", of="nec") == "passes"
    old["boxes.B1.gangs.2"] = {"mount": "2", "line": seen("C1"), "duty": "scene_only"}
    assert outcome(old, "box_fill", "B1", of="nec") == "fails"
    wide = second | {f"{KEEL}.mounts": 2, "devices.D1.mounts": ["1", "2"]}
    assert outcome(wide, "box_fill", "B1", of="nec") == "fails"
    behind: dict[str, object] = {f"{KEEL}.yokes": 0, "boxes.B1.conductors": seen({"14": 7})}
    assert outcome(behind, "box_fill", "B1", of="nec") == "passes"


def test_a_size_in_doubt_matters_only_where_it_decides() -> None:
    mixed: dict[str, object] = {
        "boxes.B1.mounts.1.largest_awg": None,
        "boxes.B1.conductors": seen({"14": 3, "12": 1}),
    }
    assert outcome(mixed, "box_fill", "B1", of="nec") == "passes"
    mixed["boxes.B1.conductors"] = seen({"14": 4, "12": 1, "18": 0})
    found = at(answers(spoilt(mixed, of="nec")), "box_fill", "B1")
    assert found is not None
    assert [look.field for look in found.looks] == ["mounts.1.largest_awg"]
    unlisted: dict[str, object] = {"boxes.B1.mounts.1.largest_awg": seen("6")}
    assert misfits(unlisted, of="nec") == ["boxes.B1.mounts.1.largest_awg"]


@pytest.mark.parametrize("field", ["conductors", "loops", "grounds", "clamps", "fittings"])
def test_what_nobody_has_counted_is_asked_for(field: str) -> None:
    found = at(answers(spoilt({f"boxes.B1.{field}": None}, of="nec")), "box_fill", "B1")
    assert found is not None
    assert field in {look.field for look in found.looks}
    too_small: dict[str, object] = {f"boxes.B1.{field}": None, "boxes.B1.volume_mm3": seen(40_000)}
    assert outcome(too_small, "box_fill", "B1", of="nec") == "fails"


def test_a_size_that_nobody_has_counted_adds_nothing_for_certain() -> None:
    """A loop of 14 AWG counts 4.0 in³; the yoke counts 4.0 more only once all conductors are counted."""
    changes: dict[str, object] = {
        "boxes.B1.mounts.1.largest_awg": None,
        "boxes.B1.conductors": None,
        "boxes.B1.loops": seen({"14": 1}),
        "boxes.B1.grounds": seen({}),
        "boxes.B1.clamps": seen(False),
        "boxes.B1.volume_mm3": seen(70_000),
    }
    assert outcome(changes, "box_fill", "B1", of="nec") == "cannot_tell"
    changes |= {"boxes.B1.conductors": seen({"14": 1}), "boxes.B1.loops": None}
    assert outcome(changes, "box_fill", "B1", of="nec") == "cannot_tell"
    changes["boxes.B1.loops"] = seen({})
    assert outcome(changes, "box_fill", "B1", of="nec") == "fails"


def test_makers_ask_for_their_yokes_together() -> None:
    def asked(per_yoke: int | None, yokes: int | None, *, more: dict[str, Any] | None = None) -> str | None:
        changes: dict[str, object] = {f"{KEEL}.box_volume_per_yoke_mm3": per_yoke, f"{KEEL}.yokes": yokes}
        return outcome(changes | (more or {}), "box_asked", "B1", of="nec")

    assert asked(294_967, 1) == "passes"
    assert asked(294_969, 1) == "fails"
    assert asked(294_969, None) == "fails"
    assert asked(294_969, 0) == "passes"
    assert asked(None, 1) is None
    second = {
        "boxes.B1.mounts.2": {"neutral": seen("absent"), "largest_awg": seen("14")},
        "boxes.B1.gangs.2": {"mount": "2", "line": seen("C1"), "duty": "scene_only"},
        "devices.D2": {"model": "marlsett-keel@1", "box": "B1", "mounts": ["2"], "gangs": ["2"]},
    }
    undecided = second | {"devices.D2": {"box": "B1", "mounts": ["2"], "gangs": ["2"]}}
    assert asked(150_000, 1, more=second) == "fails"
    assert asked(147_000, 1, more=second) == "passes"
    assert asked(150_000, 1, more=undecided) == "cannot_tell"
    assert asked(294_969, 1, more=undecided) == "fails"
