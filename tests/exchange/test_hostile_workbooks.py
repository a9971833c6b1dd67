"""Workbooks that are made to harm: refused in one line, in time and room in proportion to their bytes."""

import io
import struct
import zipfile
from collections.abc import Callable

import pytest
from openpyxl import Workbook

from secondfix.exchange.table import Table
from secondfix.exchange.xlsx_list import read_xlsx
from secondfix.exchange.xlsx_parts import MOST_CELLS, cells_of, furthest

SHEET = "xl/worksheets/sheet1.xml"


def workbook(change: Callable[[bytes], bytes] = lambda sheet: sheet) -> bytes:
    """A list of one column, its sheet's XML changed by hand."""
    book, held, out = Workbook(), io.BytesIO(), io.BytesIO()
    assert book.active is not None
    book.active["A1"], book.active["A2"] = "Name", "Hall light"
    book.save(held)
    with zipfile.ZipFile(held) as before, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as after:
        for name in before.namelist():
            part = before.read(name)
            after.writestr(name, change(part) if name == SHEET else part)
    return out.getvalue()


def with_row(row: str) -> bytes:
    return workbook(lambda sheet: sheet.replace(b"</sheetData>", row.encode() + b"</sheetData>"))


def with_comment(words: str) -> bytes:
    return workbook(lambda sheet: sheet.replace(b"</worksheet>", f"<!-- {words} --></worksheet>".encode()))


@pytest.mark.parametrize(
    "row",
    [
        '<row r="1048576"><c r="XFD1048576" t="inlineStr"><is><t>x</t></is></c></row>',
        "<row r='1048576'><c r='XFD1048576' t='inlineStr'><is><t>x</t></is></c></row>",
        '<row r = "1048576"><c r = "ZZ1048576" t="inlineStr"><is><t>x</t></is></c></row>',
        f'<row r="1048576">{"<c><v>1</v></c>" * 100}</row>',
    ],
    ids=["corner", "single quotes", "blanks", "no place said"],
)
def test_a_sheet_that_reaches_too_far_is_refused(row: str) -> None:
    answer = read_xlsx(with_row(row), where="list.xlsx")
    assert isinstance(answer, list)
    assert "reaches over" in answer[0].stands


def test_a_sheet_as_large_as_a_list_may_be_is_read() -> None:
    with zipfile.ZipFile(io.BytesIO(with_row('<row r="9000"><c r="C9000"><v>1</v></c></row>'))) as archive:
        assert furthest(archive) == 27_000 < MOST_CELLS
    assert isinstance(read_xlsx(with_row('<row r="9000"/>'), where="list.xlsx"), Table)


@pytest.mark.parametrize("words", ["<c " * 200_000, '<c r="A1">' * 200_000, '<c r="A1" ' * 200_000])
def test_tags_without_end_cost_no_more_than_their_bytes(words: str) -> None:
    """Each of these held a worker for minutes when every tag was looked for to the end of the sheet."""
    answer = read_xlsx(with_comment(words), where="list.xlsx")
    assert isinstance(answer, Table)
    assert [row.cells for row in answer.rows] == [("Hall light",)]


def test_a_part_that_unpacks_to_more_than_it_says_is_refused() -> None:
    """The directory says 100 bytes of a part that holds more."""
    data = bytearray(workbook())
    at = data.rindex(SHEET.encode())  # in the directory at the end (PKWARE APPNOTE 4.3.12: name from byte 46)
    data[at - 46 + 24 : at - 46 + 28] = struct.pack("<I", 100)
    answer = read_xlsx(bytes(data), where="list.xlsx")
    assert isinstance(answer, list)
    assert "do not unpack" in answer[0].stands


def test_cells_and_what_is_inside_them() -> None:
    sheet = b'<c r="A1"><v>1</v></c><c r="B1"/><cols/><c s="3" r="C1"><f>1+1</f></c><c r="D1">'
    assert list(cells_of(sheet)) == [("A1", b"<v>1</v>"), ("C1", b"<f>1+1</f>")]
