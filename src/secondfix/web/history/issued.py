"""An issue as it went out: its document asked under its own frozen assumptions."""

import json
from dataclasses import dataclass, replace

from django.template.loader import render_to_string
from django.utils.safestring import SafeString

from secondfix.assumptions import Assumption, Assumptions, default_assumptions
from secondfix.exchange import shown_table
from secondfix.store import door
from secondfix.web.frame.asked import Asked, asked_at


def as_issued(house_id: str, letter: str) -> tuple[door.Issued, Asked]:
    """The issue, and its house with the answers it had then. Raises door.UnknownError."""
    about = asked_at(house_id, door.issue_row(house_id, letter).number)
    return about.once(f"issue {letter}", lambda a: _frozen(a, door.issued(house_id, letter)))


def _frozen(about: Asked, issued: door.Issued) -> tuple[door.Issued, Asked]:
    """The same house under the assumptions that went out with it; what was none then is a default."""
    then = {name: Assumption(**kept) for name, kept in json.loads(issued.assumptions).items()}
    assumptions = Assumptions({**default_assumptions(), **then})
    firm = replace(about.firm, assumptions=assumptions)
    return issued, Asked(about.house, about.text, about.number, firm, counted=False)


@dataclass(frozen=True, slots=True)
class Body:
    """The findings and the switch schedule of an issue in markup: it never changes, so it is made once."""

    findings: SafeString
    schedule: SafeString


def body_of(about: Asked) -> Body:
    """Made of an issue's house with its own answers."""
    told = [f for f in about.checked.findings if f.severity]
    findings = render_to_string("history/findings.html", {"told": told, "about": about})
    heads, rows = shown_table(about.rows)
    schedule = render_to_string("history/schedule.html", {"heads": heads, "rows": rows})
    return Body(findings, schedule)
