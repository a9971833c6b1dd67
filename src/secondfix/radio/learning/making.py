"""The links of one network in columns: what is computed of each, and what each thing unknown adds."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.learning.columns import (
    FROM_M,
    Columns,
    Entries,
    Filling,
    blank_station,
    readings_of,
    unstated_power,
)
from secondfix.radio.links import Links
from secondfix.radio.paths import Paths
from secondfix.radio.surfaces import Surface


@dataclass(frozen=True, slots=True, eq=False)
class Blanks:
    """What nobody surveyed on each link: an entry each, from its lightest to its heaviest, in dB.

    ``link`` and ``column`` tell whose and of what; the column is a normal between the two.
    """

    link: Ints
    column: Ints
    light_db: Floats
    heavy_db: Floats


@dataclass(frozen=True, slots=True, eq=False)
class Made:
    """One network: ``known_db`` (links) is computed without what nobody surveyed; the tables are by column.

    ``parts`` is a row a link, ``power`` a row a station (dB that its level lies above what is assumed).
    """

    network: str
    links: Links
    known_db: Floats
    parts: Entries
    power: Entries
    blanks: Blanks


@dataclass(frozen=True, slots=True, eq=False)
class Crossed:
    """Of every path: the surfaces crossed, a row each, with their loss in three readings."""

    paths: Paths
    lost_db: Floats  # (3, crossings)
    open_db: Floats  # (paths,): loss without any surface

    def of(self, pair: Ints) -> tuple[Ints, Ints]:
        """For links over these paths: (link, crossing), an entry for each crossing of each."""
        low, high = np.searchsorted(self.paths.at_pair, [pair, pair + 1])
        many = high - low
        step = np.arange(int(many.sum())) - np.repeat(np.cumsum(many) - many, many)
        return np.repeat(np.arange(len(pair)), many), np.repeat(low, many) + step


def made(network: str, links: Links, crossed: Crossed, columns: Columns, *, shared: float) -> Made:
    """Take the links of a network apart; ``shared`` is the part of the shadowing that devices share.

    Columns of things that several networks have (walls, the offset) are shared among them.
    """
    count = len(links.a)
    every = np.arange(count)
    value = columns.assumptions.value
    away = np.log10(crossed.paths.distance_m[links.pair] / FROM_M)
    known = crossed.open_db[links.pair] + value("radio_house_offset_db")
    known += (value("radio_distance_tenths") - 20) * away
    table, blanks = Filling(), _Blanks()
    table.add(every, columns.house_offset(), 1.0)
    table.add(every, columns.distance(), away)
    known += _surfaces(links, crossed, columns, table, blanks)
    known += _stations(network, links, columns, table, blanks)
    for end in (links.a, links.b):
        around = [columns.around(f"{network}/{s.id}", shared) for s in links.stations]
        table.add(every, np.array(around, np.int64)[end], 1.0)
    power = Filling()
    for n, station in enumerate(links.stations):
        if unstated_power(station):
            power.add(np.array([n]), columns.power(), 1.0)
            power.add(np.array([n]), columns.own_power(f"{network}/{station.id}"), 1.0)
    return Made(network, links, known, table.entries(), power.entries(), blanks.whole())


class _Blanks:
    def __init__(self) -> None:
        self._ends: list[Ints] = [np.zeros((2, 0), np.int64)]
        self._losses: list[Floats] = [np.zeros((2, 0))]

    def add(self, link: Ints, column: Ints, light_db: Floats, heavy_db: Floats) -> None:
        self._ends.append(np.stack([link, column]))
        self._losses.append(np.stack([light_db, heavy_db]))

    def whole(self) -> Blanks:
        return Blanks(*np.concatenate(self._ends, axis=1), *np.concatenate(self._losses, axis=1))


def _surfaces(links: Links, crossed: Crossed, columns: Columns, table: Filling, blanks: _Blanks) -> Floats:
    """What the known surfaces of each link take as computed; their columns go into the table."""
    surfaces = crossed.paths.surfaces
    share = columns.assumptions.value("radio_wall_scale_pct") / 100
    link, crossing = crossed.of(links.pair)
    surface = crossed.paths.crossed[crossing]
    used = np.unique(surface)
    number = np.full(len(surfaces), -1, np.int64)
    unknown = np.zeros(len(surfaces), np.bool_)
    for n in used.tolist():
        unknown[n] = surfaces[n].look is not None
        number[n] = _column_of(surfaces[n], columns)
    here = unknown[surface]
    lost = crossed.lost_db[:, crossing]
    table.add(link[~here], number[surface[~here]], lost[1, ~here] / 100)
    blanks.add(link[here], number[surface[here]], lost[0, here], lost[2, here])
    known = np.zeros(len(links.a))
    np.add.at(known, link[~here], share * lost[1, ~here])
    return known


def _column_of(surface: Surface, columns: Columns) -> int:
    if surface.look is None:
        return columns.material(surface)
    return columns.blank(f"surface {surface.id} {surface.words}")


def _stations(network: str, links: Links, columns: Columns, table: Filling, blanks: _Blanks) -> Floats:
    """What is known to surround both ends of each link; columns of kinds of box go into the table."""
    loss = readings_of(links.stations, "loss_db")
    unknown = np.array([blank_station(s) for s in links.stations], np.bool_)
    number = np.array(
        [
            columns.blank(f"{network}/{s.id}") if blank else _kind_of_box(s.assumptions, columns)
            for s, blank in zip(links.stations, unknown.tolist(), strict=True)
        ],
        np.int64,
    )
    known = np.zeros(len(links.a))
    for end in (links.a, links.b):
        here = unknown[end]
        known += np.where(here, 0.0, loss[end, 1])
        table.add(np.flatnonzero(~here), number[end[~here]], 1.0)
        at = end[here]
        blanks.add(np.flatnonzero(here), number[at], loss[at, 0], loss[at, 2])
    return known


def _kind_of_box(assumptions: Sequence[str], columns: Columns) -> int:
    kinds = [name for name in assumptions if name.endswith(("_box_db", "luminaire_db"))]
    return columns.surroundings(kinds[0]) if kinds else -1
