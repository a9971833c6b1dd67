"""The verb ``backup``."""

from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.desk import DataFolder, begun, tell
from secondfix.cli.opening import AsJson, refuse, verb_app

app = verb_app()


@app.command()
def run(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="The file to write; it must not exist yet.")],
    data: DataFolder = Path("secondfix-data"),
    as_json: AsJson = False,
) -> None:
    """Everything of the desk in one file, tried in a fresh store before it gets its name.

    Houses, edits, issues, journals, sealed codes, cover sheets, accounts. The desk may go on working
    meanwhile. The key of the key ring (ring.key in the data folder) is not in it: keep a copy elsewhere.
    """
    begun(data, new=False)
    from secondfix.store import door  # noqa: PLC0415 - tables load once Django has begun

    answer = door.back_up(file)
    if isinstance(answer, door.Refused):
        refuse(answer.faults)
    tell(answer, f"{file}: written, restored into a fresh store, and the same there.", as_json=as_json)
