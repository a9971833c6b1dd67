"""A field of the document in words: the heading its sheet has for it, its value as the sheet shows it."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from secondfix.exchange.switch_sheet import COLUMNS, Cell
from secondfix.exchange.things.fields import KINDS
from secondfix.house import House
from secondfix.terms import KNOWN_LABELS

_BY_COLLECTION = {kind.collection: kind for kind in KINDS.values()}
_OF_GANG = {c.field: c for c in COLUMNS if c.on == "gang"}
_NOT_STATED = "not stated"


@dataclass(frozen=True, slots=True)
class ToldField:
    """What a path leads to: ``thing`` its id, empty for the house itself; the cell shows its values."""

    thing: str
    heading: str
    cell: Cell

    def shown(self, value: Any, house: House) -> str:
        """A value as the document has it in plain JSON, with how it is known behind it in brackets."""
        if value is None or value == "":
            return _NOT_STATED
        if isinstance(value, Mapping) and "value" in value:
            known = {k.value: label for k, label in KNOWN_LABELS.items()}.get(str(value.get("known")), "")
            text = self.cell.shown(value["value"], house)
            return f"{text} ({known})" if known else text
        return self.cell.shown(value, house)


def told_field(path: str) -> ToldField | None:
    """The field at a path of the document; None where no sheet has one for it."""
    collection, _, rest = path.partition(".")
    if not rest:
        return _of("house", "", collection)
    thing, _, within = rest.partition(".")
    parts = within.split(".")
    if collection == "boxes" and len(parts) == 3 and parts[0] == "mounts":
        told = _of("mount", thing, parts[2])
        return told and ToldField(thing, f"{told.heading}, mount {parts[1]}", told.cell)
    if collection == "boxes" and len(parts) == 3 and parts[0] == "gangs":
        column = _OF_GANG.get(parts[2])
        return ToldField(f"{thing}.{parts[1]}", column.heading, column.cell) if column else None
    kind = _BY_COLLECTION.get(collection)
    return _of(kind.name, thing, within) if kind and kind.name in KINDS else None


def _of(kind: str, thing: str, path: str) -> ToldField | None:
    field = next((f for f in KINDS[kind].fields if f.path == path), None)
    return ToldField(thing, field.heading, field.cell) if field else None
