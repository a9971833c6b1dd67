"""Reach over a house: the three answers, what the survey lacks, and who hangs on whom."""

from copy import deepcopy
from typing import Any

import numpy as np
import pytest

from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome, Severity
from secondfix.radio import (
    RULES,
    DeviceReach,
    Word,
    find_paths,
    margins_after_spread,
    reach,
    reach_as_json,
)
from tests.example_house import seen
from tests.radio.houses import asked, brick, key, row_of_rooms, rows_of


def device(plain: dict[str, Any], name: str) -> DeviceReach:
    return next(d for d in asked(plain).devices if d.id == name)


def findings(plain: dict[str, Any], rule: str = "radio.reach") -> dict[str, Finding]:
    return {f.place: f for f in asked(plain).findings if f.rule == rule}


def concrete(plain: dict[str, Any], wall: str, thickness_mm: int = 900) -> None:
    """Make one wall so heavy that nothing comes through it."""
    plain["walls"][wall] |= {
        "thickness_mm": thickness_mm,
        "layers": seen([{"material": "concrete", "thickness_mm": thickness_mm}]),
    }


def next_room_only(count: int, *, kind: str = "relay", protocol: str = "zigbee") -> dict[str, Any]:
    """Rooms nine metres wide, and no link longer than ten: each device hears the next room alone."""
    plain = row_of_rooms(count, room_mm=9000, protocol=protocol, kind=kind)
    plain["assumptions"] = {"radio_longest_link_m": {"value": 10}}
    return plain


def test_near_devices_are_likely_and_pass() -> None:
    plain = row_of_rooms(4)
    assert {d.word for d in asked(plain).devices} == {Word.LIKELY}
    assert {f.outcome for f in findings(plain).values()} == {Outcome.PASSES}
    assert findings(plain)["B3"].value == "likely, spread 8 dB, 1 link"


def test_a_device_that_no_route_carries_is_a_fault_at_its_place_alone() -> None:
    plain = row_of_rooms(3)
    concrete(plain, "W2")
    plain["walls"]["W3"] = {**plain["walls"]["W2"], "from_mm": [9500, -500], "to_mm": [9500, 5500]}
    found = findings(plain)
    assert found["B2"].outcome is Outcome.FAILS
    assert found["B2"].severity is Severity.FAULT
    assert "D2" in found["B2"].says
    assert {found["B0"].outcome, found["B1"].outcome} == {Outcome.PASSES}


def test_a_link_that_is_neither_here_nor_there_cannot_be_told_and_wants_measuring() -> None:
    plain = row_of_rooms(2, room_mm=9000)
    concrete(plain, "W1", 400)
    found = device(plain, "D1")
    assert found.word is Word.DOUBTFUL
    assert found.needs == ()
    finding = findings(plain)["B1"]
    assert finding.outcome is Outcome.CANNOT_TELL
    assert [(k.place, k.field) for k in finding.looks] == [("B1", "radio")]


@pytest.mark.parametrize(("protocol", "links"), [("zwave", 5), ("zigbee", 15), ("matter_thread", None)])
def test_a_route_is_no_longer_than_the_protocol_allows(protocol: str, links: int | None) -> None:
    plain = next_room_only(18, protocol=protocol)
    answers = {d.id: d for d in asked(plain).devices}
    most = links or 17
    assert answers[f"D{most}"].hops == most
    assert answers[f"D{most}"].word is Word.LIKELY
    beyond = [d for n, d in enumerate(asked(plain).devices) if n > most]
    assert {d.word for d in beyond} <= {Word.UNLIKELY}
    assert len(beyond) == 17 - most
    assert len(answers[f"D{most}"].route) == most - 1


