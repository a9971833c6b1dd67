"""Names: what every entry is called by the house's policy, and what is wrong with the names."""

from dataclasses import dataclass

from secondfix import naming
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, schedule


@dataclass(frozen=True, slots=True)
class Named:
    """Entries by device, and findings about names, worst first."""

    names: naming.Names
    findings: tuple[Finding, ...]


def names(house: House, *, assumptions: Assumptions) -> Named:
    """Name every entry, then ask the rules about names."""
    rows = schedule(house, house.models)
    found = naming.check(rows, settled_assumptions(house, assumptions))
    return Named(naming.names(rows), tuple(in_order(found)))


def not_asked(house: House) -> tuple[str, ...]:
    """A sentence for each question about names that this house leaves no ground to ask."""
    why = naming.sound_not_asked(house)
    return (why,) if why else ()


def named_as_json(named: Named) -> dict[str, object]:
    """``devices`` with their entries, and ``findings`` (docs/json.md)."""
    return {**naming.names_as_json(named.names), "findings": [finding_as_json(f) for f in named.findings]}
