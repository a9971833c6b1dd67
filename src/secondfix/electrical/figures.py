"""Figures as findings print them, with their units in words."""

from fractions import Fraction


def _plain(value: float, digits: int) -> str:
    text = f"{value:.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def amperes(current_ma: Fraction | int) -> str:
    """Milliamperes as '4.35 A'."""
    return f"{_plain(float(current_ma) / 1000, 2)} A"


def amperes_between(low_ma: Fraction, high_ma: Fraction | None) -> str:
    """'4.35 A', '2.4 A to 4.35 A' or 'at least 2.4 A'."""
    if high_ma is None:
        return f"at least {amperes(low_ma)}" if low_ma else "not known"
    low, high = amperes(low_ma), amperes(high_ma)
    return low if low == high else f"{low} to {high}"


def watts(power_mw: int) -> str:
    """Milliwatts as '12.5 W'."""
    return f"{_plain(power_mw / 1000, 1)} W"


def between(low: int, high: int | None, unit: str) -> str:
    """'5 mm', '5 mm to 15 mm' or 'at least 5 mm'."""
    if high is None:
        return f"at least {low} {unit}"
    return f"{low} {unit}" if low == high else f"{low} {unit} to {high} {unit}"