@pytest.mark.parametrize("kind", ["cell", "leaf"])
def test_only_a_mains_powered_device_that_repeats_carries_others(kind: str) -> None:
    plain = next_room_only(3)
    assert device(plain, "D2").word is Word.LIKELY
    if kind == "cell":
        plain["devices"]["D1"] = {"model": key("cell"), "network": "N1", "place": "P1"}
        plain["places"]["P1"] = {
            "kind": "surface",
            "name": "Sill",
            "room": "R1",
            "position": plain["boxes"]["B1"]["position"],
        }
    else:
        plain["devices"]["D1"]["model"] = key("leaf")
    assert device(plain, "D2").word is Word.UNLIKELY


def test_a_repeater_whose_sheet_is_silent_is_asked_for() -> None:
    plain = next_room_only(3)
    plain["devices"]["D1"]["model"] = key("mute")
    found = device(plain, "D2")
    assert found.word is Word.NOT_KNOWN
    assert [(k.place, k.field) for k in found.needs] == [("B1", "repeats")]
    assert device(plain, "D1").word is Word.LIKELY


def test_devices_of_another_network_carry_nothing() -> None:
    plain = next_room_only(3)
    plain["networks"]["N2"] = dict(plain["networks"]["N1"], name="Other")
    plain["devices"]["D1"]["network"] = "N2"
    assert device(plain, "D2").word is Word.UNLIKELY


@pytest.mark.parametrize(
    ("spoil", "look"),
    [
        (lambda h: h["boxes"]["B1"].pop("position"), ("B1", "position")),
        (lambda h: h["rooms"]["R1"].pop("storey"), ("R1", "storey")),
        (lambda h: h["networks"]["N1"].pop("controller_place"), ("N1", "controller_place")),
        (lambda h: h["places"]["P0"].pop("position"), ("P0", "position")),
        (lambda h: h["devices"]["D1"].pop("network"), ("D1", "network")),
        (lambda h: h["walls"].clear(), ("S0", "walls")),
        (lambda h: h["boxes"]["B1"].pop("plate"), ("B1", "plate")),
        (lambda h: h["boxes"]["B1"].update(plate=seen("metal")), ("B1", "radio")),
        (lambda h: h["boxes"]["B1"].update(finish=seen("foil_paper")), ("B1", "radio")),
    ],
)
def test_what_is_missing_is_told_and_nothing_is_guessed(spoil: Any, look: tuple[str, str]) -> None:
    plain = row_of_rooms(2)
    spoil(plain)
    finding = next(f for f in asked(plain).findings if "D1" in f.also)
    assert finding.outcome is Outcome.CANNOT_TELL
    assert look in [(k.place, k.field) for k in finding.looks]


@pytest.mark.parametrize("blank", ["layers", "shell", "radio_region"])
def test_an_unknown_that_cannot_change_the_answer_does_not_block_it(blank: str) -> None:
    plain = row_of_rooms(2, protocol="zwave")
    for part in (plain, plain["walls"]["W1"], plain["boxes"]["B1"]):
        part.pop(blank, None)  # at worst 100 mm of concrete, a metal box, another band
    assert device(plain, "D1").word is Word.LIKELY


def test_an_assumed_material_is_no_known_one() -> None:
    plain = row_of_rooms(2, room_mm=9000)
    plain["walls"]["W1"] = {**plain["walls"]["W1"], "thickness_mm": 600}
    plain["walls"]["W1"]["layers"] = {**brick(600), "known": "assumed"}
    found = device(plain, "D1")
    assert found.word is Word.NOT_KNOWN
    assert [(k.place, k.field) for k in found.needs] == [("W1", "layers")]


def test_a_repeater_nobody_knows_the_place_of_keeps_a_fault_from_being_told() -> None:
    plain = next_room_only(3)
    del plain["boxes"]["B1"]["position"]
    found = device(plain, "D2")
    assert found.word is Word.NOT_KNOWN
    assert [(k.place, k.field) for k in found.needs] == [("B1", "position")]


