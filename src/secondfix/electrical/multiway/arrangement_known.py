"""Multi-way arrangement: where line comes in and the lamp's core goes out is known before work starts."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.electrical.multiway.subject import Subject, subjects
from secondfix.electrical.multiway.telling import QUESTIONS
from secondfix.electrical.multiway.words import ARRANGEMENTS
from secondfix.findings import Finding, Look, Outcome, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import DEAD_FIRST, Arrangement

RULE = Rule(
    "multiway_arrangement",
    "Is it known how the conductors of a light with several places are arranged?",
    "common practice, no source; only line conductors are switched: NEC 404.2(B) (secondary)",
)
_LIMIT = "a named arrangement, and the order of its places"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per load with an extension, or whose places the survey names.

    While nothing feeds the load, what is known of it settles nothing yet: then only trouble is told.
    """
    for subject in subjects(case):
        answer = _answer(subject)
        if subject.place != subject.load_id or answer.outcome is not Outcome.PASSES:
            yield answer


def _answer(subject: Subject) -> Finding:
    arrangement = subject.arrangement
    if arrangement is None:
        says = f"How the conductors of {subject.words} are arranged is not known."
        return _untold(subject, says, arrangement_look(subject), "not known")
    words = ARRANGEMENTS[arrangement]
    if arrangement is Arrangement.SWITCHED_NEUTRAL:
        return _switched_neutral(subject)
    value = f"{words.name}, {len(subject.multiway.gangs)} places"
    if lacks := order_lacks(subject):
        says = f"The order of the places of {subject.words} is not told: {lacks}."
        return _untold(subject, says, order_look(subject), words.name)
    if astray := [row.id for row in subject.others if row.load_id is not None]:
        says = f"{', '.join(astray)} is said to work {subject.words}, and feeds another load."
        return _untold(subject, says, order_look(subject), words.name)
    return passes(RULE, subject.place, value=value, limit=_LIMIT, also=subject.also)


def order_lacks(subject: Subject) -> str:
    """What the order lacks, in words; empty where it names every place."""
    gangs = subject.multiway.gangs
    wanted = [*([subject.row] if subject.row else []), *subject.others]
    absent = [row.id for row in wanted if row.id not in gangs]
    if absent:
        return f"{', '.join(absent)} does not stand in it"
    return "" if len(gangs) > 1 else "it names one place, and a light worked from several has more"


def _untold(subject: Subject, says: str, look: Look, value: str) -> Finding:
    return cannot_tell(
        RULE,
        Severity.DANGER,
        subject.place,
        says,
        looks=[look],
        value=value,
        limit=_LIMIT,
        also=subject.also,
    )


def arrangement_look(subject: Subject) -> Look:
    """The look for the arrangement."""
    first = QUESTIONS[0]
    words = (
        f"find the arrangement of {subject.words} (licensed person, proved two-pole indicator; "
        f"docs/how-to/multi-way.md), first: {first.asks[0].lower()}{first.asks[1:]}"
    )
    return Look(subject.load_id, "multiway.arrangement", words)


def order_look(subject: Subject) -> Look:
    """The look for the order of the places."""
    words = (
        f"{DEAD_FIRST}, trace the order of the places of {subject.words}, from the end where line comes in"
    )
    return Look(subject.load_id, "multiway.gangs", words)


def _switched_neutral(subject: Subject) -> Finding:
    return fails(
        RULE,
        Severity.DANGER,
        subject.place,
        f"The switches of {subject.words} switch its neutral: the dark lamp may be live at both ends.",
        value=ARRANGEMENTS[Arrangement.SWITCHED_NEUTRAL].name,
        limit="only line is switched",
        remedy="Isolate; have it rewired so that the lamp's neutral is never switched, before anything is "
        "fitted.",
        also=subject.also,
    )
