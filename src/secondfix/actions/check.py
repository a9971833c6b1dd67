"""Check: everything that is wrong with a house, and everything that cannot be told."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix import electrical, joining, naming, radio, scenes
from secondfix.actions.air import air_of
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumption, Assumptions
from secondfix.findings import (
    Finding,
    Rule,
    SurveyLine,
    finding_as_json,
    in_order,
    survey_as_json,
    survey_list,
    tally,
)
from secondfix.house import House, Schedule, schedule

RULES: tuple[Rule, ...] = (
    *electrical.RULES,
    *radio.RULES,
    *naming.RULES,
    *scenes.RULES,
    *joining.RULES,
)


@dataclass(frozen=True, slots=True)
class Checked:
    """Findings worst first, the survey list, and the assumptions that findings lean on."""

    findings: tuple[Finding, ...]
    survey: tuple[SurveyLine, ...]
    leaned_on: tuple[Assumption, ...]

    @property
    def counts(self) -> dict[str, int]:
        """How many dangers, faults, pieces of advice, cannot-tells, and answers without fault."""
        return tally(self.findings)


def check(house: House, *, assumptions: Assumptions) -> Checked:
    """Ask every rule at every place where it applies. ``assumptions`` are the firm's, or the defaults."""
    settled = settled_assumptions(house, assumptions)
    findings = in_order(_asked(schedule(house, house.models), settled))
    named = sorted({name for f in findings if f.severity is not None for name in f.assumptions})
    return Checked(tuple(findings), tuple(survey_list(findings)), tuple(settled[n] for n in named))


def _asked(rows: Schedule, settled: Assumptions) -> Iterator[Finding]:
    yield from electrical.check(rows, settled)
    reached = radio.reach(rows, settled)
    yield from reached.findings
    yield from naming.check(rows, settled)
    yield from scenes.check(rows, settled, air_of(rows.house, reached))
    yield from joining.check(rows, joining.links_of(reached, settled), settled)


def checked_as_json(checked: Checked) -> dict[str, object]:
    """``findings`` and ``survey`` (docs/json.md), the counts, and the assumptions leaned on."""
    return {
        "findings": [finding_as_json(f) for f in checked.findings],
        "survey": [survey_as_json(s) for s in checked.survey],
        "counts": checked.counts,
        "assumptions": [assumption_as_json(a) for a in checked.leaned_on],
    }


def assumption_as_json(a: Assumption) -> dict[str, object]:
    """One assumption with its range, source and who set it."""
    return {
        "name": a.name, "value": a.value, "low": a.low, "high": a.high, "unit": a.unit, "means": a.means,
        "source": a.source, "set_by": a.set_by,
    }  # fmt: skip
