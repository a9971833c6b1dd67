"""Measured links as rows: what was read, what had been reckoned, and what it taught of the house."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from secondfix.house import House
from secondfix.journal import Measured as MeasuredEntry
from secondfix.papers import EntryLine
from secondfix.radio import Learned, NextLink, Parameter
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.site import OnSite
from secondfix.web.radio.words import dbm, thing_called

SURE = 1.645  # nine readings in ten lie within so many spreads of the middle


@dataclass(frozen=True, slots=True)
class Reckoned:
    """The level that would be read of a link: middle and nine in ten, in dBm."""

    middle: float
    spread: float

    @property
    def low(self) -> float:
        """Nineteen readings in twenty are above."""
        return self.middle - SURE * self.spread

    @property
    def high(self) -> float:
        """Nineteen readings in twenty are below."""
        return self.middle + SURE * self.spread

    @property
    def words(self) -> str:
        """The middle and both ends."""
        ends = (dbm(end).removesuffix(" dBm") for end in (self.low, self.high))
        return f"{dbm(self.middle)} ({' to '.join(ends)})"


class Levels:
    """What would be read of any link of a network, by the ids of its ends."""

    def __init__(self, learned: Learned, network: str) -> None:
        links, self._found = learned.links(network), learned.predicted(network)
        self._seats: dict[str, int] = {}
        for n, station in enumerate(links.stations):
            self._seats.setdefault(station.place, n)
            self._seats[station.id] = n
        self._rows = {(int(a), int(b)): n for n, (a, b) in enumerate(zip(links.a, links.b, strict=True))}

    def of(self, a: str, b: str) -> Reckoned | None:
        """Sent at ``a``, read at ``b``; None where no such link is planned on."""
        ends = self._seats.get(a, -1), self._seats.get(b, -1)
        found = self._found
        if ends in self._rows:
            row = self._rows[ends]
            return Reckoned(float(found.ab_dbm[row]), float(found.spread_db[row]))
        if ends[::-1] in self._rows:
            row = self._rows[ends[::-1]]
            return Reckoned(float(found.ba_dbm[row]), float(found.spread_db[row]))
        return None


@dataclass(frozen=True, slots=True)
class Row:
    """One reading; ``against`` holds it against what was reckoned before anything was measured."""

    line: EntryLine
    a: str
    b: str
    level: str
    against: str
    before: Reckoned | None
    now: Reckoned | None


def rows_of(site: OnSite, before: Learned, learned: Learned) -> list[Row]:
    """Every reading of the journal that stands, the latest last."""
    then = {key: Levels(before, key) for key in before.networks}
    now = {key: Levels(learned, key) for key in learned.networks}
    current, out = site.record.built.folded.current, []
    for line in site.lines:
        entry = line.entry
        if not isinstance(entry, MeasuredEntry) or entry not in current.get(
            (entry.subject, entry.aspect), ()
        ):
            continue
        for a, b, read in _readings(entry):
            earlier = next((r for levels in then.values() if (r := levels.of(a, b))), None)
            later = next((r for levels in now.values() if (r := levels.of(a, b))), None)
            level = "not heard" if read is None else dbm(read)
            out.append(Row(line, a, b, level, _against(read, earlier), earlier, later))
    return out


def _readings(entry: MeasuredEntry) -> Iterator[tuple[str, str, float | None]]:
    """Ends and level of each reading that tells one; an LQI alone tells none."""
    told = [(r.link, r.rssi_dbm, r.not_heard) for r in entry.table] or [
        (entry.subject, entry.rssi_dbm, entry.not_heard)
    ]
    for link, read, not_heard in told:
        if read is not None or not_heard:
            a, _, b = link.removeprefix("link:").partition(">")
            yield a, b, None if read is None else float(read)


def _against(read: float | None, before: Reckoned | None) -> str:
    if before is None:
        return "does not count"
    if read is None:
        return ""
    if read > before.high:
        return "stronger than reckoned"
    return "weaker than reckoned" if read < before.low else "as reckoned"


@dataclass(frozen=True, slots=True)
class Taught:
    """One thing of the house: what was assumed of it, and what is known now; each middle and nine in ten."""

    words: str
    networks: str
    before: str
    now: str
    moved: str


def taught_of(learned: Learned) -> list[Taught]:
    """What the measured links taught of the whole house."""
    return [
        Taught(p.words, ", ".join(p.networks), _three(p.before, p), _three(p.after, p), _moved(p))
        for p in learned.parameters
    ]


def _three(values: tuple[float, float, float], p: Parameter) -> str:
    low, middle, high = (_figure(v, p.unit) for v in values)
    return f"{middle} {p.unit}".strip() + f" ({low} to {high})"


def _figure(value: float, unit: str) -> str:
    text = f"{value:.0f}" if unit == "%" else f"{value:.1f}"
    return text.replace("-", "\u2212")


def _moved(p: Parameter) -> str:
    """How much of the doubt is gone, in words."""
    was, is_ = p.before[2] - p.before[0], p.after[2] - p.after[0]
    if is_ > 0.9 * was:
        return "hardly told"
    return "narrowed" if is_ > 0.5 * was else "well known now"


@dataclass(frozen=True, slots=True)
class Next:
    """A link to measure next; ``why`` in words, ``now`` the level that is reckoned of it."""

    network: str
    a: str
    b: str
    a_called: str
    b_called: str
    why: str
    now: Reckoned | None


def next_of(house: House, learned: Learned, links: tuple[NextLink, ...]) -> list[Next]:
    """The links to measure next, the one that tells most first."""
    levels = {key: Levels(learned, key) for key in learned.networks}
    return [
        Next(
            n.network,
            n.a,
            n.b,
            called(house, n.a),
            called(house, n.b),
            "who is reached" if n.settles else "the other links",
            levels[n.network].of(n.a, n.b),
        )
        for n in links
    ]


def called(house: House, end: str) -> str:
    """An end of a link in words; a network's id, and the place of its controller, is its controller."""
    if end in house.networks:
        network = house.networks[end]
        place = f", {thing_called(house, network.controller_place)}" if network.controller_place else ""
        return f"controller of {end} {network.name}{place}"
    if any(n.controller_place == end for n in house.networks.values()):
        return f"controller at {thing_called(house, end)}"
    return thing_called(house, end)


def place_of(house: House, end: str) -> str:
    """How the journal names an end: a controller by its place, for it is no thing of the house."""
    network = house.networks.get(end)
    return end if network is None else network.controller_place or end


def placed(about: Asked, ends: Iterable[str]) -> int:
    """How many of these ends have a position: a link is reckoned between two that have one."""
    house = about.house
    places = (
        place_of(house, end) if end in house.networks else about.rows.place_of_device(end) for end in ends
    )
    stands = (house.boxes.get(p.split(".")[0]) or house.places.get(p) for p in places)
    return sum(s is not None and s.position is not None for s in stands)


def ends_of(house: House, network: str) -> Mapping[str, str]:
    """What may send and listen in a network: its controller and its devices."""
    members = (i for i, d in house.devices.items() if d.network == network)
    controller = (network,) if house.networks[network].controller_place else ()
    return {end: called(house, end) for end in (*controller, *members)}
