"""The example house as bytes, and changes to it."""

import json
from typing import Any

from secondfix.house import as_canonical_json
from tests.example_house import document, house

HOUSE = str(document()["id"])
TEXT = as_canonical_json(house())


def changed(**fields: Any) -> bytes:
    """The example with other values; a key is a path with ``__`` for the dots, None takes out."""
    return changed_from(TEXT, **fields)


def changed_from(text: str, **fields: Any) -> bytes:
    """Another document with other values."""
    plain = json.loads(text)
    for path, value in fields.items():
        *steps, last = path.split("__")
        node = plain
        for step in steps:
            node = node.setdefault(step, {})
        if value is None:
            node.pop(last, None)
        else:
            node[last] = value
    return json.dumps(plain).encode()
