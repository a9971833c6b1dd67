"""Changes of a house in words: by thing and field, as the sheets call them."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from secondfix.exchange import told_field
from secondfix.house import FieldChange, House
from secondfix.web.frame.places import beside

NOT_STATED = "not stated"


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
    return [
        Told(
            *field_words(house, one.path),
            value_words(house, one.path, one.before),
            value_words(house, one.path, one.after),
        )
        for change in changes
        for one in _members(change)
    ]


def field_words(house: House, path: str) -> tuple[str, str, str]:
    """The thing that a path leads to, what stands beside it in words, and the field of it."""
    known = told_field(path)
    kind, *rest = path.split(".")
    if known is not None:
        return known.thing or "house", beside(house, known.thing) if known.thing else "", known.heading
    if not rest:
        return "house", "", _spoken(kind)
    thing, *rest = rest
    if kind == "boxes" and len(rest) > 1 and rest[0] == "gangs":
        thing, rest = f"{thing}.{rest[1]}", rest[2:]
    about = kind.removesuffix("s") if kind in {"models", "assumptions"} else beside(house, thing)
    return thing, about, _spoken(".".join(rest))


def value_words(house: House, path: str, value: Any) -> str:
    """A value in plain JSON as its sheet shows it, short enough for a cell."""
    known = told_field(path)
    return _short(known.shown(value, house)) if known is not None else _in_words(value)


def _members(change: FieldChange) -> list[FieldChange]:
    """A collection that came or went as a whole, as its members."""
    if "." in change.path or not isinstance(change.after or change.before, dict):
        return [change]
    before, after = change.before or {}, change.after or {}
    return [
        FieldChange(f"{change.path}.{key}", before.get(key), after.get(key))
        for key in dict.fromkeys((*before, *after))
    ]


def _in_words(value: Any) -> str:
    """A value no sheet has a field for; of a whole thing its name and what else is stated of it."""
    if value is None:
        return NOT_STATED
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
