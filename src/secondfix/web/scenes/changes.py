"""What an edit of a scene would change, loads that change alike in one row."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.actions.scenes import Differing, Resolved, differing
from secondfix.findings import Finding
from secondfix.scenes import Cell


@dataclass(frozen=True)
class Alike:
    """Loads of one scene whose crossings change alike; None where the scene does not stand."""

    scene_name: str
    before: Cell | None
    after: Cell | None
    loads: tuple[str, ...]


@dataclass(frozen=True)
class Changes:
    """What an edit would change: crossings, answers that would be new, and answers that would fall away."""

    count: int
    alike: list[Alike]
    fresh: list[Finding]
    gone: list[Finding]


def changes_of(before: Resolved, after: Resolved) -> Changes:
    """From what stands to what would."""
    differs = differing(before.resolutions, after.resolutions)
    return Changes(
        len(differs),
        grouped(differs),
        [f for f in after.findings if f.severity and f not in before.findings],
        [f for f in before.findings if f.severity and f not in after.findings],
    )


def grouped(differs: Iterable[Differing]) -> list[Alike]:
    """In the order of scenes, and in each of the first load that changes so."""
    groups: dict[tuple[str, Cell | None, Cell | None], list[Differing]] = {}
    for one in differs:
        groups.setdefault((one.scene_id, one.before, one.after), []).append(one)
    return [
        Alike(those[0].scene_name, before, after, tuple(d.load_id for d in those))
        for (_, before, after), those in groups.items()
    ]
