"""What to call one of two names that sound alike."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from secondfix.house import House
from secondfix.naming.by_ear.clashes import Ear
from secondfix.naming.by_ear.judge import Verdict
from secondfix.naming.by_ear.spoken import Kind, Spoken, spoken_names
from secondfix.naming.named import Called

_WHERE = (
    "front", "back", "garden", "street", "upper", "lower", "inner", "outer", "corner", "window",
    "north", "south", "east", "west",
)  # fmt: skip
_WHEN = ("early", "late", "morning", "evening", "weekday", "weekend", "summer", "winter")
_SHOWN = 3
_LONGEST_NAME = 80  # what the house document holds
_HANGS = {Kind.SCENE: 0, Kind.LOAD: 1, Kind.ROOM: 2}


@dataclass(frozen=True, slots=True)
class Proposal:
    """Which name to change, which kind of word to put before it, and up to three names that would do."""

    rename: Spoken
    kind_of_word: str
    names: tuple[str, ...]


def propose(called: Called, pair: tuple[Spoken, Spoken], ear: Ear) -> Proposal:
    """Rename what the least hangs on (scene, then load, then room), then the shorter, then the later name.

    Each proposed name is apart, over the whole range of the limits, from every name that stays and that
    it would be heard beside; words that the dictionary lacks aside. Whether it is true of the place is for
    a person to say. Another order of the same words is never proposed: the rule does not hear it.
    """
    first, second = pair
    rename = min((second, first), key=lambda n: (_HANGS[n.kind], len(n.own)))
    other = first if rename is second else second
    kind_of_word = "when it is used" if rename.kind is Kind.SCENE else "where it is"
    good: list[str] = []
    for name in _candidates(called.schedule.house, rename, other):
        if len(name) <= _LONGEST_NAME and _accepted(called, rename, name, ear):
            good.append(name)
        if len(good) == _SHOWN:
            break
    return Proposal(rename, kind_of_word, tuple(good))


def _candidates(house: House, rename: Spoken, other: Spoken) -> Iterator[str]:
    words = _WHEN if rename.kind is Kind.SCENE else _WHERE
    own, others = (_whereabouts(house, n) for n in (rename, other))
    for word in (*(w for w in own if w not in others), *words):
        written = word[:1].upper() + word[1:] if rename.own[:1].isupper() else word
        yield f"{written} {rename.own}"


def _whereabouts(house: House, name: Spoken) -> tuple[str, ...]:
    """The names of room and storey, which tell more than a word of our list."""
    room_id = name.place if name.kind is Kind.ROOM else None
    if name.kind is Kind.LOAD:
        room_id = house.loads[name.place].room
    if room_id is None:
        return ()
    room = house.rooms[room_id]
    storey = (house.storeys[room.storey].name,) if room.storey else ()
    return storey if name.kind is Kind.ROOM else (room.name, *storey)


def _accepted(called: Called, rename: Spoken, name: str, ear: Ear) -> bool:
    house = _renamed(called.schedule.house, rename, name)
    before = spoken_names(called)
    after = spoken_names(Called(replace(called.schedule, house=house)))
    changed = [new for old, new in zip(before, after, strict=True) if new != old]
    kept = [new for old, new in zip(before, after, strict=True) if new == old]
    return bool(changed) and all(_apart(new, kept, ear) for new in changed)


def _apart(new: Spoken, kept: Sequence[Spoken], ear: Ear) -> bool:
    heard = ear.compare([(new, old) for old in kept if old.words and new.heard_beside(old)])
    return all(h is None or h.lax is Verdict.APART for _, h in heard)


def _renamed(house: House, thing: Spoken, name: str) -> House:
    collection = {Kind.ROOM: "rooms", Kind.SCENE: "scenes", Kind.LOAD: "loads"}[thing.kind]
    things = dict(getattr(house, collection))
    things[thing.place] = things[thing.place].model_copy(update={"name": name})
    return house.model_copy(update={collection: things})
