"""Answers as plain JSON values; the shapes are described in docs/json.md."""

from secondfix.findings.finding import Finding
from secondfix.findings.survey import SurveyLine


def finding_as_json(finding: Finding) -> dict[str, object]:
    """One finding, every field a string, list of strings, or null."""
    return {
        "rule": finding.rule,
        "outcome": finding.outcome.value,
        "severity": finding.severity.value if finding.severity else None,
        "place": finding.place,
        "says": finding.says,
        "value": finding.value,
        "limit": finding.limit,
        "source": finding.source,
        "remedy": finding.remedy,
        "looks": [{"place": k.place, "field": k.field, "words": k.words} for k in finding.looks],
        "assumptions": list(finding.assumptions),
        "also": list(finding.also),
    }


def survey_as_json(line: SurveyLine) -> dict[str, object]:
    """One line of the survey list."""
    return {
        "place": line.place,
        "field": line.field,
        "words": line.words,
        "settles": line.settles,
        "rules": list(line.rules),
    }
