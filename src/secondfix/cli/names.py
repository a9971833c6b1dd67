"""The verb ``names``."""

from collections.abc import Sequence

from secondfix.actions.leaned import leaned_as_json
from secondfix.actions.names import Named, named_as_json, names, not_asked
from secondfix.assumptions import Assumption
from secondfix.cli.check import findings_text
from secondfix.cli.leaning import leaning_on, leaning_text
from secondfix.cli.opening import AsJson, Assume, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import counted, para, table
from secondfix.findings import exit_code
from secondfix.house import House
from secondfix.naming import Entry, EntryKind
from secondfix.terms import PURPOSES

app = verb_app()


@app.command()
def run(
    house_file: HouseFile, firm_folder: FirmFolder = None, assume: Assume = None, as_json: AsJson = False
) -> None:
    """What to call every entry, with its purpose, and which names clash or are too long."""
    house, firm = opened(house_file, firm_folder, assume)
    named = names(house, assumptions=firm.assumptions)
    leaned = leaning_on(house, named.findings, firm.assumptions)
    if as_json:
        print_json({**named_as_json(named), **leaned_as_json(leaned), "not_asked": not_asked(house)})
    else:
        print(as_text(house, named, leaned))  # noqa: T201 - the command line prints
    leave(exit_code(named.findings))


def as_text(house: House, named: Named, leaned: Sequence[Assumption]) -> str:
    """The names as a page of text."""
    rows = [_row(device, entry) for device, entries in named.names.of_device.items() for entry in entries]
    head = ("device", "entry", "place", "name", "purpose")
    parts = [f"{house.name}: {counted(len(rows), 'entry', 'entries')} to name", table(head, rows)]
    parts += [*findings_text(named.findings), *map(para, not_asked(house))]
    return "\n\n".join(parts + leaning_text(house, leaned))


def _row(device: str, entry: Entry) -> tuple[str, ...]:
    number = "whole" if entry.kind is EntryKind.WHOLE_DEVICE else str(entry.number)
    purpose = PURPOSES[entry.purpose].label if entry.purpose else "none" if number == "whole" else "-"
    return device, number, entry.place, entry.name, purpose
