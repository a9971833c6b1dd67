"""Check: everything that is wrong with a house, and everything that cannot be told."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix import electrical, joining, naming, radio, scenes
from secondfix.actions.air import air_of
from secondfix.actions.leaned import leaned_as_json, leaned_on
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.words import in_words_of
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
    findings = in_order(in_words_of(house, _asked(schedule(house, house.models), settled)))
    return Checked(tuple(findings), tuple(survey_list(findings)), leaned_on(findings, settled))


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
        **leaned_as_json(checked.leaned_on),
    }
