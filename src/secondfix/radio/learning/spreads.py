"""What the spread of a house may be before anything is measured."""

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.radio.crossing import Floats
from secondfix.radio.learning.columns import NINETY

VALUES = 41
LEAST_DB = 1.0


def spreads_of(assumptions: Assumptions) -> tuple[Floats, Floats]:
    """Values that the spread may take in dB, and how likely each is: normal, nine in ten within its range.

    Source: the assumption's; its form is ours. One value where the range is none.
    """
    low, value, high = (max(float(s), LEAST_DB) for s in assumptions.span("radio_spread_db"))
    sd = (high - low) / (2 * NINETY)
    if sd <= 0:
        return np.array([value]), np.array([1.0])
    spreads = np.linspace(max(value - 3.5 * sd, LEAST_DB), value + 4 * sd, VALUES)
    chances = np.exp(-(((spreads - value) / sd) ** 2) / 2)
    return spreads, chances / chances.sum()
