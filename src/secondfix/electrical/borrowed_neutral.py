"""Borrowed neutral: a load switched by one circuit and returned through another."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.electrical.supply import share_a_neutral
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Load, Row, dead_first, line_look, load_words, settled

RULE = Rule(
    "borrowed_neutral",
    "Does the load's neutral belong to the circuit that feeds its gang?",
    "common practice, no source: a borrowed neutral trips the residual-current device and stays live when "
    "one circuit is off",
)
_LIMIT = "one circuit"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per feeding gang where both circuits are known, or where borrowing is likely.

    Likely: the load's neutral is known but not the gang's line; or the gang is worked from a second place,
    or its load hangs on another storey, and a device is to be fitted.
    """
    for row in case.schedule.rows.values():
        if row.load is None or row.load_id is None:
            continue
        load = load_words(case.house, row.load_id)
        neutral, line = settled(row.load.neutral), settled(row.gang.line)
        if neutral is not None and line is not None:
            yield _compared(case, row, neutral, line)
        elif neutral is not None or (row.device is not None and _likely(case, row, row.load)):
            yield _unknown(row, load, neutral, line)


def _likely(case: Case, row: Row, load: Load) -> bool:
    rooms = case.house.rooms
    here, there = rooms[row.box.room].storey, rooms[load.room].storey
    return row.id in case.schedule.extended_by or (here is not None and there is not None and here != there)


def _value(neutral: str | None, line: str | None) -> str:
    return f"neutral of {neutral or 'not known'}, line of {line or 'not known'}"


def _unknown(row: Row, load: str, neutral: str | None, line: str | None) -> Finding:
    looks = [] if line else [line_look(row.box_id, row.gang_no)]
    if neutral is None:
        words = dead_first(f"trace which circuit the neutral of {load} belongs to")
        looks.append(Look(row.load_id or "", "neutral", words))
    says = f"Whether {load} returns through the circuit that feeds it is not known."
    also = [i for i in (row.load_id, row.device_id) if i]
    return cannot_tell(
        RULE, Severity.DANGER, row.id, says, looks=looks, value=_value(neutral, line), limit=_LIMIT, also=also
    )


def _compared(case: Case, row: Row, neutral: str, line: str) -> Finding:
    load = load_words(case.house, row.load_id or "")
    also = [i for i in (row.load_id, row.device_id, neutral, line) if i]
    if neutral == line or share_a_neutral(case, neutral, line):
        return passes(RULE, row.id, value=_value(neutral, line), limit=_LIMIT, also=also)
    return fails(
        RULE,
        Severity.DANGER,
        row.id,
        f"{load} is switched by {line} and returns through the neutral of {neutral}: it "
        f"stays live when {line} is isolated.",
        value=_value(neutral, line),
        limit=_LIMIT,
        remedy="Isolate both circuits; give the load line and neutral of one circuit first.",
        also=also,
    )
