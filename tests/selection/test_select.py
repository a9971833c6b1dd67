"""Select on the demo house, case by case: what is wanted, what fits, what refuses, what would help."""

from copy import deepcopy
from typing import Any

import pytest

from secondfix.catalogue import Form
from secondfix.selection import RULES, PlaceChoice
from secondfix.terms import Protocol
from tests.electrical.sound import put
from tests.selection.houses import Plain, at, catalogue, choices, demo

MENDED = demo("house-mended.json")
TROUBLED = demo()
BARE = {**MENDED, "scenes": {}, "outside_uses": {}}  # devices and gangs may go, nobody speaks of them


def fits(choice: PlaceChoice) -> list[str]:
    return [f.model for f in choice.fits]


def because(choice: PlaceChoice) -> dict[str, str]:
    return {r.model: r.because.rule for r in choice.refused}


def changed(plain: Plain, **paths: Any) -> Plain:
    for path, value in paths.items():
        plain = put(plain, path.replace("__", "."), value)
    return plain


def seen(value: Any) -> Plain:
    return {"value": value, "known": "seen_open"}


def test_every_box_and_every_light_point_with_a_load_is_asked() -> None:
    asked = [c.spot.place for c in choices(TROUBLED)]
    points = {x["place"] for x in TROUBLED["loads"].values()}
    lit = [p for p, place in TROUBLED["places"].items() if place["kind"] == "light_point" and p in points]
    assert asked == [*TROUBLED["boxes"], *lit]


def test_every_model_stands_in_exactly_one_list() -> None:
    for c in choices(TROUBLED):
        listed = [*fits(c), *(d.model for d in c.doubts), *(r.model for r in c.refused)]
        assert sorted(listed) == sorted(catalogue())


def test_whatever_the_mended_house_has_fits_where_it_stands() -> None:
    for c in choices(MENDED):
        if c.spot.device_id:
            assert MENDED["devices"][c.spot.device_id]["model"] in fits(c), c.spot.place


def test_a_depth_too_small_is_told_with_value_limit_and_source() -> None:
    refusal = next(r for r in at(TROUBLED, "B14").refused if r.model == "plimmet-osier-one@1")
    assert refusal.because.rule == "depth"
    assert "25 mm" in refusal.because.value
    assert "31 mm" in refusal.because.limit
    assert "EN 60670-1" in refusal.because.source


def test_what_the_place_asks_comes_before_the_electrical_rules() -> None:
    why = because(at(TROUBLED, "B14"))
    assert why["plimmet-wick@1"] == "select.output"
    assert why["plimmet-tern@1"] == "select.form"
    assert why["quorndel-lathe-four@1"] == "select.mounts"
    assert why["quorndel-clinker@1"] == "select.network"
    assert why["skelverin-davit@1"] == "select.voltage"
    assert why["tavrindo-slate-one@1"] == "neutral"
    assert because(at(TROUBLED, "B07"))["plimmet-osier-one@1"] == "select.gangs"
    assert because(at(MENDED, "P08"))["plimmet-rush@1"] == "select.dimming"


def test_every_rule_of_the_place_refuses_or_doubts_something_in_the_demo_house() -> None:
    without = changed(TROUBLED, loads__L08__neutral=None)
    told = {r.because.rule for c in choices(without) for r in c.refused}
    told |= {f.rule for c in choices(without) for d in c.doubts for f in d.unknown}
    assert {r.id for r in RULES} <= told


def test_the_protocol_of_the_network_decides_unless_another_is_asked_for() -> None:
    assert {catalogue()[m].protocol for m in fits(at(MENDED, "B21"))} == {Protocol.ZIGBEE}
    other = at(MENDED, "B21", protocol=Protocol.ZWAVE)
    assert "ostrabeck-gannet@1" in fits(other)
    assert other.spot.protocols == (Protocol.ZWAVE,)


