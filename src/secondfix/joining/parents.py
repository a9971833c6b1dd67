"""Who can be whose parent: good links, repeaters, depth; and what is joined when."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Stated
from secondfix.house import Schedule, settled
from secondfix.joining.circuits import on_mains
from secondfix.joining.growing import Growing
from secondfix.joining.links import CONTROLLER, Links
from secondfix.joining.readings import Reach, bits
from secondfix.radio import MOST_HOPS


class Standing(StrEnum):
    """Whether a device will have a good parent once all others stand."""

    GOOD = "good"  # a chain of good links through devices known to repeat
    NOT_KNOWN = "not_known"  # only if links or devices nobody has answered for are good
    NONE = "none"  # not even then


def repeats(schedule: Schedule, device_id: str) -> Stated:
    """Whether it carries others' messages: powered from the mains, and stated to repeat."""
    mains = on_mains(schedule, device_id)
    if mains is False:
        return Stated.NO
    model = schedule.model_of(device_id)
    if model is not None:
        return model.repeats
    told = settled(schedule.house.devices[device_id].repeats)
    if told is None or mains is None:
        return Stated.NO if told is False else Stated.NOT_STATED
    return Stated.YES if told else Stated.NO


@dataclass(frozen=True, slots=True)
class Mesh:
    """The links of a house over its devices in ``ids`` order.

    ``good`` counts what is known to be good, ``hoped`` also what is not known; ``endless`` is
    ``hoped`` without a limit of depth. ``margin_db`` has a last row and column for the controller
    (NaN not known). ``standing`` is the answer for each device; ``sure`` and ``lone`` are the bit
    sets of those whose standing is good and none.
    """

    ids: tuple[str, ...]
    good: Reach
    hoped: Reach
    endless: Reach
    margin_db: NDArray[np.float64]
    standing: tuple[Standing, ...]
    sure: int
    lone: int

    def reading(self, number: int) -> Reach:
        """The reading by which this device is joined."""
        return self.good if self.standing[number] is Standing.GOOD else self.hoped

    def closure(self, allowed: int) -> int:
        """What can be joined of ``allowed``: good ones among good ones, others among all."""
        sure = self.good.closure(allowed & self.sure)
        rest = allowed & ~self.lone & (sure | ~self.sure)
        return sure | (self.lone & allowed) | (self.hoped.closure(rest) & ~self.sure)

    def ready(self, joined: int) -> int:
        """What may be joined next when ``joined`` stands."""
        by_good = self.good.ready(joined & self.sure) & self.sure
        return by_good | (self.hoped.ready(joined & ~self.lone) & ~self.sure) | self.lone

    def growing(self, joined: int) -> "MeshGrowing":
        """The answer of `ready`, kept up while more join."""
        return MeshGrowing(
            self, Growing(self.good, joined & self.sure), Growing(self.hoped, joined & ~self.lone)
        )

    def keeps(self, path: Sequence[int], joined: int) -> bool:
        """Whether each of ``path`` finds a parent when its turn comes.

        Quicker than asking ``ready`` at each turn, and never more lenient: depth is counted as it
        was at the moment of joining, though a shorter way may have been joined since.
        """
        sure = _Depths(self.good, joined & self.sure)
        rest = _Depths(self.hoped, joined & ~self.lone)
        for number in path:
            if self.sure >> number & 1:
                if not sure.join(number):
                    return False
                rest.join(number)
            elif not self.lone >> number & 1 and not rest.join(number):
                return False
        return True


@dataclass(frozen=True, slots=True)
class MeshGrowing:
    """What may be joined next, while one device after the other is joined."""

    mesh: Mesh
    sure: Growing
    rest: Growing

    def ready(self) -> int:
        """As `Mesh.ready` of all that is joined by now."""
        by_good = self.sure.found & self.mesh.sure
        return by_good | (self.rest.found & ~self.mesh.sure) | self.mesh.lone

    def again(self) -> "MeshGrowing":
        """The same once more, to be grown apart."""
        return MeshGrowing(self.mesh, self.sure.again(), self.rest.again())

    def join(self, number: int) -> None:
        """Join one more; it need not be ready."""
        if self.mesh.sure >> number & 1:
            self.sure.join(number)
        if not self.mesh.lone >> number & 1:
            self.rest.join(number)


class _Depths:
    """Depths of joined devices, kept up while more join."""

    def __init__(self, reach: Reach, joined: int) -> None:
        self._reach = reach
        self._joined = joined & reach.carriers
        self._depth = {n: k for k, level in enumerate(reach.levels(joined), 1) for n in bits(level)}

    def join(self, number: int) -> bool:
        """Join it behind its shallowest parent; False if it has none."""
        reach = self._reach
        over = [self._depth[n] for n in bits(reach.near[number] & self._joined) if n in self._depth]
        if reach.roots >> number & 1:
            over.append(0)
        if not over or not reach.admits(number, depth := 1 + min(over)):
            return False
        self._depth[number] = depth
        self._joined |= (1 << number) & reach.carriers
        return True


