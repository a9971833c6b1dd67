"""What every verb begins with: the firm's folder, the house, and the one way to refuse unusable input."""

import json
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from secondfix.actions.settle import assumed
from secondfix.assumptions import default_assumptions
from secondfix.files import Firm, open_firm, open_house
from secondfix.house import MOST_FAULTS, Fault, House

HouseFile = Annotated[str, typer.Argument(metavar="HOUSE", help="The house's file, or - for standard input.")]
FirmFolder = Annotated[
    Path | None, typer.Option("--firm", metavar="FOLDER", help="The firm's own models and assumptions.")
]
Assume = Annotated[
    list[str] | None,
    typer.Option("--assume", metavar="NAME=VALUE", help="Set an assumption for this call; may be repeated."),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON object (docs/json.md).")]


def verb_app() -> typer.Typer:
    """An app for one verb: plain help, and our own faults shown whole."""
    return typer.Typer(add_completion=False, pretty_exceptions_enable=False, rich_markup_mode=None)


def opened_firm(folder: Path | None, assume: Sequence[str] | None = None) -> Firm:
    """The firm, its assumptions as the command line wants them, or exit 2 with every fault of both."""
    firm, faults = _firm(folder, assume or ())
    if faults or firm is None:
        refuse(faults)
    return firm


def opened(name: str, folder: Path | None, assume: Sequence[str] | None = None) -> tuple[House, Firm]:
    """The house and the firm, or exit 2 with every fault: of the firm, of the command line, of the house.

    A house is not read with half the firm's models, or what it refers to would be told as missing.
    """
    firm, faults = _firm(folder, assume or ())
    if firm is None:
        refuse(faults)
    house = open_house(name, firm.models)
    if isinstance(house, list) or faults:
        refuse([*faults, *(house if isinstance(house, list) else ())])
    return house, firm


def _firm(folder: Path | None, assume: Sequence[str]) -> tuple[Firm | None, list[Fault]]:
    """The firm (None: its own files have faults) and the faults of its files and of the command line."""
    firm = open_firm(folder)
    settled = assumed(default_assumptions() if isinstance(firm, list) else firm.assumptions, assume)
    faults = settled if isinstance(settled, list) else []
    if isinstance(firm, list):
        return None, [*firm, *faults]
    return (firm if isinstance(settled, list) else Firm(firm.models, settled)), faults


def refuse(faults: Sequence[Fault]) -> NoReturn:
    """One line a fault, capped with a count, on the error stream; exit 2. Nothing has been written."""
    for fault in faults[:MOST_FAULTS]:
        print(str(fault).replace("\n", " "), file=sys.stderr)  # noqa: T201 - the command line prints
    if len(faults) > MOST_FAULTS:
        print(f"and {len(faults) - MOST_FAULTS} more faults; {len(faults)} in all", file=sys.stderr)  # noqa: T201 - as above
    raise typer.Exit(2)


def print_json(value: object) -> None:
    """One JSON object on standard output."""
    print(json.dumps(value, ensure_ascii=False, indent=2))  # noqa: T201 - the command line prints


def leave(code: int) -> NoReturn:
    """End the verb with this exit code."""
    raise typer.Exit(code)
