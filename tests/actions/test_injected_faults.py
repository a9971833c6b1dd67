# ruff: noqa: E501 - a case of the table stays one line
"""Every rule finds its injected fault in an otherwise sound house: at its place, and by no other rule than said.

The electrical rules have their own table (tests/electrical/test_injected.py); this one holds all others, on
the mended demo house, through the one action that pages, papers and commands call.
"""

import json
from collections.abc import Callable
from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest

from secondfix import electrical
from secondfix.actions.check import RULES, check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Outcome
from secondfix.house import House, read_house

DEMO = Path(__file__).parents[2] / "demo"
MENDED: dict[str, Any] = json.loads((DEMO / "house-mended.json").read_text())
TROUBLED: dict[str, Any] = json.loads((DEMO / "house.json").read_text())
Change = Callable[[dict[str, Any]], Any]
Answers = set[tuple[str, str]]


def wrong(plain: dict[str, Any]) -> Answers:
    """Rule and place of every answer that is not a pass."""
    house = read_house(json.dumps(plain).encode(), where="changed", models={})
    assert isinstance(house, House), house
    found = check(house, assumptions=default_assumptions()).findings
    return {(f.rule, f.place) for f in found if f.outcome is not Outcome.PASSES}


def seen(value: object) -> dict[str, object]:
    return {"value": value, "known": "seen_open"}


def closed_box(d: dict[str, Any]) -> None:
    d["boxes"]["B15"] |= {"shell": seen("metal"), "plate": seen("metal"), "earthed": seen(True)}


def crowd(d: dict[str, Any]) -> None:
    """Thirty more switches that could repeat, each in a box like B03."""
    for n in range(30):
        d["boxes"][f"X{n}"] = {**d["boxes"]["B03"], "gangs": {"1": {"duty": "capped", "line": seen("C3")}}}
        d["devices"][f"T{n}"] = {**d["devices"]["D03"], "box": f"X{n}", "gangs": ["1"]}


def radiant(d: dict[str, Any]) -> None:
    d["loads"]["L17"]["purpose"] = "heater_radiant"
    d["scenes"]["S5"]["rules"].append({"select": {"load": "L17"}, "to": "on"})


def at_odds(d: dict[str, Any]) -> None:
    d["scenes"]["S8"]["starts"].append({"by": "time", "at": "06:40"})
    d["scenes"]["S8"]["rules"].append({"select": {"load": "L06"}, "to": "off"})


def no_way_out(d: dict[str, Any]) -> None:
    for way in ("remove", "reset"):
        d["models"]["ostrabeck-gull-four@1"].pop(way)


def front_off(d: dict[str, Any]) -> None:
    """D09 in the edition that joins with its front off, while live parts can be touched."""
    d["models"]["tavrindo-slate-two@1"] = TROUBLED["models"]["tavrindo-slate-two@1"]
    d["devices"]["D09"]["model"] = "tavrindo-slate-two@1"


def spoken(d: dict[str, Any]) -> None:
    """Once English is stated, three names of the house are heard too: L03, L53 and R03."""
    d["naming"] = {"spoken_language": "en"}
    d["loads"]["L05"]["name"], d["loads"]["L06"]["name"] = "lamp", "ramp"


