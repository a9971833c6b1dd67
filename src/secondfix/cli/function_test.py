"""The verb ``test``."""

from secondfix.actions.as_built import Found, as_built, of_tests, tested_as_json
from secondfix.cli.check import findings_text
from secondfix.cli.journals import JournalFiles, opened_journal, with_lines
from secondfix.cli.opening import AsJson, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import para, table
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
    """The function test: which load each gang really works, what is crossed or dead, and what mends it."""
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files)
    found = as_built(house, journal, models=firm.models)
    if as_json:
        print_json(tested_as_json(found))
    else:
        print(as_text(house, found))  # noqa: T201 - the command line prints
    leave(with_lines(exit_code(of_tests(found)), lines))


def as_text(house: House, found: Found) -> str:
    """A row for each gang and entry, what is crossed, then the findings."""
    rows = [
        (
            p.subject.partition(":")[2],
            "not said" if p.expected is None else ", ".join(p.expected) or "nothing",
            ", ".join((*p.answered, *([p.also_answered] if p.also_answered else []))) or "nothing"
            if p.entry
            else "",
            p.worked.value.replace("_", " "),
        )
        for p in found.test.presses
    ]
    parts = [
        f"{house.name}: function test",
        table(("gang or entry", "should work", "worked", "is"), rows, indent=2),
    ]
    for crossing in (*found.test.crossed_gangs, *found.test.crossed_entries):
        pairs = "; ".join(f"{a} with {b}" for a, b in crossing.exchanges)
        names = "; ".join(f"{channel} works {load}" for channel, load in crossing.names)
        parts.append(
            para(f"Crossed: {', '.join(crossing.channels)}. Exchange {pairs}; or rename: {names}.", hang=2)
        )
    return "\n\n".join(parts + findings_text(of_tests(found)))
