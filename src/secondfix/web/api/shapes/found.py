"""Findings, survey lines and assumptions: what most answers end with."""

from secondfix.findings import Outcome, Severity
from secondfix.web.api.shapes.base import Shape


class Look(Shape):
    """One look on site that would settle something."""

    place: str
    field: str
    words: str


class Finding(Shape):
    """One answer of one rule at one place."""

    rule: str
    outcome: Outcome
    severity: Severity | None
    place: str
    says: str
    value: str
    limit: str
    source: str
    remedy: str
    looks: list[Look]
    assumptions: list[str]
    also: list[str]


class SurveyLine(Shape):
    """A line of the survey list."""

    place: str
    field: str
    words: str
    settles: int
    rules: list[str]


class Counts(Shape):
    """How many answers of each sort."""

    danger: int
    fault: int
    advice: int
    cannot_tell: int
    passes: int


class Assumption(Shape):
    """A value that stands in where no standard and no survey speaks."""

    name: str
    value: int
    low: int
    high: int
    unit: str
    means: str
    source: str
    set_by: str


class ListedAssumption(Assumption):
    """One assumption with its legal bounds and what leans on it."""

    least: int | None
    most: int | None
    rules: list[str]
    answers: list[str]


class Assumptions(Shape):
    """Every assumption."""

    assumptions: list[ListedAssumption]


class Checked(Shape):
    """The answer of check."""

    findings: list[Finding]
    survey: list[SurveyLine]
    counts: Counts
    assumptions: list[Assumption]
    not_asked: list[str]
