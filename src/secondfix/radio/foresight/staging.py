"""The stage of the cases: the stations that stand, and beside them those that might be put somewhere."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Stated
from secondfix.house import House, Schedule
from secondfix.radio.answers import Reach
from secondfix.radio.crossing import Ints
from secondfix.radio.links import Links, links_of
from secondfix.radio.losses import band_mhz, path_losses_db
from secondfix.radio.network import MOST_HOPS
from secondfix.radio.paths import find_paths
from secondfix.radio.sites import places_in_use, position_needs
from secondfix.radio.stations import Station, controller, station

FAR_BELOW = -4.0  # spreads: a link so far below works once in 30,000 draws
_CONTROLLER_MAY_STAND = ("controller_spot", "socket")


@dataclass(frozen=True, slots=True, eq=False)
class Staged:
    """One network on the stage.

    ``links`` are over all stations: the controller, ``real`` − 1 devices, then one for each place of
    ``moves`` (the controller put there) and of ``sockets`` (a device that repeats, plugged in there). The
    links among those that stand come first, ``base`` of them. ``ids`` are those of the stations that stand:
    the network's own for its controller, then its devices.
    """

    network: str
    ids: tuple[str, ...]
    links: Links
    real: int
    base: int
    most_links: int
    moves: Mapping[str, int]
    sockets: Mapping[str, int]


def spots_for_controller(house: House) -> tuple[str, ...]:
    """Places that a controller may be moved to: controller spots and sockets that are on the plan."""
    return tuple(
        key
        for key, place in house.places.items()
        if place.kind in _CONTROLLER_MAY_STAND and not position_needs(house, key)
    )


def empty_sockets(house: House) -> tuple[str, ...]:
    """Sockets on the plan at which nothing stands yet."""
    used = set(places_in_use(house))
    return tuple(
        key
        for key, place in house.places.items()
        if place.kind == "socket" and key not in used and not position_needs(house, key)
    )


def staged(
    rows: Schedule, assumptions: Assumptions, answer: Reach, *, moves: Iterable[str], sockets: Iterable[str]
) -> tuple[Reach, dict[str, Staged]]:
    """Put every network of ``answer`` on the stage; the first is the same answer over all its links.

    What is plugged in at a socket has the assumed power and sensitivity and no box around it; a controller
    keeps its own. Places that are not on the plan are left out.
    """
    house = rows.house
    moves = [p for p in dict.fromkeys(moves) if not position_needs(house, p)]
    sockets = list(dict.fromkeys(sockets))
    wanted = {*places_in_use(house), *moves, *sockets}
    paths = find_paths(house, assumptions, [p for p in (*house.boxes, *house.places) if p in wanted])
    least = FAR_BELOW * max(float(s) for s in assumptions.span("radio_spread_db"))
    out: dict[str, Staged] = {}
    for key, standing in answer.networks.items():
        network = house.networks[key]
        own = [p for p in moves if p != network.controller_place]
        stations = [
            *(_as_surveyed(rows, assumptions, s) for s in standing.stations),
            *(replace(controller(rows, key, p, assumptions), id=p, supposed=True) for p in own),
            *(_plugged_in(p, assumptions) for p in sockets),
        ]
        lost = path_losses_db(paths, band_mhz(network.protocol, house.radio_region))
        links = links_of(stations, paths, lost, fading_db=assumptions.span("radio_fading_db"))
        real = len(standing.stations)
        links, base = _in_order(links, real, real + len(own), least_db=least)
        out[key] = Staged(
            key,
            tuple(s.id for s in links.stations[:real]),
            links,
            real,
            base,
            MOST_HOPS[network.protocol] or max(real - 1, 1),
            {p: real + n for n, p in enumerate(own)},
            {p: real + len(own) + n for n, p in enumerate(sockets)},
        )
    return replace(answer, paths=paths, networks={key: s.links for key, s in out.items()}), out


def _as_surveyed(rows: Schedule, assumptions: Assumptions, s: Station) -> Station:
    """The station as the survey has it: what measured links say of it is learned again."""
    if s.id in rows.house.networks:
        return controller(rows, s.id, s.place, assumptions)
    return station(rows, s.id, assumptions)


def _plugged_in(place: str, assumptions: Assumptions) -> Station:
    low, power, high = (float(v) for v in assumptions.span("radio_transmit_power_dbm"))
    best, sensitivity, worst = (float(v) for v in assumptions.span("radio_sensitivity_dbm"))
    return Station(
        place,
        place,
        (high, power, low),
        (best, sensitivity, worst),
        (0.0, 0.0, 0.0),
        Stated.YES,
        plugged=True,
        supposed=True,
        assumptions=("radio_transmit_power_dbm", "radio_sensitivity_dbm"),
    )


def _in_order(links: Links, real: int, sockets_from: int, *, least_db: float) -> tuple[Links, int]:
    """The links among those that stand first; none between two that do not, and none without hope."""
    low, high = np.minimum(links.a, links.b), np.maximum(links.a, links.b)
    hopeful = links.margin_db[0] > least_db
    standing = hopeful & (high < real)
    # A controller that is moved meets devices alone; what is plugged in meets the controller too.
    kept = hopeful & (low < real) & ((low > 0) | (high >= sockets_from))
    order: Ints = np.concatenate([np.flatnonzero(standing), np.flatnonzero(kept & ~standing)])
    return _taken(links, order), int(standing.sum())


def _taken(links: Links, rows: Ints) -> Links:
    return Links(
        links.stations,
        links.a[rows],
        links.b[rows],
        links.pair[rows],
        links.margin_db[:, rows],
        links.loss_db[rows],
        links.margin_ab_db[rows],
        links.margin_ba_db[rows],
    )
