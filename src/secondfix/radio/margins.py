"""Margins of one network as a square array, for whoever picks parents."""

import numpy as np

from secondfix.radio.answers import Reach
from secondfix.radio.crossing import Floats


def margins_after_spread(
    reach: Reach, network_id: str, *, wanted_db: float
) -> tuple[tuple[str, ...], Floats]:
    """Give ids (devices in the document's order, the network's own id for its controller last) and margins.

    Meaning: entry (i, j) is the margin in dB of the weaker direction of that link less one spread, the
    same both ways: at the assumed reading with unknown facts at their worst. Minus infinity where there
    is no link or neither end repeats; NaN where an end is not on the plan, or where an unknown fact
    decides whether ``wanted_db`` is kept. Raises KeyError for a network without an answer. Source:
    log-normal shadowing as in `chance`. Leaves out: what `reach` leaves out.
    """
    links = reach.networks[network_id]
    side = len(links.stations)
    placed = set(reach.paths.sites.places)
    ids = tuple(s.id for s in (*links.stations[1:], links.stations[0]))
    seat = np.array([side - 1, *range(side - 1)])  # station 0, the controller, sits last
    best, assumed = links.margin_db[0] - reach.spread_db, links.margin_db[1] - reach.spread_db
    unsure = (assumed < wanted_db) & (best >= wanted_db) & _hangs_on_unknown(reach, network_id)
    shown = np.where(unsure, np.nan, assumed)
    out = np.full((side, side), -np.inf)
    a, b = seat[links.a], seat[links.b]
    out[a, b] = out[b, a] = shown
    for n, station in enumerate(links.stations):
        if station.place not in placed:
            out[seat[n], :] = out[:, seat[n]] = np.nan
    return ids, out


def _hangs_on_unknown(reach: Reach, network_id: str) -> "np.ndarray[tuple[int], np.dtype[np.bool_]]":
    """For each link: whether an end or a surface between is unknown."""
    links, paths = reach.networks[network_id], reach.paths
    blank = np.array([surface.look is not None for surface in paths.surfaces], np.bool_)
    between = np.bincount(paths.at_pair[blank[paths.crossed]], minlength=len(paths.first)) > 0
    ends = np.array([any(look.field != "repeats" for look in s.looks) for s in links.stations], np.bool_)
    out: np.ndarray[tuple[int], np.dtype[np.bool_]] = ends[links.a] | ends[links.b] | between[links.pair]
    return out
