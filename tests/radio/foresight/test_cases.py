"""Cases of something gone, tripped, moved or added: the same as a library finds in the same draws."""

from typing import Any

import networkx as nx
import numpy as np
import pytest

from secondfix.radio import CaseKind, Word, foresee, reach
from secondfix.radio.foresight.drawn import Network, draw_network
from secondfix.radio.foresight.foreseeing import WAYS
from secondfix.radio.foresight.staging import Staged, empty_sockets, spots_for_controller, staged
from secondfix.radio.learning.fitting import learn
from tests.example_house import seen
from tests.radio.houses import assumed, key, row_of_rooms, rows_of

WEAK = assumed(radio_longest_link_m=12, radio_spread_db=8, radio_fading_db=30)


def row(count: int = 7, *, protocol: str = "zigbee") -> dict[str, Any]:
    """A row of rooms, a plug in the third, sockets in the second and fourth, two circuits and a battery."""
    plain = row_of_rooms(count, protocol=protocol, wall_mm=400)
    plain["circuits"] = {"C1": {"name": "Lights west"}, "C2": {"name": "Sockets"}}
    for n in range(count):
        plain["boxes"][f"B{n}"]["gangs"]["1"]["line"] = seen("C1")
    for n, name in ((1, "P1"), (2, "P2"), (3, "P3")):
        plain["places"][name] = {
            "kind": "socket",
            "name": "socket",
            "room": f"R{n}",
            "position": {"x_mm": 4000 * n + 2600, "y_mm": 4900, "height_mm": 300},
            "circuit": seen("C2"),
        }
    plain["devices"]["DP"] = {"model": key("plug", protocol), "network": "N1", "place": "P2"}
    plain["places"]["PB"] = {
        "kind": "surface",
        "name": "beam",
        "room": "R4",
        "position": {"x_mm": 17000, "y_mm": 3000, "height_mm": 1800},
    }
    plain["devices"]["DB"] = {"model": key("cell", protocol), "network": "N1", "place": "PB"}
    return plain


def drawn(plain: dict[str, Any], *, draws: int = 640) -> tuple[Staged, Network]:
    rows = rows_of(plain)
    answer = reach(rows, WEAK)
    wide, stages = staged(
        rows, WEAK, answer, moves=spots_for_controller(rows.house), sockets=empty_sockets(rows.house)
    )
    learned = learn(rows, WEAK, wide, (), samples=5, seed=2)
    (stage,) = stages.values()
    gain = np.zeros(len(stage.links.a))
    return stage, draw_network(stage, learned.ways(stage.network), gain_db=gain, draws=draws, seed=4)


