"""Which entry of the book each row of a device list is: by address and endpoint, failing that by name."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import Enum, auto

from secondfix.house import House, Schedule
from secondfix.journal import Folded, Joined
from secondfix.maintenance.device_list import ListRow
from secondfix.maintenance.suspects import recorded_names
from secondfix.naming import Entry, Names


class By(Enum):
    """How a row was recognised."""

    ADDRESS = auto()
    NODE = auto()
    NAME = auto()


@dataclass(slots=True)
class Matched:
    """By the index of rows: the entry each is, and how it was recognised; the device of a row whose entry
    is not told; rows of no device of the book; and rows that say an entry again, with the first of them.
    """

    entries: dict[int, Entry] = field(default_factory=dict)
    by: dict[int, By] = field(default_factory=dict)
    which: dict[int, str] = field(default_factory=dict)
    extra: set[int] = field(default_factory=set)
    twice: dict[int, int] = field(default_factory=dict)


class Book:
    """The entries of the house by what a list may say of them."""

    def __init__(self, rows: Schedule, folded: Folded, names: Names, network: str | None) -> None:
        house: House = rows.house
        self.rows = rows
        self.networks = {d: o.network for d, o in house.devices.items()}
        self.members = [d for d, o in house.devices.items() if network is None or o.network == network]
        self.names = names
        self.given = recorded_names(folded)
        self.by_address = {a: d for d in self.members if (a := house.devices[d].address)}
        self.by_node = {
            e.node: d
            for e in folded.each("joining", Joined)
            if e.node is not None and (d := e.subject.partition(":")[2]) in self.members
        }
        self.by_name: dict[str, Entry | None] = {}
        for device in self.members:
            for entry in names.of_device.get(device, ()):
                name = self.recorded(entry)
                self.by_name[name] = None if name in self.by_name else entry

    def recorded(self, entry: Entry) -> str:
        """The name the journal last gave the entry, else the one the house's policy gives it."""
        return self.given.get(f"{entry.device_id}.{entry.number}", entry.name)

    def shown(self, device: str) -> list[Entry]:
        """The entries that the device must show."""
        return [e for e in self.names.of_device.get(device, ()) if e.stands]


def match(book: Book, rows: Sequence[ListRow]) -> Matched:
    """Every row is one of: an entry, a device whose entry is not told, extra, a row twice."""
    found = Matched()
    owner: dict[tuple[str, int], int] = {}
    listed = Counter(_device(book, row)[0] for row in rows)
    for i, row in enumerate(rows):
        device, by = _device(book, row)
        if device is None:
            entry = _by_name(book, row)
            if entry is None:
                found.extra.add(i)
                continue
            by = By.NAME
        else:
            entry = _entry(book, device, row, alone=listed[device] == 1)
            if entry is None:
                found.which[i] = device
                continue
        key = (entry.device_id, entry.number)
        if key in owner:
            found.twice[i] = owner[key]
            continue
        owner[key] = i
        found.entries[i], found.by[i] = entry, by
    return found


def _device(book: Book, row: ListRow) -> tuple[str | None, By]:
    if row.address is not None and row.address in book.by_address:
        return book.by_address[row.address], By.ADDRESS
    if row.node is not None and row.node in book.by_node:
        return book.by_node[row.node], By.NODE
    return None, By.NAME


def _by_name(book: Book, row: ListRow) -> Entry | None:
    """A name that one entry alone bears; of no weight where the book has another address for its device."""
    entry = book.by_name.get(row.name) if row.name else None
    if entry is None or row.address is None or book.rows.house.devices[entry.device_id].address is None:
        return entry
    return None


def _entry(book: Book, device: str, row: ListRow, *, alone: bool) -> Entry | None:
    """That of the row's endpoint, of those that surely stand first; without endpoint, that of its name.

    A device of a single entry may be listed under any endpoint; ``alone``: the list has this row of it only.
    """
    entries = book.shown(device)
    if row.endpoint is None:
        named = next((e for e in entries if row.name and book.recorded(e) == row.name), None)
        return entries[0] if len(entries) == 1 else named
    sure = next((e for e in entries if e.endpoint == row.endpoint), None)
    if sure is None and len(entries) == 1 and alone:
        return entries[0]
    every = book.names.of_device.get(device, ())
    found = sure or next((e for e in every if e.endpoint == row.endpoint), None)
    return entries[0] if found is None and len(entries) == 1 else found
