"""How a room's walls stand on the sheet: scale and rows; and what hangs on each wall."""

from collections.abc import Sequence
from dataclasses import dataclass

from secondfix.house import Point, Position, Schedule
from secondfix.papers.drawing.keynotes import Keynote, spot_of
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM
from secondfix.papers.drawing.unfold import FAR_MM, Side, nearest_side, sides_of

ROW_LEFT, WALL_GAP = 52.0, 13.0
_ROW_RIGHT = 100.0  # room for most lists of a plate at the very end
_SCALES = (50, 75, 100, 150, 200, 300, 500, 1000)
_FITTING_NEAR_MM = 300
_CEILING_MM = 2400


@dataclass(frozen=True, slots=True)
class Layout:
    """The walls of a room, which of them stand in which row, and the scale of all."""

    sides: list[Side]
    scale: int
    rows: list[list[int]]


@dataclass(frozen=True, slots=True)
class Hung:
    """Something on a wall, before the sheet's scale is known."""

    id: str
    words: str
    along_mm: float
    height_mm: int
    box: bool
    far: bool
    lamp: bool
    notes: tuple[Keynote, ...]


def layouts(outline: Sequence[Point], *, width: float) -> list[Layout]:
    """Ways to set the walls: one row at a good scale, then larger before smaller; none without walls."""
    sides = sides_of(outline)
    if not sides:
        return []
    room = width - ROW_LEFT - _ROW_RIGHT
    ways = [(50, 1), (75, 1), *((scale, most) for scale in _SCALES for most in (2, 1, 3))]
    tried = [(Layout(sides, scale, _rows(sides, scale, room)), most) for scale, most in ways]
    fits = [
        x
        for x, most in tried
        if len(x.rows) <= most and all(s.length_mm * PX_PER_PAPER_MM <= room * x.scale for s in sides)
    ]
    return fits[:8] or [tried[-1][0]]


def _rows(sides: Sequence[Side], scale: int, room: float) -> list[list[int]]:
    rows: list[list[int]] = [[]]
    used = 0.0
    for i, side in enumerate(sides):
        need = side.length_mm * PX_PER_PAPER_MM / scale + WALL_GAP
        if rows[-1] and used + need > room:
            rows.append([])
            used = 0.0
        rows[-1].append(i)
        used += need
    return rows


def hung_on(
    schedule: Schedule, room_id: str, sides: Sequence[Side], notes: Sequence[Keynote], remarks: list[str]
) -> dict[int, list[Hung]]:
    """Boxes with a position on their nearest walls, fittings that stand near one; adds what must be said."""
    house = schedule.house
    out: dict[int, list[Hung]] = {i: [] for i in range(len(sides))}
    spots: list[tuple[str, str, Position | None, str]] = [
        (i, i, b.position, "box") for i, b in house.boxes.items() if b.room == room_id
    ] + [(i, f"{i} {p.name}", p.position, p.kind) for i, p in house.places.items() if p.room == room_id]
    for spot, words, position, kind in spots:
        if not sides or position is None:
            continue
        box = kind == "box"
        i, away = nearest_side(sides, position)
        if not box and away > _FITTING_NEAR_MM:
            continue
        if far := away > FAR_MM:
            remarks.append(
                f"{spot} lies {away / 1000:.2f} m from the nearest wall of the outline; it is dashed."
            )
        own = tuple(n for n in notes if spot_of(house, n.finding) == spot)
        along = min(max(sides[i].along_mm(position.x_mm, position.y_mm), 0), sides[i].length_mm)
        out[i].append(Hung(spot, words, along, position.height_mm, box, far, kind == "light_point", own))
    return out


def ceiling_mm(schedule: Schedule, room_id: str, hung: dict[int, list[Hung]], remarks: list[str]) -> int:
    """Height to draw the walls at; where it is not known that is said."""
    storey = schedule.house.storeys.get(schedule.house.rooms[room_id].storey or "")
    known = storey.height_mm if storey else None
    if known is None:
        remarks.append(f"Ceiling height not known; drawn at {_CEILING_MM / 1000:.2f} m.")
    highest = max((h.height_mm for items in hung.values() for h in items), default=0)
    return max(known or _CEILING_MM, highest)
