"""Which column of a device list says what: mapped once by the user, remembered as a small document."""

import json
from collections.abc import Mapping as Models
from typing import Annotated, Literal

from pydantic import Field, Strict, ValidationError

from secondfix.catalogue import Model
from secondfix.exchange.addresses import address_of
from secondfix.exchange.table import Table, TableRow
from secondfix.house import Fault, Id, ModelKey, Name, Part, parse
from secondfix.maintenance import ListRow
from secondfix.terms import Protocol, Purpose

Column = Annotated[str, Field(min_length=1, max_length=200)]


class Columns(Part):
    """The column that holds each thing; at least one of address, node and name."""

    address: Column | None = None
    node: Column | None = None
    endpoint: Column | None = None
    name: Column | None = None
    room: Column | None = None
    purpose: Column | None = None
    model: Column | None = None


class Mapping(Part):
    """Format 1. ``purposes`` and ``models`` lead the list's own words to ours; what they lack is told.

    ``network`` is the network of the house that the list is of; ``protocol`` and ``network_name`` serve a
    house that is begun from it. ``delimiter``, ``encoding`` and ``sheet`` tell how the file is read.
    """

    format: Literal[1]
    columns: Columns
    purposes: dict[str, Annotated[Purpose, Strict(False)]] = Field(default_factory=dict)
    models: dict[str, ModelKey] = Field(default_factory=dict)
    network: Id | None = None
    network_name: Name | None = None
    protocol: Annotated[Protocol, Strict(False)] | None = None
    delimiter: Annotated[str, Field(max_length=1)] | None = None
    encoding: str | None = None
    sheet: str | None = None


def read_mapping(data: bytes, *, where: str) -> Mapping | list[Fault]:
    """The mapping, or all of its faults."""
    plain, faults = parse(data, where=where)
    if faults:
        return faults
    try:
        mapping = Mapping.model_validate(plain)
    except ValidationError as error:
        return [
            Fault(where, ".".join(map(str, e["loc"])), repr(e["input"])[:80], e["msg"])
            for e in error.errors()
        ]
    if not (mapping.columns.address or mapping.columns.node or mapping.columns.name):
        return [Fault(where, "columns", "no column", "at least one of address, node and name")]
    return mapping


def mapping_as_json(mapping: Mapping) -> str:
    """The mapping as the text of its file."""
    return json.dumps(mapping.model_dump(mode="json", exclude_none=True), ensure_ascii=False, indent=2) + "\n"


def mapped(
    table: Table, mapping: Mapping, models: Models[str, Model]
) -> tuple[list[ListRow], list[str]] | list[Fault]:
    """The rows in the book's words, and what was told about them; or the columns that are not there."""
    asked = {f: name for f in Columns.model_fields if (name := getattr(mapping.columns, f)) is not None}
    lacking = [
        Fault(table.where, f"columns.{field}", f"'{name}'", f"one of {', '.join(table.columns)}")
        for field, name in asked.items()
        if name not in table.columns
    ]
    if lacking:
        return lacking
    at = {field: table.columns.index(name) for field, name in asked.items()}
    reader = _Reader(at, mapping, models)
    rows = [reader.row(row) for row in table.rows]
    return rows, [*table.told, *reader.told(table)]


class _Reader:
    """One row after the other; words that the mapping lacks are gathered and told once."""

    def __init__(self, at: dict[str, int], mapping: Mapping, models: Models[str, Model]) -> None:
        self._at, self._mapping, self._models = at, mapping, models
        self._strange: dict[str, dict[str, int]] = {}

    def row(self, row: TableRow) -> ListRow:
        cells = {field: row.cells[n] for field, n in self._at.items()}
        address = address_of(cells.get("address", ""))
        if cells.get("address") and address is None:
            self._tell("address", cells["address"])
        return ListRow(
            number=row.number,
            address=address,
            node=self._number("node", cells),
            endpoint=self._number("endpoint", cells),
            name=cells.get("name", ""),
            room=cells.get("room", ""),
            purpose=self._purpose(cells.get("purpose", "")),
            purpose_said=cells.get("purpose", ""),
            model=self._model(cells.get("model", "")),
            model_said=cells.get("model", ""),
            has_purpose="purpose" in self._at,
        )

    def told(self, table: Table) -> list[str]:
        """One sentence for each word that was not understood; the rows stay."""
        what = {
            "address": "is no address of 64 bits: such rows are known by node or name alone",
            "node": "is no node number", "endpoint": "is no endpoint number",
            "purpose": "leads to no purpose: add it to 'purposes' of the mapping",
            "model": "leads to no model at hand: add it to 'models' of the mapping",
        }  # fmt: skip
        unread = [c for n, c in enumerate(table.columns) if n not in self._at.values()]
        sentences = []
        for field, words in self._strange.items():
            column = getattr(self._mapping.columns, field)
            for word, times in words.items():
                rows = f"{times} row{'s' if times > 1 else ''}"
                sentences.append(f"'{word}' in column '{column}' ({rows}) {what[field]}.")
        return [*([f"Columns not read: {', '.join(unread)}."] if unread else []), *sentences]

    def _tell(self, field: str, word: str) -> None:
        words = self._strange.setdefault(field, {})
        words[word] = words.get(word, 0) + 1

    def _number(self, field: str, cells: dict[str, str]) -> int | None:
        text = cells.get(field, "")
        if not text:
            return None
        digits = text[2:] if text[:2].lower() == "0x" else text
        base = 16 if digits is not text else 10
        try:
            number = int(digits, base) if digits.isalnum() and digits.isascii() else -1
        except ValueError:
            number = -1
        if 0 <= number <= 65_535:
            return number
        self._tell(field, text)
        return None

    def _purpose(self, text: str) -> Purpose | None:
        if not text:
            return None
        found = self._mapping.purposes.get(text) or next((p for p in Purpose if p.value == text), None)
        if found is None:
            self._tell("purpose", text)
        return found

    def _model(self, text: str) -> str | None:
        if not text:
            return None
        key = self._mapping.models.get(text, text)
        if key not in self._models:
            self._tell("model", text)
            return None
        return key