ELECTRICAL_TOO = {("hazard", "B17.2")}
CASES: list[tuple[str, Change, Answers, Answers]] = [
    ("radio.reach", closed_box, {("radio.reach", "B15")}, {("no_parent", "B15")}),
    ("radio.one_repeater", lambda d: d["devices"].pop("D34"), {("radio.one_repeater", "P91")}, set()),
    ("radio.thread_routers", crowd, {("radio.thread_routers", "P83")}, set()),
    ("names.unique", lambda d: d["loads"]["L05"].update(name="light"), {("names.unique", "L04")}, set()),
    ("names.characters", lambda d: d["loads"]["L05"].update(name="work\u202etop"), {("names.characters", "L05")}, set()),
    ("names.length", lambda d: d["loads"]["L05"].update(name="under the cupboards"), {("names.length", "L05")}, set()),
    ("names.whole_device", lambda d: d["loads"]["L20"].update(name="B08"), {("names.whole_device", "D08")}, {("names.unique", "L20")}),
    ("names.by_ear", spoken, {("names.by_ear", p) for p in ("L05", "L03", "L53", "R03")}, set()),
    ("scenes.refused", radiant, {("scenes.refused", "S5")}, ELECTRICAL_TOO),
    ("scenes.conflict", lambda d: d["scenes"]["S3"]["rules"].append({"select": {"load": "L08"}, "to": "off"}), {("scenes.conflict", "S3")}, set()),
    ("scenes.whole_entry", lambda d: d["scenes"]["S2"].update(commands=[{"device": "D08", "entry": 0, "to": "off"}]), {("scenes.whole_entry", "S2")}, set()),
    ("scenes.entry", lambda d: d["scenes"]["S3"].update(commands=[{"device": "D36", "entry": 1, "to": "off"}]), {("scenes.entry", "S3")}, set()),
    ("scenes.level", lambda d: d["scenes"]["S5"]["rules"][0].update(level_pct=40), {("scenes.level", "S5")}, set()),
    ("scenes.selects", lambda d: d["scenes"]["S4"]["rules"].append({"select": {"tag": "seaside"}, "to": "on"}), {("scenes.selects", "S4")}, set()),
    ("scenes.start", lambda d: d["scenes"]["S7"].update(starts=[{"by": "sensor", "device": "D31"}]), {("scenes.start", "S7")}, set()),
    ("scenes.start_twice", lambda d: d["scenes"]["S2"]["starts"][0].update(press="held"), {("scenes.start_twice", "B11.3")}, set()),
    ("scenes.times_clash", at_odds, {("scenes.times_clash", "S5")}, set()),
    ("names.explained", lambda d: d["loads"]["L20"].pop("purpose"), {("names.explained", "L20")}, {("scenes.decided", s) for s in ("S1", "S2", "S6")} | {(r, "B08.1") for r in ("hazard", "permanent_supply", "power_loss")}),
    ("scenes.decided", lambda d: d["loads"]["L20"].pop("purpose"), {("scenes.decided", s) for s in ("S1", "S2", "S6")}, {("names.explained", "L20")} | {(r, "B08.1") for r in ("hazard", "permanent_supply", "power_loss")}),
    ("circuit_known", lambda d: d["boxes"]["B06"]["gangs"]["1"].pop("line"), {("circuit_known", "B06")}, {("board_label", "B06.1"), ("borrowed_neutral", "B06.1")}),
    ("front_on", front_off, {("front_on", "B09")}, set()),
    ("removal_first", no_way_out, {("removal_first", "B08")}, set()),
    ("code_captured", lambda d: d["devices"]["D08"].pop("code_ref"), {("code_captured", "B08")}, set()),
    ("no_parent", lambda d: d["assumptions"].update(parent_margin_db={"value": 18}), {("no_parent", p) for p in ("B20", "B22", "P91")}, set()),
]  # fmt: skip
SEPARATE = {
    "scenes.time"
}  # tests/scenes/test_time_to_complete.py injects it: a house of slow groups is wanted


@pytest.mark.parametrize(("rule", "change", "there", "others"), CASES, ids=[c[0] for c in CASES])
def test_an_injected_fault_is_found_at_its_place_and_nowhere_else(
    rule: str, change: Change, there: Answers, others: Answers
) -> None:
    plain = deepcopy(MENDED)
    plain.setdefault("assumptions", {})
    change(plain)
    found = wrong(plain)
    assert {answer for answer in found if answer[0] == rule} == there
    assert found - there == others


def test_the_house_is_sound_to_begin_with() -> None:
    assert wrong(MENDED) == set()


def test_every_rule_has_an_injected_fault() -> None:
    held = {c[0] for c in CASES} | {rule.id for rule in electrical.RULES} | SEPARATE
    assert {rule.id for rule in RULES} - held == set()
