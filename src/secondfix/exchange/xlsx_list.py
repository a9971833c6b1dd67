"""A device list as XLSX (ISO/IEC 29500): values as they were stored in it, nothing computed."""

import io
import re
import zipfile
from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from typing import Any

from secondfix.exchange.laying_out import formula_words, laid_out
from secondfix.exchange.table import Table
from secondfix.exchange.xlsx_parts import MOST_CELLS, cells_of, furthest, part_of, whole
from secondfix.house import Fault

MOST_UNPACKED_BYTES = 512 * 1024 * 1024
MOST_PARTS = 2_000
_WRONG = "an XLSX workbook"


def read_xlsx(data: bytes, *, where: str, sheet: str | None = None) -> Table | list[Fault]:
    """The table of one sheet, the first if none is named; or why there is none."""
    unfit = _unfit(data, where)
    if unfit:
        return [unfit]
    from python_calamine import CalamineError, CalamineWorkbook, PasswordError  # noqa: PLC0415 - paid for by those who read one

    try:
        book = CalamineWorkbook.from_filelike(io.BytesIO(data))
        if sheet is not None and sheet not in book.sheet_names:
            return [Fault(where, "sheet", f"'{sheet}'", f"one of {', '.join(book.sheet_names)}")]
        name = sheet or next(iter(book.sheet_names), None)
        if name is None:
            return [Fault(where, "", "no sheet", "a sheet with a header and rows")]
        values = book.get_sheet_by_name(name).to_python(skip_empty_area=False)
    except PasswordError:
        return [Fault(where, "", "a workbook behind a password", "one without: save it anew")]
    except CalamineError as error:
        return [Fault(where, "", f"not to be read ({error})", _WRONG)]
    told = []
    if sheet is None and len(book.sheet_names) > 1:
        told.append(f"The first sheet, '{name}', is read; there are also {', '.join(book.sheet_names[1:])}.")
    table = laid_out(_rows(values), where=where, told=told)
    if isinstance(table, list):
        return table
    more = _formulas(data, book.sheet_names.index(name))
    return Table(table.where, table.columns, table.rows, (*table.told, *more))


def _unfit(data: bytes, where: str) -> Fault | None:
    """Not a ZIP archive, or one that unpacks to more than anybody should."""
    if data[:4] == b"\xd0\xcf\x11\xe0":
        return Fault(
            where, "", "a workbook of the old kind or behind a password", f"{_WRONG} without a password"
        )
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            return _too_large(archive, where)
    except (zipfile.BadZipFile, ValueError, NotImplementedError) as error:
        return Fault(where, "", f"not an XLSX workbook ({error})", _WRONG)


def _too_large(archive: zipfile.ZipFile, where: str) -> Fault | None:
    parts = archive.infolist()
    unpacked = sum(part.file_size for part in parts)
    if unpacked > MOST_UNPACKED_BYTES or len(parts) > MOST_PARTS:
        return Fault(
            where, "", f"{len(parts):,} parts that unpack to {unpacked:,} bytes",
            f"at most {MOST_PARTS:,} parts and {MOST_UNPACKED_BYTES:,} bytes",
        )  # fmt: skip
    if not whole(archive):
        return Fault(where, "", "parts that do not unpack to what they say", _WRONG)
    reach = furthest(archive)
    if reach > MOST_CELLS:
        return Fault(where, "", f"a sheet that reaches over {reach:,} cells", f"at most {MOST_CELLS:,}")
    return None


def _rows(values: list[list[Any]]) -> Iterator[tuple[int, list[str]]]:
    for number, cells in enumerate(values, 1):
        yield number, [_text(cell) for cell in cells]


def _text(cell: object) -> str:
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, float):
        return str(int(cell)) if cell.is_integer() and abs(cell) < 1e15 else repr(cell)
    if isinstance(cell, date | datetime | time):
        return cell.isoformat()
    return (
        ""
        if cell is None
        else str(cell)
        if not isinstance(cell, timedelta)
        else f"{cell.total_seconds():g} s"
    )


def _formulas(data: bytes, index: int) -> list[str]:
    """Cells with a formula: those whose value is stored, and those that have none and read as empty."""
    stored: list[str] = []
    empty: list[str] = []
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        part = part_of(archive, index)
        if part is None:
            return ["Whether cells hold formulas could not be found out."]
        for at, body in cells_of(archive.read(part)):
            if b"<f" in body:
                (stored if re.search(rb"<v>[^<]", body) or b"<is>" in body else empty).append(at)
    return [
        *formula_words(stored, "a formula; the value that was stored with it is read, not computed anew"),
        *formula_words(
            empty, "a formula without a stored value; it is read as empty: open and save the workbook"
        ),
    ]
