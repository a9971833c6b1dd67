"""What a dimmer carries beside another."""

import pytest

from tests.electrical.faults_wide import three_dimmers
from tests.electrical.sound import answers, at, spoilt
from tests.electrical.spoiling import outcome
from tests.example_house import seen


def test_the_dimmer_in_the_middle_has_two_neighbours() -> None:
    found = at(answers(spoilt(three_dimmers())), "ganged_dimmers", "B5.2")
    assert found is not None
    assert "dimmer_two_neighbours_pct" in found.assumptions
    assert found.limit.startswith("0.45 A to 0.72 A of 0.9 A")
    side = at(answers(spoilt(three_dimmers())), "ganged_dimmers", "B5.3")
    assert side is not None
    assert "dimmer_two_neighbours_pct" not in side.assumptions


# 70 % to 90 % of 1 A are 161 to 207 W at 230 V and a power factor of 1.
@pytest.mark.parametrize(
    ("watts", "expected"), [(161, "passes"), (162, "cannot_tell"), (207, "cannot_tell"), (208, "fails")]
)
def test_what_a_dimmer_carries_beside_another(watts: int, expected: str) -> None:
    changes: dict[str, object] = {
        "loads.L6.power_mw": seen(watts * 1000),
        "loads.L6.count": seen(1),
        "loads.L6.power_factor_permille": seen(1000),
    }
    assert outcome(changes, "ganged_dimmers", "B5.1") == expected


def test_a_neighbour_that_is_not_decided_may_be_a_dimmer() -> None:
    heavy: dict[str, object] = {"loads.L6.count": seen(4), "loads.L6.power_factor_permille": seen(1000)}
    assert outcome(heavy | {"devices.D7.model": None}, "ganged_dimmers", "B5.1") == "cannot_tell"
    assert outcome({"devices.D7.model": None}, "ganged_dimmers", "B5.1") == "passes"


def test_a_free_mount_between_dimmers_leaves_each_alone() -> None:
    apart = three_dimmers()
    apart["devices.D7"] = None
    assert [f.place for f in answers(spoilt(apart)) if f.rule == "ganged_dimmers"] == []


def test_a_module_behind_a_dimmer_does_not_stand_beside_it() -> None:
    behind: dict[str, object] = {
        "devices.D7": None,
        "models.orrinby-arch@1.mounts": 0,
        "models.orrinby-arch@1.form": "in_box_module",
        "devices.D10": {"model": "orrinby-arch@1", "box": "B5", "gangs": ["2"]},
    }
    assert [f.place for f in answers(spoilt(behind)) if f.rule == "ganged_dimmers"] == []


def test_an_undecided_device_takes_the_place_of_no_dimmer() -> None:
    """Whatever stands behind the dimmers on both sides, both of them are still there."""
    heavy = three_dimmers() | {"loads.L7.count": seen(4), "loads.L7.power_factor_permille": seen(950)}
    capped = {f"boxes.B5.gangs.{n}": {"mount": mount, "duty": "capped"} for n, mount in ((4, "1"), (5, "3"))}
    undecided = {"devices.D11": {"box": "B5", "gangs": ["4", "5"]}}
    assert outcome(heavy | capped | undecided, "ganged_dimmers", "B5.2") == "fails"
