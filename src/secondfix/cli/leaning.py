"""Assumptions as text: one line each, the same wherever they are printed."""

from collections.abc import Iterable

from secondfix.actions.leaned import leaned_on
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumption, Assumptions
from secondfix.cli.page import para
from secondfix.findings import Finding
from secondfix.house import House, is_nec
from secondfix.terms import in_feet


def span_of(a: Assumption, *, nec: bool = False) -> str:
    """Value and range, the range only where there is one; lengths of NEC houses in feet and inches too."""
    if nec and in_feet(a.value, a.unit):
        value, low, high = (f"{v} {a.unit} ({in_feet(v, a.unit)})" for v in (a.value, a.low, a.high))
        return value if a.low == a.high else f"{value} ({low} to {high})"
    return f"{a.value} {a.unit}" if a.low == a.high else f"{a.value} {a.unit} ({a.low} to {a.high})"


def assumption_line(a: Assumption, *, nec: bool = False) -> str:
    """Name, meaning, value with range, source, and who set it where the source does not say so."""
    said = a.set_by == "default" or a.source.startswith("set by")
    set_by = "" if said else f"; set by the {a.set_by}"
    return f"{a.name}: {a.means}: {span_of(a, nec=nec)}; {a.source}{set_by}"


def leaning_on(house: House, findings: Iterable[Finding], given: Assumptions) -> tuple[Assumption, ...]:
    """What findings about a house lean on, as settled for that house."""
    return leaned_on(findings, settled_assumptions(house, given))


def leaning_text(house: House, leaned: Iterable[Assumption]) -> list[str]:
    """One block of text with them all; none where nothing is leaned on."""
    lines = [para(assumption_line(a, nec=is_nec(house)), indent=2, hang=2) for a in leaned]
    return ["\n".join(["Assumptions leaned on (secondfix assumptions lists all):", *lines])] if lines else []
