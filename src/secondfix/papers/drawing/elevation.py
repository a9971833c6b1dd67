"""Room elevations: every wall of a room as one faces it, plates at true height."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding
from secondfix.house import Face, Position, Schedule, faces_of, is_nec
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
from secondfix.papers.drawing.plates import Plate
from secondfix.papers.drawing.wall import draw_row, least_height, row_left
from secondfix.papers.duties import button_lines, rows_of_box
from secondfix.papers.palette import DAY, LABEL, TEXT, Palette
from secondfix.terms import drawn_length

_LITTLE_SMALLER = 0.75
"""1:75 in one row rather than 1:60 in two: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """A finished picture, its size in user units, what stands beneath it in words, and whether a wall was
    too small for its plates."""

    svg: str
    width: float
    height: float
    scale: int | None
    remarks: tuple[str, ...]
    crowded: bool = False


def elevations_svg(
    schedule: Schedule,
    room_id: str,
    notes: Iterable[Finding] = (),
    *,
    palette: Palette = DAY,
    width: float = 1016.0,
    height: float = 640.0,
    ways: Mapping[str, str] | None = None,
) -> str:
    """The elevations of one room as an SVG picture, with its findings as numbered notes.

    Each edge of the outline is one wall, named after the direction one faces; plates stand at their
    true height (drawn larger than scale), what every button does beneath. A box without a position is
    listed; a box far from every wall is drawn dashed and said so; a room without an outline becomes a
    plain list. Give ``notes`` all findings of the house: their numbers are then those of the snag list.
    ``width`` and ``height`` are in user units of 1/96 inch: the largest scale at which the walls stay within
    them is taken; notes and remarks stand beneath. On a screen a plate leads to the address that ``ways``
    has for its box. KeyError for a room that is not in the house.
    """
    own = keynotes_for(schedule.house, keynotes(notes), room_id)
    return draw_elevations(
        schedule, room_id, own, palette=palette, width=width, words=True, height=height, ways=ways
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
    ways: Mapping[str, str] | None = None,
) -> Drawing:
    """The same, with what a paper needs to set the words around it itself (``words`` False).

    The largest layout whose walls hold their plates and stay within ``height`` is taken, or one that is a
    little smaller and has fewer rows; else the lowest that holds its plates.
    """
    sides = faces_of(schedule.house.rooms[room_id].outline_mm or ())
    remarks: list[str] = []
    hung = hung_on(schedule, room_id, sides, notes, remarks)
    ceiling = ceiling_mm(schedule, room_id, hung, remarks) if sides else 0
    left = row_left(nec=is_nec(schedule.house))
    picture = _Picture(schedule, room_id, notes, palette, width, hung, ceiling, tuple(remarks), ways or {})
    laid = layouts(sides, hung, left=left, width=width)
    return picture.drawn(_best(picture, laid, height) if laid else None, words=words)


def _best(picture: "_Picture", ways: Sequence[Layout], height: float) -> Layout:
    """The largest that fits and holds its plates; else the lowest that holds them."""
    seen: list[tuple[float, int]] = []
    fits = [len(w.rows) * least_height(picture.ceiling_mm, w.scale) <= height for w in ways]
    for n, way in enumerate(ways):
        if fits[n]:
            drawn = picture.drawn(way, words=False)
            if not drawn.crowded and drawn.height <= height:
                return _in_fewer_rows(picture, ways[n:], height) or way
            if not drawn.crowded:
                seen.append((drawn.height, n))
    if seen:
        return ways[min(seen)[1]]
    too_high = [way for way, fit in zip(ways, fits, strict=True) if not fit]
    return next((w for w in reversed(too_high) if not picture.drawn(w, words=False).crowded), ways[0])


def _in_fewer_rows(picture: "_Picture", ways: Sequence[Layout], height: float) -> Layout | None:
    """A little smaller and in fewer rows: the walls of a room are read as they follow one another."""
    first = ways[0]
    for way in ways[1:]:
        if way.scale * _LITTLE_SMALLER > first.scale:
            return None
        drawn = picture.drawn(way, words=False) if len(way.rows) < len(first.rows) else None
        if drawn is not None and not drawn.crowded and drawn.height <= height:
            return way
    return None


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
    ways: Mapping[str, str]

    def drawn(self, layout: Layout | None, *, words: bool) -> Drawing:
        """The picture in one layout; without one, as a list."""
        canvas = Canvas(self.palette, ways=self.ways)
        remarks = list(self.remarks)
        bottom, crowded = 4.0, False
        if layout:
            bottom, moved, crowded = self._walls(canvas, layout, bottom)
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
        scale = layout.scale if layout else None
        return Drawing(svg, self.width, bottom + 6, scale, tuple(remarks), crowded)

    def _walls(self, canvas: Canvas, layout: Layout, top: float) -> tuple[float, bool, bool]:
        """How far down they reach, whether a plate stands aside, whether one found no room on its wall."""
        storey = self.schedule.house.rooms[self.room_id].storey or ""
        plates: list[Plate] = []
        for row in layout.rows:
            walls: list[tuple[Face, float, Sequence[Hung]]] = [
                (layout.sides[i], layout.slots[i], self.hung[i]) for i in row
            ]
            top, stood = draw_row(
                canvas,
                self.schedule,
                storey,
                walls,
                scale=layout.scale,
                ceiling_mm=self.ceiling_mm,
                top=top,
                width=self.width,
            )
            plates += stood
        return top, any(p.moved for p in plates), not all(p.inside for p in plates)

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
        high = drawn_length(position.height_mm, nec=is_nec(house)) if position else ""
        where = f"{high} above the floor" if position else "position not known"
        noted = f"note{'s' if len(numbers) > 1 else ''} {', '.join(numbers)}" if numbers else ""
        about = wrapped("; ".join(w for w in (where, noted) if w), width=170, size=LABEL)
        rows = rows_of_box(self.schedule, box_id)
        buttons = [f"{r.gang_no} {'; '.join(button_lines(self.schedule, r))}" for r in rows] or ["no gang"]
        does = [line for b in buttons for line in wrapped(b, width=self.width - 300)]
        with canvas.linked(box_id, box_id):
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
