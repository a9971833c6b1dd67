"""The verb ``record``."""

import os
import time
from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.channels import as_transmitters
from secondfix.actions.record import own_keys, record
from secondfix.cli.channels_text import opened_survey
from secondfix.cli.expecting import Revision, Writer
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.opening import FirmFolder, HouseFile, leave, opened, refuse, verb_app
from secondfix.files import append_line
from secondfix.house import Fault, uuid7
from secondfix.journal import Journal, as_line, merge

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    file: Annotated[
        Path, typer.Argument(metavar="JOURNAL", help="The writer's own journal file: begun, or appended to.")
    ],
    kind: Annotated[str, typer.Argument(metavar="KIND", help="What was done or found (docs/journal.md).")],
    subject: Annotated[
        str, typer.Argument(metavar="SUBJECT", help="What it speaks of, such as gang:B07.2 or device:D01.")
    ],
    own: Annotated[
        list[str] | None,
        typer.Argument(metavar="KEY=VALUE...", help="The kind's own keys, such as answered.L04=changed."),
    ] = None,
    journal_files: JournalOption = None,
    firm_folder: FirmFolder = None,
    revision: Revision = "A",
    writer: Writer = "office",
    at: Annotated[
        str | None, typer.Option("--at", metavar="TIME", help="When, if not now: 2031-05-06T09:40+02:00.")
    ] = None,
    air_file: Annotated[
        str | None,
        typer.Option("--air", metavar="FILE", help="Of air_heard: the channel survey, CSV or XLSX."),
    ] = None,
    anyway: Annotated[
        bool, typer.Option("--anyway", help="Keep it even where the house, as it is known, cannot take it.")
    ] = False,
) -> None:
    """Append one entry to a journal file. Its writer has seen what JOURNAL and each --journal hold."""
    house, firm = opened(house_file, firm_folder)
    own_journal, lines = _own(file, house_file)
    others, more = opened_journal(journal_files or (), house=house_file)
    journal, lines = merge(own_journal, others), [*lines, *more]
    plain = own_keys(own or [])
    if isinstance(plain, Fault):
        refuse([plain])
    if air_file is not None:
        listed = as_transmitters(subject, opened_survey(house, air_file).heard)
        if isinstance(listed, Fault):
            refuse([listed])
        plain["transmitters"] = listed
    head = {
        "id": uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)),
        "revision": revision,
        "kind": kind,
        "subject": subject,
        "writer": writer,
        "at": at or datetime.now().astimezone().isoformat(timespec="seconds"),
    }
    recorded = record(house, journal, head, plain, models=firm.models, anyway=anyway)
    if isinstance(recorded, Fault):
        refuse([recorded])
    _append(file, as_line(recorded.entry))
    print(f"{file}: {kind} {subject}")  # noqa: T201 - the command line prints
    for told in recorded.told:
        print(f"It {told.words}.")  # noqa: T201 - as above
    leave(with_lines(1 if any(t.serious for t in recorded.told) else 0, lines))


def _own(file: Path, house_file: str) -> tuple[Journal, list[Fault]]:
    """The file's own journal; exit 2 where it is the house, or holds lines of which none is an entry."""
    if not file.exists():
        return Journal(), []
    is_house = Path(house_file).exists() and file.samefile(house_file)
    journal, lines = (Journal(), []) if is_house else opened_journal([str(file)])
    if is_house or (len(lines) > 1 and not journal):
        what = "the house itself" if is_house else "a file without any entry"
        refuse([Fault(str(file), "", what, "a journal, or a new name")])
    return journal, lines


def _append(file: Path, line: str) -> None:
    try:
        append_line(file, line)
    except OSError as error:
        refuse([Fault(str(file), "", (error.strerror or "cannot be written").lower(), "a file to append to")])
