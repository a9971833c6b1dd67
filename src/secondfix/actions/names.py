"""Names: what every entry is called by the house's policy, and what is wrong with the names."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix import naming
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, schedule
from secondfix.journal import Journal, fold, subject_of
from secondfix.journal import Named as NameGiven


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


@dataclass(frozen=True, slots=True)
class Renamed:
    """One entry that another policy would call something else."""

    entry: naming.Entry
    before: str


def renamed(before: Iterable[naming.Entry], after: House) -> tuple[Renamed, ...]:
    """Every entry whose name is not as it was, by device and number."""
    now = naming.names(schedule(after, after.models))
    pairs = ((now.of(old.device_id, old.number), old.name) for old in before)
    return tuple(Renamed(new, old) for new, old in pairs if new is not None and new.name != old)


def standing(house: House, journal: Journal) -> dict[tuple[str, int], str]:
    """What entries were named on site, by device and number, where the journal tells it without conflict."""
    subjects = ((subject_of(e.subject), e.name) for e in fold(house, journal).each("named", NameGiven))
    return {(s.owner, int(s.part)): name for s, name in subjects if s.kind == "entry"}


def not_asked(house: House) -> tuple[str, ...]:
    """A sentence for each question about names that this house leaves no ground to ask."""
    why = naming.sound_not_asked(house)
    return (why,) if why else ()


def named_as_json(named: Named) -> dict[str, object]:
    """``devices`` with their entries, and ``findings`` (docs/json.md)."""
    return {**naming.names_as_json(named.names), "findings": [finding_as_json(f) for f in named.findings]}
