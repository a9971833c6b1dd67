"""One network: its links, the best route of each device, and what would settle the rest."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.findings import Look
from secondfix.house import Schedule
from secondfix.radio.answers import DeviceReach, Scale, Word
from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.g9959 import MOST_REPEATERS
from secondfix.radio.leaning import Leaning
from secondfix.radio.learning.learned import Learned
from secondfix.radio.links import Links, links_of
from secondfix.radio.losses import band_mhz, path_losses_db
from secondfix.radio.mesh import ROOT, Hops, hanging, hops_of, route, widest
from secondfix.radio.paths import Paths
from secondfix.radio.sites import position_needs
from secondfix.radio.stations import REPEATS, Station, controller, station
from secondfix.terms import Protocol

# Zigbee: a device joins at most 15 deep (nwkcMaxDepth, R22 3.5.1, secondary), and a route may be twice
# as long (radius 30, computed): the shorter limit counts. Z-Wave: four repeaters, so five links.
# Thread: no limit that its 32 routers (from memory) would not keep anyway.
MOST_HOPS: dict[Protocol, int | None] = {
    Protocol.ZIGBEE: 15,
    Protocol.ZWAVE: MOST_REPEATERS + 1,
    Protocol.MATTER_THREAD: None,
}


@dataclass(frozen=True, slots=True, eq=False)
class Mesh:
    """One network: its links and, for the three readings, its steps and best margins by hops.

    ``missed`` gives, for each station on good links at the assumed reading, the repeaters it hangs on;
    ``heard`` the numbers of the links whose level was measured.
    """

    network_id: str
    links: Links
    paths: Paths
    scale: Scale
    hops: tuple[Hops, ...]
    rounds: tuple[list[Floats], ...]
    missed: Mapping[int, frozenset[int]]
    leaning: Leaning
    heard: frozenset[int] = frozenset()

    def way(self, reading: int, number: int) -> list[int]:
        """Stations of the route to show, from the device to the controller; empty if there is none."""
        return route(self.hops[reading], self.rounds[reading], number, enough_db=self.scale.good_db)


@dataclass(frozen=True, slots=True, eq=False)
class Air:
    """What all networks of a house share: its paths, and their losses by band, computed when first asked."""

    rows: Schedule
    assumptions: Assumptions
    paths: Paths
    scale: Scale
    lost_db: dict[tuple[float, ...], Floats]
    passed: int
    learned: Learned | None = None

    def links(self, network_id: str, stations: Sequence[Station]) -> Links:
        """The links of a network as measured links teach them, else as computed."""
        if self.learned:
            return self.learned.links(network_id)
        fading = self.assumptions.span("radio_fading_db")
        protocol = self.rows.house.networks[network_id].protocol
        return links_of(stations, self.paths, self.losses(protocol), fading_db=fading)

    def losses(self, protocol: Protocol) -> Floats:
        """The losses of all paths at the frequencies of a protocol."""
        band = band_mhz(protocol, self.rows.house.radio_region)
        if band not in self.lost_db:
            self.lost_db[band] = path_losses_db(self.paths, band)
        return self.lost_db[band]


def mesh_of(air: Air, network_id: str, members: Sequence[str]) -> Mesh:
    """Build a network whose controller's place is known; ``members`` are its devices."""
    network = air.rows.house.networks[network_id]
    assert network.controller_place is not None  # the caller asks for it first
    stations = [controller(air.rows, network_id, network.controller_place, air.assumptions)]
    stations += [station(air.rows, device, air.assumptions) for device in members]
    links = air.links(network_id, stations)
    most = MOST_HOPS[network.protocol] or max(len(members), 1)
    hops = tuple(
        hops_of(links.a, links.b, links.margin_db[k], np.array([s.may_repeat(k) for s in stations], np.bool_))
        for k in range(3)
    )
    rounds = tuple(widest(h, most_hops=most) for h in hops)
    missed = hanging(hops[1], enough_db=air.scale.good_db, most_hops=most)
    leaning = Leaning(links, air.paths, air.passed, learned=air.learned is not None)
    heard = air.learned.heard(network_id) if air.learned else frozenset()
    return Mesh(network_id, links, air.paths, air.scale, hops, rounds, missed, leaning, heard)


