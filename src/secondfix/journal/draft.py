"""A house on the way from a revision to the as-built: a plain document, and who changed what in it."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from pydantic import BaseModel, ValidationError

from secondfix.house import House
from secondfix.journal.entry import Entry
from secondfix.journal.sorting import Told
from secondfix.journal.subject import COLLECTION_OF, Subject

Plain = dict[str, Any]


@dataclass(slots=True)
class Draft:
    """``plain`` is changed in place; ``by`` gives each path touched the entries that touched it.

    ``leaving`` are devices that no longer stand; ``told`` what could not be taken up, and why.
    """

    plain: Plain
    by: dict[str, list[Entry]] = field(default_factory=dict)
    leaving: set[str] = field(default_factory=set)
    told: list[Told] = field(default_factory=list)

    def all(self, collection: str) -> Plain:
        """A collection of the document, perhaps empty; what is put in stays in."""
        found: Plain = self.plain.setdefault(collection, {})
        return found

    def touch(self, path: str, *entries: Entry) -> None:
        """Note that these entries speak for a path."""
        self.by.setdefault(path, []).extend(entries)

    def refuse(self, entry: Entry, words: str) -> None:
        """Note that an entry could not be taken up."""
        self.told.append(Told(entry.id, words, True))

    def holds(self, subject: Subject) -> bool:
        """Whether the document has the thing that a subject names."""
        if subject.kind == "house":
            return True
        if subject.kind == "gang":
            return subject.part in self.all("boxes").get(subject.owner, {}).get("gangs", {})
        if subject.kind == "entry":
            return subject.owner in self.all("devices")
        if subject.kind == "link":
            ends = (subject.owner, subject.part)
            return all(end in self.all("devices") or end in self.all("places") for end in ends)
        return subject.id in self.all(COLLECTION_OF[subject.kind])

    def left(self, subject: Subject) -> bool:
        """Whether the subject went with a device that no longer stands."""
        ends = {subject.owner, subject.part} if subject.kind == "link" else {subject.owner}
        return subject.kind in {"device", "entry", "link"} and not ends.isdisjoint(self.leaving)


def draft_of(house: House) -> Draft:
    """A draft equal to the house."""
    return Draft(house.model_dump(mode="json", exclude_unset=True))


def misfit(part: type[BaseModel], plain: Plain) -> str:
    """Why a plain object is no such part of the document, in one clause; empty where it is one."""
    try:
        part.model_validate(plain)
    except ValidationError as error:
        first = error.errors(include_url=False)[0]
        at = ".".join(str(p) for p in first["loc"])
        if first["type"] == "extra_forbidden":
            return f"{at}: a key that the document does not know"
        if first["type"] == "missing":
            return f"{at}: nothing, though it is required"
        return f"{at}: {first['msg'].removeprefix('Value error, ').replace('Input should be', 'expected')}"
    return ""


def without(plain: Plain, keys: Iterable[str]) -> Plain:
    """A copy without these keys."""
    dropped = set(keys)
    return {k: v for k, v in plain.items() if k not in dropped}
