"""The chance of every station to reach its controller: from draws, with both uncertainties, told apart."""

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt

SURE = 1.959964  # the normal's 97.5 % point: 19 intervals of 20 hold the true chance


@dataclass(frozen=True, slots=True)
class Drawn:
    """A chance counted in draws: the share, and the interval that the number of draws leaves (95 %)."""

    low: float
    share: float
    high: float


@dataclass(frozen=True, slots=True)
class DeviceChance:
    """One device: its chance over the ways that the house may be; apart from it what the model leaves open.

    ``model_low`` and ``model_high`` are the least and the greatest share over the ends of every
    assumption and of the spread together. ``any_gone`` is the chance that it is reached whichever one
    repeater is gone; ``gone`` its chance with each repeater gone whose going moves it.
    """

    id: str
    reached: Drawn
    model_low: float
    model_high: float
    any_gone: Drawn
    gone: Mapping[str, Drawn]


def wilson(*, hits: int, draws: int) -> Drawn:
    """Give the share of ``hits`` in ``draws`` (at least 1) with Wilson's 95 % interval.

    Equation: (p + z²/2n ± z √(p(1−p)/n + z²/4n²)) / (1 + z²/n). Source: Wilson 1927 (from memory).
    Raises ValueError outside the range. Leaves out: that the model may be wrong.
    """
    if not 0 <= hits <= draws or draws < 1:
        raise ValueError(f"{hits} of {draws} draws is no share")
    p, z2 = hits / draws, SURE**2 / draws
    half = SURE * sqrt(p * (1 - p) / draws + z2 / draws / 4)
    # At 0 and at all hits one end is the share itself; rounding must not put it a hair beside.
    low = 0.0 if hits == 0 else (p + z2 / 2 - half) / (1 + z2)
    return Drawn(low, p, 1.0 if hits == draws else (p + z2 / 2 + half) / (1 + z2))
