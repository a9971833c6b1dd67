"""Saving: one byte sequence for one meaning; and the published JSON Schema."""

import json
from typing import Any

from secondfix.house.document import House


def as_canonical_json(house: House) -> str:
    """The document as text: keys in the format's own order, ids in natural order, absent values absent.

    Byte-identical for canonical input; equal in meaning for any other. Two-space indent, UTF-8,
    one newline at the end.
    """
    return json.dumps(plain_of(house), ensure_ascii=False, indent=2) + "\n"


def plain_of(house: House) -> dict[str, Any]:
    """The same as plain values, in the same order."""
    plain = house.model_dump(mode="json", exclude_unset=True)
    if "assumptions" in plain:
        plain["assumptions"] = dict(sorted(plain["assumptions"].items()))
    ordered: dict[str, Any] = _ordered(plain)
    return ordered


def _ordered(value: Any) -> Any:
    if isinstance(value, dict):
        keys = sorted(value, key=_natural) if all(_is_id(k) for k in value) else list(value)
        return {k: _ordered(value[k]) for k in keys if value[k] is not None}
    if isinstance(value, list):
        return [_ordered(v) for v in value]
    return value


def _is_id(key: str) -> bool:
    return key[:1].isupper() or key[:1].isdigit() or "@" in key


def _natural(key: str) -> tuple[str, int, str]:
    head = key.rstrip("0123456789")
    tail = key[len(head) :]
    return head, int(tail) if tail else -1, key


def json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of format 1: shapes and ranges, not the cross-references."""
    return House.model_json_schema()
