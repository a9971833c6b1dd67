"""Where devices and controllers stand: one site for each place in use that can be put on the plan."""

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from secondfix.findings import Look
from secondfix.house import House, position_look, storey_look

Ints = NDArray[np.int64]


@dataclass(frozen=True, slots=True, eq=False)
class Sites:
    """Sites in the order of ``places``: millimetres from the house's origin and datum.

    ``level`` counts distinct floor levels from the lowest; ``room`` numbers rooms.
    """

    places: tuple[str, ...]
    x_mm: Ints
    y_mm: Ints
    z_mm: Ints
    level: Ints
    room: Ints


def levels(house: House) -> dict[int, dict[str, str]]:
    """Storey ids by the rank of their level, lowest first (the inner value is the storey's name)."""
    heights = sorted({storey.level_mm for storey in house.storeys.values()})
    rank = {height: number for number, height in enumerate(heights)}
    out: dict[int, dict[str, str]] = {number: {} for number in range(len(heights))}
    for key, storey in house.storeys.items():
        out[rank[storey.level_mm]][key] = storey.name
    return out


def places_in_use(house: House) -> list[str]:
    """Ids of boxes and places that hold a device or a controller, in the document's order."""
    used = {device.box or device.place for device in house.devices.values()}
    used |= {network.controller_place for network in house.networks.values()}
    return [key for key in (*house.boxes, *house.places) if key in used]


def position_needs(house: House, place: str) -> tuple[Look, ...]:
    """What the survey lacks to put a place on the plan; empty if nothing."""
    spot = house.boxes.get(place) or house.places[place]
    needs = []
    if spot.position is None:
        needs.append(position_look(place))
    if house.rooms[spot.room].storey is None:
        needs.append(storey_look(spot.room))
    return tuple(needs)


def sites_of(house: House, places: Iterable[str]) -> Sites:
    """Those of ``places`` that can be put on the plan."""
    rank = {key: number for number, keys in levels(house).items() for key in keys}
    rooms = {key: number for number, key in enumerate(house.rooms)}
    rows: list[tuple[int, int, int, int, int]] = []
    kept: list[str] = []
    for place in places:
        spot = house.boxes.get(place) or house.places[place]
        storey = house.rooms[spot.room].storey
        if spot.position is None or storey is None:
            continue
        at = spot.position
        level_mm = house.storeys[storey].level_mm
        rows.append((at.x_mm, at.y_mm, level_mm + at.height_mm, rank[storey], rooms[spot.room]))
        kept.append(place)
    table = np.array(rows, dtype=np.int64).reshape(-1, 5)
    return Sites(tuple(kept), *(np.ascontiguousarray(column) for column in table.T))
