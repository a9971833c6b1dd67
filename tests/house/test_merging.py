"""Two people's changes put together: what each changed alone is kept, what both changed apart is told."""

import json
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import FieldConflict, field_changes, merge_documents

Plain = dict[str, Any]
_WORDS = st.sampled_from(["a", "b", "c"])
_FACTS = st.fixed_dictionaries({"value": st.integers(0, 2), "known": _WORDS})
_LEAVES = st.one_of(st.integers(0, 2), st.booleans(), _WORDS, st.lists(st.integers(0, 1), max_size=2), _FACTS)


def some(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[Plain]:
    """An object with some of these fields."""
    return st.fixed_dictionaries({}, optional=fields)


def members(*ids: str, of: st.SearchStrategy[Any]) -> st.SearchStrategy[Plain]:
    """A collection with some of these members."""
    return st.fixed_dictionaries({}, optional=dict.fromkeys(ids, of))


BOXES = some(
    note=_LEAVES,
    depth_mm=_FACTS,
    position=some(x_mm=_LEAVES, y_mm=_LEAVES),
    mounts=members("1", "2", of=some(neutral=_FACTS)),
)
DOCUMENTS = some(
    name=_LEAVES,
    naming=some(between=_WORDS),
    boxes=members("B1", "B2", of=BOXES),
    scenes=members("S1", "S2", of=some(name=_WORDS, rules=st.lists(_WORDS, max_size=2))),
)


def leaves(value: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Every field with its path: an object without fields counts as one, a surveyed value is whole."""
    if isinstance(value, dict) and "value" not in value and value:
        for key, inner in value.items():
            yield from leaves(inner, f"{path}.{key}" if path else key)
    else:
        yield path, as_text(value)


def as_text(value: Any) -> str:
    """A value as JSON tells it: 1 is not true, the order of keys says nothing."""
    return json.dumps(value, sort_keys=True)


def covers(conflict: FieldConflict, path: str) -> bool:
    """Whether the conflict is about this field, something around it or something in it."""
    return f"{path}.".startswith(f"{conflict.path}.") or f"{conflict.path}.".startswith(f"{path}.")


def _empty(leaf: str) -> bool:
    return leaf == "{}"


@given(DOCUMENTS, DOCUMENTS)
def test_what_one_side_left_alone_is_the_other_sides(base: Plain, one: Plain) -> None:
    for theirs, mine in ((base, one), (one, base), (one, one)):
        merged = merge_documents(base, theirs, mine)
        assert merged.conflicts == ()
        assert dict(leaves(merged.document)) == dict(leaves(one))


@given(DOCUMENTS, DOCUMENTS, DOCUMENTS)
def test_who_saved_first_does_not_matter(base: Plain, one: Plain, other: Plain) -> None:
    first, second = merge_documents(base, one, other), merge_documents(base, other, one)
    assert [
        (c.path, as_text(c.theirs), as_text(c.mine)) for c in sorted(first.conflicts, key=lambda c: c.path)
    ] == [
        (c.path, as_text(c.mine), as_text(c.theirs)) for c in sorted(second.conflicts, key=lambda c: c.path)
    ]
    turned = merge_documents(base, one, other, {c.path: "mine" for c in first.conflicts})
    assert turned.conflicts == ()
    assert dict(leaves(turned.document)) == dict(leaves(second.document))


@given(DOCUMENTS, DOCUMENTS, DOCUMENTS)
def test_no_field_is_lost_in_silence(base: Plain, one: Plain, other: Plain) -> None:
    merged = merge_documents(base, one, other)
    stood, got = dict(leaves(base)), dict(leaves(merged.document))
    for side in (one, other):
        says = dict(leaves(side))
        for path in stood.keys() | says.keys():
            if stood.get(path) == says.get(path) or any(covers(c, path) for c in merged.conflicts):
                continue
            if _empty(says.get(path, "{}")) and _empty(stood.get(path, "{}")):
                continue  # there or not, an object without fields says nothing by itself
            if _empty(says.get(path, "")) or says.get(path) is None:
                assert got.get(path) != stood.get(path), path
            else:
                assert got.get(path) == says[path], path


@given(DOCUMENTS, DOCUMENTS, DOCUMENTS)
def test_nothing_is_invented(base: Plain, one: Plain, other: Plain) -> None:
    merged = merge_documents(base, one, other)
    said = {*leaves(one), *leaves(other)}
    assert {leaf for leaf in leaves(merged.document) if not _empty(leaf[1])} <= said


@given(DOCUMENTS, DOCUMENTS, DOCUMENTS)
def test_a_conflict_is_where_both_changed_and_apart(base: Plain, one: Plain, other: Plain) -> None:
    for c in merge_documents(base, one, other).conflicts:
        assert len({as_text(c.base), as_text(c.theirs), as_text(c.mine)}) == 3


@given(DOCUMENTS, DOCUMENTS)
def test_no_changes_are_told_of_the_same_and_some_of_others(base: Plain, one: Plain) -> None:
    assert field_changes(base, base) == ()
    assert (field_changes(base, one) == ()) == (dict(leaves(base)) == dict(leaves(one)))


def test_half_of_one_surveyed_value_and_half_of_another_are_never_put_together() -> None:
    base = {"boxes": {"B1": {"depth_mm": {"value": 47, "known": "told"}}}}
    one = {"boxes": {"B1": {"depth_mm": {"value": 52, "known": "told"}}}}
    other = {"boxes": {"B1": {"depth_mm": {"value": 47, "known": "measured"}}}}
    (conflict,) = merge_documents(base, one, other).conflicts
    assert conflict.path == "boxes.B1.depth_mm"


def test_a_choice_of_an_assumption_goes_whole_with_its_range() -> None:
    base = {"assumptions": {"parent_margin_db": {"value": 12}}}
    one = {"assumptions": {"parent_margin_db": {"value": 12, "low": 9, "high": 15}}}
    other = {"assumptions": {"parent_margin_db": {"value": 14}}}
    (conflict,) = merge_documents(base, one, other).conflicts
    assert conflict.path == "assumptions.parent_margin_db"


def test_taken_out_here_and_changed_there_is_a_conflict() -> None:
    base = {"boxes": {"B1": {"note": "a"}, "B2": {}}}
    merged = merge_documents(base, {"boxes": {"B2": {}}}, {"boxes": {"B1": {"note": "b"}, "B2": {}}})
    assert [(c.path, c.theirs, c.mine) for c in merged.conflicts] == [("boxes.B1", None, {"note": "b"})]


def test_taking_out_the_last_member_leaves_room_for_a_new_one() -> None:
    base = {"scenes": {"S1": {"name": "a"}}}
    merged = merge_documents(base, {}, {"scenes": {"S1": {"name": "a"}, "S2": {"name": "b"}}})
    assert (merged.document, merged.conflicts) == ({"scenes": {"S2": {"name": "b"}}}, ())


def test_one_new_id_for_two_things_is_a_conflict_of_the_whole_thing() -> None:
    one, other = {"boxes": {"B7": {"room": "R1"}}}, {"boxes": {"B7": {"room": "R1", "note": "x"}}}
    assert [c.path for c in merge_documents({"boxes": {}}, one, other).conflicts] == ["boxes.B7"]


def test_a_copy_of_an_edition_is_never_mixed() -> None:
    one, other = ({"models": {"corvell-pair@1": {"title": t, "gangs": 2}}} for t in ("a", "b"))
    base = {"models": {"corvell-pair@1": {"title": "c", "gangs": 1}}}
    assert [c.path for c in merge_documents(base, one, other).conflicts] == ["models.corvell-pair@1"]


@pytest.mark.parametrize(("one", "other"), [(1, True), (0, False), ("1", 1), ([1], [True])])
def test_values_are_told_apart_as_json_tells_them(one: object, other: object) -> None:
    assert len(merge_documents({"name": "a"}, {"name": one}, {"name": other}).conflicts) == 1


@pytest.mark.parametrize(
    ("before", "after", "words"),
    [
        ({}, {"name": "Quill End"}, "name: 'Quill End' added"),
        ({"rooms": {"R1": {"name": "Hall"}}}, {"rooms": {}}, "rooms.R1: 'Hall' removed"),
        (
            {"boxes": {"B1": {"depth_mm": {"value": 47, "known": "told"}}}},
            {"boxes": {"B1": {"depth_mm": {"value": 52, "known": "seen_open"}}}},
            "boxes.B1.depth_mm: 47 (told) → 52 (seen open)",
        ),
    ],
)
def test_a_change_is_told_in_words(before: Plain, after: Plain, words: str) -> None:
    assert [str(c) for c in field_changes(before, after)] == [words]


@pytest.mark.deep
@given(DOCUMENTS, DOCUMENTS, DOCUMENTS)
def test_the_laws_hold_for_thousands(base: Plain, one: Plain, other: Plain) -> None:
    test_who_saved_first_does_not_matter.hypothesis.inner_test(base, one, other)
    test_no_field_is_lost_in_silence.hypothesis.inner_test(base, one, other)
    test_nothing_is_invented.hypothesis.inner_test(base, one, other)
    test_a_conflict_is_where_both_changed_and_apart.hypothesis.inner_test(base, one, other)
