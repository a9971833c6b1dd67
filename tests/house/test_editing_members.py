"""Edits validate only what they touch: what comes out is what reading the whole document anew would give."""

import json
from functools import cache
from random import Random
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from secondfix.files import shipped_models
from secondfix.house import (
    Change,
    House,
    as_canonical_json,
    changes_between,
    edited,
    field_changes,
    plain_of,
    read_house,
    written,
)
from secondfix.house.editing import _by_members, edited_whole
from tests.demo.reading import house_of
from tests.house.test_editing import leaves

MODELS = shipped_models()
HOUSES = ("house.json", "house-mended.json", "nec-house-mended.json", "nec-house.json")
STRANGE = (
    None,
    0,
    -1,
    7,
    True,
    1.5,
    "",
    "X",
    "B1",
    [],
    {},
    {"value": 3, "known": "told"},
    {"name": "A"},
    ["R1"],
)


@cache
def stood(name: str) -> House:
    """A demo house as the store holds it."""
    return read_again(house_of(name))


def read_again(house: House) -> House:
    again = read_house(as_canonical_json(house).encode(), where="again", models={})
    assert isinstance(again, House), "\n".join(map(str, again))
    return again


@cache
def fields(name: str) -> list[tuple[str, Any]]:
    return leaves(json.loads(as_canonical_json(stood(name))))


@st.composite
def an_edit(draw: st.DrawFn) -> tuple[str, list[Change]]:
    """Mostly one field put where another stood, now and then something strange at a strange place."""
    name = draw(st.sampled_from(HOUSES))
    field = st.sampled_from(fields(name))
    part = st.integers(1, 4)
    changes = []
    for _ in range(draw(st.integers(0, 4))):
        path, value = draw(field)
        kind = draw(st.sampled_from(("another", "gone", "new", "same kind", "shorter", "strange")))
        if kind in {"shorter", "strange"}:
            path = ".".join(path.split(".")[: draw(part)])
        if kind == "new":
            path = ".".join(one + "9" if n == 1 else one for n, one in enumerate(path.split(".")))
        if kind == "another":
            value = draw(field)[1]
        elif kind == "same kind":
            last = path.rpartition(".")[2]
            value = draw(st.sampled_from([v for p, v in fields(name) if p.rpartition(".")[2] == last]))
        elif kind in {"gone", "shorter"}:
            value = None
        elif kind == "strange":
            value = draw(st.sampled_from(STRANGE))
        changes.append(Change(path, value))
    return name, changes


def in_full(house: House) -> str:
    """Everything that a house holds, in the order in which it holds it."""
    return json.dumps(house.model_dump(mode="json", exclude_unset=True, exclude_none=True))


@given(an_edit())
def test_an_edit_makes_what_reading_the_whole_document_makes(one: tuple[str, list[Change]]) -> None:
    name, changes = one
    house = stood(name)
    before = in_full(house)
    out, whole = edited(house, changes, models=MODELS), edited_whole(house, changes, models=MODELS)
    assert in_full(house) == before
    if isinstance(whole, House):
        assert isinstance(out, House)
        assert out == whole
        assert as_canonical_json(out) == as_canonical_json(whole)
        assert in_full(out) == in_full(read_again(whole))
        assert changes_between(house, out) == field_changes(plain_of(house), plain_of(out))
        assert written(out, before=written(house)).text == as_canonical_json(out)
    else:
        assert out == whole


@given(st.sampled_from(HOUSES), st.data())
def test_a_sound_edit_of_members_is_made_without_the_whole_document(name: str, data: st.DataObject) -> None:
    changes = [Change(*data.draw(st.sampled_from(fields(name)))) for _ in range(3)]
    made = _by_members(stood(name), changes, MODELS)
    assert made is not None
    assert made == stood(name)
    touched = {change.path.split(".")[1] for change in changes if "." in change.path}
    for box_id, box in stood(name).boxes.items():
        assert box_id in touched or made.boxes[box_id] is box


def test_a_device_of_a_new_model_brings_the_edition_to_its_place_in_the_order() -> None:
    house = stood("house.json")
    devices = [key for key, device in house.devices.items() if device.place]
    new = sorted(set(MODELS) - set(house.models))
    tried = [
        edited(house, [Change(f"devices.{device}.model", key)], models=MODELS)
        for device in devices
        for key in new
    ]
    made = [one for one in tried if isinstance(one, House)]
    assert made
    for one in made:
        assert set(one.models) > set(house.models)
        assert in_full(one) == in_full(read_again(one))


@given(st.sampled_from(HOUSES), st.randoms(use_true_random=False))
def test_a_house_in_any_order_is_written_in_the_order_of_the_format(name: str, draw: Random) -> None:
    house = stood(name)
    mixed = {field: _mixed(getattr(house, field), draw) for field in house.model_fields_set}
    other = House.model_construct(house.model_fields_set, **mixed)
    assert written(other).text == as_canonical_json(house)
    assert written(other, before=written(house)).text == as_canonical_json(house)


def _mixed(value: Any, draw: Random) -> Any:
    return dict(draw.sample([*value.items()], len(value))) if isinstance(value, dict) else value


def test_the_text_of_what_an_edit_left_alone_is_taken_over() -> None:
    before = written(stood("house.json"))
    made = edited(before.house, [Change("loads.L01.name", "Pelmet")], models=MODELS)
    assert isinstance(made, House)
    after = written(made, before=before)
    anew = {
        (name, key)
        for name, members in after.pieces.items()
        for key, piece in members.items()
        if piece is not before.pieces[name].get(key)
    }
    assert anew == {("loads", "L01")}
