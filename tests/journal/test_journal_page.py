"""docs/journal.md names every kind and key of an entry, its example is one, and its limits are true."""

import json
import re
from pathlib import Path

import pytest

from secondfix import journal as j
from secondfix.journal import KINDS, LARGEST_JOURNAL_BYTES, LONGEST_LINE_BYTES, Entry, Worked, new_entry
from secondfix.journal.facts import HeardLink
from secondfix.journal.subject import COLLECTION_OF
from tests.journal.writing import HOUSE


@pytest.fixture(scope="module")
def page(tree: Path) -> str:
    return (tree / "docs" / "journal.md").read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def rows(page: str) -> dict[str, tuple[str, str]]:
    """Kind to what it speaks of and its own keys."""
    return {
        kind: (subjects, keys)
        for kind, subjects, keys in re.findall(r"^\| `(\w+)` \| ([^|●○]*) \| (.*) \|$", page, re.MULTILINE)
    }


def test_every_kind_has_its_row_with_every_key(rows: dict[str, tuple[str, str]]) -> None:
    assert set(rows) == set(KINDS)
    for kind, model in KINDS.items():
        own = model.model_fields.keys() - Entry.model_fields.keys()
        assert [key for key in own if f"`{key}`" not in rows[kind][1]] == []


def test_the_subjects_of_each_kind_are_named(rows: dict[str, tuple[str, str]]) -> None:
    wide = {"snag_raised", "snag_cleared", "withdrawn", "survey_corrected"}
    for kind in KINDS.keys() - wide:
        assert set(re.findall(r"\w+", rows[kind][0])) == set(KINDS[kind].speaks_of)


def test_common_keys_are_named_and_marked(page: str) -> None:
    marked = dict(re.findall(r"^\| `(\w+)` \| ([●○]) \|", page, re.MULTILINE))
    assert marked == {n: "●" if f.is_required() else "○" for n, f in Entry.model_fields.items()}


def test_words_and_subjects_are_named(page: str) -> None:
    assert [w.value for w in Worked if f"`{w.value}`" not in page] == []
    assert [k for k in COLLECTION_OF if f"`{k}:`" not in page] == []
    assert all(f'"{name}"' in page or f"`{name}`" in page for name in HeardLink.model_fields)


def test_the_example_is_an_entry(page: str) -> None:
    (example,) = re.findall(r"```json\n(.*?)```", page, re.DOTALL)
    assert isinstance(new_entry(json.loads(example), where="docs/journal.md"), Entry)


def test_the_limits_are_true(page: str) -> None:
    assert f"a file {LARGEST_JOURNAL_BYTES >> 20} MiB, a line {LONGEST_LINE_BYTES >> 20} MiB" in page


def test_the_keys_of_the_json_are_named(page: str) -> None:
    empty = j.fold(HOUSE, j.journal_of([]))
    built = j.as_built(HOUSE, j.journal_of([]), models={})
    test = j.tests_as_json(j.function_test(HOUSE, empty), j.scene_tests(empty, {"SC1": {}}))
    keys = {*j.as_built_as_json(built), *test, *test["presses"][0], *test["scenes"][0]}
    assert [key for key in keys if f"`{key}`" not in page] == []
