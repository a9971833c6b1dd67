"""The multi-way rules, in the order of the printed list."""

from collections.abc import Callable, Iterator

from secondfix.assumptions import Assumptions
from secondfix.electrical.case import Case, case_of
from secondfix.electrical.multiway import arrangement_known, in_line, other_circuit, supply
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule

REGISTRY: tuple[tuple[Rule, Callable[[Case], Iterator[Finding]]], ...] = (
    (arrangement_known.RULE, arrangement_known.answers),
    (in_line.SERIES, in_line.series_answers),
    (in_line.PARALLEL, in_line.parallel_answers),
    (other_circuit.RULE, other_circuit.answers),
    (supply.RULE, supply.answers),
)
RULES: tuple[Rule, ...] = tuple(rule for rule, _ in REGISTRY)


def check(schedule: Schedule, assumptions: Assumptions) -> list[Finding]:
    """The answers of the multi-way rules alone; ``electrical.check`` asks them with all others."""
    case = case_of(schedule, assumptions)
    return [finding for _, answers in REGISTRY for finding in answers(case)]
