"""The measured links of one band as rows of the regression."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints
from secondfix.radio.learning.columns import Entries, mids, readings_of
from secondfix.radio.learning.making import Made
from secondfix.radio.learning.matching import Readings

# Both directions of a link differ by about 1 dB rms in measured houses and offices (computed).
ONE_WAY_DB = 1 / 2**0.5


@dataclass(frozen=True, slots=True, eq=False)
class Rows:
    """``network`` and ``link`` of each row, and its numbers as `Problem` has them, over all columns.

    A link heard both ways may have a second row, the difference of its directions (``own`` 0).
    """

    network: tuple[str, ...]
    link: Ints
    loss: Floats
    beyond: Bools
    parts: Floats
    own: Floats
    noise2: Floats


def rows_of(
    all_made: Mapping[str, Made],
    readings: Mapping[str, Mapping[int, Readings]],
    columns: int,
    *,
    shared: float,
    reading_db: float,
) -> Rows:
    """Put each measured link into a row: power sent less level heard, less what is computed.

    Several readings of one link are averaged: they share the day. What was listened for in vain loses at
    least power less the least favourable sensitivity of its receiver.
    """
    out = _Rows()
    for network, of_link in sorted(readings.items()):
        one = all_made[network]
        known, parts = _links(one, np.array(sorted(of_link), np.int64), columns)
        power, dense = (
            readings_of(one.links.stations, "power_dbm")[:, 1],
            _dense(one.power, len(one.links.stations), columns),
        )
        floor = readings_of(one.links.stations, "sensitivity_dbm")[:, 2]
        for n, link in enumerate(sorted(of_link)):
            a, b = int(one.links.a[link]), int(one.links.b[link])
            seat = _Seat(network, link, float(known[n]), parts[n], shared, reading_db)
            if of_link[link].heard:
                out.heard(seat, of_link[link], (power[a], dense[a]), (power[b], dense[b]))
            else:
                most = [
                    (power[s] - floor[r], dense[s])
                    for s, r, vain in (
                        (a, b, of_link[link].forth_in_vain),
                        (b, a, of_link[link].back_in_vain),
                    )
                    if vain
                ]
                out.in_vain(seat, *max(most, key=lambda m: float(m[0])))
    return out.whole(columns)


@dataclass(frozen=True, slots=True, eq=False)
class _Seat:
    network: str
    link: int
    known_db: float
    parts: Floats
    shared: float
    reading_db: float


class _Rows:
    def __init__(self) -> None:
        self._seats: list[_Seat] = []
        self._numbers: list[tuple[float, bool, float, float]] = []  # loss, beyond, own, noise2
        self._parts: list[Floats] = []

    def heard(
        self, seat: _Seat, readings: Readings, sent: tuple[float, Floats], answered: tuple[float, Floats]
    ) -> None:
        """The mean of both ways, and their difference where it tells of powers."""
        forth, back = len(readings.forth_dbm), len(readings.back_dbm)
        each = forth + back
        total = forth * sent[0] + back * answered[0] - sum(readings.forth_dbm) - sum(readings.back_dbm)
        parts = seat.parts - (forth * sent[1] + back * answered[1]) / each
        noise2 = seat.reading_db**2 + ONE_WAY_DB**2 / each
        self._add(seat, (total / each - seat.known_db, False, 1 - seat.shared, noise2), parts)
        differing = answered[1] - sent[1]
        if forth and back and differing.any():
            apart = sent[0] - answered[0] - np.mean(readings.forth_dbm) + np.mean(readings.back_dbm)
            noise2 = ONE_WAY_DB**2 * (1 / forth + 1 / back)
            self._add(seat, (float(apart), False, 0.0, noise2), differing)

    def in_vain(self, seat: _Seat, most_db: float, power: Floats) -> None:
        """A loss of at least what the link could bear."""
        numbers = (most_db - seat.known_db, True, 1 - seat.shared, seat.reading_db**2)
        self._add(seat, numbers, seat.parts - power)

    def _add(self, seat: _Seat, numbers: tuple[float, bool, float, float], parts: Floats) -> None:
        self._seats.append(seat)
        self._numbers.append(numbers)
        self._parts.append(parts)

    def whole(self, columns: int) -> Rows:
        loss, beyond, own, noise2 = np.array(self._numbers, np.float64).reshape(-1, 4).T.copy()
        parts = np.array(self._parts, np.float64).reshape(-1, columns)
        link = np.array([s.link for s in self._seats], np.int64)
        names = tuple(s.network for s in self._seats)
        return Rows(names, link, loss, beyond.astype(np.bool_), parts, own, noise2)


def _links(one: Made, links: Ints, columns: int) -> tuple[Floats, Floats]:
    """Of some links: what is computed of them, blanks at their middle, and their columns, dense."""
    seat = np.full(len(one.links.a), -1, np.int64)
    seat[links] = np.arange(len(links))
    known = one.known_db[links].copy()
    parts = np.zeros((len(links), columns))
    here = seat[one.parts.row] >= 0
    np.add.at(parts, (seat[one.parts.row[here]], one.parts.column[here]), one.parts.value[here])
    b = one.blanks
    here = seat[b.link] >= 0
    middle, half = mids(b.light_db[here], b.heavy_db[here])
    np.add.at(known, seat[b.link[here]], middle)
    np.add.at(parts, (seat[b.link[here]], b.column[here]), half)
    return known, parts


def _dense(entries: Entries, rows: int, columns: int) -> Floats:
    out = np.zeros((rows, columns))
    np.add.at(out, (entries.row, entries.column), entries.value)
    return out
