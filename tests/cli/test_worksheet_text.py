"""A worksheet as text: blocks apart and counted afresh, the stage in the words of the walk, the code."""

import json
from pathlib import Path

import pytest

from tests.cli.conftest import Call

DEMO = str(Path(__file__).resolve().parents[2] / "demo" / "house.json")


@pytest.fixture
def sheet(call: Call) -> list[str]:
    """The sheet of the dimmer that is removed, reset and joined on a bench."""
    text = call("worksheet", DEMO, "--device", "D09").out
    return text[text.index("B09 Parlour") :].splitlines()


def test_first_reset_and_join_are_blocks_of_their_own_each_counted_from_one(sheet: list[str]) -> None:
    heads = [
        n for n, line in enumerate(sheet) if line.startswith(("   First. ", "   Or reset it:", "   Join: "))
    ]
    assert [sheet[n].split()[0] for n in heads] == ["First.", "Or", "Join:"]
    for begin, end in zip(heads, [*heads[1:], len(sheet)], strict=True):
        lines = [line.strip() for line in sheet[begin:end] if line.startswith("      ")]
        numbers = [int(line.split(".")[0]) for line in lines if line.split(".")[0].isdigit()]
        assert numbers == list(range(1, len(numbers) + 1))
        assert numbers


def test_the_stage_has_the_words_of_the_walk(sheet: list[str], call: Call) -> None:
    walked = call("walk", DEMO).out.splitlines()
    assert sheet[1].strip().startswith("Before any isolation. ")
    assert "Before any isolation" in walked
    assert "Stage 4" in walked
    other = call("worksheet", DEMO, "--device", "D08").out
    assert "\n   Stage 4. " in other


def test_the_code_is_told_with_its_kind_its_place_and_its_key_ring_reference(sheet: list[str]) -> None:
    text = " ".join(line.strip() for line in sheet)
    assert (
        "Install code, with the address beside it: kept in the key ring as K09. Printed: inside the front"
        in text
    )


def test_the_sheet_and_the_walk_isolate_alike(call: Call) -> None:
    steps = json.loads(call("walk", DEMO, "--json").out)["steps"]
    isolates = [s["words"].split(": lock off")[0] for s in steps if s["kind"] == "isolate"]
    for sheet in json.loads(call("worksheet", DEMO, "--json").out)["worksheets"]:
        assert not sheet["isolate"] or sheet["isolate"].split(": lock off")[0] in isolates


def test_the_walk_says_that_reach_tells_the_way_in_the_end(call: Call) -> None:
    assert "reach shows the likeliest." in " ".join(call("walk", DEMO).out.split())
