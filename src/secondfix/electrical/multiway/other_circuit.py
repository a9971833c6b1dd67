"""Multi-way, other circuit: a wired extension brings line of the module's own circuit."""

from collections.abc import Iterator

from secondfix.catalogue import Supply
from secondfix.electrical.case import Case
from secondfix.electrical.multiway.subject import Subject, circuit_of, feed_look, subjects
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import OthersAct, Row, line_look, settled

RULE = Rule(
    "multiway_other_circuit",
    "Do all places that conductors join belong to the circuit that feeds the load?",
    "common practice, no source: an input fed by another circuit stays live when the module's is isolated; "
    "NEC 404.8(B) (secondary) for two circuits side by side",
)
_LIMIT = "one circuit, or by radio"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per further place of a load: where both circuits are known, or a device is to be fitted."""
    for subject in subjects(case):
        feeding = circuit_of(case, subject)
        for row in subject.others:
            here = settled(row.gang.line)
            if (feeding and here) or subject.device_id is not None:
                yield _answer(case, subject, row, feeding, here)


def _answer(case: Case, subject: Subject, row: Row, feeding: str | None, here: str | None) -> Finding:
    also = [i for i in (subject.load_id, subject.device_id, subject.place, feeding, here) if i]
    value = f"line of {here or 'not known'} at {row.id}, of {feeding or 'not known'} at {subject.place}"
    if subject.act is OthersAct.RADIO or _on_battery(row):
        return passes(RULE, row.id, value="by radio", limit=_LIMIT, also=also)
    if feeding and feeding == here:
        return passes(RULE, row.id, value=value, limit=_LIMIT, also=also)
    looks = [] if feeding else [feed_look(case, subject)]
    looks += [] if here else [line_look(row.box_id, row.gang_no)]
    if feeding and here and subject.act is not None:
        return _fails(subject, row, value, also)
    if not looks:
        looks = [subject.acts_look()]
    says = f"Whether {row.id} brings line of the circuit that feeds {subject.words} is not known."
    return cannot_tell(RULE, Severity.DANGER, row.id, says, looks=looks, value=value, limit=_LIMIT, also=also)


def _on_battery(row: Row) -> bool:
    return row.model is not None and row.model.supply is Supply.BATTERY


def _fails(subject: Subject, row: Row, value: str, also: list[str]) -> Finding:
    return fails(
        RULE,
        Severity.DANGER,
        row.id,
        f"{row.id} belongs to another circuit than {subject.words}: its conductors stay live in the "
        "module's box when "
        "that box's circuit is isolated.",
        value=value,
        limit=_LIMIT,
        remedy=f"Isolate both circuits; part and cap the conductors between them, and let {row.id} act by "
        "radio, or "
        "give it line of the load's circuit.",
        also=also,
    )