def devices_of(rows: Schedule, mesh: Mesh) -> Iterator[DeviceReach]:
    """The answer for each device of a network."""
    placed = set(mesh.paths.sites.places)
    finder = _Finder(mesh.links)
    # A device that may repeat but stands nobody knows where might be the very repeater that is missed.
    hidden = tuple(
        look
        for s in mesh.links.stations
        if s.place not in placed and s.may_repeat(0)
        for look in position_needs(rows.house, s.place)
    )
    for number, one in enumerate(mesh.links.stations):
        if number == ROOT:
            continue
        if one.place in placed:
            yield _device(mesh, number, finder, hidden)
        else:
            needs = position_needs(rows.house, one.place)
            yield DeviceReach(one.id, one.place, mesh.network_id, Word.NOT_KNOWN, needs=needs)


def _device(mesh: Mesh, number: int, finder: "_Finder", hidden: tuple[Look, ...]) -> DeviceReach:
    best, assumed, worst = (float(rounds[-1][number]) for rounds in mesh.rounds)
    chances = mesh.scale.chances(best, assumed, worst)
    word = mesh.scale.word(chances)
    needs: tuple[Look, ...] = ()
    if word is Word.DOUBTFUL:
        needs = tuple(dict.fromkeys(_unknowns(mesh.way(0, number), mesh, finder)))
    elif word is Word.UNLIKELY:
        needs = tuple(dict.fromkeys(hidden))
    way = mesh.way(1, number)
    names = mesh.links.stations
    return DeviceReach(
        names[number].id,
        names[number].place,
        mesh.network_id,
        Word.NOT_KNOWN if needs else word,
        chances,
        tuple(names[n].id for n in way[1:-1]),
        max(len(way) - 1, 0),
        tuple(names[n].id for n in sorted(mesh.missed.get(number, ()))),
        needs,
        _leans_on(mesh, number, way, finder, word),
    )


def _leans_on(mesh: Mesh, number: int, shown: list[int], finder: "_Finder", word: Word) -> tuple[str, ...]:
    """A likely device leans on the routes that carry it; any other, on there being none better."""
    if word is not Word.LIKELY:
        return mesh.leaning.of_network(word)
    worst = mesh.way(2, number)
    ways = [shown] if worst == shown else [shown, worst]
    return mesh.leaning.of_routes(word, ((w, [finder.link(a, b) for a, b in pairwise(w)]) for w in ways))


class _Finder:
    """Finds the link between two stations."""

    def __init__(self, links: Links) -> None:
        self._side = len(links.stations)
        keys = np.minimum(links.a, links.b) * self._side + np.maximum(links.a, links.b)
        self._order: Ints = np.argsort(keys)
        self._keys: Ints = keys[self._order]

    def link(self, one: int, other: int) -> int:
        """The number of the link; the caller knows that there is one."""
        key = min(one, other) * self._side + max(one, other)
        return int(self._order[int(np.searchsorted(self._keys, key))])


def _unknowns(hoped: list[int], mesh: Mesh, finder: _Finder) -> Iterator[Look]:
    """What is unknown along the most hopeful route: its ends, its repeaters, the walls between."""
    stations: tuple[Station, ...] = mesh.links.stations
    for at, number in enumerate(hoped):
        repeating = 0 < at < len(hoped) - 1
        yield from (look for look in stations[number].looks if repeating or look.field != REPEATS)
        if at + 1 < len(hoped):
            link = finder.link(number, hoped[at + 1])
            if link not in mesh.heard:  # what lies between a link that was heard is in its level
                through = mesh.paths.through(int(mesh.links.pair[link]))
                yield from (surface.look for surface in through if surface.look)
