"""A row of walls on a common floor, drawn: names, doors, windows, plates, heights, lists."""

from collections.abc import Sequence
from dataclasses import dataclass

from secondfix.house import Face, Hole, Schedule, holes_of, is_nec
from secondfix.papers.drawing.canvas import Canvas, Rect, text_width
from secondfix.papers.drawing.fittings import Fitting, draw_fittings
from secondfix.papers.drawing.layout import WALL_GAP, Hung
from secondfix.papers.drawing.lists import button_lists, draw_lists
from secondfix.papers.drawing.plates import Plate, draw_plate, draw_true_place, set_apart
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM
from secondfix.papers.duties import rows_of_box
from secondfix.papers.palette import FITTING, FLOOR, LABEL, LEADER, WALL
from secondfix.terms import drawn_length, feet_inches

_LEAST_HEIGHT = 120.0  # a lower wall would leave no room between plate and floor
_HEAD, _FOOT = 20.0, 20.0


def row_left(*, nec: bool) -> float:
    """Where walls begin, right of the heights: metres, or millimetres with feet and inches."""
    return 104.0 if nec else 52.0


def least_height(ceiling_mm: int, scale: int) -> float:
    """What a row takes at least, without any list."""
    return _HEAD + _wall_height(ceiling_mm, scale) + _FOOT


def _wall_height(ceiling_mm: int, scale: int) -> float:
    """All walls of a room keep one scale; where it would press them flat the height alone is let out."""
    return max(ceiling_mm * PX_PER_PAPER_MM / scale, _LEAST_HEIGHT)


@dataclass(frozen=True, slots=True)
class _Wall:
    """One wall on the sheet."""

    side: Face
    hung: Sequence[Hung]
    holes: tuple[Hole, ...]
    at: Rect
    px: float

    def hole_at(self, hole: Hole) -> Rect:
        """A door or window on the sheet."""
        bottom = self.at.bottom - hole.sill_mm * self.px
        top = max(bottom - hole.height_mm * self.px, self.at.top + 2)
        return Rect(self.at.left + hole.from_mm * self.px, top, self.at.left + hole.to_mm * self.px, bottom)


def draw_row(
    canvas: Canvas,
    schedule: Schedule,
    storey_id: str,
    row: Sequence[tuple[Face, float, Sequence[Hung]]],
    *,
    scale: int,
    ceiling_mm: int,
    top: float,
    width: float,
) -> tuple[float, list[Plate]]:
    """The walls of one row, each in the middle of its slot; returns how far down they and their lists reach,
    and the plates as they stand."""
    nec = is_nec(schedule.house)
    px = PX_PER_PAPER_MM / scale
    head = top + _HEAD
    floor = head + _wall_height(ceiling_mm, scale)
    left = row_left(nec=nec)
    plates: list[Plate] = []
    for side, slot, hung in row:
        start = left + (slot - side.length_mm * px) / 2
        holes = tuple(holes_of(schedule.house, storey_id, side))
        at = Rect(start, head, start + side.length_mm * px, floor)
        plates += _draw_wall(canvas, schedule, _Wall(side, hung, holes, at, px))
        left += slot + WALL_GAP
    begin = row_left(nec=nec)
    canvas.line((begin - 12, floor), (left - WALL_GAP + 12, floor), weight=FLOOR)
    heights = [h.height_mm for _, _, hung in row for h in hung if h.box]
    _draw_heights(canvas, heights, floor, px, nec=nec)
    lists = button_lists(schedule, plates, top=floor + 14, right=width - 4)
    draw_lists(canvas, lists, plates)
    for plate in plates:
        draw_true_place(canvas, plate, plates)
    for plate in plates:
        draw_plate(canvas, plate)
    return max([floor + 10, *(item.at.bottom for item in lists)]) + 10, plates


def _draw_wall(canvas: Canvas, schedule: Schedule, wall: _Wall) -> list[Plate]:
    at = wall.at
    _draw_name(canvas, wall.side, at, nec=is_nec(schedule.house))
    canvas.rect(at, weight=WALL)
    holes = [wall.hole_at(h) for h in wall.holes]
    for hole, place in zip(wall.holes, holes, strict=True):
        _draw_hole(canvas, place, door=hole.door)
    plates = [
        Plate(
            h.id,
            at.left + h.along_mm * wall.px,
            at.bottom - h.height_mm * wall.px,
            tuple(rows_of_box(schedule, h.id)),
            at,
            h.notes,
            h.far,
        )
        for h in wall.hung
        if h.box
    ]
    apart = set_apart(plates, holes)
    fittings = [
        Fitting(h.id, h.words, at.left + h.along_mm * wall.px, at.bottom - h.height_mm * wall.px, h.lamp)
        for h in wall.hung
        if not h.box
    ]
    draw_fittings(canvas, fittings, apart, at)
    return apart


def _draw_name(canvas: Canvas, side: Face, at: Rect, *, nec: bool) -> None:
    """The wall's name with its length; on a short wall the name alone, or its first letter."""
    middle, y, wide = (at.left + at.right) / 2, at.top - 7, at.right - at.left + WALL_GAP - 6
    long = f"  {drawn_length(side.length_mm, nec=nec)}"
    whole, tail = text_width(side.name + " "), text_width(long, LABEL)
    if whole + tail <= wide:
        canvas.text((middle - (whole + tail) / 2, y), side.name)
        canvas.text((middle + (whole - tail) / 2, y), long.strip(), size=LABEL, colour=canvas.palette.soft)
        return
    name = next((n for n in (side.name, side.name.split()[0], side.name[0]) if text_width(n) <= wide), "")
    if name:
        canvas.text((middle, y), name, anchor="middle")


def _draw_hole(canvas: Canvas, at: Rect, *, door: bool) -> None:
    """A door with neither side marked as hung (it is not surveyed); a window with its bars."""
    line = canvas.palette.line
    canvas.rect(at, weight=FITTING, colour=line)
    if door:
        canvas.path(
            f"M{at.left + 4:.2f} {at.bottom:.2f}V{at.top + 4:.2f}H{at.right - 4:.2f}V{at.bottom:.2f}",
            weight=LEADER,
            colour=line,
        )
    else:
        x, y = (at.left + at.right) / 2, (at.top + at.bottom) / 2
        canvas.line((x, at.top), (x, at.bottom), weight=LEADER, colour=line)
        canvas.line((at.left, y), (at.right, y), weight=LEADER, colour=line)


def _draw_heights(canvas: Canvas, heights_mm: Sequence[int], floor: float, px: float, *, nec: bool) -> None:
    """Heights of the plates above the floor, at the left; close ones spread so that all can be read."""
    p = canvas.palette
    last = floor + 20
    begin = row_left(nec=nec)
    for height in sorted(set(heights_mm)):
        true = floor - height * px
        y = last = min(true, last - 13)
        words = f"{height}  {feet_inches(height)}" if nec else f"{height / 1000:.2f}"
        canvas.path(f"M{begin} {true:.2f}h-6L{begin - 12} {y:.2f}", weight=LEADER, colour=p.line)
        canvas.text((begin - 15, y + 3.5), words, size=LABEL, colour=p.soft, anchor="end")
