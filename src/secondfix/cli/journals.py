"""Journal files on the command line: put together; lines that cannot be read are told and skipped."""

import sys
from collections.abc import Sequence
from typing import Annotated

import typer

from secondfix.cli.opening import refuse
from secondfix.files import read_bytes
from secondfix.house import MOST_FAULTS, Fault
from secondfix.journal import LARGEST_JOURNAL_BYTES, Journal, merge, read_journal

JournalFiles = Annotated[
    list[str], typer.Argument(metavar="JOURNAL...", help="Its journal files, in any order.")
]
JournalOption = Annotated[
    list[str] | None, typer.Option("--journal", metavar="FILE", help="A journal file; may be given again.")
]


def opened_journal(names: Sequence[str]) -> tuple[Journal, list[Fault]]:
    """The union of the files, and a fault for each line not read; exit 2 where a file cannot be opened."""
    journals, faults = [], []
    for name in names:
        data = read_bytes(name, most=LARGEST_JOURNAL_BYTES)
        if isinstance(data, Fault):
            refuse([data])
        journal, told = read_journal(data, where=name)
        journals.append(journal)
        faults += told
    for fault in faults[:MOST_FAULTS]:
        print(str(fault).replace("\n", " "), file=sys.stderr)  # noqa: T201 - the command line prints
    if len(faults) > MOST_FAULTS:
        print(f"and {len(faults) - MOST_FAULTS} more lines; {len(faults)} in all", file=sys.stderr)  # noqa: T201 - as above
    return merge(*journals), faults


def with_lines(code: int, faults: Sequence[Fault]) -> int:
    """A line that cannot be read is a fault of the journal."""
    return 1 if faults else code
