"""What each conductor between the places can become, so that one module feeds the load."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise, product

from secondfix.electrical.multiway.as_found import LAMP
from secondfix.house import Arrangement


class Role(StrEnum):
    """What a conductor carries."""

    LINE = "permanent line"
    NEUTRAL = "neutral"
    SIGNAL = "signal"
    SWITCHED = "switched line"
    TRAVELLER = "traveller"
    LINE_OR_SWITCHED = "line, or switched line"
    SPARE = "spare"
    CAPPED = "capped"


@dataclass(frozen=True, slots=True)
class Core:
    """One conductor of a run: its name on the drawing, and what it carries as found."""

    name: str
    was: Role


@dataclass(frozen=True, slots=True)
class Run:
    """The cores between two neighbouring points that may be used anew, and a neutral that stays."""

    a: str
    b: str
    cores: tuple[Core, ...]
    kept: tuple[Core, ...] = ()


@dataclass(frozen=True, slots=True)
class Chain:
    """The points of one light in a row; ``line_at`` is where permanent line comes in."""

    points: tuple[str, ...]
    runs: tuple[Run, ...]
    line_at: str


@dataclass(frozen=True, slots=True)
class Wish:
    """Where the module goes, whether it needs a neutral, and from which places a push is wired to it.

    ``line_at``, ``neutral_at``: points at which the survey found permanent line, or a neutral, of the
    same circuit besides what the arrangement brings.
    """

    module: str
    needs_neutral: bool
    inputs: frozenset[str] = frozenset()
    line_at: frozenset[str] = frozenset()
    neutral_at: frozenset[str] = frozenset()


_T1, _T2 = Core("traveller 1", Role.TRAVELLER), Core("traveller 2", Role.TRAVELLER)
_STAYS = (Core("neutral, where one runs through", Role.NEUTRAL),)


def chain_of(arrangement: Arrangement, places: int, *, spare_cores: int = 0) -> Chain:
    """The runs of an arrangement with the fewest cores it can have, and the spare ones that were counted.

    Legal range: 2 to 8 places. *Not joined* has no runs; a switched neutral is put right first
    (``ValueError``). Source: common practice, no source.
    """
    if arrangement is Arrangement.SWITCHED_NEUTRAL:
        raise ValueError("a switched neutral is put right, not converted")
    boxes = tuple(map(str, range(1, places + 1)))
    spare = tuple(Core(f"spare {n}", Role.SPARE) for n in range(1, spare_cores + 1))
    switched = Core("lamp's core", Role.SWITCHED)
    if arrangement is Arrangement.NOT_JOINED:
        return Chain(boxes, (), "1")
    if arrangement is Arrangement.OPPOSITE_ENDS:
        runs = [Run(a, b, (_T1, _T2, *spare), _STAYS) for a, b in pairwise(boxes)]
        to_lamp = Run(boxes[-1], LAMP, (switched, *spare), _STAYS)
        return Chain((*boxes, LAMP), (*runs, to_lamp), "1")
    if arrangement is Arrangement.FEED_AT_LUMINAIRE:
        points = ("1", LAMP, *boxes[1:])
        third = [Core("third core", Role.LINE)] + [Core("third core", Role.SWITCHED)] * (places - 1)
        runs = [Run(a, b, (_T1, _T2, t, *spare)) for (a, b), t in zip(pairwise(points), third, strict=True)]
        return Chain(points, tuple(runs), LAMP)
    third_core = Core("third core", Role.LINE_OR_SWITCHED)
    runs = [Run(a, b, (_T1, _T2, third_core, *spare)) for a, b in pairwise(boxes)]
    if arrangement is Arrangement.SWITCH_LOOP:
        loop = Run(LAMP, "1", (Core("line core", Role.LINE), switched, *spare))
        return Chain((LAMP, *boxes), (loop, *runs), LAMP)
    return Chain((LAMP, *boxes), (Run(LAMP, "1", (switched, *spare), _STAYS), *runs), "1")


Plan = tuple[frozenset[Role], ...]  # for each run, what crosses it


def plan(chain: Chain, wish: Wish) -> Plan | None:
    """What must cross each run, or None where some run has too few cores for it.

    A conductor that several places need is one tree along the row; line and neutral come from whichever
    source is nearest, never from two. A run bears as many as it has cores. Exact: tested against every
    assignment of the cores. Source: common practice, no source.
    """
    if not chain.runs:
        return _without_runs(wish)
    line_from = wish.line_at | {chain.line_at}
    neutral_from = wish.neutral_at | {LAMP}
    line_to = {wish.module} | wish.inputs
    neutral_to = {wish.module} if wish.needs_neutral else set()
    fixed = {Role.SWITCHED: _span(chain, {wish.module, LAMP})}
    if wish.inputs:
        fixed[Role.SIGNAL] = _span(chain, {wish.module} | wish.inputs)
    for line, neutral in product(_trees(chain, line_to, line_from), _trees(chain, neutral_to, neutral_from)):
        used = {**fixed, Role.LINE: line, Role.NEUTRAL: neutral}
        crossing = [frozenset(r for r, at in used.items() if i in at) for i in range(len(chain.runs))]
        if all(len(roles) <= len(run.cores) for roles, run in zip(crossing, chain.runs, strict=True)):
            return tuple(crossing)
    return None


def _without_runs(wish: Wish) -> Plan | None:
    """No conductor joins the places: the box of the module has its own line and lamp's core."""
    neutral = not wish.needs_neutral or wish.module in wish.neutral_at | {LAMP}
    return () if neutral and not wish.inputs else None


