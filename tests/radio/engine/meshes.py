"""Random meshes and random storeys for the engine's tests."""

import networkx as nx
import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints
from secondfix.radio.engine.drawing import Ends, Words
from secondfix.radio.engine.panels import Decks, Panels, Spots


def mesh(*, count: int, seed: int) -> tuple[Ends, Floats, Bools]:
    """Links, their margins and who passes on: devices strewn over a square."""
    rng = np.random.default_rng(seed)
    at = rng.random((count, 2)) * 6 * np.sqrt(count)
    a, b = (ends.astype(np.int64) for ends in np.triu_indices(count, 1))
    far = np.hypot(*(at[a] - at[b]).T).clip(1)
    margin = 50 - 20 * np.log10(far) - 1.9 * far
    forwards = rng.random(count) < 0.4
    forwards[0] = True
    kept = (margin > -20) & (forwards[a] | forwards[b])
    return Ends(count, a[kept], b[kept]), margin[kept], forwards


def works(links: Words, draw: int) -> Bools:
    """Which links work in one draw."""
    out: Bools = (links[:, draw // 64] >> np.uint64(draw % 64)) & np.uint64(1) == 1
    return out


def graph(ends: Ends, alive: Bools, forwards: Bools) -> "nx.DiGraph[int]":
    """One draw as the library's graph: arcs from those that pass on."""
    out: nx.DiGraph[int] = nx.DiGraph()
    out.add_nodes_from(range(ends.count))
    for a, b in zip(ends.a[alive].tolist(), ends.b[alive].tolist(), strict=True):
        out.add_edges_from((s, t) for s, t in ((a, b), (b, a)) if s == 0 or forwards[s])
    return out


def storey(*, places: int, walls: int, seed: int, side: int, level: bool) -> tuple[Spots, Panels, Decks]:
    """Places and panels of three classes on a square; ``level``: panels of endless height."""
    rng = np.random.default_rng(seed)
    spots = Spots(*(rng.integers(0, side, places) for _ in range(2)), rng.integers(0, 12, places))
    ends: list[Ints] = [rng.integers(0, side, walls) for _ in range(4)]
    foot = np.full(walls, -(10**6)) if level else rng.integers(0, 8, walls)
    head = np.full(walls, 10**6) if level else foot + rng.integers(1, 8, walls)
    return spots, Panels(*ends, foot, head, rng.integers(0, 3, walls)), Decks(np.array([6]), np.array([1]))
