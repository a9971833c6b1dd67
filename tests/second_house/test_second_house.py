"""A second house, written from the docs alone: it reads, its three troubles are found, nothing else fails.

The troubles are the borrowed neutral of the landing lamp (B5.1), the shallow box of the bedroom (B7) and the
two rules of the scene Supper that disagree (S2). The closed metal box of the snug (B2) is meant to leave
radio untold.
"""

import json
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Any

import pytest

HERE = Path(__file__).parent
SECONDFIX = Path(sys.executable).parent / "secondfix"


def secondfix(verb: str, *words: str) -> subprocess.CompletedProcess[str]:
    told = [str(SECONDFIX), verb, str(HERE / "house.json"), "--firm", str(HERE / "firm"), *words]
    return subprocess.run(told, capture_output=True, text=True, check=False)


@cache
def answer(verb: str) -> tuple[int, Any]:
    ran = secondfix(verb, "--json")
    assert ran.stderr == ""
    return ran.returncode, json.loads(ran.stdout)


def test_three_troubles_are_found_at_their_places_and_nothing_else_fails() -> None:
    code, checked = answer("check")
    failing = {(f["place"], f["rule"], f["severity"]) for f in checked["findings"] if f["outcome"] == "fails"}
    assert failing == {
        ("B5.1", "borrowed_neutral", "danger"),
        ("B7", "depth", "fault"),
        ("S2", "scenes.conflict", "fault"),
    }
    assert code == 1
    assert checked["counts"]["passes"] > 300


def test_what_the_survey_left_out_cannot_be_told_and_nothing_else() -> None:
    _, checked = answer("check")
    untold = {(f["place"], f["rule"]) for f in checked["findings"] if f["outcome"] == "cannot_tell"}
    assert untold == {
        *(("B2", rule) for rule in ("no_parent", "radio.reach", "metal_earthed")),
        ("B3.2", "breaker_inrush"),
        ("B7.1", "dimmed_socket"),
    }


def test_reach_is_likely_but_for_the_metal_box() -> None:
    code, reach = answer("reach")
    words = {device["id"]: device["word"] for device in reach["devices"]}
    assert words == {f"D{n}": "not known" if n == 2 else "likely" for n in range(1, 13)}
    assert code == 3


def test_the_ledger_of_each_scene_counts_sixteen_loads() -> None:
    _, scenes = answer("scenes")
    ledgers = [list(scene["ledger"].values()) for scene in scenes["scenes"]]
    assert ledgers == [[13, 3, 0, 0, 16], [7, 8, 1, 0, 16]]
    crossed = scenes["scenes"][1]["crossings"]
    assert [load["load"] for load in crossed if load["kind"] == "conflict"] == ["L4"]


def test_the_borrowed_neutral_has_both_light_circuits_isolated_together() -> None:
    _, walk = answer("walk")
    assert walk["unplaced"] == []
    assert [stage["circuits"] for stage in walk["stages"] if stage["circuits"]] == [["C4"], ["C1", "C2"]]


def test_every_entry_of_every_device_is_named_in_sixteen_bytes() -> None:
    code, names = answer("names")
    listed = [entry["name"] for device in names["devices"] for entry in device["entries"]]
    assert len(listed) == 28 == len(set(listed))
    assert max(len(name.encode()) for name in listed) <= 16
    assert code == 0


def test_each_device_has_its_worksheet_in_the_order_of_the_walk() -> None:
    _, answered = answer("worksheet")
    sheets = answered["worksheets"]
    assert [sheet["number"] for sheet in sheets] == list(range(1, 13))
    assert (sheets[0]["device"], sheets[-1]["device"]) == ("D11", "D10")


@pytest.mark.parametrize(
    ("name", "value", "set_by"), [("parent_margin_db", 8, "firm"), ("plate_projection_mm", 1, "house")]
)
def test_the_changed_assumptions_say_who_set_them(name: str, value: int, set_by: str) -> None:
    _, listed = answer("assumptions")
    one = next(a for a in listed["assumptions"] if a["name"] == name)
    assert (one["value"], one["set_by"]) == (value, set_by)


def test_without_the_firms_folder_its_model_is_asked_for_at_each_device() -> None:
    told = [str(SECONDFIX), "check", str(HERE / "house.json")]
    ran = subprocess.run(told, capture_output=True, text=True, check=False)
    assert ran.returncode == 2
    assert ran.stdout == ""
    assert [line.split(": ")[1] for line in ran.stderr.splitlines()] == [
        "devices.D5.model",
        "devices.D9.model",
    ]


def test_the_papers_are_made(tmp_path: Path) -> None:
    ran = secondfix("pack", "--out", str(tmp_path), "--date", "2026-11-24", "--drawn-by", "O. Brakk")
    assert (ran.returncode, ran.stderr) == (0, "")
    made = {path.name: path.read_bytes() for path in tmp_path.iterdir()}
    pdfs = {"findings.pdf", "handover-pack.pdf", "worksheets.pdf"}
    rooms = {f"elevations-R{n}.svg" for n in (1, 2, 3, 4, 6, 7)}
    assert made.keys() == pdfs | rooms | {"plan-G.svg", "plan-U.svg"}
    assert all(made[name].startswith(b"%PDF-") for name in pdfs)
