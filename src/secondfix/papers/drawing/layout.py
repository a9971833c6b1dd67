"""How a room's walls stand on the sheet: scale and rows; and what hangs on each wall."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from secondfix.house import FAR_MM, Face, Position, Schedule, is_nec, nearest_face
from secondfix.papers.drawing.keynotes import Keynote, spot_of
from secondfix.papers.drawing.plates import least_width
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM
from secondfix.terms import drawn_length

WALL_GAP = 13.0
_ROW_RIGHT = 16.0
# ISO 5455 (from memory) has 1:20, 1:50, 1:100, 1:200, 1:500, 1:1000 and allows steps between.
_SCALES = (20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000)
_FITTING_NEAR_MM = 300
_CEILING_MM = 2400


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
    gangs: int
    notes: tuple[Keynote, ...]


@dataclass(frozen=True, slots=True)
class Layout:
    """The walls of a room, which of them stand in which row, the scale of all, and each one's width on the
    sheet: its own, or that of its widest plate where the wall is narrower."""

    sides: list[Face]
    scale: int
    rows: list[list[int]]
    slots: list[float]


def layouts(
    sides: Sequence[Face], hung: Mapping[int, Sequence[Hung]], *, left: float, width: float
) -> list[Layout]:
    """Ways to set the walls, larger before smaller, in as many rows as each needs; none without walls."""
    room = width - left - _ROW_RIGHT
    needs = [max((least_width(h.gangs) for h in hung[i] if h.box), default=0.0) for i in range(len(sides))]
    ways = []
    for scale in _SCALES if sides else ():
        px = PX_PER_PAPER_MM / scale
        slots = [max(s.length_mm * px, need) for s, need in zip(sides, needs, strict=True)]
        if max(slots) <= room or scale == _SCALES[-1]:
            ways.append(Layout(list(sides), scale, _rows(slots, room), slots))
    return ways


def _rows(slots: Sequence[float], room: float) -> list[list[int]]:
    """As few rows as hold the walls in their order, and those as even as they come."""
    rows = _filled(slots, room)
    if len(rows) == 1:
        return rows
    ends = sorted(
        {sum(slots[i:j]) + WALL_GAP * (j - i - 1) for j in range(1, len(slots) + 1) for i in range(j)}
    )
    even = (_filled(slots, wide) for wide in ends if max(slots) <= wide <= room)
    return next((r for r in even if len(r) == len(rows)), rows)


def _filled(slots: Sequence[float], room: float) -> list[list[int]]:
    rows: list[list[int]] = [[]]
    used = 0.0
    for i, slot in enumerate(slots):
        if rows[-1] and used + slot > room:
            rows.append([])
            used = 0.0
        rows[-1].append(i)
        used += slot + WALL_GAP
    return rows


def hung_on(
    schedule: Schedule, room_id: str, sides: Sequence[Face], notes: Sequence[Keynote], remarks: list[str]
) -> dict[int, list[Hung]]:
    """Boxes with a position on their nearest walls, fittings that stand near one; adds what must be said."""
    house, nec = schedule.house, is_nec(schedule.house)
    out: dict[int, list[Hung]] = {i: [] for i in range(len(sides))}
    spots: list[tuple[str, str, Position | None, str]] = [
        (i, i, b.position, "box") for i, b in house.boxes.items() if b.room == room_id
    ] + [(i, f"{i} {p.name}", p.position, p.kind) for i, p in house.places.items() if p.room == room_id]
    for spot, words, position, kind in spots:
        if not sides or position is None:
            continue
        box = kind == "box"
        i, away = nearest_face(sides, position)
        if not box and away > _FITTING_NEAR_MM:
            continue
        if far := away > FAR_MM:
            gap = drawn_length(away, nec=nec)
            remarks.append(f"{spot} lies {gap} from the nearest wall of the outline; it is dashed.")
        own = tuple(n for n in notes if spot_of(house, n.finding) == spot)
        along = min(max(sides[i].along_mm(position.x_mm, position.y_mm), 0), sides[i].length_mm)
        gangs = len(house.boxes[spot].gangs) if box else 0
        lamp = kind == "light_point"
        out[i].append(Hung(spot, words, along, position.height_mm, box, far, lamp, gangs, own))
    return out


def ceiling_mm(
    schedule: Schedule, room_id: str, hung: Mapping[int, Sequence[Hung]], remarks: list[str]
) -> int:
    """Height to draw the walls at; where it is not known that is said."""
    storey = schedule.house.storeys.get(schedule.house.rooms[room_id].storey or "")
    known = storey.height_mm if storey else None
    if known is None:
        drawn = drawn_length(_CEILING_MM, nec=is_nec(schedule.house))
        remarks.append(f"Ceiling height not known; drawn at {drawn}.")
    highest = max((h.height_mm for items in hung.values() for h in items), default=0)
    return max(known or _CEILING_MM, highest)
