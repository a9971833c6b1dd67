"""One answer of one rule at one place."""

import re
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


class Mark(StrEnum):
    """How far the source of a rule was followed; the words stand in the source itself (docs/methods.md)."""

    READ = "read"
    SECONDARY = "secondary"
    COMPUTED = "computed"
    CIRCUIT_THEORY = "circuit theory"
    DATA_SHEET = "data sheet"
    FROM_MEMORY = "from memory"
    COMMON_PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Rule:
    """A question that a check asks everywhere it applies.

    ``id`` is stable and printed; ``asks`` is the question in one sentence; ``source`` names
    standard and clause, or 'common practice, no source'; a rule whose limit is known only
    from memory says so here and yields advice at most. ``assumptions`` are those that an answer
    leans on unless it says otherwise; ``may_lean_on`` those that only some answers lean on.
    """

    id: str
    asks: str
    source: str
    assumptions: tuple[str, ...] = ()
    may_lean_on: tuple[str, ...] = ()

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The marks that its source carries, the firmest first."""
        return tuple(mark for mark in Mark if re.search(rf"\b{mark}s?\b", self.source))

    @property
    def leans_on(self) -> tuple[str, ...]:
        """Every assumption that an answer of this rule may lean on."""
        return tuple(dict.fromkeys((*self.assumptions, *self.may_lean_on)))

    def leaning_on(self, names: Sequence[str] | None) -> tuple[str, ...]:
        """What one answer leans on (None: what all do); ValueError for what the rule does not declare."""
        if names is None:
            return self.assumptions
        strange = [name for name in names if name not in self.leans_on]
        if strange:
            raise ValueError(f"{self.id} does not declare that it may lean on {', '.join(strange)}")
        return tuple(dict.fromkeys(names))


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
        rule.leaning_on(assumptions),
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
        rule.leaning_on(assumptions),
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
        rule.leaning_on(assumptions),
        tuple(also),
    )
