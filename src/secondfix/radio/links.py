"""Links: a path with a station at each end. Changing a model asks for these again, not for paths."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.paths import Paths
from secondfix.radio.stations import Station, Three

HOPELESS_DB = -50.0  # five spreads below nothing: no mesh hangs on such a link


@dataclass(frozen=True, slots=True, eq=False)
class Links:
    """Every link of one network that could carry at least one hop: one end repeats or is the controller.

    ``a`` and ``b`` number ``stations`` (0 is the controller), ``pair`` the path. ``margin_db`` has three
    rows (most favourable, assumed, least favourable reading) for the weaker direction; ``loss_db`` and
    the margins of both directions are those of the assumed reading.
    """

    stations: tuple[Station, ...]
    a: Ints
    b: Ints
    pair: Ints
    margin_db: Floats
    loss_db: Floats
    margin_ab_db: Floats
    margin_ba_db: Floats


def links_of(stations: Sequence[Station], paths: Paths, lost_db: Floats, *, fading_db: Three) -> Links:
    """Put stations at the ends of the paths between their places.

    Margin of one direction: power of the sender − loss of the path − loss at both ends − fading to be
    borne − sensitivity of the receiver, in dB; the link is as good as its weaker direction. Stations
    whose place is not among the sites of ``paths`` have no links. Links that cannot work in any reading
    are left out.
    """
    a, b, pair = _ends(stations, paths)
    useful = np.array([s.may_repeat(0) for s in stations])
    kept = (a != b) & (useful[a] | useful[b])
    a, b, pair = a[kept], b[kept], pair[kept]
    power, sensitivity, around = (
        _column(stations, name) for name in ("power_dbm", "sensitivity_dbm", "loss_db")
    )
    loss = lost_db[:, pair] + around[:, a] + around[:, b]
    borne = loss + np.array(fading_db).reshape(3, 1)
    forth = power[:, a] - borne - sensitivity[:, b]
    back = power[:, b] - borne - sensitivity[:, a]
    margin = np.minimum(forth, back)
    kept = margin[0] > HOPELESS_DB
    return Links(
        tuple(stations),
        a[kept],
        b[kept],
        pair[kept],
        margin[:, kept],
        loss[1, kept],
        forth[1, kept],
        back[1, kept],
    )


def _column(stations: Sequence[Station], name: str) -> Floats:
    rows: list[Three] = [getattr(station, name) for station in stations]
    return np.ascontiguousarray(np.array(rows, np.float64).reshape(-1, 3).T)


def _ends(stations: Sequence[Station], paths: Paths) -> tuple[Ints, Ints, Ints]:
    """Every two stations whose places are paired; several may share a place."""
    number = {place: n for n, place in enumerate(paths.sites.places)}
    at = np.array([number.get(s.place, -1) for s in stations], np.int64)
    placed = np.flatnonzero(at >= 0)
    order = placed[np.argsort(at[placed], kind="stable")]
    used, start, count = np.unique(at[order], return_index=True, return_counts=True)
    pairs = paths.among(used)
    one, other = np.searchsorted(used, paths.first[pairs]), np.searchsorted(used, paths.second[pairs])
    many = count[one] * count[other]
    step = np.arange(int(many.sum())) - np.repeat(np.cumsum(many) - many, many)
    pair, one, other = np.repeat(pairs, many), np.repeat(one, many), np.repeat(other, many)
    a = order[start[one] + step // count[other]]
    b = order[start[other] + step % count[other]]
    once = (one != other) | (a < b)
    return a[once], b[once], pair[once]
