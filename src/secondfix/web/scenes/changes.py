"""What an edit of a scene would change, loads that change alike in one row."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.actions.scenes import Differing
from secondfix.scenes import Cell


@dataclass(frozen=True)
class Alike:
    """Loads of one scene whose crossings change alike; None where the scene does not stand."""

    scene_name: str
    before: Cell | None
    after: Cell | None
    loads: tuple[str, ...]


def grouped(differs: Iterable[Differing]) -> list[Alike]:
    """In the order of scenes, and in each of the first load that changes so."""
    groups: dict[tuple[str, Cell | None, Cell | None], list[Differing]] = {}
    for one in differs:
        groups.setdefault((one.scene_id, one.before, one.after), []).append(one)
    return [
        Alike(those[0].scene_name, before, after, tuple(d.load_id for d in those))
        for (_, before, after), those in groups.items()
    ]
