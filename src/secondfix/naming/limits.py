"""Where the open standards let a name be stored, and how many bytes each place holds.

All from memory: the texts could not be opened. A name past a limit is therefore advice at most.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from secondfix.naming.entries import Entry, EntryKind
from secondfix.terms import Protocol


class Holds(StrEnum):
    """What a stored name is the name of."""

    ENTRY = "entry"
    NODE = "node"
    ROOM = "room"
    SCENE = "scene"


@dataclass(frozen=True, slots=True)
class Attribute:
    """A place for a name in a protocol: the standard's own term and its largest number of bytes."""

    protocol: Protocol
    holds: Holds
    words: str
    limit_bytes: int


_Z, _W, _M = Protocol.ZIGBEE, Protocol.ZWAVE, Protocol.MATTER_THREAD

ATTRIBUTES: tuple[Attribute, ...] = (
    Attribute(_Z, Holds.ENTRY, "Zigbee Basic cluster, LocationDescription", 16),
    Attribute(_Z, Holds.NODE, "Zigbee Basic cluster, LocationDescription", 16),
    Attribute(_Z, Holds.ROOM, "Zigbee Groups cluster, group name", 16),
    Attribute(_Z, Holds.SCENE, "Zigbee Scenes cluster, scene name", 16),
    Attribute(_W, Holds.NODE, "Z-Wave Node Naming and Location command class, node name", 16),
    Attribute(_W, Holds.ROOM, "Z-Wave Node Naming and Location command class, node location", 16),
    Attribute(_M, Holds.ENTRY, "Matter User Label cluster, label value", 16),
    Attribute(_M, Holds.NODE, "Matter Basic Information cluster, NodeLabel", 32),
    Attribute(_M, Holds.ROOM, "Matter Groups cluster, group name", 16),
    Attribute(_M, Holds.SCENE, "Matter Scenes Management cluster, scene name", 16),
)
LEAST_BYTES = min(a.limit_bytes for a in ATTRIBUTES)


def attributes(holds: Holds, protocols: Iterable[Protocol]) -> tuple[Attribute, ...]:
    """Where these protocols store such a name."""
    spoken = set(protocols)
    return tuple(a for a in ATTRIBUTES if a.holds is holds and a.protocol in spoken)


def holds_of(entry: Entry, *, alone: bool) -> Holds:
    """A node is named by its whole-device entry or by its only entry; other entries by themselves."""
    return Holds.NODE if alone or entry.kind is EntryKind.WHOLE_DEVICE else Holds.ENTRY
