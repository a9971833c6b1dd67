"""Open answers numbered once for the whole house: list, plan and elevation show the same number."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.findings import Finding, Outcome, Severity, in_order

MOST_APART = 10  # more like answers than these share one number and one row

_Like = tuple[str, Outcome, Severity | None]


@dataclass(frozen=True, slots=True)
class Snag:
    """One numbered note: a single finding, or many of one rule and one severity."""

    number: int
    findings: tuple[Finding, ...]


def snags(findings: Iterable[Finding]) -> list[Snag]:
    """Everything that is not a pass, worst first; many like answers stand where their first one does."""
    told = [f for f in in_order(findings) if f.outcome is not Outcome.PASSES]
    counts = Counter(_like(f) for f in told)
    held: dict[object, list[Finding]] = {}
    for n, finding in enumerate(told):
        like = _like(finding)
        held.setdefault(like if counts[like] > MOST_APART else n, []).append(finding)
    return [Snag(n, tuple(same)) for n, same in enumerate(held.values(), 1)]


def _like(finding: Finding) -> _Like:
    return finding.rule, finding.outcome, finding.severity
