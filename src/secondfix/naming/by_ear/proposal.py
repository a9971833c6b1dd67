"""What to call one of two names that sound alike."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import islice

from secondfix.house import House
from secondfix.naming.by_ear.clashes import Ear
from secondfix.naming.by_ear.judge import Verdict
from secondfix.naming.by_ear.spoken import Kind, Spoken, spoken_name
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


class Renaming:
    """Proposes other names for the things of one house; a name tried once is remembered."""

    def __init__(self, called: Called, names: Sequence[Spoken], ear: Ear) -> None:
        self._called, self._ear = called, ear
        self._names = {(n.kind, n.place): n for n in names}
        self._in_room: dict[str, list[str]] = {}
        for load_id, load in called.schedule.house.loads.items():
            self._in_room.setdefault(load.room, []).append(load_id)
        self._tried: dict[tuple[Kind, str, str], bool] = {}

    def propose(self, pair: tuple[Spoken, Spoken]) -> Proposal:
        """Rename what the least hangs on (scene, then load, then room), then the shorter, then the later.

        Each proposed name is apart, over the whole range of the limits, from every name that stays and that
        it would be heard beside; words that the dictionary lacks aside. Whether it is true of the place is
        for a person to say. Another order of the same words is never proposed: the rule does not hear it.
        """
        first, second = pair
        rename = min((second, first), key=lambda n: (_HANGS[n.kind], len(n.own)))
        other = first if rename is second else second
        kind_of_word = "when it is used" if rename.kind is Kind.SCENE else "where it is"
        tried = (n for n in _candidates(self._called.schedule.house, rename, other) if self._does(rename, n))
        return Proposal(rename, kind_of_word, tuple(islice(tried, _SHOWN)))

    def _does(self, rename: Spoken, name: str) -> bool:
        key = (rename.kind, rename.place, name)
        if key not in self._tried:
            self._tried[key] = len(name) <= _LONGEST_NAME and self._accepted(rename, name)
        return self._tried[key]

    def _accepted(self, rename: Spoken, name: str) -> bool:
        """Only the thing's own name can change, and those of the loads in a room that is renamed."""
        house = _renamed(self._called.schedule.house, rename, name)
        called = Called(replace(self._called.schedule, house=house))
        touched = {(rename.kind, rename.place): None}
        if rename.kind is Kind.ROOM:
            touched |= dict.fromkeys((Kind.LOAD, key) for key in self._in_room.get(rename.place, ()))
        now = {at: spoken_name(called, *at) for at in touched}
        changed = {at: new for at, new in now.items() if new != self._names[at]}
        kept = [old for at, old in self._names.items() if at not in changed and old.words]
        heard = self._ear.compare([(n, o) for n in changed.values() for o in kept if n.heard_beside(o)])
        return bool(changed) and all(h is None or h.lax is Verdict.APART for _, h in heard)


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


def _renamed(house: House, thing: Spoken, name: str) -> House:
    collection = {Kind.ROOM: "rooms", Kind.SCENE: "scenes", Kind.LOAD: "loads"}[thing.kind]
    things = dict(getattr(house, collection))
    things[thing.place] = things[thing.place].model_copy(update={"name": name})
    return house.model_copy(update={collection: things})
