"""Scenes: what each scene does to every load, and what is wrong with the scenes."""

from dataclasses import dataclass

from secondfix import radio
from secondfix import scenes as package
from secondfix.actions.air import air_of
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, schedule


@dataclass(frozen=True, slots=True)
class Resolved:
    """One resolution and one time per scene, and findings about scenes, worst first."""

    resolutions: tuple[package.Resolution, ...]
    times: tuple[package.SceneTime, ...]
    findings: tuple[Finding, ...]


def scenes(house: House, *, assumptions: Assumptions) -> Resolved:
    """Resolve every scene, then ask the rules about scenes."""
    rows = schedule(house, house.models)
    settled = settled_assumptions(house, assumptions)
    air = air_of(house, radio.reach(rows, settled))
    resolutions = package.resolve(rows)
    times = package.scene_times(rows, resolutions, settled, air)
    return Resolved(resolutions, times, tuple(in_order(package.check(rows, settled, air))))


def resolved_as_json(resolved: Resolved) -> dict[str, object]:
    """``scenes`` with crossings, ledgers and times, and ``findings`` (docs/json.md)."""
    return {
        **package.scenes_as_json(resolved.resolutions, resolved.times),
        "findings": [finding_as_json(f) for f in resolved.findings],
    }
