"""The sheet as texts."""

from secondfix.exchange.switch_sheet.columns import PLACE, Column, columns_of
from secondfix.exchange.switch_sheet.texts import text_of
from secondfix.house import House, Row, Schedule


def shown_row(house: House, row: Row) -> dict[str, str]:
    """The texts of one gang by column; empty for what is not stated.

    A surveyed value has how it is known behind it in brackets: ``35 (measured)``.
    """
    return {column.key: shown_cell(house, row, column) for column in columns_of(house)}


def shown_cell(house: House, row: Row, column: Column) -> str:
    """The text of one cell."""
    return text_of(column.cell, column.value(row), house)


def shown_table(schedule: Schedule) -> tuple[list[str], list[list[str]]]:
    """The headings, and a row of texts for every gang in the order of the house."""
    house = schedule.house
    headings = [PLACE, *(c.heading for c in columns_of(house))]
    return headings, [[row.id, *shown_row(house, row).values()] for row in schedule.rows.values()]


def choices_of(house: House) -> dict[str, list[str]]:
    """The texts to choose from, for each column that has some."""
    found = {column.key: column.cell.choices(house) for column in columns_of(house)}
    return {key: texts for key, texts in found.items() if texts}
