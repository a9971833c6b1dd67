"""Saving: one byte sequence for one meaning; saved documents of format 1 stay readable for ever."""

import json
import random
from pathlib import Path
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import House, as_canonical_json, json_schema, read_house
from tests import example_house as ex


def shuffled(value: Any, rng: random.Random) -> Any:
    if isinstance(value, dict):
        keys = list(value)
        rng.shuffle(keys)
        return {k: shuffled(value[k], rng) for k in keys}
    return [shuffled(v, rng) for v in value] if isinstance(value, list) else value


def test_canonical_input_comes_out_byte_for_byte() -> None:
    text = as_canonical_json(ex.house())
    again = read_house(text.encode(), where="h.json", models={})
    assert isinstance(again, House)
    assert as_canonical_json(again) == text


@given(st.integers(0, 2**32))
def test_the_order_of_keys_carries_no_meaning(seed: int) -> None:
    house = ex.house(shuffled(ex.document(), random.Random(seed)))
    assert house == ex.house()
    assert as_canonical_json(house) == as_canonical_json(ex.house())


def test_null_means_absent() -> None:
    plain = ex.document()
    plain["boxes"]["B1"]["depth_mm"] = None
    without = ex.document()
    del without["boxes"]["B1"]["depth_mm"]
    assert as_canonical_json(ex.house(plain)) == as_canonical_json(ex.house(without))


def test_ids_come_in_natural_order() -> None:
    plain = ex.document()
    plain["rooms"]["R10"] = {"name": "Loft"}
    plain["rooms"]["R9"] = {"name": "Cellar"}
    rooms = list(json.loads(as_canonical_json(ex.house(plain)))["rooms"])
    assert rooms == ["R1", "R2", "R9", "R10"]


def test_documents_once_saved_stay_readable(tree: Path) -> None:
    saved = sorted((tree / "tests/documents/v1").glob("*.json"))
    assert saved
    for path in saved:
        house = read_house(path.read_bytes(), where=path.name, models={})
        assert isinstance(house, House), "\n".join(map(str, house))
        assert as_canonical_json(house).encode() == path.read_bytes()


def test_the_published_schema_is_the_one_the_reader_holds(tree: Path) -> None:
    assert json.loads((tree / "docs/house.schema.json").read_text()) == json_schema()
