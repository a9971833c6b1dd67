"""What the edition of its standard lets a switch without a printed motor rating carry.

EN 60669-1:2018, scope (read): motors up to 3 A at 250 V and 4.5 A at 120 V at a power factor of 0.6 and
above, for switches of 10 A and more without further motor tests; the edition of 1999 with A2 (read): up to
10 A.
"""

import re

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.electrical.printed import holds_at
from secondfix.terms import RatingKind

_NEWER, _LEAST_SWITCH_MA = 2017, 10_000
_LIMIT_MA = {True: ((130, 4500), (250, 3000)), False: ((250, 10_000),)}


def edition_limit(model: Model, *, mains_voltage_v: int, assumptions: Assumptions) -> tuple[int, str] | None:
    """Milliamperes for motors and the edition that says so; None where the sheet names none.

    Nothing for a switch below 10 A, nor where a rating for motors is printed: that rules.
    """
    resistive = model.rating_for(RatingKind.RESISTIVE)
    if model.rating_for(RatingKind.MOTOR) is not None or resistive is None:
        return None
    named = re.search(r"\b60669-1:((?:19|20)[0-9]{2})", resistive.standard)
    held = holds_at(resistive, mains_voltage_v=mains_voltage_v, assumptions=assumptions)
    if named is None or not held or resistive.current_ma < _LEAST_SWITCH_MA:
        return None
    for most_v, limit_ma in _LIMIT_MA[int(named[1]) >= _NEWER]:
        if mains_voltage_v <= most_v:
            return min(limit_ma, resistive.current_ma), resistive.standard
    return None
