"""The chance of every station to reach its controller: from draws, with both uncertainties, told apart."""

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt
from types import MappingProxyType

import numpy as np

from secondfix.radio.answers import Scale
from secondfix.radio.crossing import Floats
from secondfix.radio.engine.drawing import Ends, draw_links
from secondfix.radio.engine.gone import without_each
from secondfix.radio.engine.searching import how_often, reached, steps_of
from secondfix.radio.links import Links

SURE = 1.959964  # the normal's 97.5 % point: 19 intervals of 20 hold the true chance


@dataclass(frozen=True, slots=True)
class Drawn:
    """A chance counted in draws: the share, and the interval that the number of draws leaves (95 %)."""

    low: float
    share: float
    high: float


@dataclass(frozen=True, slots=True)
class DeviceChance:
    """One device: its chance as drawn at the assumed reading, and apart from it what the model leaves open.

    ``model_low`` and ``model_high`` are the least and the greatest share over the ends of every
    assumption and of the spread together. ``any_gone`` is the chance that it is reached whichever one
    repeater is gone; ``gone`` its chance with each repeater gone whose going costs it a draw or more.
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


def device_chances(
    links: Links,
    scale: Scale,
    *,
    most_links: int,
    shared: float,
    draws: int,
    seed: int,
    plain: bool = False,
) -> tuple[DeviceChance, ...]:
    """Draw a network ``draws`` times from ``seed`` and count for each device (stations but the controller).

    Meaning: the chance that some route of at most ``most_links`` links works, all draws independent, all
    links of a draw shadowed together as `draw_links` tells (``shared``, 0 to below 1: engineering
    judgement, not sourced). The same seed gives the same answer, compiled or not. Source: log-normal
    shadowing as in `chance`; Wilson's interval. Leaves out: traffic, interference, and whether the
    protocol finds the route that works. A device without a place has no links, so its share is 0: ask
    `reach` whether its place is known.
    """
    count = len(links.stations)
    ends = Ends(count, links.a, links.b)

    low, high = np.ones(count), np.zeros(count)
    runs = [
        (0, scale.spread_db[0]),
        (0, scale.spread_db[2]),
        (2, scale.spread_db[0]),
        (2, scale.spread_db[2]),
    ]
    assumed = (1, scale.spread_db[1])
    for reading, spread_db in (*runs, assumed):
        forwards = np.array([s.may_repeat(reading) for s in links.stations], np.bool_)
        steps = steps_of(ends, forwards)
        drawn = draw_links(
            ends,
            margin_db=links.margin_db[reading],
            spread_db=spread_db,
            shared=shared,
            draws=draws,
            seed=seed,
            plain=plain,
        )
        share: Floats = how_often(reached(steps, drawn, most_links=most_links, plain=plain)) / draws
        low, high = np.minimum(low, share), np.maximum(high, share)
    gone = without_each(steps, drawn, most_links=most_links, plain=plain)
    ids = [s.id for s in links.stations]
    return tuple(
        DeviceChance(
            ids[v],
            wilson(hits=int(gone.whole[v]), draws=draws),
            float(low[v]),
            float(high[v]),
            wilson(hits=int(gone.safe[v]), draws=draws),
            MappingProxyType(
                {
                    ids[gone.repeaters[r]]: wilson(hits=int(gone.whole[v] - gone.lost[r, v]), draws=draws)
                    for r in np.flatnonzero(gone.lost[:, v]).tolist()
                }
            ),
        )
        for v in range(1, count)
    )
