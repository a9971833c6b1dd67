"""Room elevations: every wall of a room as one faces it, plates at true height."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding
from secondfix.house import Position, Schedule
from secondfix.papers.drawing.canvas import Canvas, wrapped
from secondfix.papers.drawing.keynotes import Keynote, draw_notes, keynotes_for, spot_of
from secondfix.papers.drawing.layout import Layout, ceiling_mm, hung_on, layouts
from secondfix.papers.drawing.lists import LINE
from secondfix.papers.drawing.wall import draw_row
from secondfix.papers.duties import button_lines, rows_of_box
from secondfix.papers.palette import DAY, LABEL, TEXT, Palette


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
    height: float | None = None,
) -> Drawing:
    """The same, with what a paper needs to set the words around it itself (``words`` False).

    The largest layout that stays within ``height`` is taken, else the lowest.
    """
    picture = _Picture(schedule, room_id, notes, palette, width)
    ways = layouts(schedule.house.rooms[room_id].outline_mm or (), width=width)
    if height is None or not ways:
        return picture.drawn(ways[0] if ways else None, words=words)
    drawn: list[Drawing] = []
    for way in sorted(ways, key=lambda w: (w.scale, len(w.rows))):
        drawn.append(picture.drawn(way, words=words))
        if drawn[-1].height <= height:
            return drawn[-1]
    return min(drawn, key=lambda d: d.height)


@dataclass(frozen=True, slots=True)
class _Picture:
    """What is drawn, before it is known how."""

    schedule: Schedule
    room_id: str
    notes: Sequence[Keynote]
    palette: Palette
    width: float

    def drawn(self, layout: Layout | None, *, words: bool) -> Drawing:
        """The picture in one layout; without one, as a list."""
        canvas = Canvas(self.palette)
        remarks: list[str] = []
        bottom = 4.0
        if layout:
            bottom = self._walls(canvas, layout, remarks, bottom)
            true = "Plates are drawn larger than scale; their heights and places are true."
            remarks.insert(0, f"Scale 1:{layout.scale}. {true}")
        else:
            remarks.append("No outline of this room is known: a list stands in place of a drawing.")
        bottom = self._loose(canvas, layout is not None, bottom)
        if words:
            bottom = _draw_remarks(canvas, remarks, bottom + 8, self.width)
            bottom = draw_notes(canvas, self.notes, top=bottom + 12, left=4, width=self.width - 8)
        name = self.schedule.house.rooms[self.room_id].name
        says = f"Each wall of {name} as one faces it. {' '.join(remarks)}"
        svg = canvas.svg(width=self.width, height=bottom + 6, title=f"{name}, elevations", says=says)
        return Drawing(svg, self.width, bottom + 6, layout.scale if layout else None, tuple(remarks))

    def _walls(self, canvas: Canvas, layout: Layout, remarks: list[str], top: float) -> float:
        hung = hung_on(self.schedule, self.room_id, layout.sides, self.notes, remarks)
        ceiling = ceiling_mm(self.schedule, self.room_id, hung, remarks)
        storey = self.schedule.house.rooms[self.room_id].storey or ""
        for row in layout.rows:
            walls = [(layout.sides[i], hung[i]) for i in row]
            top = draw_row(
                canvas,
                self.schedule,
                storey,
                walls,
                scale=layout.scale,
                ceiling_mm=ceiling,
                top=top,
                width=self.width,
            )
        return top

    def _loose(self, canvas: Canvas, outlined: bool, top: float) -> float:
        """Boxes that cannot stand on a wall of the drawing are listed: never dropped."""
        for box_id, box in self.schedule.house.boxes.items():
            if box.room == self.room_id and not (outlined and box.position):
                top = self._line_of(canvas, box_id, box.position, top)
        return top

    def _line_of(self, canvas: Canvas, box_id: str, position: Position | None, top: float) -> float:
        house = self.schedule.house
        numbers = [str(n.number) for n in self.notes if spot_of(house, n.finding) == box_id]
        where = f"{position.height_mm / 1000:.2f} m above the floor" if position else "position not known"
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
