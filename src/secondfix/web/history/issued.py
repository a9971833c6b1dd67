"""An issue as it went out: its document asked under its own frozen assumptions, and its papers."""

import json
from dataclasses import replace

from secondfix.actions.pack import pack
from secondfix.assumptions import Assumption, Assumptions, default_assumptions
from secondfix.papers import Setting, TextFault, TitleBlock, pack_file
from secondfix.store import door
from secondfix.web.frame.asked import Asked, asked_at

PAPERS = {"findings": "Findings", "worksheets": "Worksheets", "pack": "Handover pack"}


def as_issued(house_id: str, letter: str) -> tuple[door.Issued, Asked]:
    """The issue, and its house with the answers it had then. Raises door.UnknownError."""
    issued = door.issued(house_id, letter)
    about = asked_at(house_id, issued.row.number)
    return issued, about.once(f"issue {letter}", lambda a: _frozen(a, issued))


def _frozen(about: Asked, issued: door.Issued) -> Asked:
    """The same house under the assumptions that went out with it; what was none then is a default."""
    then = {name: Assumption(**kept) for name, kept in json.loads(issued.assumptions).items()}
    assumptions = Assumptions({**default_assumptions(), **then})
    return Asked(
        about.house, about.text, about.number, replace(about.firm, assumptions=assumptions), counted=False
    )


def paper_of(issued: door.Issued, about: Asked, paper: str) -> bytes | list[TextFault]:
    """One of PAPERS with the letter, date and writer of the issue in its title block."""
    made = about.once("papers of the issue", lambda a: _papers(issued, a))
    return made if isinstance(made, list) else made[paper]


def _papers(issued: door.Issued, about: Asked) -> dict[str, bytes] | list[TextFault]:
    block = TitleBlock(issued.row.letter, issued.row.at.date(), issued.row.by)
    packed = pack(
        about.house,
        assumptions=about.firm.assumptions,
        setting=Setting(block),
        models={**about.firm.models, **about.house.models},
    )
    if isinstance(packed, list):
        return packed
    files = packed.files
    return {
        "findings": files["findings.pdf"],
        "worksheets": files["worksheets.pdf"],
        "pack": files[pack_file(about.house)],
    }
