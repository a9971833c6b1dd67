"""The verb ``import``."""

import os
import time
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.reconcile import Held, begin_house, columns_of, exit_code, held_as_json, reconcile
from secondfix.cli.expecting import EntriesFile, Revision, Writer, write_expected
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.opening import AsJson, FirmFolder, leave, opened, print_json, refuse, verb_app
from secondfix.cli.page import counted, para
from secondfix.exchange import LARGEST_LIST_BYTES, Mapping, Table, read_mapping
from secondfix.files import open_firm, read_bytes, write_whole
from secondfix.house import Fault, House, as_canonical_json, uuid7
from secondfix.journal import Journal
from secondfix.maintenance import Begun, Expected

app = verb_app()
MappingFile = Annotated[
    str | None,
    typer.Option(
        "--mapping", metavar="FILE", help="Which column says what (docs/how-to/begin-from-a-device-list.md)."
    ),
]


@app.command()
def run(
    list_file: Annotated[
        str, typer.Argument(metavar="LIST", help="A device list of a controller, CSV or XLSX.")
    ],
    house_file: Annotated[
        str | None, typer.Argument(metavar="HOUSE", help="The house to hold it against; none to begin one.")
    ] = None,
    mapping_file: MappingFile = None,
    journal_files: JournalOption = None,
    firm_folder: FirmFolder = None,
    new: Annotated[
        Path | None,
        typer.Option("--new", metavar="FILE", help="Begin a house in this file; it must not exist yet."),
    ] = None,
    name: Annotated[
        str, typer.Option("--name", metavar="NAME", help="What people call the new house.")
    ] = "House from a list",
    entries: EntriesFile = None,
    revision: Revision = "A",
    writer: Writer = "office",
    as_json: AsJson = False,
) -> None:
    """Hold a controller's device list against a house, or begin a house from it.

    Without --mapping it shows the columns, for a mapping to be written once.
    """
    mapping = _mapping(mapping_file)
    data = read_bytes(list_file, most=LARGEST_LIST_BYTES)
    if isinstance(data, Fault):
        refuse([data])
    if mapping is None:
        table = columns_of(data, where=list_file, mapping=None)
        if isinstance(table, list):
            refuse(table)
        print(columns_text(table))  # noqa: T201 - the command line prints
        leave(0)
    if house_file is None:
        house, made = _begin(data, list_file, mapping, firm_folder, new, name)
        if entries is not None:
            write_expected(entries, made, Journal(), house=house.id, revision=revision, writer=writer)
        leave(3)
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files or (), house=house_file)
    held = reconcile(house, journal, data, where=list_file, mapping=mapping, models=firm.models)
    if isinstance(held, list):
        refuse(held)
    if entries is not None:
        mends = tuple(d.entry for d in held.found.differences if d.entry is not None)
        write_expected(entries, mends, journal, house=house.id, revision=revision, writer=writer)
    print_json(held_as_json(held)) if as_json else print(held_text(house, held))  # noqa: T201 - as above
    leave(with_lines(exit_code(held), lines))


def _mapping(name: str | None) -> Mapping | None:
    if name is None:
        return None
    data = read_bytes(name)
    mapping = data if isinstance(data, Fault) else read_mapping(data, where=name)
    if isinstance(mapping, Fault):
        refuse([mapping])
    if isinstance(mapping, list):
        refuse(mapping)
    return mapping


def _begin(
    data: bytes, where: str, mapping: Mapping, folder: Path | None, new: Path | None, name: str
) -> tuple[House, tuple[Expected, ...]]:
    firm = open_firm(folder)
    if isinstance(firm, list):
        refuse(firm)
    if new is None:
        refuse(
            [Fault("HOUSE", "", "nothing", "a house to hold the list against, or --new FILE to begin one")]
        )
    if new.exists():
        refuse([Fault(str(new), "", "a file that exists", "a new name: nothing is overwritten")])
    house_id = uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10))
    begun = begin_house(data, where=where, mapping=mapping, models=firm.models, house_id=house_id, name=name)
    if isinstance(begun, list):
        refuse(begun)
    write_whole(new, as_canonical_json(begun.house).encode())
    print(begun_text(new, begun))  # noqa: T201 - as above
    return begun.house, begun.entries


def begun_text(file: Path, begun: Begun) -> str:
    """What was made of the list, and what could not be."""
    h = begun.house
    counts = (
        counted(len(h.rooms), "room"),
        counted(len(h.devices), "device"),
        counted(len(h.boxes), "box", "boxes"),
        counted(len(h.loads), "load"),
    )
    head = para(f"{file}: {', '.join(counts)}. Boxes are to be surveyed.")
    return "\n".join([head, *(para(f"- {told}", indent=2, hang=2) for told in begun.told)])


def columns_text(table: Table) -> str:
    """The columns, with the first filled cell of each."""
    head = f"{table.where}: {counted(len(table.rows), 'row')}; its columns and what stands first in each:"
    lines = [para(head)]
    for n, column in enumerate(table.columns):
        first = next((row.cells[n] for row in table.rows if row.cells[n]), "nothing")
        lines.append(para(f"{column}: {first[:60]}", indent=2, hang=2))
    lines += [para(f"- {told}", indent=2, hang=2) for told in table.told]
    lines.append(para("Write down once, in a mapping, which of them is what; then give it with --mapping."))
    return "\n".join(lines)


def held_text(house: House, held: Held) -> str:
    """A block for each difference with the step that mends it."""
    f = held.found
    count, unlike = counted(f.rows, "row"), counted(len(f.differences), "difference")
    head = f"{house.name}: {count}, {f.agreed} as the book says, {unlike}"
    parts = [
        para(head),
        *(["\n".join(para(f"- {t}", indent=2, hang=2) for t in held.told)] if held.told else []),
    ]
    for d in f.differences:
        parts.append(
            "\n".join(
                [
                    para(f"{d.unlike.value.replace('_', ' ')}: {d.says}", hang=4),
                    para(f"do: {d.step}", indent=4, hang=2),
                ]
            )
        )
    return "\n\n".join(parts)
