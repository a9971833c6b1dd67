"""The plan of one storey: walls, doors, windows, boxes, light points, sockets and radio devices."""

import math
from collections.abc import Iterable, Mapping, Sequence

from secondfix.findings import Finding
from secondfix.house import Point, Position, Schedule, faces_of, is_nec, nearest_face, opening_ends
from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, text_width, wrapped
from secondfix.papers.drawing.elevation import Drawing
from secondfix.papers.drawing.keynotes import Keynote, keynotes
from secondfix.papers.drawing.labels import Label, Taken, draw_labels, inside
from secondfix.papers.drawing.legend import (
    LEGEND_WIDTH,
    draw_legend,
    draw_scale_bar,
    legend_height,
    legend_rows,
)
from secondfix.papers.drawing.plan_marks import Anchor, draw_marks, marks_by_place
from secondfix.papers.drawing.spots import Spot, spots_of
from secondfix.papers.drawing.structure import (
    PX_PER_PAPER_MM,
    View,
    draw_hatches,
    draw_openings,
    draw_walls,
    swing,
    thickness_mm,
    wall_class,
)
from secondfix.papers.drawing.symbols import draw_symbol, footprint
from secondfix.papers.palette import DAY, LABEL, TEXT, Palette

CLEAR = "transparent"
_HIT = 15.0
_SCALES = (20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000, 5000, 10000)


def plan_svg(
    schedule: Schedule,
    storey_id: str,
    notes: Iterable[Finding] = (),
    *,
    palette: Palette = DAY,
    width: float = 1016.0,
    height: float = 600.0,
) -> str:
    """The plan of one storey as an SVG picture with its legend.

    ``notes`` are all findings of the house: each that is not a pass stands as its numbered shape at its
    place, with the number of the snag list.
    ``width`` and ``height`` in user units of 1/96 inch: the largest usual scale at which the storey
    fits is taken. What has no position is listed beneath, never dropped. KeyError for a storey that
    is not in the house.
    """
    marks = keynotes(notes)
    return draw_plan(schedule, storey_id, marks, palette=palette, width=width, height=height, words=True).svg


def draw_plan(
    schedule: Schedule,
    storey_id: str,
    notes: Sequence[Keynote],
    *,
    palette: Palette,
    width: float,
    height: float,
    words: bool,
    ways: Mapping[str, str] | None = None,
) -> Drawing:
    """The same, with the remarks apart where they are set elsewhere (``words`` False).

    On a screen a symbol leads to the address that ``ways`` has for its box or place.
    """
    house = schedule.house
    marks = marks_of_storey(schedule, storey_id, notes)
    storey = house.storeys[storey_id]
    spots = [s for s in spots_of(schedule) if house.rooms[s.room].storey == storey_id]
    placed = [s for s in spots if s.position]
    lost = [s for s in spots if not s.position]
    canvas = Canvas(palette, ways=ways or {})
    draw_hatches(canvas)
    points = _extent(schedule, storey_id, placed)
    remarks: list[str] = []
    scale = None
    classes = {wall_class(w) for w in house.walls.values() if w.storey == storey_id}
    symbols, shapes = {s.symbol for s in placed}, {n.shape for own in marks.values() for n in own}
    rows = legend_rows(symbols, classes, shapes, doors=storey_id in _doors(schedule))
    field = legend = Rect(width - LEGEND_WIDTH, 4, width, height)
    if points:
        scale, view, field, legend = _fitted(points, len(rows), width=width, height=height)
        remarks.append(f"Scale 1:{scale} at the size of this sheet. North is at the top.")
        draw_walls(canvas, house, storey_id, view)
        draw_openings(canvas, house, storey_id, view)
        unlabelled, unmarked = _draw_spots(canvas, schedule, storey_id, placed, marks, view=view, field=field)
        list_name = "punch list" if is_nec(house) else "snag list"
        remarks += [f"Numbers are those of the {list_name}."] if marks else []
        remarks += [f"No room for the label of {', '.join(unlabelled)}."] if unlabelled else []
        remarks += [f"No room for the marks of {_listed(unmarked)}."] if unmarked else []
        draw_scale_bar(canvas, scale, (field.left + 4, field.bottom + 14), nec=is_nec(house))
    else:
        remarks.append("No outline, wall or position of this storey is known: there is nothing to draw.")
    if lost:
        named = (f"{' '.join(s.lines)}{_noted(marks.get(s.id, []))}" for s in lost)
        remarks.append(f"Position not known: {'; '.join(named)}.")
    reach = draw_legend(canvas, rows, legend, nec=is_nec(house))
    bottom = max(height if points else 40.0, reach + 8)
    if words:
        for line in wrapped(" ".join(remarks), width=width - 8, size=LABEL):
            canvas.text((4, bottom + 12), line, size=LABEL, colour=palette.soft)
            bottom += 14
    says = f"Plan of {storey.name}. {' '.join(remarks)}"
    svg = canvas.svg(width=width, height=bottom + 4, title=f"{storey.name}, plan", says=says)
    return Drawing(svg, width, bottom + 4, scale, tuple(remarks))


