"""What the verbs that open the desk's store have in common."""

from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from secondfix.cli.opening import print_json, refuse
from secondfix.house import Fault
from secondfix.store.start import Whereabouts, begin

if TYPE_CHECKING:
    from secondfix.store.door import BackedUp

DataFolder = Annotated[
    Path,
    typer.Option("--data", metavar="FOLDER", help="The desk's folder; DATABASE_URL names another database."),
]
WORDS = {
    "Account": "accounts", "House": "houses", "Edit": "edits", "Issue": "issues",
    "CoverSheet": "cover sheets",
    "JournalEntry": "entries", "KeyEntry": "codes", "KeyShown": "showings of codes",
    "ListMapping": "readings of lists",
}  # fmt: skip
NO_KEY = "The key ring's key (ring.key) of that desk is not in the data folder: no code opens until it is."


def begun(data: Path, *, new: bool) -> None:
    """Begin the desk, or exit 2 saying why not; where not ``new``, its folder must stand."""
    if not new and not (data / "ring.key").exists():
        refuse([Fault(str(data), "", "no desk", "the folder that secondfix serve keeps the book in")])
    try:
        begin(Whereabouts.of_environment(data))
    except (OSError, ValueError) as error:
        refuse([Fault(str(data), "", str(error), "a folder that can be written, a database that answers")])


def tell(answer: "BackedUp", words: str, *, as_json: bool) -> None:
    """Row counts and digest, and whether the key of the key ring is at hand."""
    if as_json:
        print_json(asdict(answer))
        return
    rows = ", ".join(f"{WORDS[name]} {count}" for name, count in answer.rows.items())
    print(f"{words}\n{rows}\nSHA-256 {answer.digest}")  # noqa: T201 - the command line prints
    if not answer.ring_key_here:
        print(f"○ {NO_KEY}")  # noqa: T201 - as above
