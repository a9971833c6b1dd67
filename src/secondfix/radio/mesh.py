"""Routes over links: the best weakest link within so many hops, and who hangs on one repeater."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints

ROOT = 0  # the controller is station 0


@dataclass(frozen=True, slots=True, eq=False)
class Hops:
    """One-way steps away from the controller, sorted by target: ``source`` may pass on to ``target``."""

    count: int
    source: Ints
    target: Ints
    margin_db: Floats
    start: Ints  # where each target's steps begin, for the targets in ``reached``
    reached: Ints

    def into(self, station: int) -> slice:
        """The steps into one station."""
        low, high = np.searchsorted(self.target, [station, station + 1])
        return slice(int(low), int(high))


def hops_of(a: Ints, b: Ints, margin_db: Floats, forwards: Bools) -> Hops:
    """Turn links into steps: both ways where both ends pass on; ``forwards`` tells who does."""
    source, target = np.concatenate([a, b]), np.concatenate([b, a])
    margin = np.concatenate([margin_db, margin_db])
    kept = forwards[source] & (target != ROOT)
    source, target, margin = source[kept], target[kept], margin[kept]
    order = np.lexsort((source, target))
    source, target, margin = source[order], target[order], margin[order]
    reached, start = np.unique(target, return_index=True)
    return Hops(len(forwards), source, target, margin, start.astype(np.int64), reached)


def widest(hops: Hops, *, most_hops: int) -> list[Floats]:
    """For 0, 1, 2, … hops: the margin of the weakest link on the best route to each station, in dB.

    The list ends where more hops help nobody, or at ``most_hops``; no route is minus infinity. Exact
    (dynamic programming over the number of hops).
    """
    best = np.full(hops.count, -np.inf)
    best[ROOT] = np.inf
    rounds = [best]
    while len(rounds) <= most_hops and len(hops.source):
        through = np.minimum(best[hops.source], hops.margin_db)
        better = best.copy()
        better[hops.reached] = np.maximum(best[hops.reached], np.maximum.reduceat(through, hops.start))
        if np.array_equal(better, best):
            break
        rounds.append(better)
        best = better
    return rounds


def route(hops: Hops, rounds: list[Floats], station: int, *, enough_db: float) -> list[int]:
    """The route to show: fewest hops whose weakest link has ``enough_db``, else fewest of the best.

    Station numbers from ``station`` to the controller; empty where there is no route.
    """
    last = rounds[-1][station]
    if last == -np.inf:
        return []
    goal = min(enough_db, last)
    out, at = [station], station
    left = next(k for k, best in enumerate(rounds) if best[station] >= goal)
    while at != ROOT:
        into = hops.into(at)
        through = np.minimum(rounds[left - 1][hops.source[into]], hops.margin_db[into])
        at = int(hops.source[into][int(np.argmax(through))])
        out.append(at)
        left = next(k for k, best in enumerate(rounds) if best[at] >= rounds[left - 1][at])
    return out


def hanging(hops: Hops, *, enough_db: float, most_hops: int) -> Mapping[int, frozenset[int]]:
    """For each station with a route of good links: the repeaters without any one of which it has none.

    A link is good from ``enough_db``. Exact within the hop limit: a repeater is missed by a station after
    h hops if each of its parents is that repeater or misses it after h − 1. Stations without a route are
    absent; an empty set means that no single repeater is missed.
    """
    good = hops.margin_db >= enough_db
    source, target = hops.source[good], hops.target[good]
    missed: dict[int, frozenset[int]] = {ROOT: frozenset()}
    safe = np.zeros(hops.count, np.bool_)
    safe[ROOT] = True
    parents = _parents(source, target)
    for _ in range(most_hops):
        # Two parents that miss nobody, or the controller itself, settle most stations at one stroke.
        count = np.bincount(target[safe[source]], minlength=hops.count)
        count[target[source == ROOT]] = 2
        safer = safe | (count >= 2)
        after = dict(missed)
        after.update((int(n), frozenset()) for n in np.flatnonzero(safer & ~safe))
        for station in parents:
            if not safer[station]:
                found = _missed_after(station, parents[station], missed)
                if found is not None:
                    after[station] = found
                    safer[station] = not found
        if after == missed:
            break
        missed, safe = after, safer
    return {station: names - {station} for station, names in missed.items() if station != ROOT}


def _parents(source: Ints, target: Ints) -> dict[int, list[int]]:
    out: dict[int, list[int]] = {}
    for above, below in zip(source.tolist(), target.tolist(), strict=True):
        out.setdefault(below, []).append(above)
    return out


def _missed_after(
    station: int, parents: list[int], missed: Mapping[int, frozenset[int]]
) -> frozenset[int] | None:
    common = missed.get(station)
    for parent in parents:
        behind = missed.get(parent)
        if behind is not None:
            here = behind if parent == ROOT else behind | {parent}
            common = here if common is None else common & here
            if not common:
                return common
    return common
