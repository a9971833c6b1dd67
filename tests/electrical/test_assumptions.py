"""The electrical assumptions: complete, within their bounds, and bearing on answers as ranges do."""

import pytest

from secondfix.assumptions import Override, default_assumptions
from secondfix.electrical import check
from secondfix.findings import Finding
from secondfix.house import schedule
from secondfix.terms import Kind
from tests.electrical.sound import answers, at, read, spoilt
from tests.example_house import seen


def under(changes: dict[str, object], overrides: dict[str, Override]) -> list[Finding]:
    """The answers under a firm's own assumptions."""
    house = read(spoilt(changes))
    return check(schedule(house, house.models), default_assumptions().overridden(overrides, set_by="firm"))


@pytest.mark.parametrize("kind", Kind)
def test_every_kind_has_its_power_factor(kind: Kind) -> None:
    low, value, high = default_assumptions().span(f"power_factor_{kind.value}_permille")
    assert 100 <= low <= value <= high <= 1000


@pytest.mark.parametrize("value", [0, 99, 1001])
def test_a_power_factor_beyond_its_meaning_is_refused(value: int) -> None:
    with pytest.raises(ValueError, match=r"power_factor_motor_permille: .* lies beyond 100 to 1000"):
        default_assumptions().overridden({"power_factor_motor_permille": Override(value)}, set_by="firm")


def test_a_firm_that_knows_its_lamps_gets_an_answer() -> None:
    changes: dict[str, object] = {"loads.L3.power_mw": seen(17_000)}
    found = at(answers(spoilt(changes)), "contact", "B2.1")
    assert found is not None
    assert found.outcome.value == "cannot_tell"
    assert found.looks[0].field == "power_factor_permille"
    certain = under(changes, {"power_factor_led_lamp_permille": Override(900)})
    f = at(certain, "contact", "B2.1")
    assert f is not None
    assert f.outcome.value == "passes"
    assert f.assumptions == ("power_factor_led_lamp_permille", "rating_carries_down_to_pct")


def test_a_surveyed_power_factor_is_not_assumed_and_a_rating_at_another_voltage_is() -> None:
    found = at(answers(spoilt({})), "contact", "B1.1")
    assert found is not None
    assert found.assumptions == ("rating_carries_down_to_pct",)
    printed = at(answers(spoilt({"mains_voltage_v": 250})), "contact", "B1.1")
    assert printed is not None
    assert printed.assumptions == ()


def test_thinner_cables_by_the_firms_word_settle_a_depth() -> None:
    changes: dict[str, object] = {"boxes.B2.depth_mm": seen(40)}
    thin = under(changes, {"cable_allowance_mm": Override(6), "plate_projection_mm": Override(1)})
    f = at(thin, "depth", "B2")
    assert f is not None
    assert f.outcome.value == "passes"
    assert set(f.assumptions) == {"cable_allowance_mm", "plate_projection_mm"}


def test_amperes_carry_down_as_far_as_the_firm_says() -> None:
    changes: dict[str, object] = {"mains_voltage_v": 200}
    near = under(changes, {"rating_carries_down_to_pct": Override(90)})
    far = under(changes, {"rating_carries_down_to_pct": Override(80)})
    pair = [at(some, "contact", "B1.2") for some in (near, far)]
    assert [f.outcome.value for f in pair if f] == ["cannot_tell", "passes"]
