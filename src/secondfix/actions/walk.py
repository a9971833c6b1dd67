"""Walk: an order in which every device can join, and what stands in its way."""

from dataclasses import dataclass, field, replace

from secondfix import joining, naming, radio
from secondfix.actions.held import Question, holding
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.words import in_words_of
from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, Schedule, schedule

_WHOLE = {Question.WALK, Question.RADIO}


@dataclass(frozen=True, slots=True)
class Walked:
    """The walk, one worksheet a device in its order, and findings about joining, worst first."""

    schedule: Schedule
    walk: joining.Walk
    worksheets: tuple[joining.Worksheet, ...]
    findings: tuple[Finding, ...]
    settled: Assumptions = field(repr=False, compare=False)


def walk(
    house: House,
    *,
    assumptions: Assumptions,
    reached: radio.Reach | None = None,
    earlier: Walked | None = None,
) -> Walked:
    """Order the joining of every device over the links that radio is likely to have.

    ``reached`` where the answer of radio is known already. The answer is the same with and without
    ``earlier``, the walk of the house before an edit: where the edit surely leaves it as it was, it is
    taken over (`held.UNREAD`).
    """
    settled = settled_assumptions(house, assumptions)
    rows = schedule(house, house.models)
    if earlier and earlier.settled == settled and holding(earlier.schedule.house, house) >= _WHOLE:
        return replace(earlier, schedule=rows)
    links = joining.links_of(reached or radio.reach(rows, settled), settled)
    ordered = joining.walk(rows, links, settled)
    findings = tuple(in_order(in_words_of(house, joining.check(rows, links, settled))))
    sheets = joining.worksheets(rows, ordered, naming.names(rows))
    return Walked(rows, ordered, sheets, findings, settled)


def walked_as_json(walked: Walked) -> dict[str, object]:
    """``steps``, ``stages``, the counts, and ``findings`` (docs/json.md)."""
    return {**joining.walk_as_json(walked.walk), "findings": [finding_as_json(f) for f in walked.findings]}
