"""The sheet as files for a spreadsheet: CSV (RFC 4180) and XLSX (ISO/IEC 29500), every cell a text.

A CSV cell that a spreadsheet could take for a formula gets an apostrophe before it (CWE-1236), and so does
one that begins with an apostrophe: reading takes one away again, so nothing is lost. In XLSX cells are
typed as text and need no guard.
"""

import csv
import io
from collections.abc import Sequence
from dataclasses import replace

from secondfix.exchange.table import Table, TableRow

_GUARDED = ("=", "+", "-", "@", "\t", "\r", "'")


def as_csv(headings: Sequence[str], rows: Sequence[Sequence[str]]) -> bytes:
    """UTF-8 with its mark, so that spreadsheets take it for what it is; commas and CRLF."""
    out = io.StringIO(newline="")
    writer = csv.writer(out)
    writer.writerow(map(_guarded, headings))
    writer.writerows([map(_guarded, row) for row in rows])
    return out.getvalue().encode("utf-8-sig")


def as_xlsx(headings: Sequence[str], rows: Sequence[Sequence[str]], *, title: str) -> bytes:
    """One sheet; the first row and column stay in sight."""
    from openpyxl import Workbook  # noqa: PLC0415 - paid for by those who write one
    from openpyxl.cell import WriteOnlyCell  # noqa: PLC0415 - as above

    book = Workbook(write_only=True)
    sheet = book.create_sheet(title)
    sheet.freeze_panes = "B2"
    for row in [headings, *rows]:
        cells = [WriteOnlyCell(sheet, value=text) for text in row]
        for cell in cells:
            cell.data_type = "s"
        sheet.append(cells)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def unguarded(table: Table) -> Table:
    """A table read from CSV without the apostrophes that writing put there."""
    rows = tuple(TableRow(r.number, tuple(c.removeprefix("'") for c in r.cells)) for r in table.rows)
    return replace(table, rows=rows)


def _guarded(text: str) -> str:
    return f"'{text}" if text.startswith(_GUARDED) else text
