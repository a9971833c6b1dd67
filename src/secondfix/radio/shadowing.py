"""From a margin and its spread to a chance, and back."""

import math
from statistics import NormalDist

_NORMAL = NormalDist()


def chance(*, margin_db: float, spread_db: float) -> float:
    """Give the chance that a link works whose predicted margin is `margin_db`, between 0 and 1.

    Meaning: the true loss is taken as log-normal about the predicted one with standard deviation
    `spread_db` (above 0), so the chance is Φ(margin/spread). Raises ValueError for a spread of 0 or less.
    Source: log-normal shadowing, the form of ITU-R P.1238 (secondary). Leaves out: fading within a few
    centimetres, and that links of one device share part of their error.
    """
    if spread_db <= 0:
        raise ValueError(f"a spread is above 0 dB, not {spread_db}")
    return 0.5 * math.erfc(-margin_db / (spread_db * math.sqrt(2)))


def shadowing_margin_db(*, wanted_chance: float, spread_db: float) -> float:
    """Give the margin in dB that a link needs for a wanted chance (above 0, below 1).

    The inverse of `chance`: z·spread, with z = 1.282, 1.645, 2.054, 2.326 for 90, 95, 98, 99 %.
    Raises ValueError outside the ranges. Source and omissions as `chance`.
    """
    if spread_db <= 0 or not 0 < wanted_chance < 1:
        raise ValueError("a spread is above 0 dB and a chance between 0 and 1")
    return _NORMAL.inv_cdf(wanted_chance) * spread_db
