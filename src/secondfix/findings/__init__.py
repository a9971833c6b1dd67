"""Answers: what a check found, where, against which limit, and which looks would settle the rest."""

from secondfix.findings.as_json import finding_as_json, survey_as_json
from secondfix.findings.finding import (
    Finding,
    Look,
    Mark,
    Outcome,
    Rule,
    Severity,
    cannot_tell,
    fails,
    passes,
)
from secondfix.findings.survey import SurveyLine, exit_code, in_order, survey_list, tally

__all__ = [
    "Finding",
    "Look",
    "Mark",
    "Outcome",
    "Rule",
    "Severity",
    "SurveyLine",
    "cannot_tell",
    "exit_code",
    "fails",
    "finding_as_json",
    "in_order",
    "passes",
    "survey_as_json",
    "survey_list",
    "tally",
]
