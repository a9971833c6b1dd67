"""In which order the groups of circuits are isolated.

Each stage isolates one group, fits all of it, energises it and joins all that can then be joined.
What finds no parent yet is joined in a later stage. So each group is isolated once, and the shortest
way counts. Found by layers: all states after one stage, after two, and so on; a state is what is
fitted and joined. Exact while no layer is thinned out and every tour is small.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from secondfix.joining.parents import Mesh, MeshGrowing
from secondfix.joining.readings import bits
from secondfix.joining.tour import EXACT_STOPS, Distance, Ends, ways

EXACT_DEVICES = 10
EXACT_GROUPS = 6
WIDEST_LAYER = 3
MOST_BRANCHES = 10


@dataclass(frozen=True, slots=True)
class Site:
    """What the search needs to know; devices are numbers, sets of them bit sets.

    ``fits[g]`` are the wired devices of group ``g``, ``stops[g]`` one of them for each place;
    ``with_group[g]`` the plug-in devices that have power only once ``g`` is energised; ``loose``
    those powered from the beginning; ``asleep`` the battery devices, joined last.
    """

    mesh: Mesh
    distance: Distance
    fits: tuple[int, ...]
    stops: tuple[tuple[int, ...], ...]
    with_group: tuple[int, ...]
    loose: int
    asleep: int

    def joinable(self, joined: int, fitted: int) -> int:
        """All that stands joined once the groups of ``fitted`` are energised."""
        may = joined | self.loose
        for g in bits(fitted):
            may |= self.with_group[g] | self.fits[g]
        return self.mesh.closure(may)


@dataclass(frozen=True, slots=True)
class Round:
    """One stage as found: ``group`` is None where nothing is isolated; stops in walking order."""

    group: int | None
    fit: tuple[int, ...]
    join: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Route:
    """All rounds, their walking in mm, and whether nothing shorter exists."""

    rounds: tuple[Round, ...]
    walked_mm: int
    exact: bool


def route(site: Site) -> Route:
    """The order of stages and the way through each."""
    awake = sum(m.bit_count() for m in (*site.fits, *site.with_group, site.loose))
    small = awake <= EXACT_DEVICES and len(site.fits) <= EXACT_GROUPS
    chosen, whole = _search(site, rough=not small)
    rounds, length = _walked(site, chosen)
    longest = max((len(stops) for r in rounds for stops in (r.fit, r.join)), default=0)
    return Route(rounds, length, small and whole and longest <= EXACT_STOPS)


_Layer = dict[tuple[int, int], Ends]  # what is fitted, what is joined: the ways that lead there


def _search(site: Site, *, rough: bool) -> tuple[tuple[int, ...], bool]:
    """The groups in the order isolated, and whether every state was looked at."""
    joined = site.mesh.closure(site.loose)
    ends = ways(tuple(bits(joined)), {-1: (0, ())}, site.distance, site.mesh, rough=rough)
    last = (1 << len(site.fits)) - 1
    awake = site.loose
    for group, fits in enumerate(site.fits):
        awake |= fits | site.with_group[group]
    goal = (last, site.mesh.closure(awake))
    layer: _Layer = {(0, joined): ends}
    whole = True
    while goal not in layer:
        layer = _following(site, layer, rough=rough)
        if rough and len(layer) > WIDEST_LAYER:
            layer = dict(sorted(layer.items(), key=lambda item: _promise(*item))[:WIDEST_LAYER])
            whole = False
    path = min(layer[goal].values())[1]
    return tuple(_group(mark) for mark in path if mark < -1), whole


def _promise(key: tuple[int, int], ends: Ends) -> tuple[int, tuple[int, int]]:
    """Least first: the way so far."""
    return min(length for length, _ in ends.values()), key


def _mark(group: int) -> int:
    """A stage's beginning as it stands in a path, apart from stops (0 and up) and nowhere (-1)."""
    return -2 - group


def _group(mark: int) -> int:
    return -2 - mark


class _Standing:
    """The mesh as `ways` asks it, where many ways begin with the same devices joined."""

    def __init__(self, mesh: Mesh) -> None:
        self.ready, self.keeps = mesh.ready, mesh.keeps
        self._mesh = mesh
        self._begun: tuple[int, MeshGrowing] | None = None

    def growing(self, joined: int) -> MeshGrowing:
        """As `Mesh.growing`, worked out once for ways that begin alike."""
        if self._begun is None or self._begun[0] != joined:
            self._begun = joined, self._mesh.growing(joined)
        return self._begun[1].again()


def _following(site: Site, layer: _Layer, *, rough: bool) -> _Layer:
    found: _Layer = {}
    order = _Standing(site.mesh)
    for (fitted, joined), ends in layer.items():
        for group in _branches(site, fitted, joined, ends, rough=rough):
            now = fitted | 1 << group
            after = site.joinable(joined, now)
            marked = {end: (length, (*path, _mark(group))) for end, (length, path) in ends.items()}
            join = tuple(bits(after & ~joined))
            fitting = ways(site.stops[group], marked, site.distance, None, rough=rough)
            arrived = ways(join, fitting, site.distance, order, done=joined, rough=rough)
            best = found.setdefault((now, after), {})
            for end, way in arrived.items():
                if end not in best or way < best[end]:
                    best[end] = way
    return found


def _branches(site: Site, fitted: int, joined: int, ends: Ends, *, rough: bool) -> list[int]:
    """Groups worth isolating next: all, or in a large house those that are ready and near."""
    groups = [g for g in range(len(site.fits)) if not fitted >> g & 1]
    if not rough or len(groups) <= MOST_BRANCHES:
        return groups
    ready = site.mesh.ready(joined)
    here = min(ends, key=lambda e: (ends[e][0], e))

    def rank(group: int) -> tuple[bool, int, int]:
        near = min((site.distance(here, s) for s in site.stops[group]), default=0) if here >= 0 else 0
        return not ready & site.fits[group], near, group

    return sorted(groups, key=rank)[:MOST_BRANCHES]


def _walked(site: Site, chosen: Sequence[int]) -> tuple[tuple[Round, ...], int]:
    """The stages with their ways, now with full care for each tour, and the length of it all."""
    joined = site.mesh.closure(site.loose)
    ends = ways(tuple(bits(joined)), {-1: (0, ())}, site.distance, site.mesh)
    plan: list[tuple[int | None, int, int]] = [(None, 0, joined.bit_count())]
    fitted = 0
    for group in chosen:
        fitted |= 1 << group
        after = site.joinable(joined, fitted)
        ends = ways(site.stops[group], ends, site.distance, None)
        ends = ways(tuple(bits(after & ~joined)), ends, site.distance, site.mesh, done=joined)
        plan.append((group, len(site.stops[group]), (after & ~joined).bit_count()))
        joined = after
    ends = ways(tuple(bits(site.asleep)), ends, site.distance, None)
    plan.append((None, 0, site.asleep.bit_count()))
    length, path = min(ends.values())
    rounds, at = [], 0
    for group_or_none, fits, joins in plan:
        rounds.append(Round(group_or_none, path[at : at + fits], path[at + fits : at + fits + joins]))
        at += fits + joins
    return tuple(r for r in rounds if r.fit or r.join), length
