"""Room elevations: every wall of a room as one faces it, plates at true height."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding
from secondfix.house import Position, Room, Schedule
from secondfix.papers.drawing.canvas import Canvas, Rect, text_width, wrapped
from secondfix.papers.drawing.keynotes import Keynote, draw_notes, keynotes_for, spot_of
from secondfix.papers.drawing.lists import LINE, button_lists, draw_lists
from secondfix.papers.drawing.plates import Plate, draw_plate, fitting_label, set_apart
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM
from secondfix.papers.drawing.unfold import FAR_MM, Hole, Side, holes_of, nearest_side, sides_of
from secondfix.papers.duties import button_lines, rows_of_box
from secondfix.papers.palette import DAY, FITTING, FLOOR, LABEL, LEADER, TEXT, WALL, Palette

_SCALES = (50, 75, 100, 150, 200, 300, 500, 1000)
_ROW_LEFT, _ROW_RIGHT, _WALL_GAP = 52.0, 130.0, 13.0
_FALLBACK_CEILING_MM = 2400
_FITTING_NEAR_MM = 300


@dataclass(frozen=True, slots=True)
class Drawing:
    """A finished picture, its size in user units, and what stands beneath it in words."""

    svg: str
    width: float
    height: float
    scale: int | None
    remarks: tuple[str, ...]


def elevations_svg(
    schedule: Schedule,
    room_id: str,
    notes: Iterable[Finding] = (),
    *,
    palette: Palette = DAY,
    width: float = 1016.0,
) -> str:
    """The elevations of one room as an SVG picture, with its findings as numbered notes.

    Each edge of the outline is one wall, named after the direction one faces; plates stand at their
    true height (drawn larger than scale), what every button does beneath. A box without a position is
    listed; a box far from every wall is drawn dashed and said so; a room without an outline becomes a
    plain list. ``width`` is in user units of 1/96 inch. KeyError for a room that is not in the house.
    """
    own = keynotes_for(schedule.house, notes, room_id)
    return draw_elevations(schedule, room_id, own, palette=palette, width=width, words=True).svg


def draw_elevations(
    schedule: Schedule,
    room_id: str,
    notes: Sequence[Keynote],
    *,
    palette: Palette,
    width: float,
    words: bool,
) -> Drawing:
    """The same, with what a paper needs to set the words around it itself (``words`` False)."""
    room = schedule.house.rooms[room_id]
    canvas = Canvas(palette)
    sides = sides_of(room.outline_mm or ())
    remarks: list[str] = []
    scale = None
    bottom = 4.0
    hung = _hung(schedule, room_id, sides, notes, remarks)
    if sides:
        scale, rows = _rows(sides, width=width)
        ceiling = _ceiling_mm(schedule, room, hung, remarks)
        for row in rows:
            bottom = _draw_row(
                canvas, schedule, room, [(sides[i], hung[i]) for i in row], scale, ceiling, bottom
            )
        remarks.insert(
            0, f"Scale 1:{scale}. Plates are drawn larger than scale; their heights and places are true."
        )
    else:
        remarks.insert(0, "No outline of this room is known: a list stands in place of a drawing.")
    loose = [
        b for b, box in schedule.house.boxes.items() if box.room == room_id and not (sides and box.position)
    ]
    bottom = _draw_list(canvas, schedule, loose, notes, bool(sides), bottom, width)
    if words:
        bottom = _draw_remarks(canvas, remarks, bottom + 8, width)
        bottom = draw_notes(canvas, notes, top=bottom + 12, left=4, width=width - 8)
    says = f"Each wall of {room.name} as one faces it. {' '.join(remarks)}"
    svg = canvas.svg(width=width, height=bottom + 6, title=f"{room.name}, elevations", says=says)
    return Drawing(svg, width, bottom + 6, scale, tuple(remarks))


@dataclass(frozen=True, slots=True)
class _Hung:
    """Something on a wall, before the sheet's scale is known."""

    id: str
    words: str
    along_mm: float
    height_mm: int
    box: bool
    far: bool
    lamp: bool
    notes: tuple[Keynote, ...]


