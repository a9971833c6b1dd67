"""Circuit load, motors on snap switches and breakers against figures that this code did not compute."""

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.electrical.breaker_inrush import Curve, count_held
from tests.electrical.sound import answers, at, ratings, spoilt
from tests.example_house import seen


def outcome(changes: dict[str, object], rule: str, place: str, *, of: str) -> str:
    found = at(answers(spoilt(changes, of=of)), rule, place)
    assert found is not None
    return found.outcome.value


# NEC 210.19(A)(1), 210.20(A) (secondary): a load on for three hours or more counts 125 %, so that a 15 A
# circuit carries 12 A or 1440 W at 120 V, and a 20 A circuit 16 A or 1920 W. One watt more is above. Exact.
@pytest.mark.parametrize(("breaker_a", "watts"), [(15, 1440), (20, 1920)])
def test_a_continuous_load_takes_four_fifths_of_its_circuit(breaker_a: int, watts: int) -> None:
    def carried(power_w: int, *, continuous: bool) -> str:
        changes: dict[str, object] = {
            "circuits.C1.breaker_a": seen(breaker_a),
            "circuits.C1.other_load_ma": seen(0),
            "loads.L1.kind": seen("resistive"),
            "loads.L1.power_factor_permille": seen(1000),
            "loads.L1.power_mw": seen(power_w * 1000),
            "loads.L1.continuous": seen(continuous),
        }
        return outcome(changes, "circuit_load", "C1", of="nec")

    assert [carried(w, continuous=True) for w in (watts, watts + 1)] == ["passes", "fails"]
    full = breaker_a * 120
    assert [carried(w, continuous=False) for w in (full, full + 1)] == ["passes", "fails"]


# U · I, circuit theory: 230 V and 6, 10, 13, 16 A are 1380, 2300, 2990, 3680 W. Houses to IEC 60364 have no
# rule for continuous loads, so the whole may run. Exact.
@pytest.mark.parametrize(("breaker_a", "watts"), [(6, 1380), (10, 2300), (13, 2990), (16, 3680)])
def test_a_circuit_carries_volts_times_amperes(breaker_a: int, watts: int) -> None:
    def carried(power_w: int) -> str:
        changes: dict[str, object] = {
            "circuits.C2.breaker_a": seen(breaker_a),
            "loads.L4.power_factor_permille": seen(1000),
            "loads.L4.power_mw": seen(power_w * 1000),
        }
        return outcome(changes, "circuit_load", "C2", of="iec")

    assert [carried(w) for w in (watts, watts + 1)] == ["passes", "fails"]


# NEC 404.14(A) and the UL guide card for snap switches (secondary): a motor takes up to 80 % of the rating,
# so 12 A of a 15 A switch, 16 A of one of 20 A. At a power factor of 1 that is 1440 W and 1920 W at 120 V.
# Exact.
@pytest.mark.parametrize(("rating_ma", "watts"), [(15_000, 1440), (20_000, 1920)])
def test_a_motor_takes_four_fifths_of_a_snap_switch(rating_ma: int, watts: int) -> None:
    def switched(power_w: int) -> str:
        changes: dict[str, object] = {
            "models.marlsett-keel@1.ratings.0.current_ma": rating_ma,
            "loads.L1.power_factor_permille": seen(1000),
            "loads.L1.power_mw": seen(power_w * 1000),
        }
        return outcome(changes, "nec_motor", "B1.1", of="nec")

    assert [switched(w) for w in (watts, watts + 1)] == ["passes", "fails"]


# EN 60669-1:2018 scope (read): no printed motor rating, a switch of 10 A and more: 3 A at 250 V, 4.5 A at
# 120 V; the edition of 1999 with A2 (read): 10 A. At a power factor of 0.6: 450 W, 324 W, 1500 W. Exact.
@pytest.mark.parametrize(
    ("volts", "standard", "watts"),
    [(250, "EN 60669-1:2018", 450), (120, "EN 60669-1:2018", 324), (250, "EN 60669-1:1999+A2:2008", 1500)],
)
def test_a_motor_by_the_edition_of_the_switch(volts: int, standard: str, watts: int) -> None:
    def switched(power_w: int) -> str:
        rated = {**ratings(resistive=16_000)[0], "at_voltage_v": volts, "standard": standard}
        changes: dict[str, object] = {
            "mains_voltage_v": volts,
            "models.tarnlow-peg@1.ratings": [rated],
            "loads.L10.power_mw": seen(power_w * 1000),
            "loads.L10.power_factor_permille": seen(600),
        }
        return outcome(changes, "contact", "B7.1", of="iec")

    assert [switched(w) for w in (watts, watts + 1)] == ["passes", "fails"]


# N = floor(k · n · In / Ipk) with the lower band of IEC 60898-1 (from memory: B 3, C 5) and k = 1, for the
# driver of a data sheet that prints 18.4 A for 201 µs (secondary): 30, 48, 50 and 80 A hold 1, 2, 2 and 4
# of them (counted by hand). Whole numbers, exact.
@pytest.mark.parametrize(
    ("breaker_a", "curve", "peak_ma", "count"),
    [(10, "B", 18_400, 1), (16, "B", 18_400, 2), (10, "C", 18_400, 2), (16, "C", 18_400, 4)],
)
def test_how_many_peaks_a_breaker_bears(breaker_a: int, curve: Curve, peak_ma: int, count: int) -> None:
    assert count_held(breaker_a, curve, peak_ma=peak_ma, factor_pct=100) == count


# One instruction sheet of a dimmer prints 500 W alone, 400 W with one side removed, 300 W with both
# (secondary): the assumptions' middle values. Exact, in whole per cent.
def test_what_is_left_of_a_dimmer_beside_others() -> None:
    assumed = default_assumptions()
    assert 500 * assumed.value("dimmer_one_neighbour_pct") == 400 * 100
    assert 500 * assumed.value("dimmer_two_neighbours_pct") == 300 * 100
