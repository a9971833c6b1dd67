"""Through whom a device joins: depth, links that nobody knows, the nearer and the stronger parent."""

from secondfix.joining import CONTROLLER, Links, Mark
from tests.joining.houses import (
    a_box,
    a_house,
    a_model,
    links,
)
from tests.joining.walking import RELAY, WREN, in_boxes, joined_order, walked


def chain(model_key: str, count: int, network: str) -> tuple[dict[str, object], Links]:
    ids = [f"D{n}" for n in range(1, count + 1)]
    parts: dict[str, object] = {
        "boxes": {f"B{n}": a_box("R1", lines=["C1"]) for n in range(1, count + 1)},
        "devices": in_boxes(model_key, *(f"B{n}" for n in range(1, count + 1)), network=network),
    }
    heard = dict.fromkeys(zip([CONTROLLER, *ids], ids, strict=False), 20.0)
    return parts, {network: links(ids, heard)}


def two_ways(straight_db: float | None) -> str:
    """D2 hears D1 well, and its controller by as much as is said."""
    house = a_house(
        [RELAY],
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in (1, 2)},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    heard = {(CONTROLLER, "D1"): 30.0, ("D1", "D2"): 25.0, (CONTROLLER, "D2"): straight_db}
    return walked(house, {"N1": links(["D1", "D2"], heard)}).joins()[-1].words


def test_zwave_goes_through_four_repeaters_and_no_more() -> None:
    parts, heard = chain(RELAY.key, 6, "N1")
    joins = {s.device: s for s in walked(a_house([RELAY], **parts), heard).joins()}
    assert (joins["D5"].parent, joins["D5"].links) == ("D4", 5)
    assert joins["D6"].marks == (Mark.NO_GOOD_PARENT,)


def test_zigbee_goes_fifteen_deep_and_no_more() -> None:
    parts, heard = chain(WREN.key, 16, "N2")
    joins = {s.device: s for s in walked(a_house([WREN], **parts), heard).joins()}
    assert joins["D15"].links == 15
    assert joins["D16"].marks == (Mark.NO_GOOD_PARENT,)


def test_links_nobody_knows_still_give_an_order_marked() -> None:
    house = a_house([RELAY], boxes={"B1": a_box("R1", lines=["C1"])}, devices=in_boxes(RELAY.key, "B1"))
    for nothing in ({}, {"N1": links(["D1"], {(CONTROLLER, "D1"): None})}):
        step = walked(house, nothing).joins()[0]
        assert (step.parent, step.margin_db, step.marks) == (CONTROLLER, None, (Mark.LINK_NOT_KNOWN,))
        assert "not known" in step.words


def test_a_repeater_that_is_not_stated_to_repeat_is_only_hoped_for() -> None:
    silent = a_model(name="mute", repeats="not_stated")
    house = a_house(
        [RELAY, silent],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices={**in_boxes(RELAY.key, "B1", "B2"), **in_boxes(silent.key, "B1")},
    )
    found = walked(house, {"N1": links(["D1", "D2"], {(CONTROLLER, "D1"): 20.0, ("D1", "D2"): 20.0})})
    assert {s.device: s.marks for s in found.joins()} == {"D1": (), "D2": (Mark.LINK_NOT_KNOWN,)}


def test_a_known_chain_is_preferred_to_a_hoped_one() -> None:
    house = a_house(
        [RELAY],
        boxes={"B1": a_box("R1", lines=["C1"]), "B2": a_box("R1", lines=["C1"])},
        devices=in_boxes(RELAY.key, "B1", "B2"),
    )
    heard = {(CONTROLLER, "D1"): None, (CONTROLLER, "D2"): 20.0, ("D2", "D1"): 20.0}
    found = walked(house, {"N1": links(["D1", "D2"], heard)})
    assert joined_order(found) == ["D2", "D1"]
    assert found.joins()[1].parent == "D2"


def test_the_controller_is_preferred_to_a_stronger_repeater_while_it_is_a_good_parent() -> None:
    assert two_ways(10.0) == "Include D2 through the controller (in reserve: D1)."


def test_a_straight_link_too_thin_to_join_by_is_told_beside_the_repeater() -> None:
    thin = "It is the best link now: straight to the controller less is in reserve than joining asks for"
    assert two_ways(9.9).startswith(f"Include D2 through D1. {thin}")
    assert two_ways(-0.1) == two_ways(None) == "Include D2 through D1."


def test_the_stronger_parent_is_chosen_and_the_next_kept_in_reserve() -> None:
    house = a_house(
        [RELAY],
        boxes={f"B{n}": a_box("R1", lines=["C1"]) for n in (1, 2, 3)},
        devices=in_boxes(RELAY.key, "B1", "B2", "B3"),
    )
    heard = {(CONTROLLER, "D1"): 30.0, (CONTROLLER, "D2"): 30.0, ("D1", "D3"): 11.0, ("D2", "D3"): 18.0}
    last = walked(house, {"N1": links(["D1", "D2", "D3"], heard)}).joins()[-1]
    assert (last.device, last.parent, last.spare) == ("D3", "D2", "D1")
    assert "in reserve: D1" in last.words
