"""The assumptions that findings lean on, for whoever prints an answer."""

from collections.abc import Iterable, Iterator

from secondfix.assumptions import Assumption, Assumptions
from secondfix.findings import Finding


def leaned_on(findings: Iterable[Finding], settled: Assumptions) -> tuple[Assumption, ...]:
    """What some answer other than a pass leans on, by name."""
    return tuple(settled[name] for name in sorted(set(_names(findings))))


def _names(findings: Iterable[Finding]) -> Iterator[str]:
    for finding in findings:
        if finding.severity is not None:
            yield from finding.assumptions


def leaned_as_json(leaned: Iterable[Assumption]) -> dict[str, object]:
    """``assumptions``: each with its range, source and who set it (docs/json.md)."""
    return {"assumptions": [assumption_as_json(a) for a in leaned]}


def assumption_as_json(a: Assumption) -> dict[str, object]:
    """One assumption with its range, source and who set it."""
    return {
        "name": a.name, "value": a.value, "low": a.low, "high": a.high, "unit": a.unit, "means": a.means,
        "source": a.source, "set_by": a.set_by,
    }  # fmt: skip
