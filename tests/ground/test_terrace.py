"""The bench's terrace is a house like any other, many times over."""

import json
from pathlib import Path

import pytest

from bench.terrace import terrace
from secondfix.files import shipped_models
from secondfix.house import House, read_house

HOUSES = ("tests/documents/v1/pellow-lane.json", "demo/house.json")


@pytest.mark.parametrize("path", HOUSES)
def test_a_terrace_is_a_house_without_faults(tree: Path, path: str) -> None:
    one = json.loads((tree / path).read_text(encoding="utf-8"))
    boxes = 3 * len(one["boxes"]) - 1
    read = read_house(
        json.dumps(terrace(one, boxes=boxes)).encode(), where="terrace", models=shipped_models()
    )
    assert isinstance(read, House), read
    assert len(read.boxes) == boxes + 1
    assert len(read.loads) == 3 * len(one["loads"])


def test_each_house_of_a_terrace_stands_beside_the_last() -> None:
    stands = {"x_mm": 10, "y_mm": 20, "height_mm": 1050}
    one = {
        "name": "Lodge",
        "rooms": {"R1": {"name": "Hall", "outline_mm": [[0, 0], [4000, 0], [0, 3000]]}},
        "boxes": {"B1": {"room": "R1", "position": stands, "note": "R1"}},
        "outside_uses": {"U1": {"kind": "routine", "device": "B1", "words": "B1"}},
        "scenes": {"S1": {"name": "Out", "starts": [{"by": "gang", "gang": "B1.2", "press": "held"}]}},
    }
    two = terrace(one, boxes=2)
    assert two["name"] == "Lodge"
    assert two["rooms"]["R1-1"] == {"name": "Hall 1", "outline_mm": [[40000, 0], [44000, 0], [40000, 3000]]}
    assert two["boxes"]["B1-1"]["position"] == {**stands, "x_mm": 40010}
    assert two["boxes"]["B1-1"]["room"] == "R1-1"
    assert two["boxes"]["B1-1"]["note"] == "R1"
    assert two["outside_uses"]["U1-1"] == {"kind": "routine", "device": "B1-1", "words": "B1"}
    assert list(two["scenes"]) == ["S1-0"]
    assert two["scenes"]["S1-0"]["starts"][0]["gang"] == "B1-0.2"