def _span(chain: Chain, points: set[str] | frozenset[str]) -> frozenset[int]:
    at = [chain.points.index(p) for p in points]
    return frozenset(range(min(at), max(at)))


def _trees(chain: Chain, wanted: set[str], sources: frozenset[str]) -> Iterator[frozenset[int]]:
    """Every least set of runs by which each wanted point meets exactly one source."""
    froms = sorted(chain.points.index(p) for p in sources if p in chain.points)
    choices = []
    for at in sorted(chain.points.index(p) for p in wanted):
        below = max((f for f in froms if f <= at), default=None)
        above = min((f for f in froms if f >= at), default=None)
        reach = {frozenset(range(*sorted((at, f)))) for f in (below, above) if f is not None}
        choices.append(sorted(reach, key=lambda runs: (len(runs), sorted(runs))))
    for chosen in product(*choices):
        runs = frozenset[int]().union(*chosen)
        if not _joins_two(runs, froms):
            yield runs


def _joins_two(runs: frozenset[int], sources: list[int]) -> bool:
    """Whether the runs lead from one source to the next: a ring over the feeding conductors."""
    return any(all(i in runs for i in range(a, b)) for a, b in pairwise(sources))


_KEEP = {
    Role.NEUTRAL: (Role.NEUTRAL,),
    Role.LINE: (Role.LINE, Role.LINE_OR_SWITCHED),
    Role.SWITCHED: (Role.SWITCHED, Role.LINE_OR_SWITCHED),
    Role.SIGNAL: (),
}


def assigned(run: Run, roles: frozenset[Role]) -> tuple[tuple[Core, Role], ...]:
    """Each core with what it becomes: a core that already carries a thing keeps it; the rest is capped."""
    free = list(run.cores)
    becomes: dict[Core, Role] = {}
    for role in sorted(roles, key=lambda r: (not any(c.was in _KEEP[r] for c in run.cores), r.value)):
        core = min(free, key=lambda c: _reluctance(c, role))
        becomes[core] = role
        free.remove(core)
    return tuple((core, becomes.get(core, Role.CAPPED)) for core in run.cores)


def _reluctance(core: Core, role: Role) -> tuple[bool, int]:
    """What is used first: a core that carries it already, a traveller (a spare for neutral), the rest."""
    first = Role.SPARE if role is Role.NEUTRAL else Role.TRAVELLER
    rest = (first, Role.TRAVELLER, Role.SPARE, Role.LINE_OR_SWITCHED, Role.SWITCHED, Role.LINE)
    return core.was not in _KEEP[role], rest.index(core.was)