def _hung(
    schedule: Schedule, room_id: str, sides: Sequence[Side], notes: Sequence[Keynote], remarks: list[str]
) -> dict[int, list[_Hung]]:
    house = schedule.house
    out: dict[int, list[_Hung]] = {i: [] for i in range(len(sides))}
    spots: list[tuple[str, str, Position | None, str]] = [
        (i, i, b.position, "box") for i, b in house.boxes.items() if b.room == room_id
    ] + [(i, f"{i} {p.name}", p.position, p.kind) for i, p in house.places.items() if p.room == room_id]
    for spot, words, position, kind in spots:
        box = kind == "box"
        if not sides or position is None:
            continue
        i, away = nearest_side(sides, position)
        if not box and away > _FITTING_NEAR_MM:
            continue
        if far := away > FAR_MM:
            remarks.append(
                f"{spot} lies {away / 1000:.2f} m from the nearest wall of the outline; it is dashed."
            )
        own = tuple(n for n in notes if spot_of(house, n.finding) == spot)
        along = min(max(sides[i].along_mm(position.x_mm, position.y_mm), 0), sides[i].length_mm)
        out[i].append(_Hung(spot, words, along, position.height_mm, box, far, kind == "light_point", own))
    return out


def _rows(sides: Sequence[Side], *, width: float) -> tuple[int, list[list[int]]]:
    """The largest scale at which the walls stand in two rows at most, and which stand in which."""
    room = width - _ROW_LEFT - _ROW_RIGHT
    for scale, most in ((50, 1), (75, 1), *((s, 2) for s in _SCALES)):
        rows: list[list[int]] = [[]]
        used = 0.0
        for i, side in enumerate(sides):
            need = side.length_mm * PX_PER_PAPER_MM / scale + _WALL_GAP
            if rows[-1] and used + need > room:
                rows.append([])
                used = 0.0
            rows[-1].append(i)
            used += need
        if len(rows) <= most and all(s.length_mm * PX_PER_PAPER_MM / scale <= room for s in sides):
            break
    return scale, rows


def _ceiling_mm(schedule: Schedule, room: Room, hung: dict[int, list[_Hung]], remarks: list[str]) -> int:
    storey = schedule.house.storeys.get(room.storey or "")
    known = storey.height_mm if storey else None
    if known is None:
        remarks.append(f"Ceiling height not known; drawn at {_FALLBACK_CEILING_MM / 1000:.2f} m.")
    highest = max((h.height_mm for items in hung.values() for h in items), default=0)
    return max(known or _FALLBACK_CEILING_MM, highest)


def _draw_row(
    canvas: Canvas,
    schedule: Schedule,
    room: Room,
    row: Sequence[tuple[Side, Sequence[_Hung]]],
    scale: int,
    ceiling_mm: int,
    top: float,
) -> float:
    """One row of walls on a common floor; returns how far down it reaches."""
    px = PX_PER_PAPER_MM / scale
    head = top + 20
    floor = head + max(ceiling_mm * px, 120)
    left = _ROW_LEFT
    plates: list[Plate] = []
    for side, hung in row:
        right = left + side.length_mm * px
        plates += _draw_wall(canvas, schedule, room, side, hung, Rect(left, head, right, floor), px)
        left = right + _WALL_GAP
    canvas.line((_ROW_LEFT - 12, floor), (left - _WALL_GAP + 12, floor), weight=FLOOR)
    _draw_heights(canvas, row, floor, px)
    lists = button_lists(schedule, plates, top=floor + 14)
    draw_lists(canvas, lists, plates)
    for plate in plates:
        draw_plate(canvas, plate)
    return max([floor + 10, *(item.at.bottom for item in lists)]) + 10


def _draw_wall(
    canvas: Canvas, schedule: Schedule, room: Room, side: Side, hung: Sequence[_Hung], at: Rect, px: float
) -> list[Plate]:
    middle, wide = (at.left + at.right) / 2, at.right - at.left
    _draw_wall_name(canvas, side, middle, at.top - 7, wide + _WALL_GAP - 6)
    canvas.rect(at, weight=WALL)
    for hole in holes_of(schedule.house, room.storey or "", side):
        _draw_hole(canvas, hole, at, px)
    plates = [
        Plate(
            h.id,
            (h.words,) if h.box else fitting_label(h.words),
            at.left + h.along_mm * px,
            at.bottom - h.height_mm * px,
            tuple(rows_of_box(schedule, h.id)) if h.box else None,
            h.notes,
            h.far,
            h.lamp,
            (at.left, at.right),
        )
        for h in hung
    ]
    return set_apart(plates, left=at.left, right=at.right)


