"""Routes and single repeaters against a general graph library, on random meshes."""

from collections.abc import Iterable
from itertools import pairwise

import networkx as nx
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio.mesh import ROOT, Hops, hanging, hops_of, route, widest

Edge = tuple[int, int, float]


def mesh(count: int, edges: Iterable[Edge], forwards: Iterable[int]) -> Hops:
    kept = list(edges)
    passing = np.zeros(count, np.bool_)
    passing[[ROOT, *forwards]] = True
    return hops_of(
        np.array([e[0] for e in kept], np.int64),
        np.array([e[1] for e in kept], np.int64),
        np.array([e[2] for e in kept], np.float64),
        passing,
    )


def oracle(count: int, edges: Iterable[Edge], forwards: set[int], least: float) -> "nx.DiGraph[int]":
    graph: nx.DiGraph[int] = nx.DiGraph()
    graph.add_nodes_from(range(count))
    for a, b, margin in edges:
        if margin >= least:
            graph.add_edges_from((s, t) for s, t in ((a, b), (b, a)) if s == ROOT or s in forwards)
    return graph


def reached(graph: "nx.DiGraph[int]", most_hops: int) -> set[int]:
    return set(nx.single_source_shortest_path_length(graph, ROOT, cutoff=most_hops))


@st.composite
def meshes(draw: st.DrawFn) -> tuple[int, list[Edge], set[int], int]:
    count = draw(st.integers(2, 12))
    pairs = [(a, b) for a in range(count) for b in range(a)]
    chosen = draw(st.lists(st.sampled_from(pairs), unique=True, max_size=30))
    edges = [(a, b, float(draw(st.integers(-5, 20)))) for a, b in chosen]
    forwards = draw(st.sets(st.integers(1, count - 1)))
    return count, edges, forwards, draw(st.integers(1, 6))


def check_against_library(count: int, edges: list[Edge], forwards: set[int], most_hops: int) -> None:
    hops = mesh(count, edges, forwards)
    best = widest(hops, most_hops=most_hops)[-1]
    for margin in {m for *_, m in edges}:
        expected = reached(oracle(count, edges, forwards, margin), most_hops)
        assert {int(n) for n in np.flatnonzero(best >= margin)} == expected
    missed = hanging(hops, enough_db=5.0, most_hops=most_hops)
    graph = oracle(count, edges, forwards, 5.0)
    whole = reached(graph, most_hops) - {ROOT}
    assert set(missed) == whole
    without = {r: reached(graph.subgraph(set(graph) - {r}), most_hops) for r in forwards}
    for station in whole:
        assert missed[station] == {r for r in forwards - {station} if station not in without[r]}


@given(meshes())
def test_reach_and_single_repeaters_equal_those_of_the_library(
    given_mesh: tuple[int, list[Edge], set[int], int],
) -> None:
    check_against_library(*given_mesh)


def random_mesh(seed: int, count: int) -> tuple[int, list[Edge], set[int], int]:
    rng = np.random.default_rng(seed)
    at = rng.random((count, 2))
    far = np.hypot(*(at[:, None] - at[None]).transpose(2, 0, 1))
    edges = [
        (int(a), int(b), float(np.round(12 - 40 * far[a, b] + rng.normal(0, 4), 1)))
        for a, b in zip(*np.nonzero(np.triu(far < 0.4, 1)), strict=True)
    ]
    forwards = {int(n) for n in np.flatnonzero(rng.random(count) < 0.4)} - {ROOT}
    return count, edges, forwards, int(rng.integers(2, 8))


@pytest.mark.parametrize("seed", range(6))
def test_larger_meshes_equal_those_of_the_library(seed: int) -> None:
    check_against_library(*random_mesh(seed, 60))


@pytest.mark.deep
@pytest.mark.parametrize("seed", range(1000))
def test_many_meshes_equal_those_of_the_library(seed: int) -> None:
    check_against_library(*random_mesh(seed, 10 + seed % 50))


@given(meshes(), st.integers(-5, 20))
def test_the_route_shown_is_one_and_keeps_what_it_promises(
    given_mesh: tuple[int, list[Edge], set[int], int], enough: int
) -> None:
    count, edges, forwards, most_hops = given_mesh
    hops = mesh(count, edges, forwards)
    rounds = widest(hops, most_hops=most_hops)
    margins = {frozenset((a, b)): m for a, b, m in edges}
    for station in range(1, count):
        way = route(hops, rounds, station, enough_db=float(enough))
        best = float(rounds[-1][station])
        if best == -np.inf:
            assert way == []
            continue
        assert way[0] == station
        assert way[-1] == ROOT
        assert len(set(way)) == len(way) <= most_hops + 1
        assert set(way[1:-1]) <= forwards
        weakest = min(margins[frozenset(pair)] for pair in pairwise(way))
        assert weakest >= min(float(enough), best)
        direct = reached(oracle(count, edges, forwards, min(float(enough), best)), len(way) - 2)
        assert len(way) == 2 or station not in direct


@given(meshes(), st.data())
def test_one_more_repeater_never_lowers_a_margin(
    given_mesh: tuple[int, list[Edge], set[int], int], data: st.DataObject
) -> None:
    count, edges, forwards, most_hops = given_mesh
    more = forwards | {data.draw(st.integers(1, count - 1))}
    before = widest(mesh(count, edges, forwards), most_hops=most_hops)[-1]
    after = widest(mesh(count, edges, more), most_hops=most_hops)[-1]
    assert np.all(after >= before)


def test_a_mesh_without_links_reaches_nobody() -> None:
    hops = mesh(3, [], [1])
    assert list(widest(hops, most_hops=5)[-1][1:]) == [-np.inf, -np.inf]
    assert hanging(hops, enough_db=0.0, most_hops=5) == {}
