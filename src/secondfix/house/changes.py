"""One change of a plain document: what is put or taken out, and the path that leads there.

A path is written as faults write it: ``boxes.B7.gangs.1.load``, ``scenes.S2.rules[0].to``.
"""

import copy
import re
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from secondfix.house.faults import Fault

LONGEST_PATH = 400
_STEP = re.compile(r"\.?([^.\[\]]+)|\[(\d{1,6})\]")


@dataclass(frozen=True, slots=True)
class Change:
    """Put ``value`` (plain JSON) at ``path``; None takes out what stands there, a member of a list too."""

    path: str
    value: Any


def steps_of(path: str) -> list[str | int] | None:
    """The keys and indices of a path, or None where it is not one."""
    steps: list[str | int] = []
    at = 0
    while at < len(path) <= LONGEST_PATH:
        found = _STEP.match(path, at)
        if found is None or (found.group(1) and at and path[at] != "."):
            return None
        steps.append(found.group(1) if found.group(2) is None else int(found.group(2)))
        at = found.end()
    return steps or None


def apply(plain: dict[str, Any], change: Change) -> Fault | None:
    """Make the change in place; the fault where its path cannot be walked."""
    steps = steps_of(change.path)
    if steps is None:
        return Fault(
            "edit", change.path[:LONGEST_PATH], "not a path", "keys joined by dots, such as boxes.B1"
        )
    node: Any = plain
    for step, following in pairwise(steps):
        below = _below(node, step)
        if below is None:
            if change.value is None:
                return None  # nothing stands there: it is out already
            below = [] if isinstance(following, int) else {}
            if not _put(node, step, below):
                return _no_way(change.path)
        node = below
    if change.value is None:
        return _take_out(node, steps[-1], change.path)
    return None if _put(node, steps[-1], copy.deepcopy(change.value)) else _no_way(change.path)


def _below(node: Any, step: str | int) -> Any:
    if isinstance(node, dict) and isinstance(step, str):
        return node.get(step)
    if isinstance(node, list) and isinstance(step, int) and step < len(node):
        return node[step]
    return None


def _put(node: Any, step: str | int, value: Any) -> bool:
    if isinstance(node, dict):
        if isinstance(step, str):
            node[step] = value
        return isinstance(step, str)
    if not isinstance(node, list) or not isinstance(step, int) or step > len(node):
        return False
    node[step : step + 1] = [value]
    return True


def _take_out(node: Any, step: str | int, path: str) -> Fault | None:
    if isinstance(node, dict) and isinstance(step, str):
        node.pop(step, None)
    elif isinstance(node, list) and isinstance(step, int):
        if step < len(node):
            node.pop(step)
    else:
        return _no_way(path)
    return None


def _no_way(path: str) -> Fault:
    return Fault(
        "edit", path, "no way there", "keys of objects, and members of lists up to the next free one"
    )
