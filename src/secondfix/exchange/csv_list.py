"""A device list as CSV (RFC 4180, read): encoding and delimiter are found out and told, never silently."""

import csv
import io
from collections.abc import Iterator

from secondfix.exchange.laying_out import formula_words, laid_out
from secondfix.exchange.table import Table
from secondfix.house import Fault

DELIMITERS = {",": "comma", ";": "semicolon", "\t": "tab", "|": "bar"}
_ENCODINGS = ("utf-8", "utf-16", "cp1252")


def read_csv(
    data: bytes, *, where: str, delimiter: str | None = None, encoding: str | None = None
) -> Table | list[Fault]:
    """The table, or why it is none. UTF-8, or UTF-16 by its mark; else cp1252, which is told."""
    told: list[str] = []
    text = _decoded(data, where, encoding, told)
    if isinstance(text, Fault):
        return [text]
    if delimiter is None:
        delimiter = _delimiter(text)
        told.append(f"Columns are taken to be parted by a {DELIMITERS[delimiter]}.")
    elif delimiter not in DELIMITERS:
        return [Fault(where, "delimiter", f"'{delimiter}'", f"one of {', '.join(DELIMITERS.values())}")]
    formulas: list[str] = []
    try:
        table = laid_out(_rows(text, delimiter, formulas), where=where, told=told)
    except csv.Error as error:
        return [
            Fault(where, "", f"not CSV ({error})", "quoted cells that end, each at most 131,072 characters")
        ]
    if isinstance(table, list):
        return table
    more = formula_words(formulas, "a formula stands as text; it is taken as text and not computed")
    return Table(table.where, table.columns, table.rows, (*table.told, *more))


def _decoded(data: bytes, where: str, encoding: str | None, told: list[str]) -> str | Fault:
    if encoding is not None and encoding not in _ENCODINGS:
        return Fault(where, "encoding", f"'{encoding}'", f"one of {', '.join(_ENCODINGS)}")
    if encoding is None and data[:2] in {b"\xff\xfe", b"\xfe\xff"}:
        encoding = "utf-16"
        told.append("Read as UTF-16, by the mark at its beginning.")
    if b"\x00" in data and encoding != "utf-16":
        return Fault(where, f"byte {data.index(0)}", "a zero byte", "text: perhaps UTF-16, or no CSV at all")
    try:
        return data.decode({None: "utf-8-sig", "utf-8": "utf-8-sig"}.get(encoding, encoding or ""))
    except UnicodeDecodeError as error:
        if encoding is not None:
            return Fault(where, f"byte {error.start}", f"not {encoding}", f"text in {encoding}")
    return _as_cp1252(data, where, told)


def _as_cp1252(data: bytes, where: str, told: list[str]) -> str | Fault:
    try:
        text = data.decode("cp1252")
    except UnicodeDecodeError as error:
        return Fault(where, f"byte {error.start}", "neither UTF-8 nor cp1252", "text in one of them")
    words = [word for word in text.replace(",", " ").replace(";", " ").split() if not word.isascii()]
    shown = ", ".join(f"'{w}'" for w in dict.fromkeys(words[:50]))[:200]
    told.append(f"Not UTF-8: read as cp1252. See whether these are as they should be: {shown}.")
    return text


def _delimiter(text: str) -> str:
    """The one that parts the first filled line into most cells; a comma where none does."""
    line = next((one for one in text.splitlines() if one.strip()), "")
    return max(DELIMITERS, key=lambda d: len(next(csv.reader([line], delimiter=d), [])))


def _rows(text: str, delimiter: str, formulas: list[str]) -> Iterator[tuple[int, list[str]]]:
    for number, cells in enumerate(
        csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True), 1
    ):
        formulas += [f"row {number}, cell {n}" for n, cell in enumerate(cells, 1) if cell.startswith("=")]
        yield number, cells
