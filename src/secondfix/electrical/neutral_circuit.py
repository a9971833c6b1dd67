"""Neutral of another circuit: line and neutral of a device belong to one circuit."""

from collections.abc import Iterator

from secondfix.catalogue import NeutralNeed, Supply
from secondfix.electrical.case import Case
from secondfix.electrical.supply import share_a_neutral
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, Duty, Row, line_look, neutral_look, settled

RULE = Rule(
    "neutral_circuit",
    "Does the neutral at the mount belong to the circuit that feeds the gang?",
    "common practice, no source: a shared neutral trips the residual-current device and stays live when one "
    "circuit is off",
)
_WIRED = {Duty.FEEDS, Duty.EXTENDS, Duty.NOT_KNOWN}


def answers(case: Case) -> Iterator[Finding]:
    """One answer per gang of a mains device in a wall box to which a neutral comes, or may come."""
    for row in case.schedule.rows.values():
        if row.model is None or row.model.supply is not Supply.MAINS:
            continue
        neutral, line = settled(row.mount.neutral), settled(row.gang.line)
        if row.model.neutral is NeutralNeed.NOT_NEEDED:
            yield passes(RULE, row.id, value="no neutral is connected", also=[row.device_id or ""])
        elif neutral not in {ABSENT, EARTH} and (line is not None or _line_matters(case, row)):
            yield _answer(case, row, neutral, line)


def _line_matters(case: Case, row: Row) -> bool:
    """A gang that joins no line has no circuit, unless its device has no other gang to take line from."""
    channels = case.schedule.channels_of[row.device_id or ""]
    return row.gang.duty in _WIRED or not any(c.row and c.row.gang.duty in _WIRED for c in channels)


def _answer(case: Case, row: Row, neutral: str | None, line: str | None) -> Finding:
    also = [i for i in (row.device_id, neutral, line) if i]
    value = f"neutral of {neutral or 'not known'}, line of {line or 'not known'}"
    if neutral is None or line is None:
        looks = [neutral_look(row.box_id, row.gang.mount)] if neutral is None else []
        looks += [line_look(row.box_id, row.gang_no)] if line is None else []
        says = f"Whether line and neutral at gang {row.id} belong to one circuit is not known."
        return cannot_tell(
            RULE, Severity.DANGER, row.id, says, looks=looks, value=value, limit=_LIMIT, also=also
        )
    if neutral == line or share_a_neutral(case, neutral, line):
        return passes(RULE, row.id, value=value, limit=_LIMIT, also=also)
    return fails(
        RULE,
        Severity.DANGER,
        row.id,
        f"At gang {row.id} the neutral belongs to {neutral} and the line to {line}: the neutral stays live "
        f"when {line} is isolated.",
        value=value,
        limit=_LIMIT,
        remedy=f"Isolate both circuits; bring a neutral of {line}, or take a device that needs none.",
        also=also,
    )


_LIMIT = "one circuit"
