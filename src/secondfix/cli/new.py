"""The verb ``new``."""

import os
import time
from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.opening import refuse, verb_app
from secondfix.files import write_whole
from secondfix.house import Fault, as_canonical_json, begin, uuid7

app = verb_app()


@app.command()
def run(
    name: Annotated[str, typer.Argument(metavar="NAME", help="What people call the house.")],
    file: Annotated[Path, typer.Argument(metavar="FILE", help="The file to write; it must not exist yet.")],
) -> None:
    """Begin a house: a file with an id of its own, one room, one box and one gang, to go on from.

    docs/house.md says what each key means.
    """
    if file.exists():
        refuse([Fault(str(file), "", "a file that exists", "a new name: nothing is overwritten")])
    if not 1 <= len(name) <= 80:
        refuse([Fault("NAME", "", f"{len(name)} characters", "1 to 80")])
    house = begin(house_id=uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)), name=name)
    write_whole(file, as_canonical_json(house).encode())
    print(f"{file}: {name} begun. Next: rooms, boxes and gangs, then secondfix check {file}")  # noqa: T201 - the command line prints
