# ruff: noqa: E501 - a case of the table stays one line
"""Device lists: every bad input has a stated answer, and nothing is dropped in silence."""

import io
import zipfile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.exchange import MOST_ROWS, Table, read_csv, read_list
from secondfix.exchange import xlsx_list as xlsx
from secondfix.house import Fault
from tests.exchange.sheets import workbook


def table(data: bytes, **how: str) -> Table:
    read = read_list(data, where="list", **how)
    assert isinstance(read, Table), read
    return read


REFUSED: list[tuple[str, bytes, str]] = [
    ("nothing", b"", "list: no row that holds anything; expected a header and rows"),
    ("blank lines", b"\n\n ;;\n", "no row that holds anything"),
    ("two columns of one name", b"Body,Name,Body\n1,2,3\n", "list: row 1: column 'Body' twice; expected each column name once: rename one"),
    ("two columns of one name but for blanks", b"Name, Name \n1,2\n", "column 'Name' twice"),
    ("a quote that never ends", b'A,B\n"1,2\n', "not CSV"),
    ("an endless cell", b"A,B\n" + b"x" * 200_000 + b",1\n", "not CSV (field larger than field limit (131072))"),
    ("a zero byte", b"A,B\n1\x00,2\n", "list: byte 5: a zero byte; expected text: perhaps UTF-16, or no CSV at all"),
    ("neither encoding", b"A,B\n\x81\x8d,2\n", "neither UTF-8 nor cp1252"),
    ("a picture", b"\x89PNG\r\n\x1a\n\x00\x00", "a zero byte"),
    ("a ZIP that ends early", b"PK\x03\x04rest", "not an XLSX workbook"),
    ("a ZIP of something else", workbook()[:0] or b"PK\x03\x04", "not an XLSX workbook"),
    ("a workbook of the old kind", b"\xd0\xcf\x11\xe0" + b"\x00" * 600, "a workbook of the old kind or behind a password"),
    ("a workbook with an empty sheet", workbook(Only=[]), "no row that holds anything"),
    ("a workbook with a column twice", workbook(Only=[["A", "A"], [1, 2]]), "column 'A' twice"),
    ("too many rows", b"A\n" + b"1\n" * (MOST_ROWS + 1), f"more than {MOST_ROWS:,} rows"),
    ("too many columns", b",".join(b"c%d" % n for n in range(501)), "501 columns"),
]  # fmt: skip

TOLD: list[tuple[str, bytes, str]] = [
    ("a semicolon", b"A;B\n1;2\n", "Columns are taken to be parted by a semicolon."),
    ("a tab", b"A\tB\n1\t2\n", "Columns are taken to be parted by a tab."),
    ("cp1252", "A,B\nKüche,2\n".encode("cp1252"), "Not UTF-8: read as cp1252. See whether these are as they should be: 'Küche'."),
    ("UTF-16", "A,B\n1,2\n".encode("utf-16"), "Read as UTF-16, by the mark at its beginning."),
    ("a formula in CSV", b"A,B\n=1+1,2\n", "1 cell (row 2, cell 1): a formula stands as text; it is taken as text and not computed."),
    ("a row too long", b"A,B\n1,2,3\n", "1 row (2): more cells than the header names; those beyond are not read."),
    ("rows too short", b"A,B\n1\n2\n", "2 rows (2, 3): fewer cells than the header names; the rest is taken as empty."),
    ("a formula with a value", workbook(S=[["A", "B"], ["x", ("1+1", "2")]]), "1 cell (B2): a formula; the value that was stored with it is read, not computed anew."),
    ("a formula without one", workbook(S=[["A", "B"], ["x", ("1+1", None)]]), "1 cell (B2): a formula without a stored value; it is read as empty: open and save the workbook."),
    ("a second sheet", workbook(S=[["A"], ["x"]], T=[["B"]]), "The first sheet, 'S', is read; there are also T."),
]  # fmt: skip


