"""The verb ``models``."""

import typer

from secondfix.catalogue import Model, NeutralNeed, Output
from secondfix.cli.opening import AsJson, FirmFolder, print_json, refuse, verb_app
from secondfix.cli.page import table
from secondfix.files import open_firm
from secondfix.terms import PROTOCOLS

app = verb_app()

_NEUTRAL = {NeutralNeed.NEEDED: "needed", NeutralNeed.NOT_NEEDED: "not needed", NeutralNeed.EITHER: "either"}


@app.command()
def run(firm_folder: FirmFolder = None, as_json: AsJson = False) -> None:
    """The models at hand: shipped, and the firm's own. A firm's file with a fault is told, line by line."""
    firm = open_firm(firm_folder)
    if isinstance(firm, list):
        refuse(firm)
    if as_json:
        print_json(
            {
                "models": {
                    key: m.model_dump(mode="json", exclude_none=True)
                    for key, m in sorted(firm.models.items())
                }
            }
        )
        raise typer.Exit
    head = ("model", "protocol", "output", "gangs", "mounts", "neutral", "what it is")
    print(table(head, [_row(m) for _, m in sorted(firm.models.items())]))  # noqa: T201 - the command line prints


def _row(m: Model) -> tuple[str, ...]:
    output = "-" if m.output is Output.NONE else m.output.value.replace("_", " ")
    protocol = PROTOCOLS[m.protocol].label if m.protocol else "no radio"
    neutral = _NEUTRAL[m.neutral] if m.neutral else "-" if m.output is Output.NONE else "not stated"
    return m.key, protocol, output, str(m.gangs), str(m.mounts), neutral, m.title