def mesh(schedule: Schedule, links: Links, assumptions: Assumptions) -> Mesh:
    """Every device of the house with its possible parents.

    A link is good at ``parent_margin_db`` and above: known good at the high end of that
    assumption, hoped good from its low end. A device is known to repeat if its model says so.
    """
    ids = tuple(schedule.house.devices)
    low, _, high = assumptions.span("parent_margin_db")
    margin = _margins(schedule, links, ids)
    carry = [repeats(schedule, d) for d in ids]
    carriers = _mask([c is Stated.YES for c in carry])
    perhaps = _mask([c is not Stated.NO for c in carry])
    within = _within(schedule, ids)
    pairs = _same_network(schedule, ids)
    sure = np.greater_equal(margin, high) & pairs
    maybe = (np.isnan(margin) | np.greater_equal(margin, low)) & pairs
    good = _reach(sure, carriers, within)
    hoped = _reach(maybe, perhaps, within)
    endless = _reach(maybe, perhaps, ((1 << len(ids)) - 1,))
    everyone = (1 << len(ids)) - 1
    yes = good.closure(everyone)
    may = hoped.closure(everyone)
    standing = tuple(
        Standing.GOOD if yes >> i & 1 else Standing.NOT_KNOWN if may >> i & 1 else Standing.NONE
        for i in range(len(ids))
    )
    lone = everyone & ~yes & ~may
    return Mesh(ids, good, hoped, endless, margin, standing, yes, lone)


def _margins(schedule: Schedule, links: Links, ids: Sequence[str]) -> NDArray[np.float64]:
    size = len(ids)
    table = np.full((size + 1, size + 1), np.nan)
    number = {device_id: i for i, device_id in enumerate(ids)}
    for net_id in schedule.house.networks:
        if net_id not in links:
            continue
        of_net = links[net_id]
        own = [
            (i, size if name == CONTROLLER else number[name])
            for i, name in enumerate(of_net.ids)
            if name == CONTROLLER or (name in number and schedule.house.devices[name].network == net_id)
        ]
        theirs = np.array([i for i, _ in own], dtype=np.intp)
        ours = np.array([j for _, j in own], dtype=np.intp)
        rows, columns = np.ix_(ours, ours)
        # The controller's own corner is shared by all networks and never read.
        table[rows, columns] = of_net.margin_db[np.ix_(theirs, theirs)]
    silent = np.append(_without_radio(schedule, ids), False)
    table[-1, silent] = table[silent, -1] = np.inf
    return table


def _without_radio(schedule: Schedule, ids: Sequence[str]) -> NDArray[np.bool_]:
    return np.array([not schedule.on_radio(d) for d in ids], dtype=np.bool_)


def _same_network(schedule: Schedule, ids: Sequence[str]) -> NDArray[np.bool_]:
    """Pairs of one network; a device whose network is not stated has no parent to speak of yet."""
    number = {net_id: n for n, net_id in enumerate(schedule.house.networks)}
    nets = np.array([number.get(schedule.house.devices[d].network or "", -1) for d in ids], dtype=np.int32)
    has = nets >= 0
    table = np.zeros((len(ids) + 1, len(ids) + 1), dtype=np.bool_)
    table[:-1, :-1] = (nets[:, None] == nets[None, :]) & has[:, None]
    # An extension unit joins nothing: it stands as soon as it is fitted.
    table[-1, :-1] = table[:-1, -1] = has | _without_radio(schedule, ids)
    np.fill_diagonal(table, False)
    return table


def _within(schedule: Schedule, ids: Sequence[str]) -> tuple[int, ...]:
    limits = []
    for device_id in ids:
        net_id = schedule.house.devices[device_id].network
        limits.append(MOST_HOPS[schedule.house.networks[net_id].protocol] if net_id else None)
    deepest = max((limit for limit in limits if limit is not None), default=0)
    return tuple(_mask([limit is None or depth <= limit for limit in limits]) for depth in range(deepest + 2))


def _reach(good: NDArray[np.bool_], carriers: int, within: tuple[int, ...]) -> Reach:
    packed = np.packbits(good[:, :-1], axis=1, bitorder="little")
    rows = [int.from_bytes(row.tobytes(), "little") for row in packed]
    return Reach(rows[-1], tuple(rows[:-1]), carriers, within)


def _mask(flags: Sequence[bool]) -> int:
    return sum(1 << i for i, flag in enumerate(flags) if flag)
