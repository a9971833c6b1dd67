"""The verb ``restore``."""

from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.desk import DataFolder, begun, tell
from secondfix.cli.opening import AsJson, refuse, verb_app

app = verb_app()


@app.command()
def run(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="A file that secondfix backup wrote.")],
    data: DataFolder = Path("secondfix-data"),
    as_json: AsJson = False,
) -> None:
    """Lay a backup into a fresh data folder or database: all of it, or nothing.

    Put the ring.key that belongs to it into the data folder, before or after: without it no code opens.
    """
    begun(data, new=True)
    from secondfix.store import door  # noqa: PLC0415 - tables load once Django has begun

    answer = door.restore(file)
    if isinstance(answer, door.Refused):
        refuse(answer.faults)
    tell(answer, f"{file}: restored.", as_json=as_json)
