"""Scenes: what each scene does to every load, and what is wrong with the scenes."""

from dataclasses import dataclass

from secondfix import scenes as package
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, schedule


@dataclass(frozen=True, slots=True)
class Resolved:
    """One resolution per scene, and findings about scenes, worst first."""

    resolutions: tuple[package.Resolution, ...]
    findings: tuple[Finding, ...]


def scenes(house: House, *, assumptions: Assumptions) -> Resolved:
    """Resolve every scene, then ask the rules about scenes."""
    rows = schedule(house, house.models)
    found = package.check(rows, settled_assumptions(house, assumptions))
    return Resolved(package.resolve(rows), tuple(in_order(found)))


def resolved_as_json(resolved: Resolved) -> dict[str, object]:
    """``scenes`` with crossings and ledgers, and ``findings`` (docs/json.md)."""
    return {
        **package.scenes_as_json(resolved.resolutions),
        "findings": [finding_as_json(f) for f in resolved.findings],
    }
