"""Frames lost along routes: over what is not known of each link, among those who send there too."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import pairwise

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.links import Links
from secondfix.radio.packets.curves import Kind, frame_success
from secondfix.radio.packets.delivery import raised_db
from secondfix.radio.packets.interference import Interference
from secondfix.terms import Protocol

_LOW_DB, _HIGH_DB, _STEP_DB = -25.0, 25.0, 0.01  # beyond them no frame comes through, or every one
_Z = np.linspace(-4.0, 4.0, 65)  # spreads: a step of an eighth, finer than a link rises
_WEIGHT = np.exp(-_Z * _Z / 2) / np.exp(-_Z * _Z / 2).sum()
_LEAST_RAISE_DB = 0.005


@dataclass(frozen=True, slots=True, eq=False)
class Routes:
    """Routes of some stations to the controller, over links numbered from 0.

    ``link`` numbers rows of the network's links; ``start`` where each route's steps begin in ``steps``
    (numbers into ``link``); ``outward`` is 1 where a step away from the controller goes from the link's ``a``
    to its ``b``, else 0.
    """

    devices: tuple[str, ...]
    link: Ints
    steps: Ints
    start: Ints
    outward: Ints


def routes_of(links: Links, ways: Sequence[tuple[str, Sequence[int]]]) -> Routes:
    """Lay out routes: each a device and its stations, from the device to the controller."""
    row = {pair: n for n, pair in enumerate(zip(links.a.tolist(), links.b.tolist(), strict=True))}
    steps: list[int] = []
    start: list[int] = []
    outward: list[bool] = []
    for _, way in ways:
        start.append(len(steps))
        for below, above in pairwise(way):
            forth = (above, below) in row
            steps.append(row[(above, below) if forth else (below, above)])
            outward.append(forth)
    used, number = np.unique(np.array(steps, np.int64), return_inverse=True)
    return Routes(
        tuple(device for device, _ in ways),
        used,
        number.astype(np.int64),
        np.array(start, np.int64),
        np.array(outward, np.int64),
    )


def lost(
    links: Links,
    routes: Routes,
    *,
    reading: int,
    spread_db: float,
    sensitivity_dbm: Floats,
    among: Interference | None,
) -> Floats:
    """Give the share of frames of each route that are not acknowledged at the first try (routes,), 0 to 1.

    Meaning: 1 − Π over its links of E[s(forth)·s_ack(back)], the mean of both directions along the route; E
    over log-normal shadowing of ``spread_db``, one number for both directions of a link. A frame meets each
    source of ``among`` with its share of the time; a source raises the receiver's floor (`raised_db`).
    Numeric: 65 points over ±4 spreads. Range: 2.4 GHz; spread above 0. Source: `frame_success` (IEEE
    802.15.4-2006 E.4.1.7, secondary), shadowing ITU-R P.1238 form. Leaves out: a burst of a source that is
    shorter than a frame or begins within it, a channel too busy to send on, that links of one device fail
    together.
    """
    a, b = links.a[routes.link], links.b[routes.link]
    weaker = np.minimum(links.margin_ab_db, links.margin_ba_db)
    moved = links.margin_db[reading] - weaker
    shadow = spread_db * _Z
    forth = (links.margin_ab_db + moved)[routes.link, None] + shadow
    back = (links.margin_ba_db + moved)[routes.link, None] + shadow
    raised = duty = None
    if among is not None and among.duty.size:
        raised, duty = raised_db(among, sensitivity_dbm), among.duty
    at_a = raised[a] if raised is not None else None
    at_b = raised[b] if raised is not None else None
    ab = _through(forth, "command", at_b, duty) * _through(back, "acknowledgement", at_a, duty)
    ba = _through(back, "command", at_a, duty) * _through(forth, "acknowledgement", at_b, duty)
    once = np.stack([ab @ _WEIGHT, ba @ _WEIGHT])
    return _along(once, routes)


def _along(once: Floats, routes: Routes) -> Floats:
    """The share lost over whole routes of what each link carries, both directions (2, links)."""
    out = np.zeros(len(routes.devices))
    for direction in (1, 0):
        forth = (routes.outward == direction).astype(np.int64)
        kept = np.multiply.reduceat(once[1 - forth, routes.steps], routes.start)
        out += (1 - kept) / 2
    return np.clip(out, 0.0, 1.0)


def _through(above_db: Floats, kind: Kind, raised: Floats | None, duty: Floats | None) -> Floats:
    """How often one frame comes through: the links' shape and a column for each point of the shadowing."""
    quiet = _success(above_db, kind)
    if raised is None or duty is None:
        return quiet
    out = quiet
    for n, share in enumerate(duty.tolist()):
        if share <= 0 or raised[:, n].max(initial=0.0) < _LEAST_RAISE_DB:
            continue
        met = _success(above_db - raised[:, n, None], kind)
        out = out * ((1 - share) + share * np.divide(met, quiet, out=np.ones_like(met), where=quiet > 0))
    return np.asarray(np.minimum(out, quiet))


@cache
def _table(kind: Kind) -> Floats:
    count = round((_HIGH_DB - _LOW_DB) / _STEP_DB) + 1
    return frame_success(np.linspace(_LOW_DB, _HIGH_DB, count), protocol=Protocol.ZIGBEE, kind=kind)


def _success(above_db: Floats, kind: Kind) -> Floats:
    """`frame_success` at 2.4 GHz, read from a table in steps of 0.01 dB."""
    at = np.clip((above_db - _LOW_DB) * (1 / _STEP_DB) + 0.5, 0, round((_HIGH_DB - _LOW_DB) / _STEP_DB))
    out: Floats = _table(kind)[at.astype(np.int64)]
    return out
