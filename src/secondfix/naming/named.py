"""What a person calls by a name in a controller: rooms, scenes, loads, other entries."""

from dataclasses import dataclass
from functools import cached_property

from secondfix.house import Channel, Row, Schedule
from secondfix.naming.entries import Entry, EntryKind, Names, names
from secondfix.naming.folding import composed, folded
from secondfix.naming.policy import load_name, output_name


@dataclass(frozen=True, slots=True)
class Named:
    """One named thing: ``place`` is its id in the document, ``also`` where it stands.

    ``settled`` is False where the name is provisional or the entry may not appear at all.
    """

    name: str
    place: str
    words: str
    also: tuple[str, ...] = ()
    settled: bool = True


class Called:
    """The names of a house under check, each made once."""

    def __init__(self, schedule: Schedule) -> None:
        self.schedule = schedule

    @cached_property
    def names(self) -> Names:
        """The entries of every device."""
        return names(self.schedule)

    @cached_property
    def things(self) -> tuple[Named, ...]:
        """Rooms, scenes, loads (by the name of the entry that feeds or will feed them), other entries."""
        house = self.schedule.house
        rooms = [Named(composed(r.name), key, f"room {key}") for key, r in house.rooms.items()]
        scenes = [Named(composed(s.name), key, f"scene {key}") for key, s in house.scenes.items()]
        loads = [self._load(load_id) for load_id in house.loads]
        others = [_entry(e) for e in self.names.entries() if e.load_id is None]
        return (*rooms, *scenes, *loads, *others)

    @cached_property
    def taken(self) -> frozenset[str]:
        """The folded form of every name."""
        return frozenset(folded(t.name) for t in self.things)

    def of_load(self, load_id: str) -> str:
        """The name of the entry that feeds a load, or would."""
        house = self.schedule.house
        feed = self.schedule.fed_by.get(load_id)
        if isinstance(feed, Channel) and feed.row is None:
            return output_name(self.schedule, feed.device_id, feed.number, house.loads[load_id])
        row = feed.row if isinstance(feed, Channel) else feed
        return load_name(house, house.loads[load_id], row)

    def _load(self, load_id: str) -> Named:
        feed = self.schedule.fed_by.get(load_id)
        also: tuple[str, ...] = ()
        if isinstance(feed, Channel):
            also = (feed.place, feed.device_id)
        elif isinstance(feed, Row):
            also = (feed.id,)
        at = f" at {also[0]}" if also else ""
        return Named(self.of_load(load_id), load_id, f"load {load_id}{at}", also)


def place_of(entry: Entry) -> str:
    """The id under which a finding about an entry stands: load, gang of a box, or device."""
    if entry.load_id:
        return entry.load_id
    return entry.place if entry.kind is EntryKind.GANG and entry.duty else entry.device_id


def _entry(entry: Entry) -> Named:
    what = {
        EntryKind.GANG: "gang",
        EntryKind.WHOLE_DEVICE: "whole-device entry",
        EntryKind.PLACE_DEVICE: "device",
    }[entry.kind]
    return Named(
        entry.name,
        place_of(entry),
        f"{what} of {entry.device_id} at {entry.place}",
        (entry.place, entry.device_id),
        settled=entry.stands and entry.explained,
    )
