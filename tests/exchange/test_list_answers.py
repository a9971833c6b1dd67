# ruff: noqa: E501 - a case of the table stays one line
"""The table 'What is told of a list' of the how-to: each row is run, and no row stands without its test."""

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from secondfix.exchange import MOST_ROWS, Columns, Mapping, Table, mapped, read_list
from secondfix.files import shipped_models
from secondfix.house import uuid7
from secondfix.maintenance import Begun, ListRow, begin_from
from secondfix.terms import Protocol, Purpose
from tests.exchange.sheets import workbook

PAGE = "docs/how-to/begin-from-a-device-list.md"


def refused(data: bytes, words: str, **how: str) -> None:
    read = read_list(data, where="list", **how)
    assert isinstance(read, list)
    assert words in str(read[0])


def told(data: bytes, words: str) -> Table:
    read = read_list(data, where="list")
    assert isinstance(read, Table), read
    assert words in " ".join(read.told)
    return read


def rows(csv: bytes, **columns: str) -> tuple[list[ListRow], list[str]]:
    read = read_list(csv, where="list", delimiter=",")
    assert isinstance(read, Table), read
    found = mapped(read, Mapping(format=1, columns=Columns(**columns)), {})
    assert isinstance(found, tuple), found
    return found


def begun(*listed: ListRow, **how: Any) -> Begun:
    made = begin_from(
        listed, house_id=uuid7(unix_ms=1_955_000_000_000, random=bytes(10)), name="Yard", network_name="Hub",
        protocol=Protocol.ZWAVE, models=shipped_models(), **how,
    )  # fmt: skip
    assert isinstance(made, Begun), made
    return made


def lacking() -> None:
    read = read_list(b"Body,Part\n1,2\n", where="list")
    assert isinstance(read, Table)
    found = mapped(read, Mapping(format=1, columns=Columns(address="Bodies", name="Name")), {})
    assert [str(f) for f in found] == [
        "list: columns.address: 'Bodies'; expected one of Body, Part",
        "list: columns.name: 'Name'; expected one of Body, Part",
    ]


def too_much() -> None:
    refused(b"A\n" + b"1\n" * (MOST_ROWS + 1), f"more than {MOST_ROWS:,} rows")
    refused(b",".join(b"c%d" % n for n in range(501)), "501 columns")
    refused(b"A\n" * (32 * 1024 * 1024 + 1), "expected at most")
    assert len(told(b"A,B\n" + b"1,2\n" * 100_000, "").rows) == 100_000


def formulas() -> None:
    told(b"A,B\n=1+1,2\n", "it is taken as text and not computed")
    assert told(workbook(S=[["A"], [("1+1", "2")]]), "the value that was stored").rows[0].cells == ("2",)
    told(workbook(S=[["A", "B"], [("1+1", None), "x"]]), "it is read as empty")


def uneven() -> None:
    read = told(b"A,B\n1,2,3\n4\n", "1 row (2): more cells")
    assert read.rows[1].cells == ("4", "")
    told(b"A,B\n4\n", "1 row (2): fewer cells")


def no_number() -> None:
    listed, words = rows(
        b"Body,Nr,Part,Called\nxy,a,b,Ceiling\n", address="Body", node="Nr", endpoint="Part", name="Called"
    )
    assert (listed[0].address, listed[0].node, listed[0].endpoint, listed[0].name) == (
        None,
        None,
        None,
        "Ceiling",
    )
    assert [w.split("'")[1] for w in words] == ["xy", "a", "b"]


def no_device() -> None:
    made = begun(ListRow(2, name="Bench", endpoint=1), ListRow(3, room="Loft"))
    assert "row 3 (empty) has no address, node or name: it is no device." in made.told


def same_entry() -> None:
    made = begun(ListRow(2, node=4, endpoint=1, name="Bench"), ListRow(3, node=4, endpoint=1, name="Door"))
    assert "row 3 (Door) says entry 1 of D01 again, after row 2 (Bench): it is not taken." in made.told
    assert len(made.house.boxes["B01"].gangs) == 1


def zero_byte() -> None:
    refused(b"A,B\n1\x00,2\n", "byte 5: a zero byte")
    refused(b"A,B\n\xff,2\n", "byte 4: not utf-8", encoding="utf-8")


def no_part() -> None:
    read = told(b"\xef\xbb\xbfA,B,,\n\n1,2,,\n", "")
    assert (read.columns, [r.cells for r in read.rows]) == (("A", "B"), [("1", "2")])


def whole() -> None:
    four = "ostrabeck-gull-four@1"
    made = begun(
        ListRow(2, node=4, endpoint=0, name="Wall", purpose=Purpose.LIGHTING, model=four),
        ListRow(3, node=4, endpoint=1, name="Bench", model=four),
    )
    assert any("row 2 (Wall) is the whole-device entry of D01" in t for t in made.told)
    assert made.house.loads == {}


ROWS: dict[str, Callable[[], object]] = {
    "two columns of one name": lambda: refused(b"Body,Name,Body\n1,2,3\n", "column 'Body' twice; expected each column name once: rename one"),
    "a column without a name": lambda: told(b"A,,C\n1,2,3\n", "").columns.index("column 2"),
    "a column that the mapping names and the list lacks": lacking,
    "columns that nobody reads": lambda: rows(b"Body,Extra\n1,2\n", address="Body")[1].index("Columns not read: Extra."),
    "more than 200,000 rows, 500 columns, 64 MiB; an XLSX that unpacks to more than 512 MiB": too_much,
    "not UTF-8": lambda: told("A,B\nKüche,2\n".encode("cp1252"), "read as cp1252. See whether these are as they should be: 'Küche'"),
    "a formula": formulas,
    "a row with more or fewer cells than the header": uneven,
    "an address that is none, a number that is none": no_number,
    "a row without address, node and name": no_device,
    "two rows of one entry": same_entry,
    "a cell of more than 131,072 characters, quotes that do not end": lambda: (refused(b"A,B\n" + b"x" * 200_000 + b",1\n", "not CSV"), refused(b'A,B\n"1,2\n', "not CSV")),
    "a zero byte, or an encoding that is stated and is not so": zero_byte,
    "a byte order mark, empty rows, empty columns at the end": no_part,
    "several sheets, none named": lambda: told(workbook(S=[["A"], ["x"]], T=[["B"]]), "The first sheet, 'S', is read; there are also T."),
    "a name of more than 80 characters": lambda: begun(ListRow(2, name="x" * 90)).told[0].index("a name of more than 80 characters is cut"),
    "a purpose on a whole-device entry": whole,
}  # fmt: skip


def test_every_row_of_the_page_is_run_and_every_case_run_has_its_row(tree: Path) -> None:
    part = (tree / PAGE).read_text(encoding="utf-8").split("## What is told of a list", 1)[1]
    found = set(re.findall(r"^\| ([^|]+) \| [^|]+ \|$", part, re.MULTILINE)) - {"what", "---"}
    assert found == set(ROWS)


@pytest.mark.parametrize("what", sorted(ROWS))
def test_the_answer_is_as_stated(what: str) -> None:
    ROWS[what]()
