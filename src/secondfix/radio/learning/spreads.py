"""What the spread of a house may be before anything is measured, and how far out the house may lie."""

from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.radio.crossing import Floats
from secondfix.radio.learning.columns import NINETY

VALUES = 31
LEAST_DB = 1.0
# Ranges by judgement miss now and then: one house in five may lie three times as far out.
WIDTHS = ((1.0, 0.8), (3.0, 0.2))


@dataclass(frozen=True, slots=True, eq=False)
class Before:
    """Values that spread (in dB) and width may take together, and how likely each pair is."""

    spreads: Floats
    widths: Floats
    chances: Floats


def before(assumptions: Assumptions) -> Before:
    """Give what the spread and the width of a house may be before anything is measured.

    Meaning: the spread is normal, nine in ten within its range (one value where the range is none); the width
    stretches the ranges of all that is assumed of the whole house. Source: the assumption's for the spread;
    the rest engineering judgement, not sourced.
    """
    low, value, high = (max(float(s), LEAST_DB) for s in assumptions.span("radio_spread_db"))
    sd = (high - low) / (2 * NINETY)
    spreads, likely = np.array([value]), np.array([1.0])
    if sd > 0:
        spreads = np.linspace(max(value - 3.5 * sd, LEAST_DB), value + 4 * sd, VALUES)
        likely = np.exp(-(((spreads - value) / sd) ** 2) / 2)
    chances = np.concatenate([likely / likely.sum() * share for _, share in WIDTHS])
    widths = np.repeat([width for width, _ in WIDTHS], len(spreads))
    return Before(np.tile(spreads, len(WIDTHS)), widths, chances)
