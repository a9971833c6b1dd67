"""How far it is from one place to the next, on foot."""

from collections.abc import Sequence
from math import hypot

import numpy as np
from numpy.typing import NDArray

from secondfix.assumptions import Assumptions
from secondfix.house import House, Room

_STOREY, _ROOM = LEANS_ON = ("storey_change_m", "room_change_m")


def walking_mm(house: House, places: Sequence[str], assumptions: Assumptions) -> NDArray[np.int64]:
    """Walking between every two of ``places`` (box or place ids), in mm.

    On one storey the straight line on the plan; ``storey_change_m`` for every storey between
    (common practice, no source). Where a position is not known the middle of its room's outline
    stands in, and failing that ``room_change_m`` between two rooms, nothing inside one. Leaves
    out: walls, doors and furniture on the way, the stairs' own place, the way to the board.
    """
    rooms = [_room_id(house, p) for p in places]
    storeys = [house.rooms[r].storey for r in rooms]
    at = [_point(house, p, r) for p, r in zip(places, rooms, strict=True)]
    number = _storey_numbers(house)
    change = 1000 * assumptions.value(_STOREY)
    other_room = 1000 * assumptions.value(_ROOM)
    table = np.zeros((len(places), len(places)), dtype=np.int64)
    for i, here in enumerate(at):
        for j in range(i):
            there = at[j]
            if here is not None and there is not None:
                flat = round(hypot(here[0] - there[0], here[1] - there[1]))
            else:
                flat = 0 if rooms[i] == rooms[j] else other_room
            rise = abs(number.get(storeys[i] or "", 0) - number.get(storeys[j] or "", 0))
            known = storeys[i] is not None and storeys[j] is not None
            table[i, j] = table[j, i] = flat + (change * rise if known else 0)
    return table


def _room_id(house: House, place_id: str) -> str:
    return house.boxes[place_id].room if place_id in house.boxes else house.places[place_id].room


def _point(house: House, place_id: str, room_id: str) -> tuple[float, float] | None:
    position = (house.boxes.get(place_id) or house.places[place_id]).position
    if position is not None:
        return position.x_mm, position.y_mm
    return _middle(house.rooms[room_id])


def _middle(room: Room) -> tuple[float, float] | None:
    if room.outline_mm is None:
        return None
    xs, ys = zip(*room.outline_mm, strict=True)
    return sum(xs) / len(xs), sum(ys) / len(ys)


def _storey_numbers(house: House) -> dict[str, int]:
    """Storeys counted from the lowest; those on one level count as one."""
    levels = sorted({s.level_mm for s in house.storeys.values()})
    return {storey_id: levels.index(s.level_mm) for storey_id, s in house.storeys.items()}