def plugged(count: int) -> dict[str, Any]:
    """Room 1 holds a plug-in repeater; rooms beyond it hang on it."""
    plain = next_room_only(2, kind="leaf")
    plain["places"]["P1"] = {
        "kind": "socket",
        "name": "Skirting",
        "room": "R1",
        "position": {"x_mm": 11_500, "y_mm": 900, "height_mm": 300},
    }
    plain["devices"]["D9"] = {"model": key("plug"), "network": "N1", "place": "P1"}
    wider = next_room_only(3, kind="leaf")
    for part in ("rooms", "walls"):
        plain[part] = wider[part]
    for n in range(count):
        plain["boxes"][f"B2{n}"] = deepcopy(wider["boxes"]["B2"])
        plain["boxes"][f"B2{n}"]["position"]["x_mm"] -= 1500 + 400 * n
        plain["devices"][f"D2{n}"] = {**wider["devices"]["D2"], "box": f"B2{n}"}
    return plain


@pytest.mark.parametrize("count", [1, 3])
def test_a_plug_in_repeater_is_named_with_all_that_hang_on_it(count: int) -> None:
    plain = plugged(count)
    found = findings(plain, "radio.one_repeater")
    assert set(found) == {"P1"}
    assert found["P1"].severity is Severity.ADVICE
    assert found["P1"].also == ("D9", *(f"D2{n}" for n in range(count)))
    assert "plugged in" in found["P1"].says
    assert device(plain, "D20").hangs_on == ("D9",)


def test_one_device_on_a_fixed_repeater_is_no_advice_but_two_are() -> None:
    plain = next_room_only(3)
    assert findings(plain, "radio.one_repeater") == {}
    assert device(plain, "D2").hangs_on == ("D1",)
    found = findings(next_room_only(4), "radio.one_repeater")
    assert {place: f.also for place, f in found.items()} == {"B1": ("D1", "D2", "D3")}


def test_a_second_repeater_takes_the_advice_away() -> None:
    plain = plugged(3)
    plain["devices"]["D1"]["model"] = key("relay")
    assert findings(plain, "radio.one_repeater") == {}
    assert device(plain, "D20").hangs_on == ()


def test_more_thread_repeaters_than_may_act_are_told_as_advice_alone() -> None:
    few, many = (row_of_rooms(n, protocol="matter_thread") for n in (32, 33))
    assert findings(few, "radio.thread_routers") == {}
    found = findings(many, "radio.thread_routers")
    assert {place: f.severity for place, f in found.items()} == {"P0": Severity.ADVICE}


def test_paths_may_be_kept_when_a_model_changes() -> None:
    plain = row_of_rooms(5)
    kept = find_paths(rows_of(plain).house, default_assumptions())
    plain["devices"]["D4"]["model"] = key("bare")
    rows = rows_of(plain)
    fresh, again = reach(rows, default_assumptions()), reach(rows, default_assumptions(), paths=kept)
    assert again.devices == fresh.devices
    assert again.findings == fresh.findings


def test_links_tell_loss_and_margin_of_both_directions() -> None:
    plain = row_of_rooms(2)
    plain["networks"]["N1"]["transmit_power_dbm"] = 3
    link = next(k for k in asked(plain).links() if {k.a, k.b} == {"N1", "D1"})
    away, back = link.margin_ab_db, link.margin_ba_db
    assert abs(away - back) == pytest.approx(5.0)  # 8 dBm from the device, 3 dBm from the controller
    assert link.through == ("wall W1: 100 mm brick",)
    # 5.63 m at 2440 MHz 55.2 dB; 100 mm brick 3.3 dB, at 45 degrees a little more; plastic box 3 dB.
    assert link.loss_db == pytest.approx(55.2 + 3.3 + 3, abs=1.2)
    assert min(away, back) == pytest.approx(3 + 100 - 10 - link.loss_db)


def test_the_shape_for_machines_holds_numbers_on_request_alone() -> None:
    answer = asked(row_of_rooms(2))
    plain, numbered = reach_as_json(answer), reach_as_json(answer, numbers=True)
    assert plain.keys() == {"spread_db", "devices", "links", "notes"} == numbered.keys()
    devices, links = plain["devices"], numbered["links"]
    assert isinstance(devices, list)
    assert isinstance(links, list)
    assert [d["word"] for d in devices] == ["likely", "likely"]
    assert {d["chance"] for d in devices} == {None}
    assert all(k["loss_db"] > 0 and k["chance"]["low"] <= k["chance"]["high"] for k in links)


