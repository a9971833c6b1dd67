"""Board label: the label that somebody will isolate by must name the room of the gang."""

from collections.abc import Iterator

from secondfix.catalogue import Supply
from secondfix.electrical.case import Case
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Duty, Row, line_look, settled

RULE = Rule(
    "board_label",
    "Does the board's label of the gang's circuit name the room in which the gang is?",
    "common practice, no source: isolation starts from the label and ends with proving dead",
)
_SPARE = {Duty.SCENE_ONLY, Duty.CAPPED}


def answers(case: Case) -> Iterator[Finding]:
    """One answer per gang whose line is known, or whose device will be wired to it."""
    for row in case.schedule.rows.values():
        line = settled(row.gang.line)
        if line is not None:
            yield _answer(case, row, line)
        elif row.device is not None and row.gang.duty not in _SPARE and not _on_battery(row):
            says = f"Which circuit feeds gang {row.id} is not known, so no label can be held against it."
            looks = [line_look(row.box_id, row.gang_no)]
            yield cannot_tell(RULE, Severity.DANGER, row.id, says, looks=looks, also=_also(row))


def _on_battery(row: Row) -> bool:
    return row.model is not None and row.model.supply is Supply.BATTERY


def _also(row: Row) -> list[str]:
    return [i for i in (row.device_id, row.load_id) if i]


def _answer(case: Case, row: Row, line: str) -> Finding:
    circuit, room = case.house.circuits[line], case.house.rooms[row.box.room]
    named = circuit.label_rooms
    also = (*_also(row), line)
    if named is None:
        look = Look(line, "label_rooms", f"read at the board which rooms the label of {circuit.name} names")
        says = f"What the board says of circuit {circuit.name} ({line}) is not known."
        return cannot_tell(RULE, Severity.DANGER, row.id, says, looks=[look], limit=room.name, also=also)
    rooms = ", ".join(case.house.rooms[r].name for r in named) or "no room"
    if row.box.room in named:
        return passes(RULE, row.id, value=f"label names {rooms}", limit=room.name, also=also)
    return fails(
        RULE,
        Severity.DANGER,
        row.id,
        f"Gang {row.id} in {room.name} is fed by {circuit.name} ({line}), whose label does not name that "
        "room: who isolates by the label works live.",
        value=f"label names {rooms}",
        limit=room.name,
        remedy="Correct the label before anybody isolates by it; prove dead at the point of work.",
        also=also,
    )
