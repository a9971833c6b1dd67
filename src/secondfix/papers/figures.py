"""Quantities in the words of the papers; what is not known is said, never left empty."""

from typing import TypeVar

from secondfix.assumptions import Assumption
from secondfix.house import Fact
from secondfix.terms import KNOWN_LABELS, Known, in_feet

T = TypeVar("T")

NOT_KNOWN = "not known"


def watts(milliwatts: int) -> str:
    """Whole watts where they are, else one decimal."""
    return f"{milliwatts / 1000:g} W"


def known_value(fact: Fact[T] | None, words: str) -> str:
    """``words``, with how it is known where that is weaker than seen; *not known* where absent."""
    if fact is None:
        return NOT_KNOWN
    weak = fact.known in {Known.ASSUMED, Known.TOLD}
    return f"{words} ({KNOWN_LABELS[fact.known]})" if weak else words


def assumption_value(assumption: Assumption, *, nec: bool) -> str:
    """Value and unit, for NEC houses with feet and inches beside lengths."""
    a = assumption
    feet = in_feet(a.value, a.unit) if nec else ""
    return _with_unit(a.value, a.unit) + (f" ({feet})" if feet else "")


def assumption_range(assumption: Assumption, *, nec: bool) -> str:
    """``400 to 900 ‰``, or that there is none."""
    a = assumption
    if a.low == a.high:
        return "taken as certain"
    low_feet, high_feet = (in_feet(v, a.unit) if nec else "" for v in (a.low, a.high))
    inches = f" ({low_feet} to {high_feet})" if low_feet else ""
    low = f"{a.low}".replace("-", "−")
    return f"{low} to {_with_unit(a.high, a.unit)}{inches}"


def _with_unit(value: int, unit: str) -> str:
    return f"{value} {unit}".replace("-", "−", 1).strip()
