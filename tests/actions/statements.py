"""What a document states, one statement at a time, and documents with one of them taken out."""

import json
import re
from collections.abc import Iterable, Iterator
from typing import Any

from secondfix.findings import Finding, Outcome
from tests.actions.worlds import Plain

Path_ = tuple[str, ...]
# Things that a statement is about; to take one out is no blank but another house.
_THING = re.compile(r"^(\w+|\w+\.[^.]+|boxes\.[^.]+\.(gangs|mounts)(\.[^.]+)?)$")
_OF_THE_HOUSE = re.compile(r"^(\w+_\w+|note|naming)$")


def statements(plain: Any, at: Path_ = ()) -> Iterator[Path_]:
    """Every statement: the parts of a thing, and the things' own parts, each by its path."""
    for key, value in plain.items():
        here = (*at, key)
        words = ".".join(here)
        if not isinstance(value, dict) or not _THING.match(words) or _OF_THE_HOUSE.match(words):
            yield here
        if isinstance(value, dict) and value.keys() != {"value", "known"}:
            yield from statements(value, here)


def blanked(plain: Plain, path: Path_) -> Plain:
    """A copy without the statement."""
    out: Plain = json.loads(json.dumps(plain))
    node = out
    for key in path[:-1]:
        node = node[key]
    del node[path[-1]]
    return out


def kind_of(path: Path_) -> str:
    """The statement without the ids in it: ``loads.*.kind``."""
    things = {1: len(path) > 1, 3: len(path) > 3 and path[0] == "boxes" and path[2] in {"gangs", "mounts"}}
    return ".".join("*" if things.get(n) else key for n, key in enumerate(path))


def passed(findings: Iterable[Finding]) -> dict[tuple[str, str], bool]:
    """Rule and place: whether every answer there is a pass."""
    found: dict[tuple[str, str], bool] = {}
    for f in findings:
        found[f.rule, f.place] = found.get((f.rule, f.place), True) and f.outcome is Outcome.PASSES
    return found


def asked_for(findings: Iterable[Finding], path: Path_) -> bool:
    """Whether some answer that cannot be told asks for just this statement."""
    place, field = (path[1], path[2:]) if len(path) > 1 else ("house", path)
    looks = {(look.place, look.field) for f in findings for look in f.looks}
    return any((place, ".".join(field[:n])) in looks for n in range(1, len(field) + 1))
