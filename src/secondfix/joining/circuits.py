"""Which circuits a device hangs on, and which must be isolated together."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.catalogue import Form, Supply
from secondfix.house import ABSENT, EARTH, Box, Duty, House, Schedule, settled

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

    A place none of whose circuits is known is a group of its own, without circuits.
    """

    circuits: tuple[str, ...]
    places: tuple[str, ...]


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


def feed_of(house: House, place_id: str) -> Feed:
    """The circuits at a box (line of each gang, neutral of each mount and load) or at another place."""
    if place_id in house.boxes:
        return _of_box(house, place_id, house.boxes[place_id])
    circuit = settled(house.places[place_id].circuit)
    return Feed(place_id, (circuit,) if circuit else (), () if circuit else ("circuit",))


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


def groups(feeds: Iterable[Feed]) -> tuple[Group, ...]:
    """Connected components over places that share circuits, in natural order of their first place."""
    parent: dict[str, str] = {}

    def root(circuit: str) -> str:
        while parent.setdefault(circuit, circuit) != circuit:
            parent[circuit] = parent[parent[circuit]]
            circuit = parent[circuit]
        return circuit

    known = sorted(feeds, key=lambda f: natural(f.place))
    for feed in known:
        for circuit in feed.circuits[1:]:
            parent[root(circuit)] = root(feed.circuits[0])
    members: dict[str, list[Feed]] = {}
    for feed in known:
        members.setdefault(f"place {feed.place}" if feed.unknown else root(feed.circuits[0]), []).append(feed)
    return tuple(
        Group(
            tuple(sorted({c for f in feeds for c in f.circuits}, key=natural)),
            tuple(f.place for f in feeds),
        )
        for feeds in members.values()
    )


def natural(name: str) -> tuple[str, int, str]:
    """A key that sorts B2 before B10."""
    head = name.rstrip("0123456789")
    tail = name[len(head) :]
    return head, int(tail) if tail else -1, name
