"""The radio engine: crossings by class, draws, reach and each repeater gone, against general libraries.

Baselines that would run for hours take fewer draws or repeaters and are scaled by the factor in their
figure's name; what they do answer is compared with the engine's answer first.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from functools import cache
from typing import Any

import networkx as nx
import numpy as np
import shapely  # type: ignore[import-untyped]  # it ships no types
from scipy.sparse import coo_array
from scipy.sparse.csgraph import dijkstra

from bench.figures import Pair, figure, seconds_side_by_side
from bench.manor import manor_rows
from secondfix.assumptions import default_assumptions
from secondfix.radio import (
    Decks,
    Ends,
    Foreseen,
    Panels,
    Spots,
    Steps,
    count_crossings,
    cover,
    draw_links,
    foresee,
    how_often,
    reach,
    reached,
    steps_of,
    without_each,
)

DRAWS = 10_000
MOST_LINKS = 5
SPREAD_DB = 6.0
NO_DECKS = Decks(np.zeros(0, np.int64), np.zeros(0, np.int64))


@cache
def plan(places: int, walls: int) -> tuple[Spots, Panels]:
    """Rooms of 4 m on one storey: places on odd half centimetres, walls on even ones."""
    rng = np.random.default_rng(61)
    side = int(800 * np.sqrt(walls / 2))
    at = 2 * rng.integers(0, side // 2, (2, places)) + 1
    spots = Spots(at[0], at[1], np.full(places, 210))
    x, y = (2 * rng.integers(0, side // 2, walls) for _ in range(2))
    long, across = 2 * rng.integers(150, 400, walls), rng.random(walls) < 0.5
    x2, y2 = np.where(across, x + long, x), np.where(across, y, y + long)
    low, high = np.full(walls, 0), np.full(walls, 540)
    return spots, Panels(x, y, x2, y2, low, high, np.sort(rng.integers(0, 4, walls)))


def as_shapes(spots: Spots, panels: Panels) -> tuple[Any, Any]:
    a, b = np.triu_indices(len(spots), 1)
    at = np.stack([spots.x, spots.y], axis=1)
    ends = np.stack([panels.x1, panels.y1, panels.x2, panels.y2], axis=1).reshape(-1, 2, 2)
    return shapely.linestrings(np.stack([at[a], at[b]], axis=1)), shapely.linestrings(ends)


def side_by_side(engine: Callable[[], object], library: Callable[[], object], *, rounds: int) -> Pair:
    """Seconds of each; the engine ten times to a round, or what the library left behind is timed too."""

    def ten_times() -> None:
        for _ in range(10):
            engine()

    value, baseline = seconds_side_by_side(ten_times, library, rounds=rounds)
    return value / 10, baseline


def same_but_grazes(counted: Any, expected: Any) -> None:
    """A sight line exactly through a wall's end is a matter of rule; such pairs are one in a thousand."""
    off = int(np.count_nonzero(counted != expected))
    if off * 1000 > len(expected):
        raise RuntimeError(f"{off} of {len(expected)} pairs differ from the library")


@figure(
    "crossings of 1000 places and 1000 walls by class, against a shapely loop over 1 of 500 pairs × 500",
    unit="s",
)
def crossings_against_a_loop() -> Pair:
    spots, panels = plan(1000, 1000)
    sights, walls = as_shapes(spots, panels)
    some = sights[::500]

    def loop() -> list[int]:
        return [sum(wall.intersects(sight) for wall in walls) for sight in some]

    counted = count_crossings(spots, panels, NO_DECKS, kinds=4)
    same_but_grazes(counted[::500].sum(axis=1), np.array(loop()))
    value, baseline = side_by_side(lambda: count_crossings(spots, panels, NO_DECKS, kinds=4), loop, rounds=3)
    return value, baseline * len(sights) / len(some)


@figure(
    "crossings of 1000 places and 1000 walls by class, against a shapely tree over 1 of 20 pairs × 20",
    unit="s",
)
def crossings_against_a_tree() -> Pair:
    spots, panels = plan(1000, 1000)
    sights, walls = as_shapes(spots, panels)
    some = sights[::20]

    def tree() -> Any:
        hits = shapely.STRtree(walls).query(some, predicate="intersects")
        return np.bincount(hits[0], minlength=len(some))

    counted = count_crossings(spots, panels, NO_DECKS, kinds=4)
    same_but_grazes(counted[::20].sum(axis=1), tree())
    value, baseline = side_by_side(lambda: count_crossings(spots, panels, NO_DECKS, kinds=4), tree, rounds=3)
    return value, baseline * len(sights) / len(some)