def test_what_lies_beyond_its_stated_range_is_noted() -> None:
    below = " ".join(asked(row_of_rooms(2, protocol="zwave")).notes)
    above = " ".join(asked(row_of_rooms(2)).notes)
    assert "brick" in below
    assert "extrapolated" in below
    assert "extrapolated" not in above.replace("chipboard", "")
    assert "30 m" in above


def test_every_rule_has_an_id_and_a_source() -> None:
    assert {r.id for r in RULES} == {"radio.reach", "radio.one_repeater", "radio.thread_routers"}
    assert all(r.source and r.asks.endswith("?") for r in RULES)
    assert {name for r in RULES for name in r.assumptions} <= set(default_assumptions())


def test_margins_for_picking_parents_are_square_and_symmetric() -> None:
    plain = row_of_rooms(4)
    plain["devices"]["D2"]["model"] = key("leaf")
    plain["devices"]["D3"]["model"] = key("leaf")
    answer = asked(plain)
    ids, margins = margins_after_spread(answer, "N1", wanted_db=10)
    assert ids == ("D0", "D1", "D2", "D3", "N1")
    assert np.array_equal(margins, margins.T)
    assert margins[2, 3] == -np.inf  # neither repeats
    link = next(k for k in answer.links() if {k.a, k.b} == {"N1", "D3"})
    assert margins[3, 4] == pytest.approx(min(link.margin_ab_db, link.margin_ba_db) - 8)


def test_margins_are_not_known_where_an_unknown_fact_decides() -> None:
    plain = row_of_rooms(3)
    del plain["walls"]["W2"]["layers"]
    plain["walls"]["W2"]["thickness_mm"] = 500
    del plain["boxes"]["B0"]["position"]
    ids, margins = margins_after_spread(asked(plain), "N1", wanted_db=10)
    at = {name: n for n, name in enumerate(ids)}
    assert np.all(np.isnan(margins[at["D0"]]))
    assert np.isnan(margins[at["D2"], at["N1"]])
    assert margins[at["D1"], at["N1"]] > 10
    _, easier = margins_after_spread(asked(plain), "N1", wanted_db=-90)
    assert np.isfinite(easier[at["D2"], at["N1"]])  # kept even at the worst


def test_a_device_at_a_luminaire_loses_a_little_more_than_one_at_a_socket() -> None:
    plain = row_of_rooms(2)
    at = {"x_mm": 6000, "y_mm": 2500, "height_mm": 2300}
    spot = plain["places"]["P1"] = {"kind": "socket", "name": "High", "room": "R1", "position": at}
    plain["devices"]["D8"] = {"model": key("plug"), "network": "N1", "place": "P1"}

    def lost() -> float:
        return next(k.loss_db for k in asked(plain).links() if {k.a, k.b} == {"N1", "D8"})

    at_socket = lost()
    spot["kind"] = "light_point"
    assert lost() == pytest.approx(at_socket + 3)


@pytest.mark.parametrize(
    ("source", "repeats", "asked_for"),
    [
        ("mains", True, {"model"}),
        ("mains", None, {"model", "repeats"}),
        (None, True, {"model", "repeats"}),
        ("mains", False, set()),
        ("battery", True, set()),
    ],
)
def test_a_device_whose_model_is_not_chosen_repeats_only_if_the_survey_says_so(
    source: str | None, repeats: bool | None, asked_for: set[str]
) -> None:
    plain = next_room_only(3)
    one = plain["devices"]["D1"]
    del one["model"]
    if source:
        one["power_source"] = seen(source)
    if repeats is not None:
        one["repeats"] = seen(repeats)
    found = device(plain, "D2")
    assert {k.field for k in found.needs} == asked_for
    assert found.word is (Word.NOT_KNOWN if asked_for else Word.UNLIKELY)
