"""The verb ``swap``."""

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.swap import (
    controller,
    exit_code,
    rebuilt_as_json,
    suspects,
    suspects_as_json,
    swap,
    swapped_as_json,
)
from secondfix.cli.expecting import EntriesFile, Revision, Writer, write_expected
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.opening import (
    AsJson,
    Assume,
    FirmFolder,
    HouseFile,
    leave,
    opened,
    print_json,
    refuse,
    verb_app,
)
from secondfix.cli.paper_options import (
    DrawnBy,
    Issue,
    PaperDate,
    PaperSize,
    setting_of,
    unprintable,
    write_file,
)
from secondfix.cli.swap_text import plan_text, rebuilt_text, suspects_text
from secondfix.house import Fault, House
from secondfix.maintenance import Kept, SwapPlan, Unit
from secondfix.papers import Setting, swap_pdf

app = verb_app()
_WITH = re.compile(
    r"^(?:(?P<load>[A-Z][A-Za-z0-9_-]{0,15})=)?(?P<model>[^:=]+)(?::(?P<gangs>\d+(?:,\d+)*))?$"
)


@app.command()
def run(
    house_file: HouseFile,
    failed: Annotated[
        str | None,
        typer.Argument(metavar="FAILED", help="The device, or its box, gang or place; or a network."),
    ] = None,
    replacement: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="WITH...", help="MODEL, MODEL:1,3 (gangs of the box), or LOAD=MODEL at its light point."
        ),
    ] = None,
    journal_files: JournalOption = None,
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    codes: Annotated[
        list[str] | None,
        typer.Option(
            "--code", metavar="REFERENCE", help="The key ring's reference of each new device, in order."
        ),
    ] = None,
    gang_by_gang: Annotated[
        bool, typer.Option("--gang-by-gang", help="Do not lead whole-device commands to the new device.")
    ] = False,
    silent: Annotated[
        list[str] | None,
        typer.Option("--silent", metavar="ENTRY", help="An entry, address or name that fell silent."),
    ] = None,
    answers: Annotated[
        list[str] | None, typer.Option("--answers", metavar="ENTRY", help="One that still answers.")
    ] = None,
    kept: Annotated[
        Kept | None,
        typer.Option("--controller", help="FAILED is a network whose controller was replaced; what is left."),
    ] = None,
    not_in_backup: Annotated[
        list[str] | None,
        typer.Option("--not-in-backup", metavar="DEVICE", help="Joined after the backup was made."),
    ] = None,
    entries: EntriesFile = None,
    revision: Revision = "A",
    writer: Writer = "office",
    pdf: Annotated[
        Path | None, typer.Option("--pdf", metavar="FILE", help="Also write the swap's worksheet as a PDF.")
    ] = None,
    paper: PaperSize = None,
    issue: Issue = "draft",
    drawn_by: DrawnBy = "",
    on: PaperDate = None,
    as_json: AsJson = False,
) -> None:
    """Replace a failed device so that every button does again what it did; nothing is written by it.

    Without FAILED, --silent says which device it is. With --controller, FAILED is a network.
    """
    house, firm = opened(house_file, firm_folder, assume)
    journal, lines = opened_journal(journal_files or (), house=house_file)
    if failed is None or kept is not None:
        _refuse_idle({"--pdf": pdf, "WITH": replacement, "--code": codes}, "a device that is replaced")
    if failed is None:
        _refuse_idle({"--entries": entries, "--controller": kept}, "FAILED")
        found = suspects(house, journal, models=firm.models, silent=silent or (), answering=answers or ())
        print_json(suspects_as_json(found)) if as_json else print(suspects_text(house, found))  # noqa: T201 - the command line prints
        sure = bool(found.suspects) and found.suspects[0].sure
        leave(with_lines(0 if sure else 3, lines))
    if kept is not None:
        rebuilt = controller(
            house, journal, failed, kept, models=firm.models, assumptions=firm.assumptions,
            not_in_backup=not_in_backup or (),
        )  # fmt: skip
        if isinstance(rebuilt, list):
            refuse(rebuilt)
        if entries is not None:
            write_expected(
                entries, rebuilt.entries, journal, house=house.id, revision=revision, writer=writer
            )
        print_json(rebuilt_as_json(rebuilt)) if as_json else print(rebuilt_text(house, rebuilt))  # noqa: T201 - as above
        leave(with_lines(0, lines))
    units = _units(replacement or [], codes or [])
    swapped = swap(
        house,
        journal,
        failed,
        units,
        models=firm.models,
        assumptions=firm.assumptions,
        whole=not gang_by_gang,
    )
    if isinstance(swapped, list):
        refuse([Fault(house_file, f.path, f.stands, f.expected) for f in swapped])
    if entries is not None:
        write_expected(
            entries, swapped.plan.entries, journal, house=house.id, revision=revision, writer=writer
        )
    if pdf is not None:
        setting = setting_of(paper, issue=issue, drawn_by=drawn_by, on=on)
        write_file(pdf, printed(swapped.built.house, swapped.plan, setting))
    print_json(swapped_as_json(swapped)) if as_json else print(plan_text(house, swapped.plan))  # noqa: T201 - as above
    leave(with_lines(exit_code(swapped.plan), lines))


def _refuse_idle(given: Mapping[str, object], needs: str) -> None:
    """Nothing that was asked for is left undone in silence."""
    faults = [Fault(name, "", "given", f"{needs}: else it says nothing") for name, v in given.items() if v]
    if faults:
        refuse(faults)


def printed(house: House, plan: SwapPlan, setting: Setting) -> bytes:
    """The worksheet of a swap, or exit 2 with every text that cannot be printed."""
    made = swap_pdf(house, plan, setting=setting)
    if isinstance(made, list):
        unprintable(made)
    return made


def _units(words: list[str], codes: list[str]) -> list[Unit]:
    units, faults = [], []
    if len(codes) > len(words):
        refuse([Fault("--code", "", f"{len(codes)} references", f"at most {len(words)}, one a new device")])
    for n, word in enumerate(words):
        found = _WITH.match(word)
        if found is None:
            faults.append(Fault("WITH", "", f"'{word}'", "MODEL, MODEL:1,3 or LOAD=MODEL"))
            continue
        gangs = tuple(found["gangs"].split(",")) if found["gangs"] else None
        code = codes[n] if n < len(codes) else None
        units.append(Unit(found["model"], gangs=gangs, load=found["load"], code_ref=code))
    if faults:
        refuse(faults)
    return units
