"""A journal as a set of entries, the union of several, and what a writer would see of a subject."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from secondfix.journal.entry import Entry
from secondfix.journal.lines import as_line


@dataclass(frozen=True, slots=True)
class Journal:
    """Entries by id. Two under one id are two bodies that claim it: both are kept, neither decides."""

    by_id: dict[str, tuple[Entry, ...]] = field(default_factory=dict)

    def __iter__(self) -> Iterator[Entry]:
        for key in sorted(self.by_id):
            yield from self.by_id[key]

    def __len__(self) -> int:
        return sum(map(len, self.by_id.values()))


def journal_of(entries: Iterable[Entry]) -> Journal:
    """The set of these entries: repetition and order do not matter."""
    by_id: dict[str, tuple[Entry, ...]] = {}
    for entry in entries:
        have = by_id.setdefault(entry.id, (entry,))
        if all(entry is not h for h in have):  # lines tell 1 from true and 1.0; Python's equality does not
            by_line = {as_line(e): e for e in (*have, entry)}
            by_id[entry.id] = tuple(by_line[line] for line in sorted(by_line))
    return Journal(by_id)


def merge(*journals: Journal) -> Journal:
    """The union of journals: the same from any order, grouping or repetition."""
    return journal_of(entry for journal in journals for entry in journal)


def latest(journal: Journal, subject: str) -> tuple[str, ...]:
    """What a writer who knows this journal puts into ``sees``: entries on the subject that none has seen."""
    of_subject = [entry for entry in journal if entry.subject == subject]
    seen = {known for entry in of_subject for known in (*entry.sees, entry.names)}
    return tuple(entry.id for entry in of_subject if entry.id not in seen)


def as_lines(journal: Journal) -> str:
    """The journal as the text of a file, in the order of ids: one line for each body."""
    return "".join(as_line(entry) + "\n" for entry in journal)
