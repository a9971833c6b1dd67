"""Multi-way series and parallel: one module feeds the load, nothing stands in line with it or beside it."""

from collections.abc import Iterator

from secondfix.catalogue import Output
from secondfix.electrical.case import Case
from secondfix.electrical.multiway.subject import Subject, subjects
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import OthersAct, Row

SERIES = Rule(
    "multiway_series",
    "Does nothing stand in line with the module, neither a second module nor a plain switch?",
    "common practice, no source: the module loses its supply in half of the states",
)
PARALLEL = Rule(
    "multiway_parallel",
    "Does one output alone feed the load?",
    "common practice, no source: an output that is off is live from the other",
)
ACTS = {
    OthersAct.INPUT: "on an input of the module",
    OthersAct.RADIO: "by radio",
    OthersAct.IN_SERIES: "with a contact in line with the module",
    OthersAct.IN_PARALLEL: "with a contact beside the module's",
}
_ONE = "input or radio"


def series_answers(case: Case) -> Iterator[Finding]:
    """One answer per load with several places to which a device is to be fitted."""
    for subject in subjects(case):
        if subject.device_id is None or not subject.several:
            continue
        if subject.act is OthersAct.IN_SERIES:
            says = (
                f"A contact of another place stands in line with the module of {subject.words}: whenever "
                "it is "
                "open, the module has no supply."
            )
            yield _fails(SERIES, subject, says)
        else:
            yield _told(SERIES, subject)


def parallel_answers(case: Case) -> Iterator[Finding]:
    """One answer per load of which it is said how its other places act, or one has or may have an output."""
    for subject in subjects(case):
        if subject.device_id is None:
            continue
        if subject.act is OthersAct.IN_PARALLEL:
            says = (
                f"A second contact feeds {subject.words}: the output that is off is live from the other, "
                "and a "
                "dimmer beside another output is destroyed."
            )
            yield _fails(PARALLEL, subject, says)
        elif subject.several and (subject.act or any(_may_put_out(row) for row in subject.others)):
            yield _told(PARALLEL, subject)


def _may_put_out(row: Row) -> bool:
    return row.device is not None and (row.model is None or row.model.output is not Output.NONE)


def _told(rule: Rule, subject: Subject) -> Finding:
    if subject.act is None:
        says = f"How the other places of {subject.words} act on its module is not known."
        looks = [subject.acts_look()]
        return cannot_tell(
            rule, Severity.FAULT, subject.place, says, looks=looks, limit=_ONE, also=subject.also
        )
    return passes(rule, subject.place, value=ACTS[subject.act], limit=_ONE, also=subject.also)


def _fails(rule: Rule, subject: Subject, says: str) -> Finding:
    assert subject.act is not None
    return fails(
        rule,
        Severity.FAULT,
        subject.place,
        says,
        value=ACTS[subject.act],
        limit=_ONE,
        remedy="Isolate; leave one module, and let every other place act on its input or by radio; cap or "
        "reuse "
        "what the other contact joined.",
        also=subject.also,
    )