@pytest.mark.parametrize(("data", "words"), [c[1:] for c in REFUSED], ids=[c[0] for c in REFUSED])
def test_a_list_that_cannot_be_read_is_refused(data: bytes, words: str) -> None:
    read = read_list(data, where="list")
    assert isinstance(read, list)
    assert words in " | ".join(map(str, read))


@pytest.mark.parametrize(("data", "words"), [c[1:] for c in TOLD], ids=[c[0] for c in TOLD])
def test_what_a_person_should_know_of_the_reading_is_told(data: bytes, words: str) -> None:
    assert words in table(data).told


def test_a_byte_order_mark_is_no_part_of_the_first_name() -> None:
    assert table("A,B\n1,2\n".encode("utf-8-sig")).columns == ("A", "B")


def test_cells_keep_commas_quotes_and_lines_of_rfc_4180() -> None:
    read = table(b'A,B\r\n"x, ""y""\r\nz",2\r\n')
    assert read.rows[0].cells == ('x, "y"\r\nz', "2")


def test_what_is_asked_for_is_not_guessed() -> None:
    assert table(b"A;B,C\n1;2,3\n", delimiter=",").columns == ("A;B", "C")
    assert not table(b"A;B,C\n1;2,3\n", delimiter=",").told
    refused = read_list("A,B\nKüche,2\n".encode("cp1252"), where="l", encoding="utf-8")
    assert isinstance(refused, list)
    assert "not utf-8" in str(refused[0])
    assert isinstance(read_csv(b"A", where="l", delimiter="x"), list)
    assert isinstance(read_csv(b"A", where="l", encoding="ebcdic"), list)


def test_numbers_of_a_sheet_read_as_they_are_written() -> None:
    read = table(workbook(S=[["A", "B", "C"], [7, 2.5, "07"]]))
    assert read.rows[0].cells == ("7", "2.5", "07")


def test_a_sheet_is_chosen_by_name() -> None:
    data = workbook(S=[["A"], ["x"]], T=[["B"], ["y"]])
    assert table(data, sheet="T").columns == ("B",)
    lacking = read_list(data, where="l", sheet="U")
    assert isinstance(lacking, list)
    assert "one of S, T" in str(lacking[0])


def test_a_column_without_a_name_is_called_by_its_number() -> None:
    assert table(b"A,,C,\n1,2,3,4\n").columns == ("A", "column 2", "C")


def test_a_workbook_that_unpacks_to_too_much_is_refused_unread(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xlsx, "MOST_UNPACKED_BYTES", 10_000)
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as z:
        z.writestr("xl/workbook.xml", b"0" * 20_000)
    read = xlsx.read_xlsx(out.getvalue(), where="list")
    assert isinstance(read, list)
    assert "unpack to 20,000 bytes" in str(read[0])


def test_a_hundred_thousand_rows_are_read_whole() -> None:
    read = table(b"Body,Called\n" + b"".join(b"%016X,lamp %d\n" % (n, n) for n in range(100_000)))
    assert len(read.rows) == 100_000
    assert read.rows[-1].number == 100_001


@given(st.binary(max_size=400))
def test_any_bytes_give_a_table_or_faults(data: bytes) -> None:
    read = read_list(data, where="list")
    assert isinstance(read, Table) or (read and all(isinstance(f, Fault) for f in read))


@given(
    st.lists(
        st.lists(
            st.text(st.characters(exclude_characters="\x00", exclude_categories=["Cs"]), max_size=8),
            min_size=2,
            max_size=2,
        ),
        max_size=8,
    )
)
def test_every_row_that_holds_something_is_in_the_table(rows: list[list[str]]) -> None:
    import csv  # noqa: PLC0415 - the writer, for this test alone

    out = io.StringIO(newline="")
    csv.writer(out).writerows([["A", "B"], *rows])
    read = table(out.getvalue().encode(), delimiter=",")
    assert [r.cells for r in read.rows] == [
        tuple(c.strip() for c in row) for row in rows if any(c.strip() for c in row)
    ]
