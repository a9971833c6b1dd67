"""A terrace: one house document repeated side by side until it has so many boxes."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

COLLECTIONS = (
    *("storeys", "rooms", "walls", "doors", "windows", "circuits", "boxes", "places"),
    *("loads", "networks", "devices", "scenes", "outside_uses"),
)
BESIDE_MM = 40_000  # from one house to the next; wider than a house
WORDS = {"name", "note", "label", "words"}  # text for people, where an id is only a word
POINTS = {"from_mm", "to_mm", "outline_mm"}


def terrace(house: dict[str, Any], *, boxes: int) -> dict[str, Any]:
    """A document with at least `boxes` boxes: whole houses, each with ids, names and plan of its own.

    Every rule meets the same mixture as in the one house, so that time tells of size alone. The scenes are
    those of the first house, for a larger house has more loads in a scene, not more scenes.
    """
    count = -(-boxes // len(house["boxes"]))
    grown = {key: value for key, value in house.items() if key not in COLLECTIONS}
    grown |= {key: {} for key in COLLECTIONS if key in house}
    for number in range(count):
        for key, items in _copy(house, number).items():
            if key != "scenes" or number == 0:
                grown[key] |= items
    return grown


def _copy(house: dict[str, Any], number: int) -> dict[str, Any]:
    known = {name for key in COLLECTIONS for name in house.get(key, {})}

    def renamed(text: str) -> str:
        name, dot, slot = text.partition(".")
        return f"{name}-{number}{dot}{slot}" if name in known else text

    return {key: _moved(house[key], number, renamed) for key in COLLECTIONS if key in house}


def _moved(part: Any, number: int, renamed: Callable[[str], str], key: str = "") -> Any:
    aside = BESIDE_MM * number
    match part:
        case dict():
            return {renamed(inner): _moved(value, number, renamed, inner) for inner, value in part.items()}
        case [int(x), int(y)] if key in POINTS:
            return [x + aside, y]
        case list():
            return [_moved(value, number, renamed, key) for value in part]
        case int() if key == "x_mm":
            return part + aside
        case str() if key == "name":
            return f"{part} {number}"
        case str() if key not in WORDS:
            return renamed(part)
    return part
