"""The switch schedule as a table that is filled in: every gang a row, each cell a text, and back again."""

from secondfix.exchange.switch_sheet.cells import (
    NEUTRAL,
    Cell,
    Choice,
    Figure,
    Known,
    Unreadable,
    Words,
    YesNo,
)
from secondfix.exchange.switch_sheet.columns import COLUMNS, Column, columns_of
from secondfix.exchange.switch_sheet.reading import SheetRead, cell_changes, table_changes
from secondfix.exchange.switch_sheet.showing import choices_of, shown_row, shown_table
from secondfix.exchange.switch_sheet.texts import text_of, value_of
from secondfix.exchange.switch_sheet.writing import as_csv, as_xlsx, unguarded

__all__ = [
    "COLUMNS",
    "NEUTRAL",
    "Cell",
    "Choice",
    "Column",
    "Figure",
    "Known",
    "SheetRead",
    "Unreadable",
    "Words",
    "YesNo",
    "as_csv",
    "as_xlsx",
    "cell_changes",
    "choices_of",
    "columns_of",
    "shown_row",
    "shown_table",
    "table_changes",
    "text_of",
    "unguarded",
    "value_of",
]
