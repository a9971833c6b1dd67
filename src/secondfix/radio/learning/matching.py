"""Which link of which network each measurement speaks of, and the readings of each link put together."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from secondfix.radio.learning.measured import Measured
from secondfix.radio.links import Links

BEYOND_POWER_DB = 10.0  # a level so far above what was sent is a slip of the pen


@dataclass(slots=True)
class Readings:
    """What was read of one link: levels in dBm from its ``a`` to its ``b``, and back; and where in vain."""

    forth_dbm: list[float] = field(default_factory=list)
    back_dbm: list[float] = field(default_factory=list)
    forth_in_vain: bool = False
    back_in_vain: bool = False

    @property
    def heard(self) -> bool:
        """Whether anything was heard, either way."""
        return bool(self.forth_dbm or self.back_dbm)


@dataclass(frozen=True, slots=True, eq=False)
class Matched:
    """By network and number of the link: what was read; a sentence for each measurement that is left out."""

    of: Mapping[str, Mapping[int, Readings]]
    notes: tuple[str, ...]

    def count(self) -> int:
        """How many links were measured."""
        return sum(map(len, self.of.values()))

    def not_heard(self) -> int:
        """How many of them were listened for in vain, both ways or the one way that was tried."""
        return sum(not r.heard for links in self.of.values() for r in links.values())


def matched(networks: Mapping[str, Links], measured: Sequence[Measured]) -> Matched:
    """Find the link of each measurement by the ids of its ends: devices, places, or a network's controller.

    A place means the one device there of a network that has a device at the other end too. The order of
    measurements is of no account.
    """
    seats = {key: _Seats(links) for key, links in networks.items()}
    of: dict[str, dict[int, Readings]] = {key: {} for key in networks}
    notes = []
    for one in sorted(measured, key=lambda m: (m.a, m.b, m.rssi_dbm is None, m.rssi_dbm or 0.0)):
        found = [(key, *ends) for key, seat in seats.items() for ends in seat.ends(one)]
        fault = _fault(one, [(key, a, b, seats[key]) for key, a, b in found])
        if fault:
            notes.append(f"The measured link {one.a}>{one.b} does not count: {fault}.")
            continue
        ((key, a, b),) = found
        link, forth = seats[key].link(a, b)
        _add(of[key].setdefault(link, Readings()), one.rssi_dbm, forth=forth)
    return Matched(of, tuple(dict.fromkeys(notes)))


class _Seats:
    """The stations of a network by what they may be called, and the links between them."""

    def __init__(self, links: Links) -> None:
        self.stations = links.stations
        self._called: dict[str, list[int]] = {}
        for n, station in enumerate(links.stations):
            for name in () if station.supposed else dict.fromkeys((station.id, station.place)):
                self._called.setdefault(name, []).append(n)
        side = len(links.stations)
        self._side = side
        keys = np.minimum(links.a, links.b) * side + np.maximum(links.a, links.b)
        self._links = {key: n for n, key in enumerate(keys.tolist())}
        self._a = links.a

    def ends(self, one: Measured) -> Iterator[tuple[int, int]]:
        """Every two stations that the measurement may mean."""
        for a in self._called.get(one.a, ()):
            for b in self._called.get(one.b, ()):
                if a != b:
                    yield a, b

    def link(self, a: int, b: int) -> tuple[int, bool]:
        """Number of the link between two stations (−1: none), and whether it goes from a to b."""
        n = self._links.get(min(a, b) * self._side + max(a, b), -1)
        return n, n >= 0 and int(self._a[n]) == a


def _fault(one: Measured, found: list[tuple[str, int, int, _Seats]]) -> str:
    """Why a measurement cannot count; empty where it can."""
    if not found:
        return "its ends are not two devices of one network"
    if len(found) > 1:
        return "several devices stand there; name the devices"
    _, a, b, seats = found[0]
    if seats.link(a, b)[0] < 0:
        return (
            "no such link is planned on, for its ends are too far apart, not on the plan, or neither repeats"
        )
    highest = max(seats.stations[a].power_dbm) + BEYOND_POWER_DB
    if one.rssi_dbm is not None and one.rssi_dbm > highest:
        return f"{one.rssi_dbm:g} dBm is more than {one.a} sends"
    return ""


def _add(readings: Readings, rssi_dbm: float | None, *, forth: bool) -> None:
    if rssi_dbm is not None:
        (readings.forth_dbm if forth else readings.back_dbm).append(rssi_dbm)
    elif forth:
        readings.forth_in_vain = True
    else:
        readings.back_in_vain = True
