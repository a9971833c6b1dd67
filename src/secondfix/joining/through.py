"""Through which parent a device is joined, and which one stands in reserve."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import inf, isnan

from secondfix.joining.circuits import natural
from secondfix.joining.links import CONTROLLER
from secondfix.joining.parents import Mesh, Standing, bits


@dataclass(frozen=True, slots=True)
class Choice:
    """The parent of one device at its turn.

    ``spare`` is the next best, None where the device hangs on one alone; ``links`` is how far the
    controller is through the parent; ``margin_db`` is None where that link is not known.
    """

    parent: str
    spare: str | None
    links: int
    margin_db: float | None


def choice(mesh: Mesh, number: int, joined: int) -> Choice | None:
    """The strongest parent among ``joined`` (the controller always stands); None if there is none.

    Links that are not known come after all that are; equal ones by id, the controller first.
    """
    if mesh.standing[number] is Standing.NONE:
        return None
    found = sorted(_parents(mesh, number, joined))
    if not found:
        raise ValueError(f"{mesh.ids[number]} has no parent at its turn: the order is wrong")
    (weakness, _, parent, depth), *others = found
    spare = others[0][2] if others else None
    return Choice(parent, spare, depth + 1, None if weakness == inf else round(-weakness, 1))


def _parents(mesh: Mesh, number: int, joined: int) -> Iterator[tuple[float, tuple[str, int, str], str, int]]:
    reach = mesh.reading(number)
    if reach.roots >> number & 1:
        yield _weakness(mesh, number, -1), ("", 0, ""), CONTROLLER, 0
    chain = joined & (mesh.sure if mesh.standing[number] is Standing.GOOD else ~mesh.lone)
    for depth, level in enumerate(reach.levels(chain), 1):
        if not reach.admits(number, depth + 1):
            return
        for n in bits(level & reach.carriers & reach.near[number]):
            yield _weakness(mesh, number, n), natural(mesh.ids[n]), mesh.ids[n], depth


def _weakness(mesh: Mesh, number: int, parent: int) -> float:
    margin = float(mesh.margin_db[number, parent])
    return inf if isnan(margin) else -margin
