"""The verb ``assumptions``."""

import typer

from secondfix.actions.check import assumption_as_json
from secondfix.actions.settle import settled_assumptions
from secondfix.cli.check import span_of
from secondfix.cli.opening import AsJson, Assume, FirmFolder, opened, opened_firm, print_json, verb_app
from secondfix.cli.page import para

app = verb_app()


@app.command()
def run(
    house_file: str = typer.Argument("", metavar="[HOUSE]", help="A house whose own choices to apply."),
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    as_json: AsJson = False,
) -> None:
    """Every assumption: what it stands for, its value and range, its source, and who set it."""
    if house_file:
        house, firm = opened(house_file, firm_folder, assume)
        settled = settled_assumptions(house, firm.assumptions)
    else:
        settled = opened_firm(firm_folder, assume).assumptions
    if as_json:
        print_json({"assumptions": [assumption_as_json(a) for a in settled.values()]})
        raise typer.Exit
    for a in settled.values():
        said = a.set_by == "default" or a.source.startswith("set by")
        set_by = "" if said else f"; set by the {a.set_by}"
        print(para(f"{a.name}: {a.means}: {span_of(a)}; {a.source}{set_by}", hang=2))  # noqa: T201 - the command line prints