def by_library(network: Network, there: set[int], root: int) -> list[int]:
    """In how many draws the library's search reaches each station that stands."""
    links, real = network.staged.links, network.staged.real
    counted = [0] * real
    for draw in range(network.draws):
        alive = (network.bits[:, draw // 64] >> np.uint64(draw % 64)) & np.uint64(1) == 1
        graph: nx.DiGraph[int] = nx.DiGraph()
        graph.add_nodes_from(there)
        for a, b in zip(links.a[alive].tolist(), links.b[alive].tolist(), strict=True):
            if a in there and b in there:
                for one, other in ((a, b), (b, a)):
                    if one == root or network.forwards[one]:
                        graph.add_edge(one, other)
        if root in there:
            found = nx.single_source_shortest_path_length(graph, root, cutoff=network.staged.most_links)
            for n in found:
                if n < real and n != root:
                    counted[n] += 1
    return counted


@pytest.mark.parametrize("protocol", ["zigbee", "zwave"])
def test_each_case_counts_what_a_library_counts_in_the_same_draws(protocol: str) -> None:
    stage, network = drawn(row(protocol=protocol), draws=320)
    standing = set(range(stage.real))
    assert set(stage.sockets) == {"P1", "P3"}
    assert set(stage.moves) == {"P1", "P2", "P3"}
    assert network.hits().tolist() == by_library(network, standing, 0)
    gone = np.array([2, 5])
    assert network.hits(gone=gone).tolist() == by_library(network, standing - {2, 5}, 0)
    spot = stage.moves["P3"]
    assert network.hits(root=spot).tolist() == by_library(network, standing - {0} | {spot}, spot)
    helper = stage.sockets["P3"]
    assert network.hits(helper=helper).tolist() == by_library(network, standing | {helper}, 0)
    both = network.hits(gone=gone, helper=helper).tolist()
    assert both == by_library(network, standing - {2, 5} | {helper}, 0)
    assert network.hits(gone=np.array([0])).tolist() == [0] * stage.real
    # The cases are worth asking: each of them changes somebody's count.
    whole = network.hits()
    for other in (network.hits(gone=gone), network.hits(root=spot), network.hits(helper=helper)):
        assert not np.array_equal(whole, other)


def test_every_kind_of_case_is_told_with_who_has_no_power() -> None:
    rows = rows_of(row())
    (network,) = foresee(rows, WEAK, reach(rows, WEAK), draws=640).networks.values()
    kinds = {kind: network.of_kind(kind) for kind in CaseKind}
    assert {c.id for c in kinds[CaseKind.REPEATER_GONE]} == {f"D{n}" for n in range(7)} | {"DP"}
    assert [c.gone for c in kinds[CaseKind.PULLED]] == [("DP",)]
    assert not kinds[CaseKind.ALL_PULLED], "one plug alone is no case of several"
    lights, sockets = sorted(kinds[CaseKind.TRIPPED], key=lambda c: c.id)
    assert lights.gone == tuple(f"D{n}" for n in range(7))
    assert sockets.gone == ("DP",)
    assert "DB" not in lights.gone, "a battery hangs on no circuit"
    assert "DB" in lights.falls or network.devices[-1].reached.share < 0.9
    assert lights.gained < 0
    assert all(c.gained >= 0 for c in kinds[CaseKind.SOCKET_HELPS])
    best = [c.gained for c in kinds[CaseKind.SOCKET_HELPS]]
    assert best == sorted(best, reverse=True)
    assert {c.id for c in kinds[CaseKind.CONTROLLER_MOVED]} == {"P1", "P2", "P3"}


def test_a_socket_holds_who_would_fall_with_one_repeater() -> None:
    rows = rows_of(row(6))
    network = foresee(rows, WEAK, reach(rows, WEAK), draws=3000).networks["N1"]
    falling = {key for c in network.of_kind(CaseKind.REPEATER_GONE)[:3] for key in c.falls}
    held = {c.id: c.holds for c in network.of_kind(CaseKind.SOCKET_HELPS)}
    assert held["P1"], "beside D1, it passes on what D0 and D1 do"
    assert all(set(ids) <= falling for ids in held.values())
    assert not any(c.holds for c in network.cases if c.kind is not CaseKind.SOCKET_HELPS)


def test_a_circuit_that_feeds_the_controller_takes_all() -> None:
    plain = row()
    plain["places"]["P0"]["circuit"] = seen("C2")
    rows = rows_of(plain)
    (network,) = foresee(rows, WEAK, reach(rows, WEAK), draws=640).networks.values()
    (case,) = (c for c in network.of_kind(CaseKind.TRIPPED) if c.id == "C2")
    assert case.words == "circuit C2 (Sockets) tripped, so the controller has no power"
    assert all(drawn.share == 0 for drawn in case.chance.values())
    likely = {d.id for d in network.devices if d.reached.share >= 0.9}
    assert set(case.falls) == likely - {"DP"}


def test_what_hangs_on_no_known_circuit_is_named() -> None:
    plain = row()
    del plain["boxes"]["B3"]["gangs"]["1"]["line"]
    rows = rows_of(plain)
    foreseen = foresee(rows, WEAK, reach(rows, WEAK), draws=64)
    assert any("not known" in note and "D3" in note and "D2" not in note for note in foreseen.notes)
    assert not any("DB" in note for note in foreseen.notes)


def test_a_device_that_is_nowhere_on_the_plan_has_no_chance_told() -> None:
    plain = row()
    del plain["boxes"]["B3"]["position"]
    rows = rows_of(plain)
    (network,) = foresee(rows, WEAK, reach(rows, WEAK), draws=64).networks.values()
    assert network.not_known == ("D3",)
    assert "D3" not in {d.id for d in network.devices} | set(network.words)
    for case in network.cases:
        assert "D3" not in (*case.falls, *case.rises, *case.chance)


def test_without_a_place_for_the_controller_nothing_is_drawn() -> None:
    plain = row()
    del plain["networks"]["N1"]["controller_place"]
    rows = rows_of(plain)
    (network,) = foresee(rows, WEAK, reach(rows, WEAK), draws=64).networks.values()
    assert network.devices == ()
    assert network.cases == ()
    assert set(network.not_known) == set(plain["devices"])


def test_the_same_seed_gives_the_same_answer_and_draws_out_of_range_are_refused() -> None:
    rows = rows_of(row(5))
    answer = reach(rows, WEAK)
    assert foresee(rows, WEAK, answer, draws=300, seed=5) == foresee(rows, WEAK, answer, draws=300, seed=5)
    assert foresee(rows, WEAK, answer, draws=300, seed=5) != foresee(rows, WEAK, answer, draws=300, seed=6)
    with pytest.raises(ValueError, match="draws"):
        foresee(rows, WEAK, answer, draws=0)
    assert WAYS * 192 >= 10_000 > WAYS * 128


def test_of_a_device_that_cannot_be_told_no_case_says_that_it_falls_or_rises() -> None:
    plain = row(6)
    asked = foresee(rows_of(plain), WEAK, reach(rows_of(plain), WEAK), draws=640).networks["N1"]
    fallen = {key for case in asked.cases for key in case.falls}
    assert "D2" in fallen, "else what follows shows nothing"
    del plain["boxes"]["B2"]["plate"]
    answer = reach(rows_of(plain), WEAK)
    network = foresee(rows_of(plain), WEAK, answer, draws=640).networks["N1"]
    assert network.words["D2"] is Word.NOT_KNOWN
    assert any("D2" in case.chance for case in network.cases)
    assert not any("D2" in (*case.falls, *case.rises) for case in network.cases)
