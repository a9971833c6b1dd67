"""What a request asks of the switch schedule: texts for cells, from a script, a file or a form."""

import json
from collections.abc import Iterator
from dataclasses import dataclass, field

from django.http import HttpRequest

from secondfix.exchange import (
    SheetRead,
    Table,
    TableRow,
    columns_of,
    read_csv,
    read_xlsx,
    shown_row,
    table_changes,
    unguarded,
)
from secondfix.house import Fault, Schedule
from secondfix.store import door
from secondfix.terms import Known
from secondfix.web.changing import number_of

MOST_CELLS = 20_000


def base_of(request: HttpRequest) -> int:
    """The edit that the sheet was made from. Raises door.UnknownError where the form names none."""
    number = number_of(request)
    if number is None:
        raise door.UnknownError("the form names no edit")
    return number


def known_of(request: HttpRequest) -> Known:
    """How what is typed is known; *told* where the form does not say."""
    sent = request.POST.get("known", "")
    return Known(sent) if sent in set(Known) else Known.TOLD


def cells_read(rows: Schedule, request: HttpRequest) -> SheetRead:
    """The changes of the cells in the field ``cells``: a JSON list of [gang, column, text]."""
    try:
        sent = json.loads(request.POST.get("cells", ""))
    except (ValueError, RecursionError):
        sent = None
    if not isinstance(sent, list) or not all(_is_cell(c) for c in sent) or len(sent) > MOST_CELLS:
        fault = Fault(
            "form", "cells", "not cells", f"a list of at most {MOST_CELLS:,} gangs, columns and texts"
        )
        return SheetRead((), (fault,))
    texts: dict[str, dict[str, str]] = {}
    for place, key, text in sent:
        texts.setdefault(place, {})[key] = text
    return _table_read(rows, texts, known_of(request))


def _is_cell(sent: object) -> bool:
    return isinstance(sent, list) and len(sent) == 3 and all(isinstance(part, str) for part in sent)


def _table_read(rows: Schedule, texts: dict[str, dict[str, str]], known: Known) -> SheetRead:
    """Cells that are not named keep what stands: the table is read as if they had been sent unchanged."""
    headings = {c.key: c.heading for c in columns_of(rows.house)}
    keys = [k for k in headings if any(k in row for row in texts.values())]
    strange = {k for row in texts.values() for k in row} - set(headings)
    if strange:
        return SheetRead(
            (),
            tuple(Fault("sheet", k[:40], "no such column", "a column of the sheet") for k in sorted(strange)),
        )
    lines = []
    for number, (place, row) in enumerate(texts.items(), 1):
        stands = shown_row(rows.house, rows.rows[place]) if place in rows.rows else {}
        lines.append(TableRow(number, (place, *(row.get(k, stands.get(k, "")) for k in keys))))
    table = Table("sheet", ("Gang", *(headings[k] for k in keys)), tuple(lines), ())
    return table_changes(rows, table, known=known)


def file_read(rows: Schedule, data: bytes, name: str, known: Known) -> SheetRead:
    """The changes of a CSV or XLSX file, told apart by its first bytes."""
    zipped = data[:2] == b"PK" or data[:4] == b"\xd0\xcf\x11\xe0"
    table = read_xlsx(data, where=name) if zipped else read_csv(data, where=name)
    if isinstance(table, list):
        return SheetRead((), tuple(table))
    return table_changes(rows, table if zipped else unguarded(table), known=known)


@dataclass(frozen=True)
class FormField:
    """One field of the form of a box."""

    name: str
    heading: str
    key: str
    text: str


@dataclass(frozen=True)
class FormGang:
    """The fields of one gang; those of the box stand with its first gang alone."""

    place: str
    fields: list[FormField] = field(default_factory=list)


def fields_of(rows: Schedule, box_id: str, request: HttpRequest) -> list[FormGang]:
    """The fields of a box, holding what was sent, else what stands."""
    return [
        FormGang(place, list(_fields(rows, place, first=n == 0, request=request)))
        for n, place in enumerate(_gangs(rows, box_id))
    ]


def _fields(rows: Schedule, place: str, *, first: bool, request: HttpRequest) -> Iterator[FormField]:
    stands = shown_row(rows.house, rows.rows[place])
    for column in columns_of(rows.house):
        if column.on != "box" or first:
            name = f"{place}:{column.key}"
            yield FormField(name, column.heading, column.key, request.POST.get(name, stands[column.key]))


def form_read(rows: Schedule, box_id: str, request: HttpRequest) -> SheetRead:
    """The changes that the form of a box asks for."""
    texts = {
        place: {
            c.key: request.POST[f"{place}:{c.key}"]
            for c in columns_of(rows.house)
            if f"{place}:{c.key}" in request.POST
        }
        for place in _gangs(rows, box_id)
    }
    return _table_read(rows, {p: t for p, t in texts.items() if t}, known_of(request))


def _gangs(rows: Schedule, box_id: str) -> list[str]:
    return [place for place, row in rows.rows.items() if row.box_id == box_id]
