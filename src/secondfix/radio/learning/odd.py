"""Readings that lie far from what all the others lead to expect: slips of the pen, or something between."""

from collections.abc import Iterator, Mapping

import numpy as np

from secondfix.radio.learning.making import Made
from secondfix.radio.learning.next_links import named
from secondfix.radio.learning.posterior import House
from secondfix.radio.learning.rows import Rows

FAR = 3.0  # spreads: one reading in 370 of a normal lies as far out


def odd_readings(rows: Rows, house: House, all_made: Mapping[str, Made]) -> Iterator[str]:
    """A sentence for each link whose level lies three spreads from what was learned; it still counts."""
    left = (house.loss - house.weights @ rows.parts.T).mean(axis=0)
    spread = np.sqrt((house.spread_db**2).mean() * rows.own + rows.noise2)
    far = (np.abs(left) > FAR * spread) & (rows.own > 0) & ~rows.beyond
    for n in np.flatnonzero(far).tolist():
        links = all_made[rows.network[n]].links
        link = int(rows.link[n])
        ends = f"{named(links, int(links.a[link]))} and {named(links, int(links.b[link]))}"
        side = "weaker" if left[n] > 0 else "stronger"
        yield (
            f"Between {ends} the signal is {abs(left[n]):.0f} dB {side} than the other links lead to expect: "
            "read it again, or see what stands between."
        )
