"""Currents, ratings and rules of thumb against figures that this code did not compute."""

import pytest

from secondfix.assumptions import Override, default_assumptions
from secondfix.electrical.demand import current_of
from secondfix.house import Load
from tests.electrical.sound import answers, at, ratings, spoilt
from tests.example_house import seen

# Plain products of volts and amperes as trade tables print them (computed apart from this code); exact,
# because currents are fractions until they are printed.
PRODUCTS = [
    (230, 6, 1380),
    (230, 10, 2300),
    (230, 13, 2990),
    (230, 16, 3680),
    (120, 5, 600),
    (120, 10, 1200),
    (120, 15, 1800),
    (120, 16, 1920),
    (120, 20, 2400),
]


def load(**fields: object) -> Load:
    """A load of the given facts."""
    facts = {name: seen(value) for name, value in fields.items()}
    return Load.model_validate({"name": "lamp", "room": "R1", **facts})


@pytest.mark.parametrize(("volts", "amperes", "watts"), PRODUCTS)
def test_amperes_of_a_resistive_load(volts: int, amperes: int, watts: int) -> None:
    heater = load(kind="resistive", power_mw=watts * 1000, count=1, power_factor_permille=1000)
    current = current_of("L1", heater, "lamp", mains_voltage_v=volts, assumptions=default_assumptions())
    assert current.low_ma == current.high_ma == amperes * 1000


# Worked example of trade guidance on LED loads: 50 W of LED at 230 V is 0.24 A at a power factor of 0.9 and
# 0.43 A at 0.5 (computed apart from this code). Printed to two places, so within half a hundredth.
@pytest.mark.parametrize(("permille", "amperes"), [(900, 0.24), (500, 0.43)])
def test_led_current_at_two_power_factors(permille: int, amperes: float) -> None:
    led = load(kind="led_lamp", power_mw=5000, count=10, power_factor_permille=permille)
    current = current_of("L1", led, "lamp", mains_voltage_v=230, assumptions=default_assumptions())
    assert float(current.low_ma) / 1000 == pytest.approx(amperes, abs=0.005)


def test_led_current_spans_the_assumed_power_factors() -> None:
    assumed = default_assumptions().overridden(
        {"power_factor_led_lamp_permille": Override(700, 500, 900)}, set_by="house"
    )
    led = load(kind="led_lamp", power_mw=5000, count=10)
    current = current_of("L1", led, "lamp", mains_voltage_v=230, assumptions=assumed)
    assert current.high_ma is not None
    assert float(current.low_ma) / 1000 == pytest.approx(0.24, abs=0.005)
    assert float(current.high_ma) / 1000 == pytest.approx(0.43, abs=0.005)


# EN 60669-1:2018 scope (read): motors up to 3 A at 250 V (750 VA) and 4.5 A at 120 V (540 VA), power factor
# 0.6 and above; the edition of 1999 with A2 (read): up to 10 A. At 0.6 that is 450 W, 324 W and 1500 W; one
# watt more is above. Exact.
@pytest.mark.parametrize(
    ("volts", "rating_ma", "watts"), [(250, 3000, 450), (120, 4500, 324), (250, 10_000, 1500)]
)
def test_motor_ratings_of_two_editions(volts: int, rating_ma: int, watts: int) -> None:
    def outcome(power_w: int) -> str:
        rated = [{**ratings(motor=rating_ma)[0], "at_voltage_v": volts}]
        changes = {
            "mains_voltage_v": volts,
            "models.tarnlow-leaf@1.ratings": rated,
            "loads.L5.power_mw": seen(power_w * 1000),
            "loads.L5.power_factor_permille": seen(600),
        }
        found = at(answers(spoilt(changes)), "contact", "D5.1")
        assert found is not None
        return found.outcome.value

    assert (outcome(watts), outcome(watts + 1)) == ("passes", "fails")


# The trade's rule of thumb (common practice, no source): divide the filament rating by ten, so that 400 W
# becomes 40 W. At 200 V to keep whole milliamperes: 400 W is 2 A. Exact.
def test_a_tenth_of_the_filament_rating_is_advice_and_no_more() -> None:
    def answer(power_w: int) -> tuple[str, str]:
        changes = {
            "mains_voltage_v": 200,
            "models.wexcombe-pair@1.ratings": [{**ratings(tungsten=2000)[0], "at_voltage_v": 200}],
            "loads.L1.power_mw": seen(power_w * 1000),
            "loads.L1.count": seen(1),
            "loads.L1.power_factor_permille": seen(1000),
        }
        found = at(answers(spoilt(changes)), "contact", "B1.1")
        assert found is not None
        return found.outcome.value, str(found.severity)

    assert answer(40) == ("fails", "advice")
    assert answer(41) == ("cannot_tell", "danger")
    assert answer(400) == ("cannot_tell", "danger")
    assert answer(401) == ("fails", "danger")


# A two-wire dimmer of old needs tens of watts: a holding current of 50 mA is 6 W at 120 V (EDN, 26 May 2011,
# secondary). Exact: the limit is stated in milliwatts.
def test_a_load_below_the_holding_current_is_found() -> None:
    changes = {"models.orrinby-glow@1.least_load_mw": 50 * 120, "loads.L3.count": seen(1)}
    enough = answers(spoilt(changes | {"loads.L3.power_mw": seen(6000)}))
    below = answers(spoilt(changes | {"loads.L3.power_mw": seen(5999)}))
    found = [at(some, "least_load", "B2.1") for some in (enough, below)]
    assert [f.outcome.value for f in found if f] == ["passes", "fails"]
