"""A controller replaced: what survives, what must be done again, in which order, and for how long.

Zigbee: the coordinator's address, network key and tables make the network (Zigbee specification, from
memory). Z-Wave: home id, node numbers and keys stand in the controller (Z-Wave network management,
secondary). Matter: the fabric's root certificate and keys (Matter core specification, from memory).
"""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from enum import StrEnum

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Removal
from secondfix.house import Schedule
from secondfix.joining import StepKind, Walk, WalkStep
from secondfix.maintenance.expected import Expected, named_entries
from secondfix.naming import Names
from secondfix.scenes import CrossingKind, resolve
from secondfix.terms import PROTOCOLS


class Kept(StrEnum):
    """What there is of the old controller."""

    BACKUP_WITH_KEYS = "backup_with_keys"
    NOTHING = "nothing"


@dataclass(frozen=True, slots=True)
class Part:
    """One kind of work: how many, and minutes for all of them as (low, value, high)."""

    what: str
    count: int
    minutes: tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Rejoin:
    """One device to join again, in order; ``removal`` says how it first leaves the old network."""

    device: str
    place: str
    words: str
    removal: str


@dataclass(frozen=True, slots=True)
class Rebuilt:
    """The answer for one network. ``minutes`` is (low, value, high) of all parts: one person, no trouble.

    ``entries`` are those that the journal will hold of the devices joined again; tests are written as made.
    """

    network: str
    kept: Kept
    survives: tuple[str, ...]
    again: tuple[str, ...]
    asks: tuple[str, ...]
    order: tuple[Rejoin, ...]
    parts: tuple[Part, ...]
    assumptions: tuple[str, ...]
    entries: tuple[Expected, ...] = ()

    @property
    def minutes(self) -> tuple[float, float, float]:
        """The sum of the parts."""
        low, value, high = (sum(p.minutes[i] for p in self.parts) for i in range(3))
        return low, value, high


def controller_replaced(
    rows: Schedule,
    network: str,
    kept: Kept,
    *,
    walk: Walk,
    names: Names,
    assumptions: Assumptions,
    not_in_backup: Collection[str] = (),
) -> Rebuilt:
    """Answer for one network (KeyError if the house has none of that id).

    ``walk`` is the joining order of the whole house. ``not_in_backup`` are devices that joined after the
    backup was made: they are joined again. Scenes are counted where they switch a load through a device
    that is joined again. Leaves out: the controller's own programs, and devices that the book lacks.
    """
    house = rows.house
    protocol = PROTOCOLS[house.networks[network].protocol]
    members = [d for d, o in house.devices.items() if o.network == network]
    anew = [d for d in members if kept is Kept.NOTHING or d in not_in_backup]
    steps = [s for s in walk.steps if s.kind is StepKind.JOIN and s.device in anew]
    scenes = _scenes(rows, set(anew))
    uses = [u for u, use in house.outside_uses.items() if use.device in anew]
    entries = [e for d in anew for e in names.of_device.get(d, ())]
    tests = [c for d in (anew or members) for c in rows.channels_of[d] if c.load_id]
    counts = {"entries": len(entries), "scenes": len(scenes), "tests": len(tests)}
    parts = [*_parts(steps, kept, assumptions, **counts)]
    order = tuple(_rejoin(rows, s) for s in steps)
    return Rebuilt(
        network,
        kept,
        tuple(_survives(kept, members, anew)),
        tuple(_again(rows, anew, scenes, protocol.join)),
        tuple(f"Ask the owner of {u}: '{house.outside_uses[u].words}'." for u in uses),
        order,
        tuple(parts),
        LEANS_ON,
        tuple(_entries(rows, network, [o.device for o in order], names)),
    )


LEANS_ON = (
    "rejoin_near_min", "rejoin_far_min", "rename_entry_s", "teach_scene_min", "retest_gang_s",
    "restore_backup_min",
)  # fmt: skip


def _scenes(rows: Schedule, anew: set[str]) -> list[str]:
    return [
        r.name
        for r in resolve(rows)
        if any(c.kind is CrossingKind.SWITCHED and c.device_id in anew for c in r.crossings.values())
    ]


def _survives(kept: Kept, members: list[str], anew: list[str]) -> Iterator[str]:
    yield "What hangs on wires: every gang works its own load by hand, meanwhile too."
    if kept is Kept.NOTHING:
        yield "Nothing of the network: its keys went with the old controller."
        return
    stay = len(members) - len(anew)
    yield f"The network with its keys, and {stay} of {len(members)} devices as they joined."
    yield "Names, purposes and scenes as they stood when the backup was made: hold them against this book."


def _again(rows: Schedule, anew: list[str], scenes: list[str], join: str) -> Iterator[str]:
    if not anew:
        yield "Nothing to join again. Switch the old controller off for good before the new one is started."
    for device in anew:
        yield f"{device} at {rows.place_of_device(device)}: {join}, name, set the purpose, function test."
    for name in scenes:
        yield f"Scene '{name}': teach it again and try it."


def _rejoin(rows: Schedule, step: WalkStep) -> Rejoin:
    device = step.device or ""
    model = rows.model_of(device)
    if model is None:
        words = "Its model is not known: how it forgets the old network is not known either."
    elif model.reset is not None or model.remove is not None:
        word = "Reset it" if model.reset is not None else "Remove it with the new controller"
        words = f"{word} first, by the steps on its worksheet: it still belongs to the old network."
    elif model.removal_before_join is Removal.NEVER:
        words = ""
    else:
        words = "How to make it forget the old network is not stated: ask the maker."
    return Rejoin(device, step.place, step.words, words)


def _entries(rows: Schedule, network: str, anew: list[str], names: Names) -> Iterator[Expected]:
    """In the order of joining: joined, then name and purpose of each entry."""
    for device in anew:
        model = rows.model_of(device)
        own = {"network": network} | ({"entries": model.entries} if model else {})
        yield Expected("joined", f"device:{device}", own, ("address",))
        yield from named_entries(names, device)


def _parts(
    steps: list[WalkStep],
    kept: Kept,
    assumptions: Assumptions,
    *,
    entries: int,
    scenes: int,
    tests: int,
) -> Iterator[Part]:
    def part(what: str, count: int, name: str, per_min: float = 1.0) -> Part:
        low, value, high = (count * v * per_min for v in assumptions.span(name))
        return Part(what, count, (low, value, high))

    if kept is Kept.BACKUP_WITH_KEYS:
        yield part("restore the backup", 1, "restore_backup_min")
    near = sum(1 for s in steps if s.links == 1)
    yield part("join again, near", near, "rejoin_near_min")
    yield part("join again, far", len(steps) - near, "rejoin_far_min")
    yield part("name and purpose", entries, "rename_entry_s", 1 / 60)
    yield part("scenes", scenes, "teach_scene_min")
    yield part("function tests", tests, "retest_gang_s", 1 / 60)
