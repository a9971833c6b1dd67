"""The grid of places over one storey, and the room of each."""

from collections.abc import Sequence

import numpy as np

from secondfix.house import House, Point
from secondfix.radio.covering.across import Places
from secondfix.radio.crossing import Bools, Floats, Ints
from secondfix.radio.sites import levels

MOST_PLACES = 60_000  # of one grid: a storey of 60 m square at 25 cm
AROUND_MM = 1500  # around what stands where no outline and no wall is drawn


def grid_of(
    house: House, storey: str, *, step_mm: int, height_mm: int
) -> tuple[Ints, Ints, Places, Bools, int]:
    """Give x and y of the grid, its places row by row, which are of the house, and the step taken.

    The step is doubled until the grid has at most `MOST_PLACES`. KeyError for a storey that is not there;
    a storey of which nothing is drawn has no places.
    """
    rank = {key: number for number, keys in levels(house).items() for key in keys}
    z_mm = house.storeys[storey].level_mm + height_mm
    outlines = [
        (n, room.outline_mm)
        for n, room in enumerate(house.rooms.values())
        if room.storey == storey and room.outline_mm
    ]
    corners = [p for _, outline in outlines for p in outline] or _drawn(house, storey)
    if not corners:
        none = np.zeros(0, np.int64)
        return none, none, Places(none, none, z_mm, rank[storey], none), np.zeros((0, 0), np.bool_), step_mm
    low, high = np.min(corners, axis=0), np.max(corners, axis=0)
    while np.prod((high - low) // step_mm + 4) > MOST_PLACES:
        step_mm *= 2
    x_mm, y_mm = (
        np.arange(int(a) // step_mm - 1, -(-int(b) // step_mm) + 2, dtype=np.int64) * step_mm
        for a, b in zip(low, high, strict=True)
    )
    x, y = (grid.ravel() for grid in np.meshgrid(x_mm, y_mm))
    room, there = (
        _rooms(outlines, x, y, border_mm=step_mm)
        if outlines
        else (np.full(len(x), -1, np.int64), np.ones(len(x), np.bool_))
    )
    places = Places(x, y, z_mm, rank[storey], room)
    return x_mm, y_mm, places, there.reshape(len(y_mm), len(x_mm)), step_mm


def _drawn(house: House, storey: str) -> list[Point]:
    """Ends of walls, else the surroundings of what stands on a storey without an outline."""
    walls = [p for w in house.walls.values() if w.storey == storey for p in (w.from_mm, w.to_mm)]
    spots = [(s.position, s.room) for s in house.boxes.values()]
    spots += [(s.position, s.room) for s in house.places.values()]
    at = [position for position, room in spots if position and house.rooms[room].storey == storey]
    around = (-AROUND_MM, AROUND_MM)
    return walls or [(p.x_mm + d, p.y_mm + d) for p in at for d in around]


def _rooms(
    outlines: Sequence[tuple[int, Sequence[Point]]], x: Ints, y: Ints, *, border_mm: int
) -> tuple[Ints, Bools]:
    """The room of each place, and whether it is in one; a room too narrow for the grid has what is beside."""
    room = np.full(len(x), -1, np.int64)
    for number, outline in outlines:
        points = np.array(outline, np.int64)
        low, high = points.min(axis=0) - border_mm, points.max(axis=0) + border_mm
        near = np.flatnonzero((x >= low[0]) & (x <= high[0]) & (y >= low[1]) & (y <= high[1]))
        away = _away_mm(points, x[near], y[near])
        own = away <= 0 if (away <= 0).any() else away <= border_mm
        room[near[own & (room[near] < 0)]] = number
    return room, room >= 0


def _away_mm(outline: Ints, x: Ints, y: Ints) -> Floats:
    """Distance of each place from a closed outline, 0 inside it (even-odd rule)."""
    inside = np.zeros(len(x), np.bool_)
    away = np.full(len(x), np.inf)
    for (ax, ay), (bx, by) in zip(outline.tolist(), np.roll(outline, -1, axis=0).tolist(), strict=True):
        turn = (bx - ax) * (y - ay) - (by - ay) * (x - ax)
        inside ^= ((y < ay) != (y < by)) & ((turn > 0) == (by > ay))
        long = max((bx - ax) ** 2 + (by - ay) ** 2, 1)
        share = np.clip(((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long, 0.0, 1.0)
        away = np.minimum(away, np.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)))
    out: Floats = np.where(inside, 0.0, away)
    return out
