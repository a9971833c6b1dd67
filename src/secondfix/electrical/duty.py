"""Duty: a gang that nobody can explain is not worked on as if it were explained."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Rule, Severity, cannot_tell, passes
from secondfix.house import Duty, duty_look

RULE = Rule("duty", "Is it known what the gang does?", "common practice, no source")
_DUTY_WORDS: dict[Duty, str] = {
    Duty.FEEDS: "feeds a load",
    Duty.EXTENDS: "extends another gang",
    Duty.SCENE_ONLY: "scene only",
    Duty.CAPPED: "capped",
    Duty.NOT_KNOWN: "not known",
}


def answers(case: Case) -> Iterator[Finding]:
    """One answer per gang of every wall box."""
    for row in case.schedule.rows.values():
        also = [i for i in (row.device_id, row.load_id) if i]
        if row.gang.duty is not Duty.NOT_KNOWN:
            yield passes(RULE, row.id, value=_DUTY_WORDS[row.gang.duty], also=also)
            continue
        says = f"What gang {row.id} does is not known; its conductors may be live from anywhere."
        yield cannot_tell(RULE, Severity.DANGER, row.id, says, looks=[duty_look(row)], also=also)
