"""Reach in every draw, and with each repeater gone, against a general graph library on the same draws."""

import networkx as nx
import numpy as np
import pytest

from secondfix.radio.engine.drawing import Ends, draw_links
from secondfix.radio.engine.gone import without_each
from secondfix.radio.engine.searching import how_often, reached, steps_of
from tests.radio.engine.meshes import graph, mesh, works

CASES = [(20, 1, 5), (20, 2, 15), (45, 3, 5), (45, 4, 2), (70, 5, 5)]


@pytest.mark.parametrize("plain", [False, True])
@pytest.mark.parametrize(("count", "seed", "most"), CASES)
def test_every_draw_equals_the_library(*, plain: bool, count: int, seed: int, most: int) -> None:
    ends, margin, forwards = mesh(count=count, seed=seed)
    links = draw_links(ends, margin_db=margin, spread_db=6.0, shared=0.4, draws=90, seed=seed)
    bits = reached(steps_of(ends, forwards), links, most_links=most, plain=plain)
    some = 0
    for draw in range(90):
        seen = nx.single_source_shortest_path_length(
            graph(ends, works(links, draw), forwards), 0, cutoff=most
        )
        assert set(np.flatnonzero(works(bits, draw)).tolist()) == set(seen) | {0}
        some += len(seen) - 1
    assert 0 < some < 90 * (count - 1)
    assert how_often(bits)[1:].sum() == some


@pytest.mark.parametrize(("count", "seed", "most"), CASES)
def test_each_repeater_gone_equals_the_library_and_the_plain_search(count: int, seed: int, most: int) -> None:
    ends, margin, forwards = mesh(count=count, seed=seed)
    draws = 12
    links = draw_links(ends, margin_db=margin, spread_db=6.0, shared=0.4, draws=draws, seed=seed)
    steps = steps_of(ends, forwards)
    found, plain = (without_each(steps, links, most_links=most, plain=p) for p in (False, True))
    lost = np.zeros_like(found.lost)
    for draw in range(draws):
        whole = graph(ends, works(links, draw), forwards)
        seen = set(nx.single_source_shortest_path_length(whole, 0, cutoff=most))
        for r, repeater in enumerate(found.repeaters.tolist()):
            left = whole.subgraph(set(whole) - {repeater})
            kept = set(nx.single_source_shortest_path_length(left, 0, cutoff=most))
            lost[r, sorted(seen - kept - {repeater})] += 1
    assert lost.sum() > 0
    assert np.array_equal(found.lost, lost)
    for name in ("repeaters", "whole", "safe", "lost"):
        assert np.array_equal(getattr(found, name), getattr(plain, name)), name


@pytest.mark.parametrize("seed", range(5))
def test_where_links_are_certain_single_failures_are_the_articulation_points(seed: int) -> None:
    sparse: nx.Graph[int] = nx.connected_watts_strogatz_graph(30, 2, 0.3, seed=seed)
    sparse.add_edges_from((n, n + 2) for n in range(0, 12, 2))
    ends = Ends(30, *(np.array(side, np.int64) for side in zip(*sparse.edges, strict=True)))
    links = draw_links(
        ends, margin_db=np.full(len(ends.a), 500.0), spread_db=6.0, shared=0.0, draws=64, seed=1
    )
    found = without_each(steps_of(ends, np.ones(30, np.bool_)), links, most_links=29)
    assert set(np.unique(found.lost)) <= {0, 64}
    cutting = set(found.repeaters[found.lost.any(axis=1)].tolist())
    assert cutting == set(nx.articulation_points(sparse)) - {0}
    assert cutting


def test_four_repeaters_are_five_links_and_a_fifth_is_too_many() -> None:
    ends = Ends(8, np.arange(7), np.arange(1, 8))
    links = draw_links(ends, margin_db=np.full(7, 500.0), spread_db=6.0, shared=0.0, draws=3, seed=1)
    steps = steps_of(ends, np.ones(8, np.bool_))
    assert how_often(reached(steps, links, most_links=5))[1:].tolist() == [3] * 5 + [0] * 2
    assert without_each(steps, links, most_links=5).whole[1:].tolist() == [3] * 5 + [0] * 2


def test_more_repeaters_than_one_word_holds_are_all_counted() -> None:
    # A chain of 150 repeaters: the last station hangs on each of them.
    ends = Ends(152, np.arange(151), np.arange(1, 152))
    links = draw_links(ends, margin_db=np.full(151, 500.0), spread_db=6.0, shared=0.0, draws=2, seed=1)
    found = without_each(steps_of(ends, np.arange(152) < 151), links, most_links=151)
    assert found.lost[:, 151].tolist() == [2] * 150


def test_a_mesh_without_links_reaches_nobody() -> None:
    ends = Ends(3, np.zeros(0, np.int64), np.zeros(0, np.int64))
    links = draw_links(ends, margin_db=np.zeros(0), spread_db=6.0, shared=0.0, draws=10, seed=1)
    found = without_each(steps_of(ends, np.ones(3, np.bool_)), links, most_links=5)
    assert found.whole.tolist() == [0, 0, 0]
    assert found.lost.shape == (0, 3)
