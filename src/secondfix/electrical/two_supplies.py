"""Two supplies in one box: who isolates one circuit still finds another."""

from collections.abc import Iterator
from itertools import combinations

from secondfix.electrical.case import Case
from secondfix.electrical.printed import VOLTAGE_LOOK
from secondfix.electrical.supply import RULES_LOOK
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, Box, line_look, neutral_look, settled
from secondfix.terms import WiringRules

RULE = Rule(
    "two_supplies",
    "Is a box that two circuits reach labelled so, and the voltage in it low enough?",
    "NEC 404.8(B) (secondary): 300 V between devices; label: BS 7671 514.10.1 (from memory)",
)
_MOST_V = 300
_THREE_PHASE_PERMILLE = 1732  # the voltage between two of three phases, for each volt to neutral
_SPLIT_MOST_V = 130  # at or below it, two phases of an NEC house are the halves of one transformer


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box that two known circuits reach."""
    for box_id, box in case.house.boxes.items():
        circuits = _circuits(box)
        if len(circuits) > 1:
            yield _answer(case, box_id, box, circuits)


def _circuits(box: Box) -> list[str]:
    lines = [settled(gang.line) for gang in box.gangs.values()]
    neutrals = [settled(mount.neutral) for mount in box.mounts.values()]
    return list(dict.fromkeys(c for c in (*lines, *neutrals) if c not in {None, ABSENT, EARTH} and c))


def _answer(case: Case, box_id: str, box: Box, circuits: list[str]) -> Finding:
    named = " and ".join(f"{case.house.circuits[c].name} ({c})" for c in circuits)
    also = (*circuits, *case.devices_in.get(box_id, ()))
    between, looks = _between(case, box_id, box, circuits)
    if between is not None:
        return fails(
            RULE,
            Severity.FAULT,
            box_id,
            f"In box {box_id} {named} stand {between} V from each other.",
            value=f"{between} V",
            limit=f"at most {_MOST_V} V between devices without a barrier",
            remedy="Isolate both circuits. Feed the box from one phase, or fit a permanent barrier.",
            also=also,
        )
    labelled = settled(box.two_supplies_label)
    isolate = f"Isolate {named} before work."
    if labelled is None or looks:
        severity = Severity.FAULT if looks else Severity.ADVICE
        if labelled is None:
            words = f"see whether box {box_id} bears a label that {named} feed it"
            looks = [Look(box_id, "two_supplies_label", words), *looks]
        says = f"{named} reach box {box_id}; who isolates one still finds the other."
        return cannot_tell(
            RULE, severity, box_id, says, looks=looks, value=named, limit=_LABEL, remedy=isolate, also=also
        )
    if labelled:
        return passes(RULE, box_id, value=named, limit=_LABEL, also=also)
    return fails(
        RULE,
        Severity.ADVICE,
        box_id,
        f"{named} reach box {box_id}, and no label says so: who isolates one still finds the other.",
        value=named,
        limit=_LABEL,
        remedy=f"{isolate} Fit a label at the box that names both.",
        also=also,
    )


_LABEL = "a label that names both"


def _between(case: Case, box_id: str, box: Box, circuits: list[str]) -> tuple[int | None, list[Look]]:
    """The voltage between circuits where the NEC finds it too high; else the looks that may find it so."""
    voltage, rules = case.house.mains_voltage_v, case.house.wiring_rules
    if rules is WiringRules.IEC or (voltage is not None and _apart_v(voltage) <= _MOST_V):
        return None, []
    looks = [] if rules else [RULES_LOOK]
    phase = {c: settled(case.house.circuits[c].phase) for c in circuits}
    if any(phase[a] and phase[b] and phase[a] != phase[b] for a, b in combinations(circuits, 2)):
        if voltage is not None and rules:
            return _apart_v(voltage), []
        return None, [*looks, VOLTAGE_LOOK] if voltage is None else looks
    ask = "read at the board, its cover on, which phase feeds"
    unknown = [Look(c, "phase", f"{ask} {c}") for c in circuits if not phase[c]]
    unknown += [line_look(box_id, n) for n, gang in box.gangs.items() if settled(gang.line) is None]
    unknown += [neutral_look(box_id, n) for n, mount in box.mounts.items() if settled(mount.neutral) is None]
    return None, unknown


def _apart_v(voltage: int) -> int:
    """Volts between two phases: of a split transformer up to its 120 V halves, else of three phases."""
    return 2 * voltage if voltage <= _SPLIT_MOST_V else voltage * _THREE_PHASE_PERMILLE // 1000
