"""Saving: one byte sequence for one meaning; and the published JSON Schema."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import BaseModel
from pydantic_core import to_json

from secondfix.house.document import House

T = TypeVar("T")
_HOLDERS = {dict, list}


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


def written(house: House, *, before: Written | None = None) -> Written:
    """A house that was read or edited without a fault, with its text; ``before``, what it was made from."""
    return Written(house, as_canonical_json(house), before)


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
