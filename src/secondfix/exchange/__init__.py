"""Exchange: what comes in from other programs, read carefully, nothing dropped in silence."""

from secondfix.exchange.addresses import address_of
from secondfix.exchange.air_survey import LARGEST_SURVEY_BYTES, AirSurvey, read_air_survey
from secondfix.exchange.csv_list import read_csv
from secondfix.exchange.listing import read_list
from secondfix.exchange.mapping import Columns, Mapping, mapped, mapping_as_json, read_mapping
from secondfix.exchange.switch_sheet import (
    Column,
    SheetRead,
    as_csv,
    as_xlsx,
    cell_changes,
    choices_of,
    columns_of,
    shown_row,
    shown_table,
    table_changes,
    unguarded,
)
from secondfix.exchange.table import LARGEST_LIST_BYTES, MOST_ROWS, Table, TableRow
from secondfix.exchange.things import (
    KINDS,
    Field,
    ThingKind,
    begun,
    fields_of,
    kind_of,
    next_id,
    shown_thing,
    thing_changes,
    told_field,
)
from secondfix.exchange.xlsx_list import MOST_UNPACKED_BYTES, read_xlsx

__all__ = [
    "KINDS",
    "LARGEST_LIST_BYTES",
    "LARGEST_SURVEY_BYTES",
    "MOST_ROWS",
    "MOST_UNPACKED_BYTES",
    "AirSurvey",
    "Column",
    "Columns",
    "Field",
    "Mapping",
    "SheetRead",
    "Table",
    "TableRow",
    "ThingKind",
    "address_of",
    "as_csv",
    "as_xlsx",
    "begun",
    "cell_changes",
    "choices_of",
    "columns_of",
    "fields_of",
    "kind_of",
    "mapped",
    "mapping_as_json",
    "next_id",
    "read_air_survey",
    "read_csv",
    "read_list",
    "read_mapping",
    "read_xlsx",
    "shown_row",
    "shown_table",
    "shown_thing",
    "table_changes",
    "thing_changes",
    "told_field",
    "unguarded",
]
