"""Lengths in the words of the house: metric, or feet and inches where the house follows NFPA 70."""

_MM_PER_INCH = 25.4  # exact: international yard and pound agreement of 1959 (from memory)
_MM_PER_FOOT = 12 * _MM_PER_INCH
_PARTS = 8  # eighths of an inch: as fine as a tape is read on site (common practice, no source)


def feet_inches(mm: float, *, parts_of_inch: int = _PARTS) -> str:
    """``3'-5 3/8"``, to the nearest eighth of an inch, as papers of NEC houses write it.

    ``parts_of_inch`` is a power of two; 1 gives whole inches.
    """
    parts = round(abs(mm) / _MM_PER_INCH * parts_of_inch)
    feet, rest = divmod(parts, 12 * parts_of_inch)
    inches, part = divmod(rest, parts_of_inch)
    over = parts_of_inch
    while part and part % 2 == 0:
        part, over = part // 2, over // 2
    fraction = f"{part}/{over}" if part else ""
    whole = " ".join(w for w in (str(inches) if feet or inches or not part else "", fraction) if w)
    sign = "−" if mm < 0 and parts else ""
    return f"{sign}{feet}'-{whole}\"" if feet else f'{sign}{whole}"'


def drawn_length(mm: float, *, nec: bool) -> str:
    """On a drawing: ``1.05 m``; in NEC houses ``1050 mm (3'-5 3/8")``."""
    return f"{mm:.0f} mm ({feet_inches(mm)})" if nec else f"{mm / 1000:.2f} m"


def taped_height(mm: float, *, nec: bool) -> str:
    """As a tape reads a height: ``1.05 m``; in NEC houses ``3'-5 3/8"``."""
    return feet_inches(mm) if nec else f"{mm / 1000:.2f} m"


def taped_gap(mm: float, *, nec: bool) -> str:
    """Beside something, coarser: ``0.4 m``; in NEC houses to the inch, ``1'-4"``."""
    return feet_inches(mm, parts_of_inch=1) if nec else f"{mm / 1000:.1f} m"


def walked_way(mm: float, *, nec: bool) -> str:
    """A way on foot: ``49 m``; in NEC houses ``161 ft``."""
    return f"{mm / _MM_PER_FOOT:.0f} ft" if nec else f"{mm / 1000:.0f} m"


def in_feet(value: int, unit: str) -> str:
    """What stands in brackets behind a length of ``mm`` or ``m`` in NEC houses; empty for other units."""
    if unit == "mm":
        return feet_inches(value)
    return walked_way(1000 * value, nec=True) if unit == "m" else ""


def printed_mm(mm: int, *, nec: bool) -> str:
    """What data sheets print in millimetres: ``45 mm``; in NEC houses ``45 mm (1 3/4")``.

    Both, for an eighth of an inch is coarser than the millimetre by which a device may not fit.
    """
    return f"{mm} mm ({feet_inches(mm)})" if nec else f"{mm} mm"
