"""One answer of one rule at one place."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum


class Outcome(StrEnum):
    """Three answers, never two. *Passes* is printed 'no fault found', never 'safe'."""

    PASSES = "passes"
    FAILS = "fails"
    CANNOT_TELL = "cannot_tell"


class Severity(StrEnum):
    """How bad a failure is, or could be where it cannot be told."""

    DANGER = "danger"
    FAULT = "fault"
    ADVICE = "advice"


@dataclass(frozen=True, slots=True)
class Rule:
    """A question that a check asks everywhere it applies.

    ``id`` is stable and printed; ``asks`` is the question in one sentence; ``source`` names
    standard and clause, or 'common practice, no source'; a rule whose limit is known only
    from memory says so here and yields advice at most.
    """

    id: str
    asks: str
    source: str
    assumptions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Look:
    """One fact that a look, a measurement or a question would settle.

    ``place`` is the place's id, ``field`` the document's key at that place (dotted), ``words``
    what to look for in plain words.
    """

    place: str
    field: str
    words: str


@dataclass(frozen=True, slots=True)
class Finding:
    """What one rule answers at one place.

    ``says`` is one sentence for people; ``value``, ``limit`` carry units in words.
    ``severity`` is None for a pass; for *cannot tell* it is the worst that it could be.
    ``looks`` are what would settle it; ``assumptions`` the names of assumptions leaned on;
    ``also`` further ids concerned (a load, a device), so that a page can point there too.
    """

    rule: str
    outcome: Outcome
    severity: Severity | None
    place: str
    says: str
    value: str
    limit: str
    source: str
    remedy: str
    looks: tuple[Look, ...] = ()
    assumptions: tuple[str, ...] = ()
    also: tuple[str, ...] = ()


def passes(
    rule: Rule,
    place: str,
    *,
    value: str = "",
    limit: str = "",
    also: Sequence[str] = (),
    assumptions: Sequence[str] | None = None,
) -> Finding:
    """No fault found at this place."""
    return Finding(
        rule.id,
        Outcome.PASSES,
        None,
        place,
        "No fault found.",
        value,
        limit,
        rule.source,
        "",
        (),
        rule.assumptions if assumptions is None else tuple(assumptions),
        tuple(also),
    )


def fails(
    rule: Rule,
    severity: Severity,
    place: str,
    says: str,
    *,
    value: str,
    limit: str,
    remedy: str,
    source: str = "",
    also: Sequence[str] = (),
    assumptions: Sequence[str] | None = None,
) -> Finding:
    """A fault of the stated severity, with its remedy."""
    return Finding(
        rule.id,
        Outcome.FAILS,
        severity,
        place,
        says,
        value,
        limit,
        source or rule.source,
        remedy,
        (),
        rule.assumptions if assumptions is None else tuple(assumptions),
        tuple(also),
    )


def cannot_tell(
    rule: Rule,
    severity: Severity,
    place: str,
    says: str,
    *,
    looks: Sequence[Look],
    value: str = "not known",
    limit: str = "",
    remedy: str = "",
    source: str = "",
    also: Sequence[str] = (),
    assumptions: Sequence[str] | None = None,
) -> Finding:
    """The facts at hand do not decide; ``looks`` say what would (ValueError if none is given)."""
    if not looks:
        raise ValueError(f"{rule.id} at {place}: a 'cannot tell' must name what would settle it")
    return Finding(
        rule.id,
        Outcome.CANNOT_TELL,
        severity,
        place,
        says,
        value,
        limit,
        source or rule.source,
        remedy or "; ".join(dict.fromkeys(look.words for look in looks)),
        tuple(looks),
        rule.assumptions if assumptions is None else tuple(assumptions),
        tuple(also),
    )