def _draw_wall_name(canvas: Canvas, side: Side, middle: float, y: float, wide: float) -> None:
    """The wall's name with its length; on a short wall the name alone, or its first letter."""
    length = f"  {side.length_mm / 1000:.2f} m"
    whole, tail = text_width(side.name + " "), text_width(length, LABEL)
    if whole + tail <= wide:
        canvas.text((middle - (whole + tail) / 2, y), side.name)
        canvas.text((middle + (whole - tail) / 2, y), length.strip(), size=LABEL, colour=canvas.palette.soft)
        return
    name = next((n for n in (side.name, side.name.split()[0], side.name[0]) if text_width(n) <= wide), "")
    if name:
        canvas.text((middle, y), name, anchor="middle")


def _draw_hole(canvas: Canvas, hole: Hole, wall: Rect, px: float) -> None:
    """A door with its handle's side left open (it is not surveyed); a window with its bars."""
    line = canvas.palette.line
    bottom = wall.bottom - hole.sill_mm * px
    at = Rect(
        wall.left + hole.from_mm * px,
        max(bottom - hole.height_mm * px, wall.top + 2),
        wall.left + hole.to_mm * px,
        bottom,
    )
    canvas.rect(at, weight=FITTING, colour=line)
    if hole.door:
        inner = Rect(at.left + 4, at.top + 4, at.right - 4, at.bottom)
        canvas.path(
            f"M{inner.left:.2f} {inner.bottom:.2f}V{inner.top:.2f}H{inner.right:.2f}V{inner.bottom:.2f}",
            weight=LEADER,
            colour=line,
        )
    else:
        x, y = (at.left + at.right) / 2, (at.top + at.bottom) / 2
        canvas.line((x, at.top), (x, at.bottom), weight=LEADER, colour=line)
        canvas.line((at.left, y), (at.right, y), weight=LEADER, colour=line)


def _draw_heights(
    canvas: Canvas, row: Sequence[tuple[Side, Sequence[_Hung]]], floor: float, px: float
) -> None:
    """Heights of the plates above the floor, at the left; close ones spread so that all can be read."""
    heights = sorted({h.height_mm for _, hung in row for h in hung if h.box})
    p = canvas.palette
    last = floor + 20
    for height in heights:
        true = floor - height * px
        y = last = min(true, last - 13)
        canvas.path(f"M{_ROW_LEFT} {true:.2f}h-6L{_ROW_LEFT - 12} {y:.2f}", weight=LEADER, colour=p.line)
        canvas.text(
            (_ROW_LEFT - 15, y + 3.5), f"{height / 1000:.2f}", size=LABEL, colour=p.soft, anchor="end"
        )


def _draw_list(
    canvas: Canvas,
    schedule: Schedule,
    boxes: Sequence[str],
    notes: Sequence[Keynote],
    outlined: bool,
    top: float,
    width: float,
) -> float:
    """Boxes that cannot stand on a wall of the drawing: never dropped."""
    house = schedule.house
    for box_id in boxes:
        unknown = "" if house.boxes[box_id].position else "position not known"
        reason = (
            unknown
            if outlined
            else ", ".join(w for w in (unknown, _marks(house.boxes[box_id].position)) if w)
        )
        numbers = [str(n.number) for n in notes if spot_of(house, n.finding) == box_id]
        told = f"note{'s' if len(numbers) > 1 else ''} {', '.join(numbers)}" if numbers else ""
        buttons = [
            f"{r.gang_no} {'; '.join(button_lines(schedule, r))}" for r in rows_of_box(schedule, box_id)
        ]
        lines = [t for b in buttons or ["no gang"] for t in wrapped(b, width=width - 250)]
        canvas.text((4, top + 14), box_id, strong=True)
        about = "; ".join(w for w in (reason, told) if w)
        soft = wrapped(about, width=170, size=LABEL)
        for n, line in enumerate(soft):
            canvas.text((54, top + 14 + LINE * n), line, size=LABEL, colour=canvas.palette.soft)
        for n, line in enumerate(lines):
            canvas.text((236, top + 14 + LINE * n), line, size=TEXT)
        top += LINE * max(len(lines), len(soft)) + 6
    return top


def _marks(position: Position | None) -> str:
    return f"{position.height_mm / 1000:.2f} m above the floor" if position else ""


def _draw_remarks(canvas: Canvas, remarks: Sequence[str], top: float, width: float) -> float:
    for line in wrapped(" ".join(remarks), width=width - 8, size=LABEL):
        top += 14
        canvas.text((4, top), line, size=LABEL, colour=canvas.palette.soft)
    return top
