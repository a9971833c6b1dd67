"""Names fit where the open standards let them be stored: advice at most, the limits being from memory."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Schedule, model_look
from secondfix.naming.entries import Entry, protocol_of
from secondfix.naming.folding import composed, folded
from secondfix.naming.limits import LEAST_BYTES, Holds, attributes, holds_of
from secondfix.naming.named import Called, place_of
from secondfix.naming.shortening import byte_length, shortened
from secondfix.terms import Protocol

RULE = Rule(
    "names.length",
    "Does every name fit, in bytes of UTF-8, where its protocol can store it?",
    "Zigbee Cluster Library, Z-Wave Node Naming and Location command class, Matter core specification; "
    "all limits from memory",
)


@dataclass(frozen=True, slots=True)
class _Stored:
    """A name, what it names, the protocols that may store it, and the devices whose protocol is open."""

    place: str
    name: str
    holds: Holds
    protocols: frozenset[Protocol]
    open_devices: tuple[str, ...]
    also: tuple[str, ...] = ()


def check(called: Called) -> Iterator[Finding]:
    """One answer per stored name; shortened forms differ from every name and from each other."""
    taken = set(called.taken)
    for stored in _all_stored(called):
        limits = attributes(stored.holds, stored.protocols)
        least = min((a.limit_bytes for a in limits), default=None)
        length = byte_length(stored.name)
        if least is not None and length > least:
            short = shortened(stored.name, limit_bytes=least, taken=taken)
            taken.add(folded(short))
            tight = [a.words for a in limits if a.limit_bytes == least]
            yield fails(
                RULE,
                Severity.ADVICE,
                stored.place,
                f"'{stored.name}' is too long for {'; '.join(tight)}.",
                value=f"{length} bytes",
                limit=f"{least} bytes (from memory)",
                remedy=f"Where it is stored there, write '{short}'.",
                also=stored.also,
            )
        elif stored.open_devices and length > LEAST_BYTES:
            yield _open(stored, length)
        elif limits or stored.open_devices:
            yield passes(RULE, stored.place, value=f"{length} bytes", also=stored.also)


def _open(stored: _Stored, length: int) -> Finding:
    looks = [model_look(d) for d in stored.open_devices]
    return cannot_tell(
        RULE,
        Severity.ADVICE,
        stored.place,
        f"'{stored.name}' may be too long: the protocol that stores it is not known.",
        looks=looks,
        value=f"{length} bytes",
        limit=f"{LEAST_BYTES} bytes at the tightest (from memory)",
        also=stored.also,
    )


def _all_stored(called: Called) -> Iterator[_Stored]:
    schedule = called.schedule
    spoken, open_devices = _spoken(schedule)
    for key, room in schedule.house.rooms.items():
        yield _Stored(key, composed(room.name), Holds.ROOM, spoken, open_devices)
    for key, scene in schedule.house.scenes.items():
        yield _Stored(key, composed(scene.name), Holds.SCENE, spoken, open_devices)
    for entries in called.names.of_device.values():
        standing = [e for e in entries if e.stands]
        yield from (_entry(e, alone=len(standing) == 1) for e in standing if e.explained)


def _entry(entry: Entry, *, alone: bool) -> _Stored:
    return _Stored(
        place_of(entry),
        entry.name,
        holds_of(entry, alone=alone),
        frozenset({entry.protocol} if entry.protocol else ()),
        () if entry.protocol else (entry.device_id,),
        (entry.device_id,),
    )


def _spoken(schedule: Schedule) -> tuple[frozenset[Protocol], tuple[str, ...]]:
    """The protocols of the house's devices, and the devices whose protocol is not known."""
    of = {d: protocol_of(schedule, d) for d in schedule.house.devices if schedule.on_radio(d)}
    spoken = {p for p in of.values() if p} | {n.protocol for n in schedule.house.networks.values()}
    return frozenset(spoken), tuple(d for d, p in of.items() if p is None)
