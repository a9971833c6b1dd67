"""Keys, types and ranges of the document; faults in words that a person can act on."""

import json
from difflib import get_close_matches
from functools import cache
from typing import Any

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from secondfix.catalogue import expected
from secondfix.house.canonical import json_schema
from secondfix.house.document import FORMAT, House
from secondfix.house.faults import Fault


def shape_faults(plain: Any, *, where: str) -> House | list[Fault]:
    """The house, or every fault of shape."""
    if not isinstance(plain, dict):
        return [Fault(where, "", shown(plain), "an object that holds a house")]
    version = plain.get("format")
    if isinstance(version, int) and version > FORMAT:
        return [
            Fault(where, "format", str(version), f"format {FORMAT}: this file was made by a newer Secondfix")
        ]
    try:
        return House.model_validate(plain)
    except ValidationError as error:
        found = error.errors(include_url=False)
        inner = {tuple(e["loc"][:n]) for e in found for n in range(len(e["loc"]))}
        # A list that came out too short only because its members were refused is told by the members.
        kept = [e for e in found if not (e["type"] == "too_short" and tuple(e["loc"]) in inner)]
        return list(dict.fromkeys(_fault(e, where) for e in kept))


def shown(value: Any) -> str:
    """A value as it stands, short enough for one line."""
    if isinstance(value, dict):
        return f"an object with {len(value)} keys"
    if isinstance(value, list | tuple):
        return f"a list of {len(value)}"
    text = repr(value) if isinstance(value, str) else json.dumps(value)
    return text if len(text) <= 60 else text[:57] + "..."


def _fault(e: ErrorDetails, where: str) -> Fault:
    loc = _spoken(e["loc"])
    path = "".join(f"[{p}]" if isinstance(p, int) else f".{p}" for p in loc).removeprefix(".")
    if e["type"] == "extra_forbidden":
        return Fault(where, path, "unknown key", _known_keys(loc))
    if e["type"] == "missing":
        return Fault(where, path, "nothing", expected(e))
    return Fault(where, path, shown(e["input"]), expected(e))


def _spoken(loc: tuple[int | str, ...]) -> list[int | str]:
    """The path as the document has it: without the names of union branches, which pydantic adds."""
    noise = ("literal[", "constrained-str", "function-", "str", "int", "[key]")
    return [p for p in loc if isinstance(p, int) or not p.startswith(noise)]


@cache
def _schema() -> dict[str, Any]:
    return json_schema()


def _known_keys(loc: list[int | str]) -> str:
    names = _keys_at(loc[:-1])
    longer = [name for name in names if name.startswith(f"{loc[-1]}_")]
    close = longer or get_close_matches(str(loc[-1]), names, n=1)
    if close:
        return f"perhaps '{close[0]}'"
    return f"one of {', '.join(names)}" if names else "a key that the format knows"


def _keys_at(loc: list[int | str]) -> list[str]:
    """The keys that the format knows at a path."""
    node = _schema()
    for part in loc:
        node = _resolved(node)
        if isinstance(part, int):
            node = node.get("items", {})
        else:
            spare: Any = node.get("additionalProperties") or next(
                iter(node.get("patternProperties", {}).values()), {}
            )
            node = node.get("properties", {}).get(part) or (spare if isinstance(spare, dict) else {})
    return list(_resolved(node).get("properties", {}))


def _resolved(node: dict[str, Any]) -> dict[str, Any]:
    while "$ref" in node or "anyOf" in node:
        if "$ref" in node:
            node = _schema()["$defs"][node["$ref"].rsplit("/", 1)[-1]]
        else:
            node = next((b for b in node["anyOf"] if b.get("type") != "null"), {})
    return node
