"""From raw rows to a table: header, column names, rows too long or too short, formulas."""

from collections import Counter
from collections.abc import Iterable

from secondfix.exchange.table import MOST_COLUMNS, MOST_ROWS, Table, TableRow
from secondfix.house import Fault

_SHOWN = 5


def laid_out(rows: Iterable[tuple[int, list[str]]], *, where: str, told: list[str]) -> Table | list[Fault]:
    """The table under the first row that holds anything. Faults: none, a column name twice, too many rows."""
    filled = ((n, cells) for n, cells in rows if any(c.strip() for c in cells))
    head = next(filled, None)
    if head is None:
        return [Fault(where, "", "no row that holds anything", "a header and rows")]
    columns = _columns(head[1])
    if len(columns) > MOST_COLUMNS:
        return [Fault(where, f"row {head[0]}", f"{len(columns)} columns", f"at most {MOST_COLUMNS}")]
    twice = [name for name, times in Counter(columns).items() if times > 1]
    if twice:
        return [
            Fault(where, f"row {head[0]}", f"column '{name}' twice", "each column name once: rename one")
            for name in twice
        ]
    body: list[TableRow] = []
    long: list[int] = []
    short: list[int] = []
    for number, cells in filled:
        if len(body) == MOST_ROWS:
            return [Fault(where, f"row {number}", f"more than {MOST_ROWS:,} rows", "a shorter list")]
        if len(cells) > len(columns) and any(c.strip() for c in cells[len(columns) :]):
            long.append(number)
        if len(cells) < len(columns):
            short.append(number)
        padded = [*cells, *[""] * (len(columns) - len(cells))]
        body.append(TableRow(number, tuple(c.strip() for c in padded[: len(columns)])))
    told += _sentences("more cells than the header names; those beyond are not read", long)
    told += _sentences("fewer cells than the header names; the rest is taken as empty", short)
    return Table(where, columns, tuple(body), tuple(told))


def _columns(cells: list[str]) -> tuple[str, ...]:
    """Names as they stand; a column without one is called by its number. Empty ones at the end are none."""
    while cells and not cells[-1].strip():
        cells = cells[:-1]
    return tuple(name.strip() or f"column {n}" for n, name in enumerate(cells, 1))


def _sentences(what: str, numbers: list[int]) -> list[str]:
    if not numbers:
        return []
    first = ", ".join(map(str, numbers[:_SHOWN])) + (", …" if len(numbers) > _SHOWN else "")
    return [f"{len(numbers)} row{'s' if len(numbers) > 1 else ''} ({first}): {what}."]


def formula_words(cells: list[str], what: str) -> list[str]:
    """One sentence for cells that hold a formula."""
    if not cells:
        return []
    first = ", ".join(cells[:_SHOWN]) + (", …" if len(cells) > _SHOWN else "")
    return [f"{len(cells)} cell{'s' if len(cells) > 1 else ''} ({first}): {what}."]
