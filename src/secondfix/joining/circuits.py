"""Which circuits a device hangs on, and which must be isolated together."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from secondfix.catalogue import Form, Supply
from secondfix.house import ABSENT, EARTH, Box, Duty, Fact, House, Row, Schedule, settled

# A button needs no line of its own, once another gang of its box has one. A capped conductor may be live.
_NO_LINE = {Duty.SCENE_ONLY}


@dataclass(frozen=True, slots=True)
class Feed:
    """What reaches one place.

    ``circuits`` are those known to be in it, in natural order, as line or as neutral;
    ``open_ends`` the document keys at that place whose circuit is not settled.
    """

    place: str
    circuits: tuple[str, ...]
    open_ends: tuple[str, ...]

    @property
    def unknown(self) -> bool:
        """No circuit of this place is known at all."""
        return not self.circuits


@dataclass(frozen=True, slots=True)
class Group:
    """Circuits and places that are isolated, fitted and energised as a whole.

    A place none of whose circuits is known is a group of its own, without circuits. ``why`` says, for
    more than one circuit, what binds them: ``C2 shares a neutral with C1 at B5.1``.
    """

    circuits: tuple[str, ...]
    places: tuple[str, ...]
    why: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Bond:
    """Two circuits to be isolated together, and why.

    *Neutral*: a load has its line from ``one`` and its neutral from ``other``, so that whoever opens a
    neutral of ``other`` anywhere meets the return current of ``one``. *Multiwire*: their neutral is one
    conductor; ``where`` is empty. *Met*: both are in one place.
    """

    one: str
    other: str
    why: Literal["neutral", "multiwire", "met"]
    where: str = ""


def on_mains(schedule: Schedule, device_id: str) -> bool | None:
    """Whether the device takes its power from the mains; None where nobody has said."""
    device = schedule.house.devices[device_id]
    model = schedule.model_of(device_id)
    if model is not None:
        return model.supply is Supply.MAINS
    source = settled(device.power_source)
    return None if source is None else source == "mains"


def is_wired(schedule: Schedule, device_id: str) -> bool:
    """Whether fitting it puts hands among conductors; unknown counts as yes.

    Not so: a battery device, and a device that goes into a socket.
    """
    device = schedule.house.devices[device_id]
    if on_mains(schedule, device_id) is False:
        return False
    model = schedule.model_of(device_id)
    if model is not None and model.form is Form.PLUG_IN:
        return False
    at_socket = device.place is not None and schedule.house.places[device.place].kind == "socket"
    return model is not None or not at_socket


def feed_of(schedule: Schedule, place_id: str) -> Feed:
    """The circuits at a box (line of each gang, neutral of each mount and load) or at another place.

    At a place other than a box: its own circuit, and line and neutral of the loads that hang there.
    """
    house = schedule.house
    if place_id in house.boxes:
        return _of_box(house, place_id, house.boxes[place_id])
    own = settled(house.places[place_id].circuit)
    found = {own} if own else set()
    for load_id, load in house.loads.items():
        if load.place == place_id:
            feeder = schedule.fed_by.get(load_id)
            line = settled(feeder.gang.line) if isinstance(feeder, Row) else None
            found |= {c for c in (line, settled(load.neutral)) if c}
    return Feed(place_id, tuple(sorted(found, key=natural)), () if own else ("circuit",))


def _of_box(house: House, box_id: str, box: Box) -> Feed:
    found: set[str] = set()
    open_ends: list[str] = []
    lines = {no: settled(gang.line) for no, gang in box.gangs.items()}
    some_line = any(lines.values())
    for gang_no, gang in box.gangs.items():
        line = lines[gang_no]
        if line:
            found.add(line)
        elif not (some_line and gang.duty in _NO_LINE):
            open_ends.append(f"gangs.{gang_no}.line")
        load = house.loads.get(gang.load) if gang.load else None
        neutral = settled(load.neutral) if load else None
        if neutral:
            found.add(neutral)
    for mount_no, mount in box.mounts.items():
        at_mount = settled(mount.neutral)
        if at_mount is None:
            open_ends.append(f"mounts.{mount_no}.neutral")
        elif at_mount not in {ABSENT, EARTH}:
            found.add(at_mount)
    return Feed(box_id, tuple(sorted(found, key=natural)), tuple(open_ends))


def bonds(schedule: Schedule, feeds: Iterable[Feed]) -> Iterator[Bond]:
    """Why circuits are isolated together: shared neutrals of the whole house, then places with several.

    A shared neutral counts in a box where nothing is to be fitted too, for its current comes back through
    every neutral joint of the other circuit; the neutral at a mount counts where a device is to use it.
    """
    for circuit_id, circuit in schedule.house.circuits.items():
        for other in settled(circuit.shares_neutral_with) or ():
            one, two = sorted((circuit_id, other), key=natural)
            yield Bond(one, two, "multiwire")
    met = sorted(feeds, key=lambda f: natural(f.place))
    opened = {feed.place for feed in met}
    for row in schedule.rows.values():
        line = settled(row.gang.line)
        of_load = settled(row.load.neutral) if row.load else None
        of_mount = _circuit(row.mount.neutral) if row.box_id in opened and row.device_id else None
        for neutral in dict.fromkeys((of_load, of_mount)):
            if line and neutral and neutral != line:
                yield Bond(line, neutral, "neutral", row.id)
    for feed in met:
        yield from (Bond(c, feed.circuits[0], "met", feed.place) for c in feed.circuits[1:])


def _circuit(neutral: Fact[str] | None) -> str | None:
    found = settled(neutral)
    return None if found in {ABSENT, EARTH} else found


def groups(feeds: Iterable[Feed], bound: Iterable[Bond]) -> tuple[Group, ...]:
    """Circuits connected by their bonds, with the places they reach, in natural order of the first place.

    A bond between circuits that are connected without it is not told, but for a shared neutral.
    """
    parent: dict[str, str] = {}
    told: dict[tuple[str, str, str], list[str]] = {}

    def root(circuit: str) -> str:
        while parent.setdefault(circuit, circuit) != circuit:
            parent[circuit] = parent[parent[circuit]]
            circuit = parent[circuit]
        return circuit

    for bond in bound:
        if bond.why == "neutral" or root(bond.one) != root(bond.other):
            told.setdefault((bond.one, bond.other, bond.why), []).append(bond.where)
        parent[root(bond.one)] = root(bond.other)
    members: dict[str, list[Feed]] = {}
    for feed in sorted(feeds, key=lambda f: natural(f.place)):
        members.setdefault(f"place {feed.place}" if feed.unknown else root(feed.circuits[0]), []).append(feed)
    circuits = {c for feed in members.values() for f in feed for c in f.circuits} | set(parent)
    return tuple(
        Group(
            tuple(sorted((c for c in circuits if root(c) == key), key=natural)),
            tuple(f.place for f in feeds),
            tuple(_why(*k, where) for k, where in told.items() if root(k[0]) == key),
        )
        for key, feeds in members.items()
    )


def _why(one: str, other: str, why: str, where: list[str]) -> str:
    if why == "multiwire":
        return f"{one} and {other} have one neutral"
    if why == "neutral":
        return f"{one} shares a neutral with {other} at {', '.join(where)}"
    return f"{other} and {one} meet at {', '.join(where)}"


def natural(name: str) -> tuple[str, int, str]:
    """A key that sorts B2 before B10."""
    head = name.rstrip("0123456789")
    tail = name[len(head) :]
    return head, int(tail) if tail else -1, name
