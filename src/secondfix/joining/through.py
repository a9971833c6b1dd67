"""Through which parent a device is joined, and which one stands in reserve."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import inf, isnan

from secondfix.joining.circuits import natural
from secondfix.joining.links import CONTROLLER
from secondfix.joining.parents import Mesh, Standing
from secondfix.joining.readings import bits


@dataclass(frozen=True, slots=True)
class Choice:
    """The parent of one device at its turn.

    ``spare`` is the next best, None where the device hangs on one alone; ``links`` is how far the
    controller is through the parent; ``margin_db`` is None where that link is not known. ``thin``:
    the straight link to the controller is likely, and has less in reserve than a parent must have.
    """

    parent: str
    spare: str | None
    links: int
    margin_db: float | None
    thin: bool = False


def choice(mesh: Mesh, number: int, joined: int) -> Choice | None:
    """The nearest parent among ``joined`` (the controller always stands); None if there is none.

    Nearest in links to the controller, then the strongest; all of them are good, and every further link is
    one more repeater that may be missed. Links that are not known come after all that are; equal ones by id.
    """
    if mesh.standing[number] is Standing.NONE:
        return None
    found = sorted(_parents(mesh, number, joined))
    if not found:
        raise ValueError(f"{mesh.ids[number]} has no parent at its turn: the order is wrong")
    (unknown, depth, weakness, _, parent), *others = found
    spare = others[0][4] if others else None
    thin = parent != CONTROLLER and mesh.margin_db[number, -1] >= 0
    return Choice(parent, spare, depth + 1, None if unknown else round(-weakness, 1), bool(thin))


_Rank = tuple[bool, int, float, tuple[str, int, str], str]  # not known, links behind, weakness, id


def _parents(mesh: Mesh, number: int, joined: int) -> Iterator[_Rank]:
    reach = mesh.reading(number)
    if reach.roots >> number & 1:
        yield _rank(mesh, number, -1, 0)
    chain = joined & (mesh.sure if mesh.standing[number] is Standing.GOOD else ~mesh.lone)
    for depth, level in enumerate(reach.levels(chain), 1):
        if not reach.admits(number, depth + 1):
            return
        for n in bits(level & reach.carriers & reach.near[number]):
            yield _rank(mesh, number, n, depth)


def _rank(mesh: Mesh, number: int, parent: int, depth: int) -> _Rank:
    margin = float(mesh.margin_db[number, parent])
    name = CONTROLLER if parent < 0 else mesh.ids[parent]
    return isnan(margin), depth, inf if isnan(margin) else -margin, natural(name), name
