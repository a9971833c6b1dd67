"""The verb ``assumptions``."""

import typer

from secondfix.actions.assumptions import listed, listed_as_json
from secondfix.actions.settle import settled_assumptions
from secondfix.cli.leaning import assumption_line
from secondfix.cli.opening import AsJson, Assume, FirmFolder, opened, opened_firm, print_json, verb_app
from secondfix.cli.page import para
from secondfix.house import is_nec

app = verb_app()


@app.command()
def run(
    house_file: str = typer.Argument("", metavar="[HOUSE]", help="A house whose own choices to apply."),
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    as_json: AsJson = False,
) -> None:
    """Every assumption: what it stands for, value, range, source, who set it, and what leans on it."""
    if house_file:
        house, firm = opened(house_file, firm_folder, assume)
        settled, nec = settled_assumptions(house, firm.assumptions), is_nec(house)
    else:
        settled, nec = opened_firm(firm_folder, assume).assumptions, False
    if as_json:
        print_json(listed_as_json(listed(settled)))
        raise typer.Exit
    for one in listed(settled):
        leaning = "; ".join(w for w in (", ".join(one.rules), *one.answers) if w)
        print(para(assumption_line(one.assumption, nec=nec), hang=2))  # noqa: T201 - the command line prints
        print(para(f"leaned on by: {leaning}", indent=4, hang=2))  # noqa: T201 - as above