def marks_of_storey(schedule: Schedule, storey_id: str, notes: Iterable[Keynote]) -> dict[str, list[Keynote]]:
    """The marks of a storey's boxes, places and rooms."""
    house = schedule.house
    room_of = {i: b.room for i, b in house.boxes.items()} | {i: p.room for i, p in house.places.items()}
    return {
        where: own
        for where, own in marks_by_place(house, notes).items()
        if house.rooms[room_of.get(where, where)].storey == storey_id
    }


def _noted(own: Sequence[Keynote]) -> str:
    return f" (note {', '.join(str(n.number) for n in own)})" if own else ""


def _listed(marks: dict[str, list[Keynote]]) -> str:
    return "; ".join(f"{where}{_noted(own)}" for where, own in marks.items())


def _doors(schedule: Schedule) -> set[str]:
    return {schedule.house.walls[d.wall].storey for d in schedule.house.doors.values()}


def _extent(schedule: Schedule, storey_id: str, placed: Iterable[Spot]) -> list[Xy]:
    house = schedule.house
    points: list[Xy] = [p for r in house.rooms.values() if r.storey == storey_id for p in r.outline_mm or ()]
    for wall in house.walls.values():
        if wall.storey == storey_id:
            half = thickness_mm(wall) / 2
            for x, y in (wall.from_mm, wall.to_mm):
                points += [(x - half, y - half), (x + half, y + half)]
    return points + [(s.position.x_mm, s.position.y_mm) for s in placed if s.position]


def _fitted(points: Sequence[Xy], rows: int, *, width: float, height: float) -> tuple[int, View, Rect, Rect]:
    """The legend beside the plan or beneath it, whichever lets the plan be larger."""
    side = Rect(4, 4, width - LEGEND_WIDTH - 16, height - 34)
    low = legend_height(rows, width=width)
    beneath = Rect(4, 4, width - 4, height - 34 - low)
    scale, view = _view(points, side)
    if beneath.bottom > 150:
        other, wide = _view(points, beneath)
        if other < scale:
            return other, wide, beneath, Rect(4, height - low, width, height)
    return scale, view, side, Rect(width - LEGEND_WIDTH, 4, width, height)


def _view(points: Sequence[Xy], field: Rect) -> tuple[int, View]:
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    margin = 20.0
    room = (field.right - field.left - 2 * margin, field.bottom - field.top - 2 * margin)
    wide, high = max(max(xs) - min(xs), 1.0), max(max(ys) - min(ys), 1.0)
    fits = (
        s for s in _SCALES if wide * PX_PER_PAPER_MM <= room[0] * s and high * PX_PER_PAPER_MM <= room[1] * s
    )
    scale = next(fits, math.ceil(max(wide / room[0], high / room[1]) * PX_PER_PAPER_MM))
    px = PX_PER_PAPER_MM / scale
    left = field.left + margin + (room[0] - wide * px) / 2
    return scale, View(min(xs), max(ys), px, left, field.top + margin + (room[1] - high * px) / 2)


