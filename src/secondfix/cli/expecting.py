"""Entries to expect, written to a journal file of their own for a person to complete."""

import json
import os
import time
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.opening import refuse
from secondfix.files import write_whole
from secondfix.house import Fault, uuid7
from secondfix.journal import Journal
from secondfix.maintenance import Expected, written

EntriesFile = Annotated[
    Path | None,
    typer.Option("--entries", metavar="FILE", help="Write the entries to expect; it must not exist yet."),
]
Revision = Annotated[str, typer.Option("--revision", metavar="ID", help="The revision, for the entries.")]
Writer = Annotated[str, typer.Option("--writer", metavar="NAME", help="Who writes the entries.")]


def write_expected(
    file: Path, expected: tuple[Expected, ...], journal: Journal, *, house: str, revision: str, writer: str
) -> None:
    """One line for each entry, with an id of its own and what its writer has seen; exit 2 if it exists.

    Function tests stay out: they are written as they are made, never beforehand.
    """
    if file.exists():
        refuse([Fault(str(file), "", "a file that exists", "a new name: nothing is overwritten")])
    now = time.time_ns() // 1_000_000
    lines = written(
        tuple(e for e in expected if e.kind != "function_tested"),
        journal,
        house=house,
        revision=revision,
        writer=writer,
        at=datetime.now().astimezone().isoformat(timespec="seconds"),
        new_id=lambda n: uuid7(unix_ms=now + n, random=os.urandom(10)),
    )
    text = "".join(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n" for line in lines)
    write_whole(file, text.encode())
