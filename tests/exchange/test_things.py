"""The things of a house as forms: every field out and in without loss, slips told, new ones with own ids."""

from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.exchange import KINDS, begun, fields_of, kind_of, next_id, shown_thing, thing_changes
from secondfix.files import shipped_models
from secondfix.house import Change, Fault, House, edited, plain_of, read_house
from secondfix.terms import Known

TREE = Path(__file__).parents[2]
HOUSES = ("demo/house.json", "demo/nec-house.json")


@cache
def house_of(name: str) -> House:
    house = read_house((TREE / name).read_bytes(), where=name, models=shipped_models())
    assert isinstance(house, House)
    return house


@pytest.fixture(params=HOUSES)
def house(request: pytest.FixtureRequest) -> House:
    """A demo house, one of each world."""
    return house_of(request.param)


def paths(house: House) -> list[tuple[str, str]]:
    """Every thing of a house: its kind and its path."""
    boxes = house.boxes.items()
    found = [("house", "")]
    found += [("mount", f"boxes.{b}.mounts.{n}") for b, box in boxes for n in box.mounts]
    found += [("gang", f"boxes.{b}.gangs.{n}") for b, box in boxes for n in box.gangs]
    for kind in KINDS.values():
        found += [(kind.name, f"{kind.collection}.{i}") for i in getattr(house, kind.collection, None) or {}]
    return found


def test_what_is_shown_asks_for_nothing(house: House) -> None:
    for name, path in paths(house):
        texts = shown_thing(house, KINDS[name], path)
        read = thing_changes(house, KINDS[name], path, texts, known=Known.TOLD)
        assert (path, read.changes, read.faults) == (path, (), ())


@pytest.mark.parametrize("name", HOUSES)
def test_a_thing_typed_anew_from_its_texts_is_the_same_thing(name: str) -> None:
    house = house_of(name)
    for kind in sorted(KINDS.keys() - {"house", "box", "mount", "gang"}):
        collection = KINDS[kind].collection
        for thing_id, thing in getattr(house, collection).items():
            bare = house.model_copy(update={collection: {**getattr(house, collection)}})
            texts = shown_thing(house, KINDS[kind], f"{collection}.{thing_id}")
            read = thing_changes(bare, KINDS[kind], f"{collection}.Xnew", texts, known=Known.ASSUMED)
            assert read.faults == ()
            plain: dict[str, Any] = {}
            for change in read.changes:
                _put(plain, change.path.split(".")[2:], change.value)
            stands = plain_of(house)[collection][thing_id]
            assert _without_empty(plain) == _without_empty(stands), (thing, texts)


def _put(plain: dict[str, Any], steps: list[str], value: Any) -> None:
    for step in steps[:-1]:
        plain = plain.setdefault(step, {})
    plain[steps[-1]] = value


def _without_empty(value: Any) -> Any:
    if not isinstance(value, dict):
        return value
    return {
        k: _without_empty(v) for k, v in value.items() if v not in ("", None) and (k, v) != ("sill_mm", 0)
    }


@pytest.mark.parametrize(
    ("kind", "path", "key", "text", "expected"),
    [
        ("box", "boxes.B01", "height", "chest high", "whole mm, or feet"),
        ("box", "boxes.B01", "room", "R99", "a room of this house"),
        ("circuit", "circuits.C1", "label-rooms", "R01,, R02", "members with ','"),
        ("circuit", "circuits.C1", "curve", "K", "one of B, C, D"),
        ("room", "rooms.R01", "outline", "0 0, 1 2 3", "x and y of each corner"),
        ("storey", "storeys.G", "floor", "cheese 30", "layers such as"),
        ("load", "loads.L01", "time", "", ""),
        ("load", "loads.L01", "limit", "soon", "a figure in s"),
        ("load", "loads.L01", "note", "x" * 12_001, "at most 12,000"),
        ("load", "loads.L01", "name", "x" * 501, "at most 500"),
        ("device", "devices.D01", "address", "12:34", "16 hex digits"),
        ("device", "devices.D01", "outputs", "1 L05", "as in '14: 2"),
        ("network", "networks.N1", "protocol", "smoke", "one of Zigbee"),
        ("wall", "walls.W01", "from", "0 0, 1 1", "x and y in whole mm"),
        ("door", "doors.Door1", "wall", "the long one", "a wall of this house"),
        ("house", "", "mains", "strong", "a figure in V"),
    ],
)
def test_a_slip_names_its_place_and_what_was_expected(
    kind: str, path: str, key: str, text: str, expected: str
) -> None:
    read = thing_changes(house_of(HOUSES[0]), KINDS[kind], path, {key: text}, known=Known.TOLD)
    if not expected:
        assert (read.changes, read.faults) == ((), ())
        return
    assert read.changes == ()
    assert [expected in f.expected for f in read.faults] == [True]
    assert read.faults[0].path.startswith(path)


