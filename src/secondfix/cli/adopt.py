"""The verb ``adopt``."""

import os
import time
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.as_built import as_built
from secondfix.cli.journals import JournalFiles, opened_journal
from secondfix.cli.opening import FirmFolder, HouseFile, opened, refuse, verb_app
from secondfix.files import write_whole
from secondfix.house import Fault, as_canonical_json, uuid7
from secondfix.journal import adopt, as_line

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    journal_files: JournalFiles,
    to: Annotated[
        Path, typer.Option("--to", metavar="FILE", help="The new revision; it must not exist yet.")
    ],
    entry: Annotated[
        Path,
        typer.Option("--entry", metavar="FILE", help="The journal file that records it; must not exist yet."),
    ],
    revision: Annotated[str, typer.Option("--revision", metavar="ID", help="The revision adopted from.")],
    to_revision: Annotated[str, typer.Option("--to-revision", metavar="ID", help="The id of the new one.")],
    writer: Annotated[str, typer.Option("--writer", metavar="NAME", help="Who adopts.")],
    firm_folder: FirmFolder = None,
) -> None:
    """Make a revision equal to the as-built house, and the entry that records what it took in."""
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files, house=house_file)
    if lines:
        refuse(
            [Fault("adopt", "", f"{len(lines)} lines that cannot be read", "a journal that is read whole")]
        )
    there = [
        Fault(str(p), "", "a file that exists", "a new name: nothing is overwritten")
        for p in (to, entry)
        if p.exists()
    ]
    if there:
        refuse(there)
    adoption = adopt(
        as_built(house, journal, models=firm.models).built,
        entry_id=uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)),
        revision=revision,
        to_revision=to_revision,
        writer=writer,
        at=datetime.now().astimezone().isoformat(timespec="seconds"),
    )
    if isinstance(adoption, tuple):
        refuse([Fault("adopt", "", cause, "a journal that can be adopted") for cause in adoption])
    write_whole(to, as_canonical_json(adoption.house).encode())
    write_whole(entry, (as_line(adoption.entry) + "\n").encode())
    print(f"{to}: revision {to_revision}; {entry}: {len(adoption.entry.took_in)} entries taken in")  # noqa: T201 - the command line prints
