"""The verb ``demo``."""

from collections.abc import Collection
from functools import partial
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.pack import Packed
from secondfix.actions.scenes import scenes
from secondfix.cli import check as check_page
from secondfix.cli import scenes as scenes_page
from secondfix.cli import walk as walk_page
from secondfix.cli.demo_site import site_papers
from secondfix.cli.leaning import leaning_on
from secondfix.cli.opening import Assume, FirmFolder, opened, verb_app
from secondfix.cli.pack import OutFolder, made, write_all
from secondfix.cli.page import counted, para
from secondfix.cli.paper_options import PaperDate, setting_of, write_file
from secondfix.files import Firm
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import House, is_nec
from secondfix.terms import said

app = verb_app()
DEMO = "demo/house.json"
SITE = Path("demo/maintenance")
_LAST = "Nothing here calls a circuit safe. Isolate, lock off, prove dead. Local code decides who may."


@app.command()
def run(
    house_file: Annotated[str, typer.Argument(metavar="[HOUSE]", help="The house to take through.")] = DEMO,
    out: OutFolder = Path("out"),
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    on: PaperDate = None,
) -> None:
    """Take a house through the whole job: check, reach, names, scenes, walk, papers; then say how it stands.

    The demo house itself also gets the pack of its journals, and the worksheet of a swap.

    Exit 0 once everything is written, whatever was found.
    """
    house, firm = opened(house_file, firm_folder, assume)
    setting = setting_of(None, issue="draft", drawn_by="", on=on)
    packed = made(house, firm, setting, {})
    write_all(out, packed)
    later = site_papers(SITE, house, firm, setting) if Path(house_file) == Path(DEMO) else {}
    for name, data in later.items():
        write_file(out / name, data)
    for name, text in texts(house, firm, packed).items():
        write_file(out / name, (text + "\n").encode())
    print(summary(house, packed, out, later))  # noqa: T201 - the command line prints


def texts(house: House, firm: Firm, packed: Packed) -> dict[str, str]:
    """The same answers as plain text."""
    resolved = scenes(house, assumptions=firm.assumptions)
    leaned = partial(leaning_on, house, given=firm.assumptions)
    return {
        "findings.txt": check_page.as_text(house, packed.checked),
        "survey-list.txt": check_page.survey_text(packed.checked.survey) or "  nothing left to look at",
        "scenes.txt": scenes_page.as_text(house, resolved, leaned(resolved.findings)),
        "walk.txt": walk_page.as_text(house, packed.walked, leaned(packed.walked.findings)),
    }


def summary(house: House, packed: Packed, out: Path, later: Collection[str] = ()) -> str:
    """How the house stands, on one screen; ``later`` are papers made of its journals."""
    gangs = sum(len(box.gangs) for box in house.boxes.values())
    size = (
        counted(len(house.storeys), "storey"),
        counted(len(house.boxes), "wall box", "wall boxes"),
        counted(gangs, "gang"),
        counted(len(house.loads), "load"),
        counted(len(house.devices), "device"),
    )
    walk = packed.walked.walk
    isolations = counted(walk.isolations, said("isolation", nec=is_nec(house)))
    told = [f for f in packed.checked.findings if f.outcome is not Outcome.PASSES]
    first = [f for f in told if f.outcome is Outcome.FAILS and f.severity is not Severity.ADVICE]
    unknown = [f for f in told if f.outcome is Outcome.CANNOT_TELL]
    lines = [
        para(f"{house.name}: {', '.join(size)}"),
        para(f"Checked: {check_page.summary(packed.checked)}."),
        *(
            para(f"{check_page.sign_of(f)}, {f.place}: {f.says}", indent=2, hang=4)
            for f in (*first, *unknown)
        ),
        para(
            f"To join: {counted(len(walk.joins()), 'device')} in {isolations}; "
            f"to look at first: {counted(len(packed.checked.survey), 'look')}."
        ),
        para(f"In {out}: {', '.join(_groups(packed))}, and the answers as text."),
        *([para(f"From its journals, in {SITE}: {' and '.join(later)}.")] if later else []),
        para(said(_LAST, nec=is_nec(house))),
    ]
    return "\n".join(lines)


def _line(f: Finding) -> str:
    return para(f"{check_page.sign_of(f)}, {f.place}: {f.says}", indent=2, hang=4)


def _groups(packed: Packed) -> list[str]:
    pdfs = sorted(name for name in packed.files if name.endswith(".pdf"))
    plans = sum(name.startswith("plan-") for name in packed.files)
    rooms = sum(name.startswith("elevations-") for name in packed.files)
    return [*pdfs, counted(plans, "plan"), f"elevations of {counted(rooms, 'room')}"]