def test_an_undecided_box_is_asked_among_all_networks_of_the_house() -> None:
    plain = changed(MENDED, devices__D21=None)
    choice = at(plain, "B21")
    assert choice.spot.device_id is None
    assert {catalogue()[m].protocol for m in fits(choice)} >= {Protocol.ZIGBEE, Protocol.ZWAVE}


def test_two_mounts_without_a_device_are_one_switch_and_two() -> None:
    plain = changed(BARE, devices__D10=None)
    plain = changed(plain, boxes__B10__mounts={"1": {"neutral": seen("C3")}, "2": {"neutral": seen("C3")}})
    plain = changed(plain, boxes__B10__gangs__2__mount="2")
    asked = choices(plain, places={"B10"})
    assert [(c.spot.mounts, [g.id for g in c.spot.gangs]) for c in asked] == [
        (("1", "2"), ["B10.1", "B10.2"]),
        (("1",), ["B10.1"]),
        (("2",), ["B10.2"]),
    ]
    assert "ostrabeck-gull-four@1" not in fits(asked[1])


def test_a_gang_that_nothing_works_beside_a_switch_is_asked_for_a_module_behind_it() -> None:
    plain = changed(MENDED, devices__D10__gangs=["1"])
    behind = choices(plain, places={"B10"})[1]
    assert (behind.spot.mounts, [g.id for g in behind.spot.gangs]) == ((), ["B10.2"])
    assert {catalogue()[m].form for m in [*fits(behind), *(d.model for d in behind.doubts)]} <= {
        Form.IN_BOX_MODULE
    }


def test_dimming_is_wanted_by_the_load_or_by_a_scene() -> None:
    assert [g.dimmed for g in at(MENDED, "B21").spot.gangs] == [False]
    plain = changed(MENDED, loads__L51__to_be_dimmed=True)
    told = [g for c in choices(plain) for g in c.spot.gangs if g.load_id == "L51"]
    assert told
    assert all(g.dimmed for g in told)
    assert all(g.dimmed for g in at(MENDED, "P08").spot.gangs), "a scene sets L08 to a level"


def test_a_lamp_whose_dimming_is_not_known_leaves_a_dimmer_open_with_a_look() -> None:
    choice = at(changed(MENDED, loads__L08__dimmable=None), "P08")
    doubt = next(d for d in choice.doubts if d.model == "tavrindo-finch@1")
    assert ("L08", "dimmable") in {(look.place, look.field) for look in doubt.looks}


def test_a_module_at_a_light_point_asks_for_the_lamps_neutral() -> None:
    choice = at(changed(MENDED, loads__L08__neutral=None), "P08")
    assert {f.rule for d in choice.doubts for f in d.unknown} == {"select.supply_at_point"}


def test_a_heater_gets_a_model_that_keeps_its_time_set_to_return_off() -> None:
    choice = at(MENDED, "P16")
    settings = {f.model: f.set_to.value for f in choice.fits if f.set_to}
    assert settings
    assert set(settings.values()) == {"off"}
    assert set(settings) == set(fits(choice))


@pytest.mark.parametrize(
    ("purpose", "kind", "fit", "refused"),
    [
        ("comfort_fan", "motor", "murrowfen-drift@1", {"plimmet-withy@1", "murrowfen-scree@1"}),
        ("lighting", "tungsten", "murrowfen-scree@1", {"murrowfen-drift@1", "murrowfen-lintel@1"}),
    ],
)
def test_an_output_is_made_for_what_it_feeds(purpose: str, kind: str, fit: str, refused: set[str]) -> None:
    load = {
        "name": "one",
        "room": "R08",
        "place": "P53",
        "purpose": purpose,
        "kind": seen(kind),
        "neutral": seen("C4"),
    }
    load |= {"power_mw": seen(60_000), "count": seen(1), "permanent_supply": seen(False)}
    choice = at(changed(BARE, loads__L53=load, boxes__B21__mounts__1__neutral=seen("C4")), "B21")
    assert fit in fits(choice)
    assert refused <= {m for m, rule in because(choice).items() if rule in {"select.output", "dimming"}}


