"""A table read from a file: named columns, rows with their numbers in the file, and what was told."""

from dataclasses import dataclass

MOST_ROWS = 200_000
MOST_COLUMNS = 500
LARGEST_LIST_BYTES = 64 * 1024 * 1024


@dataclass(frozen=True, slots=True)
class TableRow:
    """One row: its number in the file (the header is a row too), and one text for each column."""

    number: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """``told`` is everything about the reading that a person should know, a sentence each."""

    where: str
    columns: tuple[str, ...]
    rows: tuple[TableRow, ...]
    told: tuple[str, ...]
