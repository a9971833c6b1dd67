"""The question: where on a storey would radio carry one more device?"""

from collections.abc import Collection
from dataclasses import replace
from statistics import NormalDist

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule
from secondfix.radio.answers import Reach, Scale
from secondfix.radio.covering.across import Field, Places, carried_db, field_of
from secondfix.radio.covering.answers import Cover
from secondfix.radio.covering.corrected import as_learned
from secondfix.radio.covering.grid import grid_of
from secondfix.radio.crossing import Bools, Floats
from secondfix.radio.learning.learned import Learned
from secondfix.radio.links import Links
from secondfix.radio.losses import band_mhz
from secondfix.radio.mesh import ROOT, hops_of, widest
from secondfix.radio.network import MOST_HOPS
from secondfix.radio.stations import Station

STEP_MM, HEIGHT_MM = 250, 1100
_BOX, _POWER = "radio_plastic_box_db", "radio_transmit_power_dbm"
_SENSITIVITY, _FADING = "radio_sensitivity_dbm", "radio_fading_db"
_LEANS = (_BOX, _POWER, _SENSITIVITY, _FADING)


def cover(
    rows: Schedule,
    assumptions: Assumptions,
    answer: Reach,
    network: str,
    storey: str,
    *,
    step_mm: int = STEP_MM,
    height_mm: int = HEIGHT_MM,
    gone: Collection[str] = (),
    learned: Learned | None = None,
    plain: bool = False,
) -> Cover:
    """Ask for each place of a grid over ``storey`` whether radio would carry a device put there.

    Meaning: what `reach` (whose ``answer`` is given) asks of a device, asked of one that is not there: in a
    plastic box, with the assumed power and sensitivity, ``height_mm`` above the floor. The margin is that of
    the weakest link on the best route: the best, over all stations of every storey that pass on, of the
    worse of the link to the station and the station's own route, within the links of the protocol; ``gone``
    devices (or the network's own id: its controller) have no power in the case asked of. The same
    with the compiled kernel and without (``plain``). Raises KeyError for a network without an answer (where
    its controller stands is not known) and for a storey that is not there; ValueError for a step of 0 or
    less. ``learned`` of the same house corrects the last link as `as_learned` says. Source: as `reach`; box:
    engineering judgement, not sourced. Leaves out: what `reach` leaves out; that a device may
    repeat for others.
    """
    if step_mm <= 0:
        raise ValueError(f"a step is above 0 mm, not {step_mm}")
    house, links = rows.house, answer.networks[network]
    protocol = house.networks[network].protocol
    x_mm, y_mm, places, inside, step_mm = grid_of(house, storey, step_mm=step_mm, height_mm=height_mm)
    routes = _routes_db(links, set(gone), most_links=MOST_HOPS[protocol] or max(len(links.stations) - 1, 1))
    found = set(answer.paths.sites.places)
    numbers = [n for n, s in enumerate(links.stations) if s.place in found and routes[0, n] > -np.inf]
    stations = [links.stations[n] for n in numbers]
    field = field_of(
        house,
        assumptions,
        [s.place for s in stations],
        band_mhz=band_mhz(protocol, house.radio_region),
    )
    if learned and learned.count:
        field = as_learned(field, learned, network)
    margin = np.full((3, len(places)), np.nan)
    there = inside.ravel()
    margin[:, there] = _best_db(
        field,
        _taken(places, there),
        stations,
        route_db=routes[:, numbers],
        assumptions=assumptions,
        plain=plain,
    )
    margin = margin.reshape(3, *inside.shape)
    likely_db, unlikely_db = _borders_db(answer.scale)
    names = (*_LEANS, *(name for s in stations for name in s.assumptions))
    return Cover(
        network,
        storey,
        x_mm,
        y_mm,
        places.room.reshape(inside.shape),
        margin,
        answer.scale.spread_db[1],
        likely_db,
        unlikely_db,
        height_mm,
        step_mm,
        tuple(dict.fromkeys(names)),
    )


def _routes_db(links: Links, gone: set[str], *, most_links: int) -> Floats:
    """For each station in three readings: the margin of its route with a link to spare.

    Minus infinity where it has none or does not pass on; infinity for the controller.
    """
    out = np.full((3, len(links.stations)), -np.inf)
    if links.stations[ROOT].id in gone:
        return out
    for k in range(3):
        forwards = np.array([s.may_repeat(k) and s.id not in gone for s in links.stations], np.bool_)
        rounds = widest(hops_of(links.a, links.b, links.margin_db[k], forwards), most_hops=most_links)
        out[k] = np.where(forwards, rounds[min(most_links - 1, len(rounds) - 1)], -np.inf)
    return out


def _best_db(
    field: Field,
    places: Places,
    stations: list[Station],
    *,
    route_db: Floats,
    assumptions: Assumptions,
    plain: bool,
) -> Floats:
    """The margin of each place over its best station, three readings."""
    low, power, high = assumptions.span(_POWER)
    best, sensitivity, worst = assumptions.span(_SENSITIVITY)
    own = np.array([[high, best], [power, sensitivity], [low, worst]], np.float64)
    lost = np.array(assumptions.span(_BOX)) + np.array(assumptions.span(_FADING))
    theirs, hears, around = (
        np.array([getattr(s, name) for s in stations], np.float64).reshape(-1, 3).T
        for name in ("power_dbm", "sensitivity_dbm", "loss_db")
    )
    forth, back = own[:, [0]] - hears, theirs - own[:, [1]]
    budget = np.minimum(forth, back) - around - lost[:, None]
    return carried_db(
        field,
        places,
        budget_db=np.ascontiguousarray(budget),
        route_db=np.ascontiguousarray(route_db),
        plain=plain,
    )


def _taken(places: Places, there: Bools) -> Places:
    return replace(places, x_mm=places.x_mm[there], y_mm=places.y_mm[there], room=places.room[there])


def _borders_db(scale: Scale) -> tuple[float, float]:
    """The margin from which a place is likely and that below which it is unlikely, at the worse spread."""
    likely, unlikely = (NormalDist().inv_cdf(c) for c in (scale.likely[2], scale.unlikely[0]))
    ends = (scale.spread_db[0], scale.spread_db[2])
    return max(likely * s for s in ends), min(unlikely * s for s in ends)
