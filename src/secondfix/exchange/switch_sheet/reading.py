"""From texts to changes of the document: one cell, or a whole table."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.exchange.switch_sheet.cells import Unreadable
from secondfix.exchange.switch_sheet.columns import PLACE, Column, columns_of
from secondfix.exchange.switch_sheet.duties import with_duty
from secondfix.exchange.switch_sheet.showing import shown_cell
from secondfix.exchange.switch_sheet.texts import LONGEST_TEXT, value_of
from secondfix.exchange.table import Table
from secondfix.house import Change, Fault, House, Row, Schedule
from secondfix.terms import Known


@dataclass(frozen=True, slots=True)
class SheetRead:
    """What a table asks to be changed, every fault of it, what a person should know of the reading, and the
    gangs that it speaks of."""

    changes: tuple[Change, ...]
    faults: tuple[Fault, ...]
    told: tuple[str, ...] = ()
    places: tuple[str, ...] = ()


def cell_changes(schedule: Schedule, place: str, key: str, text: str, *, known: Known) -> SheetRead:
    """The changes that one text in one cell asks for; ``known`` is how a surveyed value without a word for it
    is known."""
    columns = {c.key: c for c in columns_of(schedule.house)}
    row = schedule.rows.get(place)
    if row is None:
        return SheetRead((), (Fault("sheet", place[:40], "no such gang", "a gang of this house"),))
    if key not in columns:
        return SheetRead((), (Fault("sheet", key[:40], "no such column", f"one of {', '.join(columns)}"),))
    return _Reading(schedule.house, known).row(row, {key: text}, place)


def table_changes(schedule: Schedule, table: Table, *, known: Known) -> SheetRead:
    """The changes that a table asks for. Rows are known by their gang, columns by their heading.

    A cell that holds what the sheet shows there asks for nothing; an empty cell takes out what stands.
    Columns and gangs that are not in the table stay as they are. A column that nobody reads is told. What
    stands in several rows (a box's depth, a load's power) may be changed in one of them, or alike.
    """
    by_heading = {c.heading.casefold(): c for c in columns_of(schedule.house)}
    heads = [name.casefold() for name in table.columns]
    if PLACE.casefold() not in heads:
        fault = Fault(table.where, "header", ", ".join(table.columns)[:80], f"a column '{PLACE}'")
        return SheetRead((), (fault,), table.told)
    read = [(i, by_heading[h]) for i, h in enumerate(heads) if h in by_heading]
    strange = [table.columns[i] for i, h in enumerate(heads) if h not in by_heading and h != PLACE.casefold()]
    told = [f"Column '{name[:40]}' is not read." for name in strange]
    at = heads.index(PLACE.casefold())
    reading = _Reading(schedule.house, known)
    changes: dict[str, Change] = {}
    faults: list[Fault] = []
    seen: dict[str, None] = {}
    for line in table.rows:
        place, where = line.cells[at], f"{table.where}, row {line.number}"
        if place in seen or place not in schedule.rows:
            stands = f"'{place[:40]}' twice" if place in seen else f"'{place[:40]}'"
            expected = "each gang once" if place in seen else "a gang of this house"
            faults.append(Fault(where, PLACE, stands, expected))
            continue
        seen[place] = None
        one = reading.row(schedule.rows[place], {c.key: line.cells[i] for i, c in read}, where)
        faults += one.faults
        for change in one.changes:
            if changes.setdefault(change.path, change) != change:
                faults.append(Fault(where, change.path, "another value than a row above", "one value"))
    return SheetRead(tuple(changes.values()), tuple(faults), (*table.told, *told), tuple(seen))


class _Reading:
    """Rows read one after another; loads that are named for the first time get ids of their own."""

    def __init__(self, house: House, known: Known) -> None:
        self.house, self.known = house, known
        self.begun: dict[str, str] = {}
        self.taken = {k for kind in ("loads", "boxes", "rooms") for k in getattr(house, kind)}

    def row(self, row: Row, texts: dict[str, str], where: str) -> SheetRead:
        """The changes of one row."""
        changes: list[Change] = []
        faults: list[Fault] = []
        load_id = row.gang.load
        for column in columns_of(self.house):
            text = texts.get(column.key)
            if text is None or text.strip() == shown_cell(self.house, row, column).strip():
                continue
            if len(text) > LONGEST_TEXT:
                stands = f"{len(text)} characters"
                faults.append(Fault(where, column.heading, stands, f"at most {LONGEST_TEXT}"))
                continue
            if column.key == "load":
                load_id = self._load(row, text.strip(), changes)
                continue
            made = self._change(row, column, text.strip(), load_id)
            if isinstance(made, Fault):
                faults.append(Fault(where, made.path, made.stands, made.expected))
            else:
                changes += made
        brought = with_duty(row, {c.path: c.value for c in changes})
        if isinstance(brought, Fault):
            faults.append(Fault(where, brought.path, brought.stands, brought.expected))
        else:
            changes += brought
        return SheetRead(tuple(changes), tuple(faults))

    def _change(self, row: Row, column: Column, text: str, load_id: str | None) -> list[Change] | Fault:
        path = column.path(row, load_id)
        if path is None:
            return (
                Fault("", column.heading, f"'{text[:60]}'", "nothing: this gang feeds no load")
                if text
                else []
            )
        if not text:
            return [Change(path, None)]
        value = value_of(column.cell, text, self.house, fact=column.fact, known=self.known)
        if isinstance(value, Unreadable):
            return Fault("", column.heading, f"'{text[:60]}'", value.expected)
        return [Change(path, value)]

    def _load(self, row: Row, text: str, changes: list[Change]) -> str | None:
        """The load that a text names; one that nobody knows yet is begun in the room of the box."""
        at = f"boxes.{row.box_id}.gangs.{row.gang_no}"
        if not text:
            changes.append(Change(f"{at}.load", None))
            return None
        column = next(c for c in columns_of(self.house) if c.key == "load")
        found = column.cell.read(text, self.house)
        load_id = str(found) if not isinstance(found, Unreadable) else self._begin(row, text, changes)
        changes.append(Change(f"{at}.load", load_id))
        return load_id

    def _begin(self, row: Row, name: str, changes: list[Change]) -> str:
        begun = self.begun.get(name.casefold())
        if begun is None:
            begun = next(key for key in _ids() if key not in self.taken)
            self.taken.add(begun)
            self.begun[name.casefold()] = begun
            changes.append(Change(f"loads.{begun}.name", name[:80]))
            changes.append(Change(f"loads.{begun}.room", row.box.room))
        return begun


def _ids() -> Iterator[str]:
    number = 1
    while True:
        yield f"L{number:02d}"
        number += 1
