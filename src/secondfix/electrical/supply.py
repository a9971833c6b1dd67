"""Which circuit feeds what, and what the wiring rules of the house are."""

from collections.abc import Iterator

from secondfix.electrical.case import Case, Contact
from secondfix.findings import Look
from secondfix.house import Row, settled
from secondfix.terms import WiringRules

RULES_LOOK = Look("house", "wiring_rules", "state whether the house follows IEC 60364 or the NEC")


def nec(case: Case) -> bool:
    """Whether the house is said to follow the NEC; rules of the NEC alone are silent elsewhere."""
    return case.house.wiring_rules is WiringRules.NEC


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
