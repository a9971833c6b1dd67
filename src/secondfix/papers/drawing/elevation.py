"""Room elevations: every wall of a room as one faces it, plates at true height."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding
from secondfix.house import Position, Schedule
from secondfix.papers.drawing.canvas import Canvas, wrapped
from secondfix.papers.drawing.keynotes import (
    Keynote,
    draw_notes,
    keynotes,
    keynotes_for,
    note_words,
    spot_of,
)
from secondfix.papers.drawing.layout import Hung, Layout, ceiling_mm, hung_on, layouts
from secondfix.papers.drawing.lists import LINE
from secondfix.papers.drawing.unfold import Side, sides_of
from secondfix.papers.drawing.wall import draw_row, least_height, row_left
from secondfix.papers.duties import button_lines, rows_of_box
from secondfix.papers.figures import length
from secondfix.papers.palette import DAY, LABEL, TEXT, Palette
from secondfix.papers.setting import is_nec


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
    height: float = 640.0,
) -> str:
    """The elevations of one room as an SVG picture, with its findings as numbered notes.

    Each edge of the outline is one wall, named after the direction one faces; plates stand at their
    true height (drawn larger than scale), what every button does beneath. A box without a position is
    listed; a box far from every wall is drawn dashed and said so; a room without an outline becomes a
    plain list. Give ``notes`` all findings of the house: their numbers are then those of the snag list.
    ``width`` and ``height`` are in user units of 1/96 inch: the largest scale at which the walls stay within
    them is taken; notes and remarks stand beneath. KeyError for a room that is not in the house.
    """
    own = keynotes_for(schedule.house, keynotes(notes), room_id)
    return draw_elevations(
        schedule, room_id, own, palette=palette, width=width, words=True, height=height
    ).svg


def draw_elevations(
    schedule: Schedule,
    room_id: str,
    notes: Sequence[Keynote],
    *,
    palette: Palette,
    width: float,
    words: bool,
    height: float,
) -> Drawing:
    """The same, with what a paper needs to set the words around it itself (``words`` False).

    The largest layout whose walls stay within ``height`` is taken, else the lowest.
    """
    sides = sides_of(schedule.house.rooms[room_id].outline_mm or ())
    remarks: list[str] = []
    hung = hung_on(schedule, room_id, sides, notes, remarks)
    ceiling = ceiling_mm(schedule, room_id, hung, remarks) if sides else 0
    left = row_left(nec=is_nec(schedule.house))
    picture = _Picture(schedule, room_id, notes, palette, width, hung, ceiling, tuple(remarks))
    ways = layouts(sides, hung, left=left, width=width)
    lowest: tuple[float, Layout | None] = (float("inf"), None)
    for way in ways:
        if len(way.rows) * least_height(ceiling, way.scale) > height and way is not ways[-1]:
            continue
        high = picture.drawn(way, words=False).height
        lowest = min(lowest, (high, way), key=lambda tried: tried[0])
        if high <= height:
            break
    return picture.drawn(lowest[1], words=words)


@dataclass(frozen=True, slots=True)
class _Picture:
    """What is drawn, before it is known how."""

    schedule: Schedule
    room_id: str
    notes: Sequence[Keynote]
    palette: Palette
    width: float
    hung: Mapping[int, Sequence[Hung]]
    ceiling_mm: int
    remarks: tuple[str, ...]

    def drawn(self, layout: Layout | None, *, words: bool) -> Drawing:
        """The picture in one layout; without one, as a list."""
        canvas = Canvas(self.palette)
        remarks = list(self.remarks)
        bottom = 4.0
        if layout:
            bottom, moved = self._walls(canvas, layout, bottom)
            aside = " A thin line or a tick leads from a plate that stands aside to its true place."
            true = "Plates are drawn larger than scale; heights are those at the left of each row."
            remarks.insert(0, f"Scale 1:{layout.scale}. {true}{aside if moved else ''}")
        else:
            remarks.append("No outline of this room is known: a list stands in place of a drawing.")
        bottom = self._loose(canvas, layout is not None, bottom)
        if words:
            bottom = _draw_remarks(canvas, remarks, bottom + 8, self.width)
            told = note_words(self.schedule.house, self.notes)
            bottom = draw_notes(canvas, told, top=bottom + 12, left=4, width=self.width - 8)
        name = self.schedule.house.rooms[self.room_id].name
        says = f"Each wall of {name} as one faces it. {' '.join(remarks)}"
        svg = canvas.svg(width=self.width, height=bottom + 6, title=f"{name}, elevations", says=says)
        return Drawing(svg, self.width, bottom + 6, layout.scale if layout else None, tuple(remarks))

    def _walls(self, canvas: Canvas, layout: Layout, top: float) -> tuple[float, bool]:
        storey = self.schedule.house.rooms[self.room_id].storey or ""
        any_moved = False
        for row in layout.rows:
            walls: list[tuple[Side, float, Sequence[Hung]]] = [
                (layout.sides[i], layout.slots[i], self.hung[i]) for i in row
            ]
            top, moved = draw_row(
                canvas,
                self.schedule,
                storey,
                walls,
                scale=layout.scale,
                ceiling_mm=self.ceiling_mm,
                top=top,
                width=self.width,
            )
            any_moved = any_moved or moved
        return top, any_moved

    def _loose(self, canvas: Canvas, outlined: bool, top: float) -> float:
        """Boxes that cannot stand on a wall of the drawing are listed: never dropped."""
        for box_id, box in self.schedule.house.boxes.items():
            if box.room == self.room_id and not (outlined and box.position):
                top = self._line_of(canvas, box_id, box.position, top)
        return top

    def _line_of(self, canvas: Canvas, box_id: str, position: Position | None, top: float) -> float:
        house = self.schedule.house
        own = [n.number for n in self.notes if spot_of(house, n.finding) == box_id]
        numbers = [str(n) for n in dict.fromkeys(own)]
        high = length(position.height_mm, nec=is_nec(house)) if position else ""
        where = f"{high} above the floor" if position else "position not known"
        noted = f"note{'s' if len(numbers) > 1 else ''} {', '.join(numbers)}" if numbers else ""
        about = wrapped("; ".join(w for w in (where, noted) if w), width=170, size=LABEL)
        rows = rows_of_box(self.schedule, box_id)
        buttons = [f"{r.gang_no} {'; '.join(button_lines(self.schedule, r))}" for r in rows] or ["no gang"]
        does = [line for b in buttons for line in wrapped(b, width=self.width - 300)]
        canvas.text((4, top + 14), box_id, strong=True)
        for n, line in enumerate(about):
            canvas.text((112, top + 14 + LINE * n), line, size=LABEL, colour=self.palette.soft)
        for n, line in enumerate(does):
            canvas.text((290, top + 14 + LINE * n), line, size=TEXT)
        return top + LINE * max(len(does), len(about)) + 6


def _draw_remarks(canvas: Canvas, remarks: Sequence[str], top: float, width: float) -> float:
    for line in wrapped(" ".join(remarks), width=width - 8, size=LABEL):
        top += 14
        canvas.text((4, top), line, size=LABEL, colour=canvas.palette.soft)
    return top
