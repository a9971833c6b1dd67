"""Standby currents and what a bypass leaves, against tables worked out apart from this code."""

import pytest

from secondfix.electrical.glow import bypass_current_ma, standby_current_ma, voltage_left_v

# I = P / U, circuit theory: 0.3, 0.5 and 1 W at 230 V and 120 V (computed apart from this code). Printed to a
# tenth of a milliampere, so within half a tenth.
STANDBY = [
    (300, 230, 1.3),
    (500, 230, 2.2),
    (1000, 230, 4.3),
    (300, 120, 2.5),
    (500, 120, 4.2),
    (1000, 120, 8.3),
]


@pytest.mark.parametrize(("milliwatts", "volts", "milliamperes"), STANDBY)
def test_standby_current(milliwatts: int, volts: int, milliamperes: float) -> None:
    assert standby_current_ma(milliwatts, mains_voltage_v=volts) == pytest.approx(milliamperes, abs=0.05)


# U = I / (2πfC): volts left at 1, 2 and 5 mA, and the current at full voltage (computed apart from this
# code; the capacitor alone, a sinusoid). Printed to whole volts and two figures of milliamperes: within
# half a step.
BYPASS = [
    (100, 230, 50, 7.2, (32, 64, 159)),
    (330, 230, 50, 24, (10, 19, 48)),
    (470, 230, 50, 34, (7, 14, 34)),
    (1000, 230, 50, 72, (3, 6, 16)),
    (100, 120, 60, 4.5, (27, 53, 133)),
    (330, 120, 60, 15, (8, 16, 40)),
    (470, 120, 60, 21, (6, 11, 28)),
    (1000, 120, 60, 45, (3, 5, 13)),
]


@pytest.mark.parametrize(("nanofarads", "volts", "hertz", "full_ma", "left"), BYPASS)
def test_what_a_bypass_leaves(
    nanofarads: int, volts: int, hertz: int, full_ma: float, left: tuple[int, ...]
) -> None:
    found = [voltage_left_v(ma, bypass_nf=nanofarads, frequency_hz=hertz) for ma in (1, 2, 5)]
    assert found == pytest.approx(left, abs=0.5)
    drawn = bypass_current_ma(bypass_nf=nanofarads, mains_voltage_v=volts, frequency_hz=hertz)
    assert drawn == pytest.approx(full_ma, abs=0.5 if full_ma >= 10 else 0.05)


# Reactances as printed beside them, in kilohms to one place: the voltage at 1 mA in volts is the same number.
@pytest.mark.parametrize(
    ("nanofarads", "hertz", "kilohms"),
    [(100, 50, 31.8), (330, 50, 9.6), (470, 50, 6.8), (1000, 50, 3.2),
     (100, 60, 26.5), (330, 60, 8.0), (470, 60, 5.6), (1000, 60, 2.7)],
)  # fmt: skip
def test_the_reactance_of_a_bypass(nanofarads: int, hertz: int, kilohms: float) -> None:
    left = voltage_left_v(1, bypass_nf=nanofarads, frequency_hz=hertz)
    assert left == pytest.approx(kilohms, abs=0.05)
