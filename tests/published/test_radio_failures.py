"""Single failures against a general-purpose library of graphs, where every link is certain."""

import networkx as nx

from secondfix.radio import CaseKind, foresee, reach
from tests.radio.houses import assumed, row_of_rooms, rows_of


def test_single_failures_are_the_cut_vertices_where_links_are_certain() -> None:
    # Source: networkx, a general-purpose library of graphs: articulation_points, node_connected_component.
    # Walls thin, power high and a short longest link: every link there is works, so reach is plain graph.
    certain = assumed(
        radio_longest_link_m=6, radio_spread_db=1, radio_fading_db=0, radio_house_offset_db=0,
        radio_plastic_box_db=1, radio_shared_pct=0,
    )  # fmt: skip
    rows = rows_of(row_of_rooms(6))
    answer = reach(rows, certain)
    links = answer.networks["N1"]
    assert links.margin_db.min() > 12
    graph: nx.Graph[int] = nx.Graph()
    graph.add_edges_from(zip(links.a.tolist(), links.b.tolist(), strict=True))
    cuts = {links.stations[n].id for n in nx.articulation_points(graph)} - {"N1"}
    assert len(cuts) > 2
    (network,) = foresee(rows, certain, answer, draws=200).networks.values()
    falling = {c.id: set(c.falls) for c in network.of_kind(CaseKind.REPEATER_GONE) if c.falls}
    assert set(falling) == cuts
    for one, fallen in falling.items():
        left = graph.copy()
        number = next(n for n, s in enumerate(links.stations) if s.id == one)
        left.remove_node(number)
        behind = set(graph.nodes) - {number} - nx.node_connected_component(left, 0)
        assert fallen == {links.stations[n].id for n in behind}