def _draw_spots(
    canvas: Canvas,
    schedule: Schedule,
    storey_id: str,
    placed: Sequence[Spot],
    marks: dict[str, list[Keynote]],
    *,
    view: View,
    field: Rect,
) -> tuple[list[str], dict[str, list[Keynote]]]:
    """Symbols, room names, labels, marks; returns the ids whose label, and whose marks, found no room."""
    house = schedule.house
    taken, swept = Taken(field), Taken(field)
    at: dict[str, Xy] = {}
    ways: dict[str, Xy] = {}
    for spot in placed:
        assert spot.position is not None
        toward = ways[spot.id] = _toward(house.rooms[spot.room].outline_mm, spot.position)
        at[spot.id] = _clear(view(spot.position.x_mm, spot.position.y_mm), toward, spot.symbol, taken)
        with canvas.linked(spot.id, f"{spot.id} {house.rooms[spot.room].name}"):
            if spot.id in canvas.ways:
                canvas.rect(
                    _target(_middle(footprint(spot.symbol, at[spot.id], toward))), weight=0, fill=CLEAR
                )
            draw_symbol(canvas, spot.symbol, at[spot.id], toward)
        taken.take(footprint(spot.symbol, at[spot.id], toward))
    for wall in house.walls.values():
        if wall.storey == storey_id:
            _take_wall(
                taken, view(*wall.from_mm), view(*wall.to_mm), thickness_mm(wall) * view.px_per_mm / 2 + 2
            )
    for door in house.doors.values():
        if house.walls[door.wall].storey == storey_id:
            for x, y in swing(*(view(*p) for p in opening_ends(house.walls[door.wall], door))):
                swept.take(Rect(x - 1, y - 1, x + 1, y + 1))
    anchors: dict[str, Anchor] = {}
    for room_id, room in house.rooms.items():
        if room.storey == storey_id and room.outline_mm:
            outline = tuple(view(*p) for p in room.outline_mm)
            anchors[room_id] = Anchor(_draw_room_name(canvas, taken, room.name, outline), (0.0, 1.0), outline)
    labels = [
        Label(
            _middle(footprint(s.symbol, at[s.id], ways[s.id])),
            s.lines,
            strong=s.id in house.boxes,
            toward=ways[s.id],
            room=_own_room(at[s.id], [view(*p) for p in house.rooms[s.room].outline_mm or ()]),
        )
        for s in placed
    ]
    # Boxes first, then what is open, then the rest: on a crowded plan the rest is told beneath.
    left_over = draw_labels(canvas, taken, swept, [x for x in labels if x.strong])
    beside = {s.id: Anchor(x.at, x.toward, x.room) for s, x in zip(placed, labels, strict=True)}
    unmarked = draw_marks(canvas, taken, swept, marks, {**beside, **anchors})
    left_over += draw_labels(canvas, taken, swept, [x for x in labels if not x.strong])
    return [label.lines[0] for label in left_over], unmarked


def _target(at: Xy) -> Rect:
    """What a finger hits around a symbol."""
    return Rect(at[0] - _HIT, at[1] - _HIT, at[0] + _HIT, at[1] + _HIT)


def _own_room(at: Xy, outline: Sequence[Xy]) -> tuple[Xy, ...]:
    """The room as the label's home, unless the symbol itself stands outside it, as a porch light does."""
    return tuple(outline) if inside(at, outline) else ()


def _middle(r: Rect) -> Xy:
    return (r.left + r.right) / 2, (r.top + r.bottom) / 2


def _clear(at: Xy, toward: Xy, symbol: str, taken: Taken) -> Xy:
    """Step aside along the wall where another symbol stands already."""
    for n in range(40):
        step = (n + 1) // 2 * (4 if n % 2 else -4)
        beside = (at[0] - step * toward[1], at[1] + step * toward[0])
        if taken.free(footprint(symbol, beside, toward)):
            return beside
    return at


def _toward(outline: Sequence[Point] | None, position: Position) -> Xy:
    """From the nearest wall into the room, as a unit vector on the sheet."""
    sides = faces_of(outline or ())
    if not sides:
        return 0.0, -1.0
    side = sides[nearest_face(sides, position)[0]]
    (ax, ay), (bx, by) = side.left_mm, side.right_mm
    # As one faces the wall, the room lies behind: to the right of left-to-right; y turns over.
    return (by - ay) / side.length_mm, (bx - ax) / side.length_mm


def _take_wall(taken: Taken, a: Xy, b: Xy, half: float) -> None:
    steps = max(int(math.dist(a, b) / max(half, 4)), 1)
    for n in range(steps + 1):
        x, y = a[0] + (b[0] - a[0]) * n / steps, a[1] + (b[1] - a[1]) * n / steps
        taken.take(Rect(x - half, y - half, x + half, y + half))


def _draw_room_name(canvas: Canvas, taken: Taken, name: str, outline: Sequence[Xy]) -> Xy:
    """In the middle of the room, or the nearest free line above or below; returns where."""
    xs, ys = [p[0] for p in outline], [p[1] for p in outline]
    lines = wrapped(name, width=max(max(xs) - min(xs) - 30, 60), size=TEXT)
    wide, high = max(text_width(t) for t in lines), 14.0 * len(lines)
    x, y = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    for step in (0, 1, -1, 2, -2, 3, -3, 4, -4):
        for aside in (0, 1, -1):
            cx, cy = x + aside * (max(xs) - min(xs)) / 5, y + step * 13
            spot = Rect(cx - wide / 2, cy - high / 2, cx + wide / 2, cy + high / 2)
            if taken.free(spot):
                break
        else:
            continue
        break
    taken.take(spot)
    for n, line in enumerate(lines):
        canvas.text(
            ((spot.left + spot.right) / 2, spot.top + 11 + 14 * n),
            line,
            colour=canvas.palette.soft,
            anchor="middle",
            halo=True,
        )
    return _middle(spot)
