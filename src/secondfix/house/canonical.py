"""Saving: one byte sequence for one meaning; and the published JSON Schema."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, TypeVar, get_origin

from pydantic import BaseModel
from pydantic_core import to_json

from secondfix.house.document import House

T = TypeVar("T")
_HOLDERS = {dict, list}
COLLECTIONS = {name for name, field in House.model_fields.items() if get_origin(field.annotation) is dict}

Pieces = Mapping[str, Mapping[str, tuple[BaseModel, str]]]
"""By collection and id: each member with its text, as it stands in the text of the house."""


def as_canonical_json(house: House) -> str:
    """The document as text: keys in the format's own order, ids in natural order, absent values absent.

    Byte-identical for canonical input; equal in meaning for any other. Two-space indent, UTF-8,
    one newline at the end.
    """
    return to_json(plain_of(house), indent=2).decode() + "\n"


@dataclass(frozen=True, slots=True)
class Written:
    """A house and its canonical text, which `written` alone puts side by side."""

    house: House
    text: str
    before: "Written | None" = None
    pieces: Pieces = field(default_factory=dict, repr=False, compare=False)


def written(house: House, *, before: Written | None = None) -> Written:
    """A house that was read or edited without a fault, with its text: that of `as_canonical_json`.

    ``before`` is what it was made from: members that both share are not written out again.
    """
    was: Pieces = before.pieces if before else {}
    pieces = {
        name: _pieces(getattr(house, name), was.get(name, {})) for name in COLLECTIONS if stands(house, name)
    }
    fields = (name for name in House.model_fields if stands(house, name))
    lines = (f'  "{name}": {_field_text(house, name, pieces.get(name))}' for name in fields)
    return Written(house, "{\n" + ",\n".join(lines) + "\n}\n", before, pieces)


def _pieces(
    members: Mapping[str, BaseModel], was: Mapping[str, tuple[BaseModel, str]]
) -> dict[str, tuple[BaseModel, str]]:
    """Each member in its order with its text; the text of one that stood is taken over."""
    made = {}
    for key, part in (members if list(members) == list(was) else in_order(members)).items():
        stood = was.get(key)
        made[key] = stood if stood and stood[0] is part else (part, _deeper(plain_of(part), by=2))
    return made


def _field_text(house: House, name: str, pieces: Mapping[str, tuple[BaseModel, str]] | None) -> str:
    if pieces is None:
        value = getattr(house, name)
        return _deeper(plain_of(value) if isinstance(value, BaseModel) else value, by=1)
    inside = ",\n".join(f"    {to_json(key).decode()}: {text}" for key, (_, text) in pieces.items())
    return f"{{\n{inside}\n  }}" if pieces else "{}"


def _deeper(plain: object, *, by: int) -> str:
    """A plain value as text that stands so many levels deep. No text of JSON has a line break in it."""
    return to_json(plain, indent=2).decode().replace("\n", "\n" + "  " * by)


def stands(house: House, name: str) -> bool:
    """Whether a field of the house is stated."""
    return name in house.model_fields_set and getattr(house, name) is not None


def plain_of(part: BaseModel) -> dict[str, Any]:
    """The same as plain values, in the same order; of the whole house or of one part of it."""
    plain = part.model_dump(mode="json", exclude_unset=True, exclude_none=True)
    if isinstance(part, House) and "assumptions" in plain:
        plain["assumptions"] = in_order(plain["assumptions"])
    put_in_order(plain)
    return plain


def put_in_order(plain: dict[str, Any]) -> None:
    """Put the ids of a plain value into natural order, at every depth, in place."""
    waiting: list[Any] = [plain]
    while waiting:
        value = waiting.pop()
        inside = value
        if isinstance(value, dict):
            inside = value.values()
            if len(value) > 1 and all(map(_is_id, value)):
                _sort(value)
        waiting += [v for v in inside if type(v) in _HOLDERS]


def _sort(value: dict[str, Any]) -> None:
    inside = in_order(value)
    if list(inside) != list(value):
        value.clear()
        value |= inside


def in_order(members: Mapping[str, T]) -> dict[str, T]:
    """Members in the natural order of their ids, assumptions in that of their names."""
    return {key: members[key] for key in sorted(members, key=_natural)}


def _is_id(key: str) -> bool:
    return key[:1].isupper() or key[:1].isdigit() or "@" in key


def _natural(key: str) -> tuple[str, int, str]:
    head = key.rstrip("0123456789")
    tail = key[len(head) :]
    return head, int(tail) if tail else -1, key


def json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of format 1: shapes and ranges, not the cross-references."""
    return House.model_json_schema()
