"""Journal files on the command line: put together; lines that cannot be read are told and skipped."""

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.opening import refuse
from secondfix.files import read_bytes
from secondfix.house import MOST_FAULTS, Fault
from secondfix.journal import LARGEST_JOURNAL_BYTES, Journal, merge, read_journal

JournalFiles = Annotated[
    list[str],
    typer.Argument(metavar="JOURNAL...", help="Its journal files or folders of them, or -, in any order."),
]
JournalOption = Annotated[
    list[str] | None,
    typer.Option("--journal", metavar="FILE", help="A journal file, a folder, or -; may be given again."),
]
SUFFIX = ".jsonl"


def opened_journal(names: Sequence[str], *, house: str = "") -> tuple[Journal, list[Fault]]:
    """The union of the files, and a fault for each line not read; exit 2 where a file cannot be opened.

    A folder gives every file in it that ends in ``.jsonl``; what else lies there is told. ``house`` is where
    the house came from: standard input can be read once.
    """
    journals, faults = [], []
    if "-" in names and house == "-":
        refuse([Fault("-", "", "house and journal from standard input", "one of them in a file")])
    for name in dict.fromkeys(file for given in names for file in _files(given)):
        data = read_bytes(name, most=LARGEST_JOURNAL_BYTES)
        if isinstance(data, Fault):
            refuse([data])
        journal, told = read_journal(data, where="standard input" if name == "-" else name)
        journals.append(journal)
        faults += told
    for fault in faults[:MOST_FAULTS]:
        print(str(fault).replace("\n", " "), file=sys.stderr)  # noqa: T201 - the command line prints
    if len(faults) > MOST_FAULTS:
        print(f"and {len(faults) - MOST_FAULTS} more lines; {len(faults)} in all", file=sys.stderr)  # noqa: T201 - as above
    return merge(*journals), faults


def _files(name: str) -> list[str]:
    folder = Path(name)
    if name == "-" or not folder.is_dir():
        return [name]
    files = sorted(p for p in folder.iterdir() if p.is_file())
    mine = [str(p) for p in files if p.suffix == SUFFIX]
    if not mine:
        refuse([Fault(name, "", "a folder without a journal", f"files that end in {SUFFIX}")])
    if others := [p.name for p in files if p.suffix != SUFFIX]:
        print(f"{name}: not read, since not {SUFFIX}: {', '.join(others[:20])}", file=sys.stderr)  # noqa: T201 - the command line prints
    return mine


def with_lines(code: int, faults: Sequence[Fault]) -> int:
    """A line that cannot be read is a fault of the journal."""
    return 1 if faults else code
