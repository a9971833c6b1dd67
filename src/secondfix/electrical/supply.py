"""Which circuit feeds what, and what the wiring rules of the house are."""

from collections.abc import Iterable, Iterator

from secondfix.electrical.case import Case, Contact
from secondfix.findings import Finding, Look, Outcome, Rule, Severity, cannot_tell
from secondfix.house import Row, settled
from secondfix.terms import WiringRules

RULES_LOOK = Look("house", "wiring_rules", "state whether the house follows IEC 60364 or the NEC")


_WORST_FIRST = (Severity.DANGER, Severity.FAULT, Severity.ADVICE)


def may_be_nec(case: Case) -> bool:
    """Whether the house follows the NEC, or may: rules of the NEC alone are silent elsewhere."""
    return case.house.wiring_rules in {WiringRules.NEC, None}


def of_the_nec(case: Case, rule: Rule, found: Iterable[Finding]) -> Iterator[Finding]:
    """The answers of a rule of the NEC alone, where the house follows it.

    Where nobody has said which wiring rules apply, what passes stays silent, for the answer does not hang on
    them; all else becomes one *cannot tell* with that one look.
    """
    if case.house.wiring_rules is WiringRules.NEC:
        yield from found
    if case.house.wiring_rules is not None:
        return
    waiting = [f for f in found if f.outcome is not Outcome.PASSES]
    if waiting:
        severity = next(s for s in _WORST_FIRST if any(f.severity is s for f in waiting))
        yield cannot_tell(
            rule,
            severity,
            "house",
            "Which wiring rules apply here is not stated; under the NEC this would be asked.",
            looks=[RULES_LOOK],
            value=f"under the NEC not passed at {len(waiting)} {'place' if len(waiting) == 1 else 'places'}",
            also=[f.place for f in waiting if f.place != "house"],
        )


def circuit_of(case: Case, contact: Contact) -> str | None:
    """The circuit that feeds a contact: of the gang's line, or of the place the device stands at."""
    if contact.row is not None:
        return settled(contact.row.gang.line)
    return circuit_of_place(case, contact.device.place)


def circuit_of_place(case: Case, place_id: str | None) -> str | None:
    """The circuit of a place, where it is known."""
    return settled(case.house.places[place_id].circuit) if place_id else None


def loads_by_circuit(case: Case) -> dict[str | None, list[str]]:
    """Ids of the loads that gangs and outputs feed, by circuit; under None those of unknown circuit."""
    out: dict[str | None, list[str]] = {}
    for circuit, load_id in _fed(case):
        out.setdefault(circuit, []).append(load_id)
    return out


def _fed(case: Case) -> Iterator[tuple[str | None, str]]:
    for load_id, by in case.schedule.fed_by.items():
        row = by if isinstance(by, Row) else by.row
        if row is not None:
            yield settled(row.gang.line), load_id
        elif not isinstance(by, Row):
            yield circuit_of_place(case, case.house.devices[by.device_id].place), load_id


def share_a_neutral(case: Case, one: str, other: str) -> bool:
    """Whether two circuits are one multiwire circuit, as either of them says."""
    circuits = case.house.circuits
    return other in (settled(circuits[one].shares_neutral_with) or ()) or one in (
        settled(circuits[other].shares_neutral_with) or ()
    )
