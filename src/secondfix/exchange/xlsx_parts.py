"""The parts of an XLSX workbook before it is read: how far its sheets reach, which cells are formulas.

Whoever sends a workbook chooses every byte of it. A cell at the far corner of an empty sheet would be read as
a table of 17 thousand million cells: no sheet is read that reaches further than anybody's list does.
Everything here takes time in proportion to the bytes.
"""

import re
import zipfile
from collections.abc import Iterator

MOST_CELLS = 5_000_000
"""Rows times columns of a sheet, the empty ones too."""
_TAG = re.compile(rb"<(?:\w+:)?(row|c)(?=[\s/>])([^<>]*)")
_AT = re.compile(rb"""\sr\s*=\s*["']\s*([A-Za-z]{0,9})([0-9]{0,18})""")
_SHEET = re.compile(rb"""<(?:\w+:)?sheet\b([^<>]*)""")
_RELATION = re.compile(rb"<(?:\w+:)?Relationship\b([^<>]*)")


def whole(archive: zipfile.ZipFile) -> bool:
    """Whether every part unpacks to just the bytes that the archive says."""
    try:
        return archive.testzip() is None
    except (zipfile.BadZipFile, RuntimeError, NotImplementedError, OSError, EOFError, ValueError):
        return False


def furthest(archive: zipfile.ZipFile) -> int:
    """Rows times columns of the sheet that reaches furthest."""
    return max(
        (_area(data) for name in archive.namelist() if b"sheetData" in (data := archive.read(name))),
        default=0,
    )


def _area(sheet: bytes) -> int:
    rows = columns = row = column = 0
    for found in _TAG.finditer(sheet):
        at = _AT.search(found[2])
        letters, digits = (at[1], at[2]) if at else (b"", b"")
        if found[1] == b"row":
            row, column = int(digits) if digits else row + 1, 0
        else:
            row = int(digits) if digits else row
            column = _number(letters) if letters else column + 1
        rows, columns = max(rows, row), max(columns, column)
    return max(rows, 1) * max(columns, 1)


def _number(letters: bytes) -> int:
    number = 0
    for letter in letters.upper():
        number = number * 26 + letter - 64
    return number


def cells_of(sheet: bytes) -> Iterator[tuple[str, bytes]]:
    """Each cell that says where it stands, and what is inside it."""
    for chunk in re.split(rb"<c(?=\s)", sheet)[1:]:
        head, closed, rest = chunk.partition(b">")
        at = _AT.search(head)
        end = rest.find(b"</c>")
        if closed and at and not head.endswith(b"/") and end >= 0:
            yield (at[1] + at[2]).decode(), rest[:end]


def part_of(archive: zipfile.ZipFile, index: int) -> str | None:
    """The part that holds the sheet of this index, by the workbook's own relations."""
    names = set(archive.namelist())
    if "xl/workbook.xml" not in names or "xl/_rels/workbook.xml.rels" not in names:
        return None
    sheets = _SHEET.findall(archive.read("xl/workbook.xml"))
    ids = [found[1] for sheet in sheets if (found := re.search(rb'\br:id="([^"]+)"', sheet))]
    targets = {}
    for relation in _RELATION.findall(archive.read("xl/_rels/workbook.xml.rels")):
        key, target = re.search(rb'\bId="([^"]+)"', relation), re.search(rb'\bTarget="([^"]+)"', relation)
        if key and target:
            targets[key[1]] = target[1].decode("utf-8", "replace")
    if index >= len(ids) or ids[index] not in targets:
        return None
    found_at = targets[ids[index]]
    path = found_at.lstrip("/") if found_at.startswith("/") else f"xl/{found_at}"
    return path if path in names else None
