"""Edits by path: what is named changes, nothing else does, and a slip is told."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import Change, Fault, House, as_canonical_json, edited, plain_of, steps_of
from tests import example_house as ex


def leaves(value: Any, path: str = "") -> list[tuple[str, Any]]:
    if isinstance(value, dict) and value:
        return [leaf for k, v in value.items() for leaf in leaves(v, f"{path}.{k}" if path else k)]
    if isinstance(value, list) and value:
        return [leaf for i, v in enumerate(value) for leaf in leaves(v, f"{path}[{i}]")]
    return [(path, value)]


LEAVES = leaves(plain_of(ex.house()))


def changed(*changes: Change, house: House | None = None) -> House:
    out = edited(house or ex.house(), changes, models={})
    assert isinstance(out, House), "\n".join(map(str, out))
    return out


@given(st.lists(st.sampled_from(LEAVES), max_size=20))
def test_putting_what_stands_changes_nothing(some: list[tuple[str, Any]]) -> None:
    same = changed(*(Change(path, value) for path, value in some))
    assert as_canonical_json(same) == as_canonical_json(ex.house())


@given(st.sampled_from([path for path, _ in LEAVES]))
def test_an_edit_of_one_leaf_touches_no_other(path: str) -> None:
    out = edited(ex.house(), [Change(path, None)], models={})
    if isinstance(out, House):
        before, after = dict(LEAVES), dict(leaves(plain_of(out)))
        gone = {k for k in before if k not in after}
        whole = path.rsplit("[", 1)[0] if path.endswith("]") else path
        assert all(k.startswith(whole) or path.startswith(k) for k in gone)
        assert all(before[k] == v for k, v in after.items() if k in before and not k.startswith(whole))
    else:
        assert all(isinstance(f, Fault) for f in out)


def test_the_house_given_stays_as_it_is() -> None:
    house = ex.house()
    text = as_canonical_json(house)
    assert changed(Change("name", "Aldersett 9"), house=house).name == "Aldersett 9"
    assert as_canonical_json(house) == text


def test_objects_on_the_way_are_made() -> None:
    out = changed(Change("rooms.R77.name", "Loft"), Change("circuits.C9.name", "Loft lights"))
    assert out.rooms["R77"].name == "Loft"
    assert out.circuits["C9"].name == "Loft lights"


def test_a_list_takes_a_new_member_at_its_end_and_loses_one() -> None:
    more = changed(Change("rooms.R1.tags[0]", "wet"), Change("rooms.R1.tags[1]", "cold"))
    assert more.rooms["R1"].tags == ("wet", "cold")
    assert changed(Change("rooms.R1.tags[0]", None), house=more).rooms["R1"].tags == ("cold",)


def test_what_does_not_stand_is_out_already() -> None:
    assert changed(Change("scenes.S99.rules[4].to", None)) == ex.house()


@pytest.mark.parametrize(
    "path",
    ["", ".", "a..b", "a.", "[", "a[x]", "a[-1]", "name[0]", "rooms[0]", "a" * 500, "rooms.R1.tags[7]"],
)
def test_a_path_that_cannot_be_walked_is_a_fault_that_names_it(path: str) -> None:
    out = edited(ex.house(), [Change(path, "x")], models={})
    assert isinstance(out, list)
    assert out


def test_all_faults_of_an_edit_are_told_at_once() -> None:
    out = edited(ex.house(), [Change("boxes.B1.depth_mm", "deep"), Change("rooms.R1.storey", 7)], models={})
    assert isinstance(out, list)
    assert {f.path for f in out} >= {"boxes.B1.depth_mm", "rooms.R1.storey"}


def test_too_many_changes_are_refused() -> None:
    out = edited(ex.house(), [Change("name", "A")] * 20_001, models={})
    assert isinstance(out, list)
    assert "at most 20,000" in str(out[0])


def test_a_path_reads_as_keys_and_indices() -> None:
    assert steps_of("scenes.S2.rules[0].to") == ["scenes", "S2", "rules", 0, "to"]
    assert steps_of("models.plimmet-avo@1.name") == ["models", "plimmet-avo@1", "name"]
