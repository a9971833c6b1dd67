"""Options that all printing verbs share, and the one way to write a paper."""

from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from secondfix.cli.opening import refuse
from secondfix.files import write_whole
from secondfix.house import Fault
from secondfix.papers import Setting, SheetSize, TextFault, TitleBlock

PaperSize = Annotated[
    SheetSize | None, typer.Option("--paper", help="Sheet size; else Letter for NEC houses, A4 for others.")
]
Issue = Annotated[str, typer.Option(help="What the title block shows as issue.")]
DrawnBy = Annotated[str, typer.Option(help="Who drew it, for the title block.")]
PaperDate = Annotated[
    datetime | None,
    typer.Option("--date", formats=["%Y-%m-%d"], help="Date of the papers; today if not given."),
]


def setting_of(paper: SheetSize | None, *, issue: str, drawn_by: str, on: datetime | None) -> Setting:
    """Sheet size and title block; equal settings give byte-identical papers."""
    day = on or datetime.now(UTC).astimezone()
    return Setting(TitleBlock(issue, day.date(), drawn_by), paper)


def unprintable(faults: Sequence[TextFault]) -> NoReturn:
    """Exit 2 with every text that no font at hand can print."""
    refuse([Fault("the paper", "", str(fault), "characters that its fonts have") for fault in faults])


def write_file(path: Path, data: bytes, *, mode: int = 0o644) -> None:
    """Write the file whole, or exit 2 saying why not, leaving what stood there alone."""
    try:
        write_whole(path, data, mode=mode)
    except OSError as error:
        why = (error.strerror or "cannot be written").lower()
        refuse([Fault(str(path), "", why, "a file that can be written")])
