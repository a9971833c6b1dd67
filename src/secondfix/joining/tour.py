"""The shortest way round the stops of one stage: first to fit, then to join.

Both are open paths: they begin where the last one ended. Fitting has no order of its own; a join
needs a parent that is joined already. Small stages are solved exactly by dynamic programming over
subsets, larger ones by the nearest stop that may come next and then by moving and turning parts
of the way as long as that shortens it.
"""

from collections.abc import Callable, Mapping, Sequence
from typing import Protocol

from secondfix.joining.readings import bits

Distance = Callable[[int, int], int]


class Growing(Protocol):
    """What may come next, kept up while one stop after the other is done."""

    def ready(self) -> int:
        """As `Precedence.ready` of all that is done by now."""
        ...

    def join(self, number: int) -> None:
        """One more stop is done."""
        ...


class Precedence(Protocol):
    """What may come when; sets of stops are bit sets."""

    def ready(self, joined: int) -> int:
        """Stops that may come next once ``joined`` are done."""
        ...

    def growing(self, joined: int) -> Growing:
        """The same, for a way that is made stop by stop."""
        ...

    def keeps(self, path: Sequence[int], joined: int) -> bool:
        """Whether each stop of ``path`` may come when it comes, ``joined`` being done before."""
        ...


Ends = dict[int, tuple[int, tuple[int, ...]]]
"""Per last stop, the length in mm of the shortest way that ends there, and its stops in order."""

EXACT_STOPS = 7


def ways(
    stops: Sequence[int],
    starts: Ends,
    distance: Distance,
    order: Precedence | None,
    *,
    done: int = 0,
    rough: bool = False,
) -> Ends:
    """Continue each of ``starts`` over all ``stops`` (numbers below the bits of a set).

    ``done`` are done before; no ``order`` lets any stop come at any time. Key -1 in ``starts`` is a
    start that costs nothing to leave. The caller warrants that some order exists. Exact up to
    ``EXACT_STOPS`` stops; beyond, or ``rough``, one way.
    """
    if not stops:
        return starts
    if len(stops) <= EXACT_STOPS and not rough:
        return _exact(stops, starts, distance, order, done)
    end = min(starts, key=lambda e: (starts[e][0], e))
    length, before = starts[end]
    tail = _nearest(stops, end, distance, order, done)
    if not rough:
        tail = improved(tail, end, distance, order, done)
    return {tail[-1]: (length + path_length(tail, end, distance), (*before, *tail))}


def path_length(path: Sequence[int], start: int, distance: Distance) -> int:
    """Length of a way from ``start`` (-1: nowhere in particular) over ``path``."""
    total, here = 0, start
    for stop in path:
        total += distance(here, stop) if here >= 0 else 0
        here = stop
    return total


def _exact(
    stops: Sequence[int], starts: Ends, distance: Distance, order: Precedence | None, done: int
) -> Ends:
    everything = sum(1 << s for s in stops)
    layer: dict[int, Ends] = {0: dict(starts)}
    for _ in stops:
        following: dict[int, Ends] = {}
        for visited, ends in layer.items():
            may = everything & ~visited & (order.ready(done | visited) if order else -1)
            for stop in bits(may):
                best = _arrive(ends, stop, distance)
                at = following.setdefault(visited | 1 << stop, {})
                if stop not in at or best < at[stop]:
                    at[stop] = best
        layer = following
    return layer[everything]


def _arrive(
    ends: Mapping[int, tuple[int, tuple[int, ...]]], stop: int, distance: Distance
) -> tuple[int, tuple[int, ...]]:
    return min(
        (length + (distance(end, stop) if end >= 0 else 0), (*path, stop))
        for end, (length, path) in ends.items()
    )


def _nearest(
    stops: Sequence[int], start: int, distance: Distance, order: Precedence | None, done: int
) -> list[int]:
    left = set(stops)
    path: list[int] = []
    here = start
    growing = order.growing(done) if order else None
    while left:
        may = growing.ready() if growing else -1
        nearest = min(
            (s for s in left if may >> s & 1), key=lambda s: (distance(here, s) if here >= 0 else 0, s)
        )
        path.append(nearest)
        left.discard(nearest)
        if growing:
            growing.join(nearest)
        here = nearest
    return path


def improved(
    path: list[int], start: int, distance: Distance, order: Precedence | None, done: int, *, passes: int = 8
) -> list[int]:
    """The way after moving runs of up to three stops, and turning runs round, while that shortens it."""
    for _ in range(passes):
        shorter = _moved(path, start, distance, order, done) or _turned(path, start, distance, order, done)
        if shorter is None:
            return path
        path = shorter
    return path


def _span(distance: Distance, a: int, b: int) -> int:
    return distance(a, b) if a >= 0 and b >= 0 else 0


def _turned(
    path: list[int], start: int, distance: Distance, order: Precedence | None, done: int
) -> list[int] | None:
    """One sweep of turning runs round; None if no turn helped."""
    helped = False
    for i in range(len(path) - 1):
        before = path[i - 1] if i else start
        for j in range(i + 1, len(path)):
            after = path[j + 1] if j + 1 < len(path) else -1
            gain = (
                _span(distance, before, path[i])
                + _span(distance, path[j], after)
                - _span(distance, before, path[j])
                - _span(distance, path[i], after)
            )
            if gain > 0:
                trial = [*path[:i], *reversed(path[i : j + 1]), *path[j + 1 :]]
                if order is None or order.keeps(trial, done):
                    path, helped = trial, True
    return path if helped else None


def _moved(
    path: list[int], start: int, distance: Distance, order: Precedence | None, done: int
) -> list[int] | None:
    """One sweep of moving runs elsewhere; None if no move helped."""
    helped = False
    for size in (1, 2, 3):
        for i in range(len(path) - size + 1):
            run = path[i : i + size]
            rest = [*path[:i], *path[i + size :]]
            best = _best_gap(run, rest, start, distance)
            trial = [*rest[:best], *run, *rest[best:]]
            shorter = path_length(trial, start, distance) < path_length(path, start, distance)
            if shorter and (order is None or order.keeps(trial, done)):
                path, helped = trial, True
    return path if helped else None


def _best_gap(run: list[int], rest: list[int], start: int, distance: Distance) -> int:
    def cost(k: int) -> int:
        before = rest[k - 1] if k else start
        after = rest[k] if k < len(rest) else -1
        added = _span(distance, before, run[0]) + _span(distance, run[-1], after)
        return added - _span(distance, before, after)

    return min(range(len(rest) + 1), key=lambda k: (cost(k), k))