class Mesh:
    """Devices strewn at one density, 40 % of them repeaters, links kept whose chance is above 1 in 10,000."""

    def __init__(self, devices: int) -> None:
        rng = np.random.default_rng(devices)
        at = rng.random((devices, 2)) * 7 * np.sqrt(devices)
        at[0] = at.mean(axis=0)
        a, b = (ends.astype(np.int64) for ends in np.triu_indices(devices, 1))
        far = np.hypot(*(at[a] - at[b]).T).clip(1)
        margin = 35 - 20 * np.log10(far) - 0.6 * far
        self.forwards = rng.random(devices) < 0.4
        self.forwards[0] = True
        kept = (margin > -3.72 * SPREAD_DB) & (self.forwards[a] | self.forwards[b])
        self.ends = Ends(devices, a[kept], b[kept])
        self.margin_db = margin[kept]
        self.steps: Steps = steps_of(self.ends, self.forwards)
        self.links = self.drawn(shared=0.0)

    def drawn(self, *, shared: float) -> Any:
        return draw_links(
            self.ends, margin_db=self.margin_db, spread_db=SPREAD_DB, shared=shared, draws=DRAWS, seed=17
        )

    def alive(self, draw: int) -> tuple[Any, Any]:
        """Sources and targets of the steps that work in one draw."""
        works = (self.links[self.steps.link, draw // 64] >> np.uint64(draw % 64)) & np.uint64(1) == 1
        target = np.repeat(np.arange(self.ends.count), np.diff(self.steps.begin))
        return self.steps.source[works], target[works]


mesh = cache(Mesh)


def by_scipy(m: Mesh, draws: range) -> Any:
    """Draws in which each station is reached, with a search of the library per draw."""
    seen = np.zeros(m.ends.count, np.int64)
    for draw in draws:
        source, target = m.alive(draw)
        square = coo_array((np.ones(len(source)), (source, target)), shape=(m.ends.count,) * 2).tocsr()
        seen += dijkstra(square, unweighted=True, indices=0, limit=MOST_LINKS) <= MOST_LINKS
    return seen


def as_graph(m: Mesh, draw: int) -> nx.DiGraph[int]:
    out: nx.DiGraph[int] = nx.DiGraph()
    out.add_nodes_from(range(m.ends.count))
    out.add_edges_from(zip(*(side.tolist() for side in m.alive(draw)), strict=True))
    return out


def by_networkx(m: Mesh, draws: range) -> Any:
    seen = np.zeros(m.ends.count, np.int64)
    for draw in draws:
        found = nx.single_source_shortest_path_length(as_graph(m, draw), 0, cutoff=MOST_LINKS)
        seen[list(found)] += 1
    return seen


def reach_pair(devices: int, library: Callable[[Mesh, range], Any], draws: int, *, plain: bool) -> Pair:
    m = mesh(devices)
    words = np.ascontiguousarray(m.links[:, : -(-draws // 64)])
    first = np.array([(1 << min(max(draws - 64 * w, 0), 64)) - 1 for w in range(words.shape[1])], np.uint64)
    bits = reached(m.steps, words, most_links=MOST_LINKS, plain=plain) & first
    if not np.array_equal(how_often(bits), library(m, range(draws))):
        raise RuntimeError("the engine and the library reach different devices in the same draws")
    value, baseline = side_by_side(
        lambda: reached(m.steps, m.links, most_links=MOST_LINKS, plain=plain),
        lambda: library(m, range(draws)),
        rounds=5,
    )
    return value, baseline * DRAWS / draws


def reach_figures(devices: int, draws: int) -> None:
    @figure(
        f"reach of {devices} devices in 10000 draws, against scipy over {draws} draws × {DRAWS // draws}",
        unit="s",
    )
    def _scipy() -> Pair:
        return reach_pair(devices, by_scipy, draws, plain=False)

    @figure(
        f"reach of {devices} devices in 10000 draws without numba, against networkx over {draws} draws"
        f" × {DRAWS // draws}",
        unit="s",
    )
    def _networkx() -> Pair:
        return reach_pair(devices, by_networkx, draws, plain=True)


for _devices, _draws in ((100, 100), (300, 25), (1000, 10)):
    reach_figures(_devices, _draws)


def chain(devices: int) -> Any:
    """All of it: walls, draws, reach and every single repeater gone."""
    m = mesh(devices)
    spots, panels = plan(devices, devices)
    count_crossings(spots, panels, NO_DECKS, kinds=4)
    return without_each(m.steps, m.drawn(shared=0.0), most_links=MOST_LINKS)


def slow_chain(devices: int, repeaters: int) -> tuple[float, dict[int, set[int]]]:
    """Seconds that shapely, numpy and networkx would take, scaled; and who falls with whom in draw 0."""
    m = mesh(devices)
    sights, walls = as_shapes(*plan(devices, devices))
    some = sights[:: max(1, len(sights) // 500)]
    start = time.perf_counter()
    for sight in some:
        sum(wall.intersects(sight) for wall in walls)
    walled = (time.perf_counter() - start) * len(sights) / len(some)
    start = time.perf_counter()
    normal = np.random.default_rng(1).normal(m.margin_db[:, None], SPREAD_DB, (len(m.margin_db), 500))
    np.packbits(normal > 0, axis=1)
    drawn = (time.perf_counter() - start) * DRAWS / 500
    repeating = np.unique(m.steps.source[m.steps.source != 0]).tolist()
    graph = as_graph(m, 0)
    start = time.perf_counter()
    seen = set(nx.single_source_shortest_path_length(as_graph(m, 0), 0, cutoff=MOST_LINKS))
    searched = (time.perf_counter() - start) * DRAWS
    fallen = {}
    start = time.perf_counter()
    for repeater in repeating[:repeaters]:
        left = graph.copy()
        left.remove_node(repeater)
        kept = set(nx.single_source_shortest_path_length(left, 0, cutoff=MOST_LINKS))
        fallen[repeater] = seen - kept - {repeater}
    again = (time.perf_counter() - start) * DRAWS * len(repeating) / min(repeaters, len(repeating))
    return walled + drawn + searched + again, fallen


def chain_figure(devices: int, repeaters: int) -> None:
    @figure(
        f"walls, draws, reach and every single repeater gone for {devices} devices and walls, against shapely"
        f" and networkx over 500 pairs, 1 draw × 10000 and {repeaters} repeaters",
        unit="s",
    )
    def _chain() -> Pair:
        m = mesh(devices)
        slow, fallen = slow_chain(devices, repeaters)
        one = without_each(
            m.steps, np.ascontiguousarray(m.links[:, :1] & np.uint64(1)), most_links=MOST_LINKS
        )
        for row, repeater in enumerate(one.repeaters.tolist()):
            if repeater in fallen and set(np.flatnonzero(one.lost[row]).tolist()) != fallen[repeater]:
                raise RuntimeError(f"without {repeater} the engine and the library lose different devices")
        value, _ = seconds_side_by_side(lambda: chain(devices), lambda: None, rounds=3)
        return value, slow


for _devices in (300, 1000):
    chain_figure(_devices, 30)


@figure(
    "draws and reach of 1000 devices whose links share half their shadowing, against links that share none",
    unit="s",
)
def shared_shadowing() -> Pair:
    m = mesh(1000)
    return seconds_side_by_side(
        lambda: reached(m.steps, m.drawn(shared=0.5), most_links=MOST_LINKS),
        lambda: reached(m.steps, m.drawn(shared=0.0), most_links=MOST_LINKS),
        rounds=3,
    )


@cache
def sheet_figure(places: int, seed: int, devices: int) -> None:
    @figure(
        f"all that a sheet shows of {places} places with {devices} devices on two networks: reach, chances in"
        f" {DRAWS} draws with what the model leaves open, every case, where one more would be carried on a"
        " storey, against `reach` alone",
        unit="s",
    )
    def _sheet() -> Pair:
        rows, defaults = manor_rows(places, seed), default_assumptions()
        if len(rows.house.devices) != devices:
            raise RuntimeError(f"{len(rows.house.devices)} devices, not {devices}")

        def sheet() -> Foreseen:
            answer = reach(rows, defaults)
            cover(rows, defaults, answer, "N1", "S0")
            return foresee(rows, defaults, answer, draws=DRAWS, seed=1)

        if sum(len(n.cases) for n in sheet().networks.values()) < devices:
            raise RuntimeError("a case for each device or more is what a sheet shows")
        return seconds_side_by_side(sheet, lambda: reach(rows, defaults), rounds=3)


for _places, _seed, _devices in ((96, 7, 60), (150, 2, 86), (400, 7, 247)):
    sheet_figure(_places, _seed, _devices)
