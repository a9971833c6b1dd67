"""Read a journal from the bytes of its files; make one entry."""

from typing import Any

from secondfix.house import Fault
from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.journal import Journal, journal_of
from secondfix.journal.kinds import KINDS, read_entry
from secondfix.journal.lines import read_lines


def read_journal(data: bytes, *, where: str) -> tuple[Journal, list[Fault]]:
    """The journal of one file and one fault for each line that cannot be read. Pure: the caller reads it.

    A line again, word for word or in other spacing, is one entry; an id with other words is told by the
    fold, and none of its bodies counts. ``where`` is the name to print.
    """
    entries, faults = read_lines(data, where=where)
    return journal_of(entries), faults


def new_entry(plain: dict[str, Any], *, where: str) -> Entry | Fault:
    """An entry that a person is about to write, or its first fault. A kind not known here is refused."""
    read = read_entry(plain)
    if isinstance(read, Unknown):
        return Fault(where, "kind", f"'{read.kind}'", f"one of {', '.join(KINDS)}")
    return read if isinstance(read, Entry) else Fault(where, *read)
