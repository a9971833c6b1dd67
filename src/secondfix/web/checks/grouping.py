"""Findings as a sheet lists them: by severity, by room or by rule, worst first."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.findings import Finding, Outcome
from secondfix.house import House
from secondfix.papers import SHAPE_WORDS, room_name, shape_of

BY = {"severity": "severity", "room": "room", "rule": "rule"}


@dataclass(frozen=True, slots=True)
class Group:
    """Findings under one heading; ``shape`` where all of them have one."""

    heading: str
    shape: str
    findings: tuple[Finding, ...]


def told(findings: Iterable[Finding]) -> list[Finding]:
    """Those that are not passes, in their order."""
    return [f for f in findings if f.outcome is not Outcome.PASSES]


def grouped(house: House, findings: Iterable[Finding], by: str) -> list[Group]:
    """Headings in the order of their worst finding."""
    groups: dict[str, list[Finding]] = {}
    for finding in told(findings):
        groups.setdefault(_heading(house, finding, by), []).append(finding)
    return [
        Group(heading, shape_of(those[0]) if by == "severity" else "", tuple(those))
        for heading, those in groups.items()
    ]


def _heading(house: House, finding: Finding, by: str) -> str:
    if by == "rule":
        return finding.rule
    if by == "room":
        return room_name(house, finding.place) or "the whole house"
    return SHAPE_WORDS[shape_of(finding)]


def passed(findings: Iterable[Finding]) -> list[tuple[str, str, int]]:
    """Rule, source and how many places it found no fault at."""
    counts = Counter((f.rule, f.source) for f in findings if f.outcome is Outcome.PASSES)
    return sorted((rule, source, count) for (rule, source), count in counts.items())
