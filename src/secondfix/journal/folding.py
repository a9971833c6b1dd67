"""The fold: which entries of a journal are current, by what each writer knew and never by clocks."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TypeVar

from secondfix.house import House
from secondfix.journal.causality import Known, in_order, superseded
from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.journal import Journal
from secondfix.journal.marks import Adopted, SnagCleared, SnagRaised, Withdrawn
from secondfix.journal.sorting import Sorted, Told, sort_out
from secondfix.journal.withdrawals import withdrawn_of

E = TypeVar("E", bound=Entry)
Register = tuple[str, str]
"""A subject and an aspect of it: what one current entry speaks for."""


@dataclass(frozen=True, slots=True)
class Conflict:
    """Current entries that differ and whose writers did not know of each other: none of them decides."""

    subject: str
    aspect: str
    entries: tuple[Entry, ...]


@dataclass(frozen=True, slots=True)
class Folded:
    """What a journal says now of one house.

    ``counted`` are the entries that count, by id; ``current`` those of each register that nothing has
    taken the place of; ``told`` everything that a reader must know about single entries. ``latest_first``
    lists ids so that each comes before what its writer knew.
    """

    counted: dict[str, Entry]
    current: dict[Register, tuple[Entry, ...]]
    conflicts: tuple[Conflict, ...]
    disputed: frozenset[Register]
    open_snags: tuple[SnagRaised, ...]
    withdrawn: frozenset[str]
    unknown: tuple[Unknown, ...]
    told: tuple[Told, ...]
    taken_in: frozenset[str]
    latest_first: tuple[str, ...]

    def settled(self, subject: str, aspect: str, kind: type[E]) -> E | None:
        """A current entry of this kind, or None: there is none, or current entries are in conflict."""
        if (subject, aspect) in self.disputed:
            return None
        return next((e for e in self.current.get((subject, aspect), ()) if isinstance(e, kind)), None)

    def each(self, aspect: str, kind: type[E]) -> list[E]:
        """One settled entry of this kind for each subject that has one, in the order of subjects."""
        found = (self.settled(subject, of, kind) for subject, of in sorted(self.current) if of == aspect)
        return [entry for entry in found if entry is not None]


def fold(
    house: House, journal: Journal, *, revisions: frozenset[str] | None = None, now: str | None = None
) -> Folded:
    """What the journal says now of this house. Pure, time linear; the order of entries is of no account.

    ``revisions`` are the ids of the house's revisions, where the caller knows them; ``now`` is a time of
    day with offset: entries written later than it are told. Neither decides anything.
    """
    entries = sort_out(house.id, journal, revisions=revisions, now=now)
    targets = {
        i: e.of for i, e in entries.counted.items() if isinstance(e, Withdrawn) and i not in entries.astray
    }
    withdrawals = withdrawn_of(targets)
    order = in_order(entries.knows)
    standing = {i: e for i, e in entries.counted.items() if i not in withdrawals.gone}
    current = _current(entries, standing, order)
    conflicts = _conflicts(current)
    told = [*entries.told]
    told += [Told(i, "is in a ring of entries that saw each other", True) for i in sorted(order.rings)]
    told += [Told(i, "is in a ring of withdrawals", True) for i in sorted(withdrawals.rings)]
    return Folded(
        entries.counted,
        current,
        conflicts,
        frozenset((c.subject, c.aspect) for c in conflicts),
        _open(standing, entries.astray),
        frozenset(i for i in withdrawals.gone if i in entries.counted),
        tuple(e for e in entries.unknown if e.id not in withdrawals.gone),
        tuple(told),
        frozenset(i for e in standing.values() if isinstance(e, Adopted) for i in e.took_in),
        order.later,
    )


def _current(entries: Sorted, standing: dict[str, Entry], order: Known) -> dict[Register, tuple[Entry, ...]]:
    bits = _Bits(standing.values())
    gone = superseded(order, entries.knows, marks=bits.marks, yields=bits.yields)
    current: dict[Register, list[Entry]] = {}
    for i in sorted(standing.keys() - gone):
        entry = standing[i]
        if entry.aspect:
            current.setdefault((entry.subject, entry.aspect), []).append(entry)
    return {register: tuple(found) for register, found in current.items()}


class _Bits:
    """A bit for each aspect of a subject, counted from 0 within the subject so that numbers stay small."""

    def __init__(self, standing: Iterable[Entry]) -> None:
        self._of_subject: dict[str, dict[str, int]] = {}
        self._marks: dict[str, int] = {}
        self._yields: dict[str, int] = {}
        for entry in standing:
            of = self._of_subject.setdefault(entry.subject, {})
            aspect = entry.aspect
            if not aspect:
                continue
            mark = bit = 1 << of.setdefault(aspect, len(of))
            for other in entry.ends:
                mark |= 1 << of.setdefault(other, len(of))
            for other in entry.yields_to:
                bit |= 1 << of.setdefault(other, len(of))
            self._marks[entry.id], self._yields[entry.id] = mark, bit

    def marks(self, entry_id: str) -> int:
        return self._marks.get(entry_id, 0)

    def yields(self, entry_id: str) -> int:
        return self._yields.get(entry_id, 0)


def _conflicts(current: dict[Register, tuple[Entry, ...]]) -> tuple[Conflict, ...]:
    found = []
    for (subject, aspect), entries in sorted(current.items(), key=lambda item: item[0]):
        if len(entries) > 1 and len({e.value for e in entries} - {None}) > 1:
            found.append(Conflict(subject, aspect, entries))
    return tuple(found)


def _open(standing: dict[str, Entry], astray: frozenset[str]) -> tuple[SnagRaised, ...]:
    cleared = {e.clears for i, e in standing.items() if isinstance(e, SnagCleared) and i not in astray}
    snags = (e for i, e in standing.items() if isinstance(e, SnagRaised) and i not in cleared)
    return tuple(sorted(snags, key=lambda e: e.id))


def history(folded: Folded, subject: str) -> tuple[Entry, ...]:
    """Every entry on a subject, earlier known before later; where nobody knew, in the order of ids."""
    place = {i: n for n, i in enumerate(reversed(folded.latest_first))}
    found = [e for e in folded.counted.values() if e.subject == subject]
    return tuple(sorted(found, key=lambda e: place[e.id]))
