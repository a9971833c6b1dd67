"""The fields that the pages of methods say each rule reads, and taking one of them away."""

import re
from collections.abc import Iterator
from copy import deepcopy
from pathlib import Path
from typing import Any

DOCS = Path(__file__).resolve().parents[2] / "docs"
PAGES = ("methods-electrical.md", "methods-multiway.md")


def reads() -> dict[str, set[str]]:
    """Rule to its fields, ``*`` standing for any id."""
    texts = [(DOCS / page).read_text() for page in PAGES]
    sections = [s for text in texts for s in re.split(r"^### ", text, flags=re.MULTILINE)[1:]]
    return {s.splitlines()[0]: set(re.findall(r"`([^`]+)`", s.split("\nReads: ")[1])) for s in sections}


def paths(plain: dict[str, Any], pattern: str) -> Iterator[tuple[str | int, ...]]:
    """Every place in the document that a field names."""
    yield from _paths(plain, tuple(pattern.split(".")))


def _paths(at: Any, pattern: tuple[str, ...]) -> Iterator[tuple[str | int, ...]]:
    if not pattern:
        yield ()
        return
    head, *rest = pattern
    if isinstance(at, list):
        keys: list[Any] = list(range(len(at)))
    else:
        keys = [k for k in at if head in {"*", k}] if isinstance(at, dict) else []
    for key in keys:
        for tail in _paths(at[key], tuple(rest)):
            yield (key, *tail)


def without(plain: dict[str, Any], path: tuple[str | int, ...]) -> dict[str, Any]:
    """A copy with the field taken away; a duty goes with what it names."""
    copy = deepcopy(plain)
    at: Any = copy
    for key in path[:-1]:
        at = at[key]
    del at[path[-1]]
    if path[-1] == "duty":
        at.pop("load", None)
        at.pop("extends", None)
    return copy
