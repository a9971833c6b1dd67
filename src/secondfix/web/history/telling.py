"""What differs between two edits, told by thing and field."""

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from secondfix.house import FieldChange, House, field_changes
from secondfix.store import door
from secondfix.web.frame.asked import asked_at
from secondfix.web.frame.places import beside

MOST = 400


@dataclass(frozen=True, slots=True)
class Told:
    """One field: the thing it belongs to with its name and room, its own name, both values in words."""

    thing: str
    beside: str
    field: str
    was: str
    now: str


def told(house: House, changes: Iterable[FieldChange]) -> list[Told]:
    """The changes in the words of ``house``, the state after them."""
    return [_told(house, one) for change in changes for one in _members(change)]


def _members(change: FieldChange) -> list[FieldChange]:
    """A collection that came or went as a whole, as its members."""
    if "." in change.path or not isinstance(change.after or change.before, dict):
        return [change]
    before, after = change.before or {}, change.after or {}
    return [
        FieldChange(f"{change.path}.{key}", before.get(key), after.get(key))
        for key in dict.fromkeys((*before, *after))
    ]


def _told(house: House, change: FieldChange) -> Told:
    kind, *rest = change.path.split(".")
    values = _in_words(change.before), _in_words(change.after)
    if not rest:
        return Told("house", "", _spoken(kind), *values)
    thing, *rest = rest
    if kind == "boxes" and len(rest) > 1 and rest[0] == "gangs":
        thing, rest = f"{thing}.{rest[1]}", rest[2:]
    about = kind.removesuffix("s") if kind in {"models", "assumptions"} else beside(house, thing)
    return Told(thing, about, _spoken(".".join(rest)), *values)


def _in_words(value: Any) -> str:
    """A value, short enough for a cell; of a whole thing its name and what else is stated of it."""
    if value is None:
        return "not stated"
    if isinstance(value, dict) and "value" in value:
        how = str(value.get("known") or value.get("source") or "").replace("_", " ")
        return _short(f"{value['value']}" + (f" ({how})" if how else ""))
    if isinstance(value, dict):
        plain = (
            f"{_spoken(k)} {v}" for k, v in value.items() if not isinstance(v, dict | list) and k != "name"
        )
        named = [str(value["name"])] if "name" in value else []
        return _short(", ".join((*named, *plain)) or f"{len(value)} fields")
    if isinstance(value, list):
        return _short(", ".join(map(_in_words, value)) or "none")
    return _short({True: "yes", False: "no"}[value] if isinstance(value, bool) else str(value))


def _short(words: str) -> str:
    return words if len(words) <= 160 else f"{words[:157]}…"


def _spoken(field: str) -> str:
    return field.replace("_", " ").replace(".", ", ")


def between(house_id: str, one: int, other: int) -> tuple[FieldChange, ...]:
    """What edit ``other`` has otherwise than edit ``one``. Raises door.UnknownError."""
    texts = (asked_at(house_id, one).text, asked_at(house_id, other).text)
    before, after = map(json.loads, texts)
    return field_changes(before, after)


def standing(rows: Iterable[door.EditRow]) -> list[int]:
    """The numbers of edits that became current, the latest first."""
    return [row.number for row in rows if row.stands]