@pytest.mark.parametrize(
    ("text", "mm"),
    [("1050", 1050), ("1050 mm", 1050), ("3'-5 3/8\"", 1051), ("4'", 1219), ('42"', 1067), ('-6"', -152)],
)
def test_a_length_is_read_as_a_tape_gives_it(text: str, mm: int) -> None:
    # 3'-5 3/8" is 41.375 in, times 25.4 mm (exact) 1050.925 mm; 4' 1219.2; 42" 1066.8; 6" 152.4.
    read = thing_changes(house_of(HOUSES[1]), KINDS["box"], "boxes.B02", {"x": text}, known=Known.TOLD)
    assert read.changes == (Change("boxes.B02.position.x_mm", mm),)


def test_the_nec_houses_boxes_are_asked_for_conductors_and_no_others() -> None:
    keys = [{f.key for f in fields_of(KINDS["box"], house_of(name))} for name in HOUSES]
    assert ["conductors" in k for k in keys] == [False, True]
    assert ["depth" in k for k in keys] == [True, False]


def test_a_position_goes_whole_or_is_told_to_be_incomplete() -> None:
    house = house_of(HOUSES[0])
    gone = thing_changes(house, KINDS["box"], "boxes.B01", {"x": "", "y": "", "height": ""}, known=Known.TOLD)
    assert gone.changes == (Change("boxes.B01.position", None),)
    half = thing_changes(house, KINDS["box"], "boxes.B01", {"height": ""}, known=Known.TOLD)
    told = edited(house, half.changes, models={})
    assert isinstance(told, list)
    assert "position.height_mm" in told[0].path


def test_a_fact_carries_how_it_is_known() -> None:
    house = house_of(HOUSES[0])
    texts = {"breaker": "6", "curve": "C (seen open)"}
    read = thing_changes(house, KINDS["circuit"], "circuits.C1", texts, known=Known.MEASURED)
    assert [c.value for c in read.changes] == [
        {"value": 6, "known": "measured"},
        {"value": "C", "known": "seen_open"},
    ]


def test_a_new_thing_has_an_id_above_all_that_stand_or_stood() -> None:
    house = house_of(HOUSES[0])
    for name in sorted(KINDS.keys() - {"house", "mount", "gang"}):
        kind = KINDS[name]
        new = next_id(kind, house, {}.get)
        assert kind_of(house, new) is None
        assert new.startswith(kind.letter)
    assert next_id(KINDS["load"], house, {"L": (7, 93)}.get) == "L94"


def test_a_new_thing_without_what_it_must_have_is_told() -> None:
    house = house_of(HOUSES[0])
    made = edited(house, begun(house, KINDS["room"], "R93", {}, known=Known.TOLD).changes, models={})
    assert isinstance(made, list)
    assert [(f.path, f.stands) for f in made] == [("rooms.R93.name", "nothing")]


THINGS = [
    ("house", ""), ("storey", "storeys.G"), ("room", "rooms.R01"), ("wall", "walls.W01"),
    ("door", "doors.Door1"), ("circuit", "circuits.C1"), ("box", "boxes.B01"),
    ("mount", "boxes.B01.mounts.1"), ("load", "loads.L02"), ("place", "places.P01"),
    ("network", "networks.N1"), ("device", "devices.D01"), ("use", "outside_uses.Use1"),
]  # fmt: skip
EVERY_FIELD = [(kind, path, f.key) for kind, path in THINGS for f in KINDS[kind].fields]


@given(text=st.text(max_size=40), field=st.sampled_from(EVERY_FIELD))
def test_whatever_is_typed_is_a_change_or_a_fault(text: str, field: tuple[str, str, str]) -> None:
    kind, path, key = field
    read = thing_changes(house_of(HOUSES[0]), KINDS[kind], path, {key: text}, known=Known.TOLD)
    assert all(isinstance(f, Fault) for f in read.faults)
    assert len(read.changes) + len(read.faults) <= 1
