"""Quantities in the words of the papers; what is not known is said, never left empty."""

from typing import TypeVar

from secondfix.assumptions import Assumption
from secondfix.house import Fact
from secondfix.terms import KNOWN_LABELS, Known

T = TypeVar("T")

NOT_KNOWN = "not known"
_MM_PER_INCH = 25.4  # exact: international yard and pound agreement of 1959 (from memory)
_PARTS = 8  # eighths of an inch: as fine as a tape is read on site (common practice, no source)


def watts(milliwatts: int) -> str:
    """Whole watts where they are, else one decimal."""
    return f"{milliwatts / 1000:g} W"


def length(mm: float, *, nec: bool) -> str:
    """``1.05 m``; where the house follows NFPA 70 ``1050 mm (3'-5 3/8")``."""
    return f"{mm:.0f} mm ({feet_inches(mm)})" if nec else f"{mm / 1000:.2f} m"


def feet_inches(mm: float) -> str:
    """``3'-5 3/8"``, to the nearest eighth of an inch, as drawings of NEC houses write it."""
    eighths = round(abs(mm) / _MM_PER_INCH * _PARTS)
    feet, rest = divmod(eighths, 12 * _PARTS)
    inches, part = divmod(rest, _PARTS)
    over = _PARTS
    while part and part % 2 == 0:
        part, over = part // 2, over // 2
    fraction = f"{part}/{over}" if part else ""
    whole = " ".join(w for w in (str(inches) if feet or inches or not part else "", fraction) if w)
    sign = "−" if mm < 0 and eighths else ""
    return f"{sign}{feet}'-{whole}\"" if feet else f'{sign}{whole}"'


def known_value(fact: Fact[T] | None, words: str) -> str:
    """``words``, with how it is known where that is weaker than seen; *not known* where absent."""
    if fact is None:
        return NOT_KNOWN
    weak = fact.known in {Known.ASSUMED, Known.TOLD}
    return f"{words} ({KNOWN_LABELS[fact.known]})" if weak else words


def assumption_value(assumption: Assumption, *, nec: bool) -> str:
    """Value and unit, for NEC houses with inches beside millimetres."""
    inches = f" ({feet_inches(assumption.value)})" if nec and assumption.unit == "mm" else ""
    return _with_unit(assumption.value, assumption.unit) + inches


def assumption_range(assumption: Assumption, *, nec: bool) -> str:
    """``400 to 900 ‰``, or that there is none."""
    a = assumption
    if a.low == a.high:
        return "taken as certain"
    inches = f" ({feet_inches(a.low)} to {feet_inches(a.high)})" if nec and a.unit == "mm" else ""
    return f"{a.low} to {_with_unit(a.high, a.unit)}{inches}"


def _with_unit(value: int, unit: str) -> str:
    return f"{value} {unit}".replace("-", "−", 1).strip()
