"""Every case of one network: a repeater gone, a plug pulled, a circuit tripped, the controller moved."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from secondfix.house import House, Schedule
from secondfix.radio.answers import Scale
from secondfix.radio.crossing import Bools, Ints
from secondfix.radio.engine.chances import wilson
from secondfix.radio.engine.gone import Gone
from secondfix.radio.engine.searching import ROOT
from secondfix.radio.foresight.answers import LEAST_GAIN, Case, CaseKind
from secondfix.radio.foresight.drawn import Network

LEAST_CHANGE = 0.005  # a chance that moves by less is not told as another
MOST_HELD = 3  # repeaters whose loss costs most: what a socket would hold is asked of these

Progress = Callable[[str], None]


@dataclass(frozen=True, slots=True, eq=False)
class Cases:
    """What the cases of one network are counted from; ``circuits``: devices and networks on each.

    ``told`` are the stations whose word is known: of the others no case says that they fall or rise.
    """

    rows: Schedule
    network: Network
    gone: Gone
    scale: Scale
    told: Bools
    circuits: Mapping[str, tuple[str, ...]]
    progress: Progress

    def all(self) -> tuple[Case, ...]:
        """All of them, by kind; those that cost or bring most first."""
        out: list[Case] = []
        for words, made in (
            ("repeaters gone", self._gone),
            ("plugs pulled", self._pulled),
            ("circuits tripped", self._tripped),
            ("the controller moved", self._moved),
            ("sockets that would help", self._helped),
        ):
            self.progress(words)
            out += sorted(made(), key=_most_first)
        return tuple(out)

    def _gone(self) -> Iterator[Case]:
        for row, number in enumerate(self.gone.repeaters.tolist()):
            there = self.gone.whole - self.gone.lost[row]
            yield self._case(CaseKind.REPEATER_GONE, self._id(number), "{} gone", [number], there)

    def _pulled(self) -> Iterator[Case]:
        stations = self.network.staged.links.stations
        plugged = [n for n in range(1, self.network.staged.real) if stations[n].plugged]
        seat = {number: row for row, number in enumerate(self.gone.repeaters.tolist())}
        for number in plugged:
            lost = self.gone.lost[seat[number]] if number in seat else 0
            yield self._case(
                CaseKind.PULLED, self._id(number), "{} pulled out", [number], self.gone.whole - lost
            )
        if len(plugged) > 1:
            there = self.network.hits(gone=np.array(plugged))
            yield self._case(
                CaseKind.ALL_PULLED, self.network.staged.network, "all plugs pulled out", plugged, there
            )

    def _tripped(self) -> Iterator[Case]:
        seats = {key: n for n, key in enumerate(self.network.staged.ids)}
        for circuit, users in self.circuits.items():
            gone = [seats[key] for key in users if key in seats]
            if not gone:
                continue
            there = self.network.hits(gone=np.array(gone))
            words = "circuit {} tripped" + (", so the controller has no power" if ROOT in gone else "")
            yield self._case(CaseKind.TRIPPED, circuit, words, gone, there)

    def _moved(self) -> Iterator[Case]:
        for place, number in self.network.staged.moves.items():
            there = self.network.hits(root=number)
            yield self._case(CaseKind.CONTROLLER_MOVED, place, "the controller at {}", [], there)

    def _helped(self) -> Iterator[Case]:
        if not self.network.staged.sockets:
            return
        worst = [c for c in sorted(self._gone(), key=_most_first)[:MOST_HELD] if c.falls]
        for place, number in self.network.staged.sockets.items():
            there = self.network.hits(helper=number)
            words = "a device that repeats plugged in at {}"
            case = self._case(CaseKind.SOCKET_HELPS, place, words, [], there)
            held = {key for one in worst for key in self._held(one, number)}
            yield replace(case, holds=tuple(key for key in self.network.staged.ids if key in held))

    def _held(self, case: Case, helper: int) -> Iterator[str]:
        """Who falls in a case of a repeater gone, and would not with the helper."""
        ids, least = self.network.staged.ids, self.scale.likely[1] * self.network.draws
        there = self.network.hits(gone=np.array([ids.index(key) for key in case.gone]), helper=helper)
        return (key for key in case.falls if there[ids.index(key)] >= least)

    def _id(self, number: int) -> str:
        return self.network.staged.links.stations[number].id

    def _case(self, kind: CaseKind, key: str, words: str, gone: Sequence[int], there: Ints) -> Case:
        draws, likely = self.network.draws, self.scale.likely[1]
        before, after = self.gone.whole / draws, there / draws
        ids = self.network.staged.ids
        asked = np.ones(len(ids), np.bool_)
        asked[[ROOT, *gone]] = False
        moved = np.flatnonzero(asked & (np.abs(after - before) >= LEAST_CHANGE))
        told = asked & self.told
        falls = np.flatnonzero(told & (before >= likely) & (after < likely))
        rises = np.flatnonzero(told & (before < likely) & (after >= likely))
        return Case(
            kind,
            self.network.staged.network,
            key,
            words.format(_called(self.rows.house, key)),
            tuple(ids[n] for n in gone),
            {ids[n]: wilson(hits=int(there[n]), draws=draws) for n in moved.tolist()},
            tuple(ids[n] for n in falls.tolist()),
            tuple(ids[n] for n in rises.tolist()),
            float((after - before)[asked].sum()),
        )


def _most_first(case: Case) -> tuple[float, float, float]:
    """Losses: who falls first counts, then the mean; what is moved or added: the most gained first.

    Sockets that gain next to nothing follow by how many they hold.
    """
    if case.kind in {CaseKind.CONTROLLER_MOVED, CaseKind.SOCKET_HELPS}:
        much = case.gained if case.gained >= LEAST_GAIN else 0.0
        return (-much, -len(case.holds), -case.gained)
    return (-len(case.falls), case.gained, 0.0)


def _called(house: House, key: str) -> str:
    """The id, with the name and the room that people know it by."""
    if key in house.places:
        place = house.places[key]
        return f"{key} ({place.name}, {house.rooms[place.room].name})"
    device, circuit = house.devices.get(key), house.circuits.get(key)
    name = device.name if device else circuit.name if circuit else None
    return f"{key} ({name})" if name else key
