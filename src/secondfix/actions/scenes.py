"""Scenes: what each scene does to every load, and what is wrong with the scenes."""

from collections.abc import Iterable
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


def scenes(house: House, *, assumptions: Assumptions, air: package.Air | None = None) -> Resolved:
    """Resolve every scene, then ask the rules about scenes.

    ``air`` where it is known already: no edit of a scene changes it.
    """
    rows = schedule(house, house.models)
    settled = settled_assumptions(house, assumptions)
    air = air or air_of(house, radio.reach(rows, settled))
    resolutions = package.resolve(rows)
    times = package.scene_times(rows, resolutions, settled, air)
    return Resolved(resolutions, times, tuple(in_order(package.check(rows, settled, air, resolutions))))


@dataclass(frozen=True, slots=True)
class Differing:
    """One crossing that an edit changes; None where the scene does not stand."""

    scene_id: str
    scene_name: str
    load_id: str
    before: package.Cell | None
    after: package.Cell | None


def differing(
    before: Iterable[package.Resolution], after: Iterable[package.Resolution]
) -> tuple[Differing, ...]:
    """Every crossing that is not as it was, in the order of scenes and loads.

    Both are of houses with the same loads. Of a scene that is new, or taken out, only the loads that it
    names are told.
    """
    was = {r.scene_id: r for r in before}
    now = {r.scene_id: r for r in after}
    found = []
    for scene_id, scene in {**was, **now}.items():
        for load_id in scene.crossings:
            old, new = _cell(was.get(scene_id), load_id), _cell(now.get(scene_id), load_id)
            if old != new and any(cell and cell.named for cell in (old, new)):
                found.append(Differing(scene_id, scene.name, load_id, old, new))
    return tuple(found)


def _cell(resolution: package.Resolution | None, load_id: str) -> package.Cell | None:
    return package.cell_of(resolution.crossings[load_id]) if resolution else None


def resolved_as_json(resolved: Resolved) -> dict[str, object]:
    """``scenes`` with crossings, ledgers and times, and ``findings`` (docs/json.md)."""
    return {
        **package.scenes_as_json(resolved.resolutions, resolved.times),
        "findings": [finding_as_json(f) for f in resolved.findings],
    }
