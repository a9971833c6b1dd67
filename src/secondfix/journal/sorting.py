"""Which entries of a journal count for a house, and what each of them knew."""

from dataclasses import dataclass
from datetime import datetime

from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.journal import Journal
from secondfix.journal.marks import Adopted


@dataclass(frozen=True, slots=True)
class Told:
    """What must be known about one entry; ``serious`` where it does not count in full."""

    entry: str
    words: str
    serious: bool


@dataclass(frozen=True, slots=True)
class Sorted:
    """``counted`` entries; ``knows`` for each of them and each of unknown kind the earlier ones that its
    writer knew; ``astray`` those that name an entry which is not here or is of another subject."""

    counted: dict[str, Entry]
    unknown: tuple[Unknown, ...]
    knows: dict[str, list[str]]
    astray: frozenset[str]
    told: tuple[Told, ...]


def sort_out(house_id: str, journal: Journal, *, revisions: frozenset[str] | None, now: str | None) -> Sorted:
    """Keep aside what cannot count, and tell it: nothing is dropped in silence."""
    told: list[Told] = []
    here: dict[str, Entry] = {}
    for i in sorted(journal.by_id):
        bodies = journal.by_id[i]
        if len(bodies) > 1:
            told.append(Told(i, f"stands {len(bodies)} times with different words: none counts", True))
        elif bodies[0].house != house_id:
            told.append(Told(i, f"is of another house ({bodies[0].house}): it does not count", True))
        else:
            here[i] = bodies[0]
    knows = {i: _knows(entry, here, told) for i, entry in here.items()}
    astray = frozenset(i for i, e in here.items() if e.names is not None and e.names not in knows[i])
    counted = {i: e for i, e in here.items() if not isinstance(e, Unknown)}
    told += _unknown_bases(counted, revisions) if revisions is not None else []
    told += _from_the_future(counted, now) if now is not None else []
    unknown = tuple(e for e in here.values() if isinstance(e, Unknown))
    return Sorted(counted, unknown, knows, astray, tuple(told))


def _knows(entry: Entry, here: dict[str, Entry], told: list[Told]) -> list[str]:
    known = []
    outright = entry.names
    for i in entry.sees if outright is None or outright in entry.sees else (*entry.sees, outright):
        other = here.get(i)
        if other is not None and other.subject == entry.subject:
            known.append(i)
        elif other is None:
            told.append(Told(entry.id, f"saw entry {i}, which is not here", i == outright))
        else:
            told.append(
                Told(entry.id, f"saw entry {i}, which is of {other.subject}: that does not count", True)
            )
    return known


def _unknown_bases(counted: dict[str, Entry], revisions: frozenset[str]) -> list[Told]:
    known = revisions | {e.to_revision for e in counted.values() if isinstance(e, Adopted)}
    return [
        Told(i, f"was written over revision {e.revision}, which is not known", False)
        for i, e in counted.items()
        if e.revision not in known
    ]


def _from_the_future(counted: dict[str, Entry], now: str) -> list[Told]:
    today = datetime.fromisoformat(now)
    return [
        Told(i, f"is dated {e.at}, later than now: its clock was wrong", False)
        for i, e in counted.items()
        if datetime.fromisoformat(e.at) > today
    ]