def test_a_shutter_is_run_by_an_interlocked_output() -> None:
    """Two ways of one blind, each a load: up and down."""
    way = {"room": "R08", "kind": seen("motor"), "purpose": "covering", "neutral": seen("C4")}
    way |= {"power_mw": seen(140_000), "count": seen(1), "permanent_supply": seen(False)}
    plain = changed(BARE, devices__D21=None)
    plain["loads"]["L53"] = {**way, "name": "blind up", "other_direction": "L71"}
    plain["loads"]["L71"] = {**way, "name": "blind down", "other_direction": "L53"}
    plain["boxes"]["B21"]["gangs"]["2"] = {**plain["boxes"]["B21"]["gangs"]["1"], "load": "L71"}
    plain = changed(plain, boxes__B21__mounts__1__neutral=seen("C4"), boxes__B21__depth_mm=seen(68))
    choice = at(plain, "B21")
    assert {"murrowfen-sill@1", "murrowfen-lintel@1"} <= set(fits(choice)), because(choice)
    assert because(choice)["skelverin-capstan@1"] == "select.voltage"


def test_an_extension_unit_fits_only_a_gang_that_extends_and_only_its_own_makers_switch() -> None:
    plain = changed(BARE, devices__D11=None)
    plain["boxes"]["B11"]["gangs"] = {"1": plain["boxes"]["B11"]["gangs"]["1"]}
    choice = at(plain, "B11")
    doubt = next(d for d in choice.doubts if d.model == "murrowfen-burr@1")
    assert [f.rule for f in doubt.unknown] == ["select.extension"], "a switch of another maker"
    own = deepcopy(catalogue()["plimmet-osier-three@1"]).model_copy(update={"maker": "murrowfen"})
    of_maker = changed(plain, devices__D01__model=own.key)
    of_maker["models"][own.key] = own.model_dump(mode="json", exclude_unset=True)
    assert "murrowfen-burr@1" in fits(at(of_maker, "B11"))
    undecided = changed(plain, devices__D01__model=None)
    looks = next(d for d in at(undecided, "B11").doubts if d.model == "murrowfen-burr@1").looks
    assert ("D01", "model") in {(look.place, look.field) for look in looks}


def test_unknown_mains_voltage_leaves_every_rating_open() -> None:
    choice = at(changed(MENDED, mains_voltage_v=None), "B21")
    assert not choice.fits
    assert {("house", "mains_voltage_v")} <= {(x.place, x.field) for d in choice.doubts for x in d.looks}


def test_the_best_comes_first_by_unknowns_then_margin() -> None:
    for choice in choices(MENDED):
        used = [f.used_permille or 0 for f in choice.fits if not f.advice]
        assert used == sorted(used)
        unknowns = [len(d.looks) for d in choice.doubts]
        assert unknowns == sorted(unknowns)


def test_the_share_used_is_the_largest_of_gang_and_total() -> None:
    """Worked by hand: 8 lamps of 7.5 W at 230 V and power factor 0.5 take 522 mA."""
    plain = changed(MENDED, loads__L51__power_mw=seen(7_500), loads__L51__count=seen(8))
    plain = changed(plain, loads__L51__kind=seen("led_lamp"), loads__L51__power_factor_permille=seen(500))
    (point,) = choices(plain, places={plain["loads"]["L51"]["place"]})
    rush = next(f for f in point.fits if f.model == "plimmet-rush@1")  # 740 mA self-ballasted, 6 A in all
    assert rush.used_permille == 706  # 521.74 / 740 = 0.7051, rounded up


def test_a_place_that_does_not_exist_gives_no_answer() -> None:
    assert choices(MENDED, places={"B99"}) == ()
