"""Links as the joining order needs them: per network, the margin of every pair."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from secondfix.assumptions import Assumptions
from secondfix.radio import Reach, margins_after_spread

CONTROLLER = "controller"  # no device id: those begin with a capital


@dataclass(frozen=True, slots=True)
class NetworkLinks:
    """Margins between the devices of one network and its controller.

    ``ids`` names rows and columns: device ids and ``CONTROLLER``. ``margin_db[i, j]`` is the
    margin after spread, in dB, of the weaker direction of that link, the same both ways; NaN
    where it is not known, minus infinity where there is none. The diagonal is not read.
    ValueError where the array is not square and symmetric over ``ids``.
    """

    ids: tuple[str, ...]
    margin_db: NDArray[np.float64]

    def __post_init__(self) -> None:
        side = len(self.ids)
        if self.margin_db.shape != (side, side) or len(set(self.ids)) != side:
            raise ValueError(f"margins over {side} ids need one row and one column for each, no id twice")
        if not np.array_equal(self.margin_db, self.margin_db.T, equal_nan=True):
            raise ValueError("the weaker direction of a link is the same seen from both ends")


Links = Mapping[str, NetworkLinks]
"""Network id to its links. What it does not hold is not known."""


def links_of(reach: Reach, assumptions: Assumptions) -> Links:
    """The links that a radio answer holds, for every network it could answer for.

    A margin is not known where an unknown fact decides whether ``parent_margin_db`` is kept.
    """
    wanted_db = float(assumptions.value("parent_margin_db"))
    found: dict[str, NetworkLinks] = {}
    for network_id in reach.networks:
        ids, margins = margins_after_spread(reach, network_id, wanted_db=wanted_db)
        named = tuple(CONTROLLER if i == network_id else i for i in ids)
        found[network_id] = NetworkLinks(named, np.asarray(margins, dtype=np.float64))
    return found
