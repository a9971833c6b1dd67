"""The mapping of a list's columns: read, remembered, and everything it does not understand is told."""

import json
from typing import Any

import pytest

from secondfix.exchange import Mapping, Table, TableRow, address_of, mapped, mapping_as_json, read_mapping
from secondfix.terms import Purpose
from tests.example_house import models


def mapping(**changes: Any) -> Mapping:
    plain = {"format": 1, "columns": {"address": "Body", "endpoint": "Part", "name": "Called"}, **changes}
    read = read_mapping(json.dumps(plain).encode(), where="mapping")
    assert isinstance(read, Mapping), read
    return read


def rows(
    *cells: tuple[str, ...], columns: tuple[str, ...] = ("Body", "Part", "Called", "Use", "Type")
) -> Table:
    return Table("list", columns, tuple(TableRow(n, c) for n, c in enumerate(cells, 2)), ())


@pytest.mark.parametrize(
    ("text", "address"),
    [
        ("5a:11:c0:4d:00:31:7e:02", "5A11C04D00317E02"),
        ("5A-11-C0-4D-00-31-7E-02", "5A11C04D00317E02"),
        ("0x5A11C04D00317E02", "5A11C04D00317E02"),
        ("5A11 C04D", None),
        ("5A:11-C0:4D:00:31:7E:02", None),
        ("5A11C04D00317E0G", None),
        ("", None),
    ],
)
def test_an_address_is_read_however_it_is_parted(text: str, address: str | None) -> None:
    assert address_of(text) == address


def test_a_mapping_is_written_as_it_was_read() -> None:
    one = mapping(purposes={"lamp": "lighting"}, delimiter=";", protocol="zwave")
    assert read_mapping(mapping_as_json(one).encode(), where="again") == one


@pytest.mark.parametrize(
    ("plain", "words"),
    [
        (b"{", "not JSON"),
        (b'{"format": 1, "columns": {}}', "at least one of address, node and name"),
        (b'{"format": 1, "columns": {"body": "X"}}', "columns.body"),
        (b'{"format": 1, "columns": {"name": "X"}, "purposes": {"a": "b"}}', "purposes.a"),
        (b'{"format": 2, "columns": {"name": "X"}}', "format"),
    ],
)
def test_a_mapping_that_is_none_is_refused(plain: bytes, words: str) -> None:
    read = read_mapping(plain, where="mapping")
    assert isinstance(read, list)
    assert words in " | ".join(map(str, read))


def test_every_column_that_is_not_there_is_a_fault() -> None:
    read = mapped(rows(columns=("Called",)), mapping(), models())
    assert isinstance(read, list)
    assert [f.path for f in read] == ["columns.address", "columns.endpoint"]


def test_words_the_mapping_lacks_are_told_once_with_how_many_rows() -> None:
    asked = mapping(
        columns={"address": "Body", "endpoint": "Part", "name": "Called", "purpose": "Use", "model": "Type"},
        purposes={"lamp": "lighting"},
    )
    body = "5A11C04D00317E02"
    read = mapped(
        rows(
            (body, "1", "a", "lamp", "corvell-pair@1"), (body, "0x02", "b", "glow", "?"),
            ("none", "x", "c", "glow", ""), (body, "-3", "d", "night_light", ""),
        ),
        asked,
        models(),
    )  # fmt: skip
    assert isinstance(read, tuple)
    found, told = read
    assert [(r.endpoint, r.purpose) for r in found] == [
        (1, Purpose.LIGHTING), (2, None), (None, None), (None, Purpose.NIGHT_LIGHT),
    ]  # fmt: skip
    assert found[2].address is None
    assert [t for t in told if "'glow'" in t] == [
        "'glow' in column 'Use' (2 rows) leads to no purpose: add it to 'purposes' of the mapping."
    ]
    assert len([t for t in told if t.startswith(("'?'", "'none'", "'x'", "'-3'"))]) == 4


def test_columns_that_nobody_reads_are_told() -> None:
    read = mapped(rows(), mapping(), {})
    assert isinstance(read, tuple)
    assert "Columns not read: Use, Type." in read[1]
