"""The names of a house that are said aloud."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from secondfix.naming.by_ear.words import words_of
from secondfix.naming.folding import composed
from secondfix.naming.named import Called


class Kind(StrEnum):
    """What a spoken name is the name of."""

    ROOM = "room"
    SCENE = "scene"
    LOAD = "load"


@dataclass(frozen=True, slots=True)
class Spoken:
    """A name said aloud. ``place`` is the id of the room, scene or load, whose own name is ``own``."""

    kind: Kind
    place: str
    name: str
    own: str
    words: tuple[str, ...]

    @property
    def called(self) -> str:
        """For a sentence: kind and name."""
        return f"{self.kind.value} '{self.own}'"

    def heard_beside(self, other: "Spoken") -> bool:
        """A room is asked for among rooms; a scene or an entry is asked to switch."""
        return (self.kind is Kind.ROOM) == (other.kind is Kind.ROOM)


def spoken_names(called: Called) -> tuple[Spoken, ...]:
    """Rooms, scenes and the entries that feed loads, in the document's order.

    Other entries (spare, capped, extension, whole-device) are named after ids and nobody asks for them.
    """
    return tuple(_all(called))


def spoken_name(called: Called, kind: Kind, place: str) -> Spoken:
    """The spoken name of one room, scene or load."""
    house = called.schedule.house
    if kind is Kind.LOAD:
        return _spoken(kind, place, called.of_load(place), house.loads[place].name)
    thing = (house.rooms if kind is Kind.ROOM else house.scenes)[place]
    return _spoken(kind, place, composed(thing.name), thing.name)


def _all(called: Called) -> Iterator[Spoken]:
    house = called.schedule.house
    for kind, places in ((Kind.ROOM, house.rooms), (Kind.SCENE, house.scenes), (Kind.LOAD, house.loads)):
        for place in places:
            yield spoken_name(called, kind, place)


def _spoken(kind: Kind, place: str, name: str, own: str) -> Spoken:
    return Spoken(kind, place, name, composed(own), words_of(name))
