"""The verb ``as-built``."""

from datetime import datetime

from secondfix.actions.as_built import Found, as_built, found_as_json
from secondfix.cli.check import findings_text
from secondfix.cli.journals import JournalFiles, opened_journal, with_lines
from secondfix.cli.opening import AsJson, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import counted, para
from secondfix.findings import exit_code
from secondfix.house import House

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    journal_files: JournalFiles,
    firm_folder: FirmFolder = None,
    as_json: AsJson = False,
) -> None:
    """What differs from the design, in words: the house as its journal found it."""
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files)
    now = datetime.now().astimezone().isoformat(timespec="seconds")
    found = as_built(house, journal, models=firm.models, now=now)
    if as_json:
        print_json(found_as_json(found))
    else:
        print(as_text(house, found))  # noqa: T201 - the command line prints
    leave(with_lines(exit_code(found.findings), lines))


def as_text(house: House, found: Found) -> str:
    """Differences first, then what the journal shows."""
    built = found.built
    head = (
        f"{house.name}: {counted(len(built.folded.counted), 'entry', 'entries')} count, "
        f"{counted(len(built.differences), 'difference')} from the revision, "
        f"{counted(len(built.folded.open_snags), 'open snag')}"
    )
    lines = [para(d.says, indent=2, hang=2) for d in built.differences]
    lines += [para(r.says, indent=2, hang=2) for r in built.remarks]
    parts = [para(head), *(["\n".join(lines)] if lines else [])]
    return "\n\n".join(parts + findings_text(f for f in found.findings if f.rule != "as_built_differs"))
