"""The survey list: cannot-tells folded per place, the looks that settle most first."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.findings.finding import Finding, Outcome, Severity

_RANK = {Severity.DANGER: 0, Severity.FAULT: 1, Severity.ADVICE: 2, None: 3}
_OUTCOME_RANK = {Outcome.FAILS: 0, Outcome.CANNOT_TELL: 1, Outcome.PASSES: 2}


@dataclass(frozen=True, slots=True)
class SurveyLine:
    """One look at one place: ``settles`` answers lean on it, ``rules`` names them."""

    place: str
    field: str
    words: str
    settles: int
    rules: tuple[str, ...]


def in_order(findings: Iterable[Finding]) -> list[Finding]:
    """Failures, worst first, then cannot-tells, then passes; by place and rule within."""
    return sorted(
        findings,
        key=lambda f: (_OUTCOME_RANK[f.outcome], _RANK[f.severity], f.place, f.rule, f.says),
    )


def survey_list(findings: Iterable[Finding]) -> list[SurveyLine]:
    """Every look that some cannot-tell waits for, places with most to settle first."""
    rules: dict[tuple[str, str, str], list[str]] = {}
    for finding in findings:
        if finding.outcome is Outcome.CANNOT_TELL:
            for look in dict.fromkeys(finding.looks):
                rules.setdefault((look.place, look.field, look.words), []).append(finding.rule)
    per_place = Counter[str]()
    for (place, _, _), names in rules.items():
        per_place[place] += len(names)
    lines = [
        SurveyLine(place, field, words, len(names), tuple(sorted(set(names))))
        for (place, field, words), names in rules.items()
    ]
    return sorted(lines, key=lambda s: (-per_place[s.place], s.place, -s.settles, s.field, s.words))


def tally(findings: Iterable[Finding]) -> dict[str, int]:
    """Counts under danger, fault, advice, cannot_tell, passes: every key present."""
    counts = {"danger": 0, "fault": 0, "advice": 0, "cannot_tell": 0, "passes": 0}
    for finding in findings:
        key = finding.severity if finding.outcome is Outcome.FAILS else finding.outcome
        counts[str(key)] += 1
    return counts


def exit_code(findings: Iterable[Finding]) -> int:
    """1 a danger or fault, else 3 something cannot be told, else 0 (advice alone is 0)."""
    counts = tally(findings)
    if counts["danger"] or counts["fault"]:
        return 1
    return 3 if counts["cannot_tell"] else 0
