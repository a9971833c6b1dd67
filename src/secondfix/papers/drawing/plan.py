"""The plan of one storey: walls, doors, windows, boxes, light points, sockets and radio devices."""

from collections.abc import Iterable, Mapping, Sequence

from secondfix.findings import Finding
from secondfix.house import Schedule, is_nec
from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, wrapped
from secondfix.papers.drawing.elevation import Drawing
from secondfix.papers.drawing.keynotes import Keynote, keynotes
from secondfix.papers.drawing.labels import Label, Taken, draw_labels
from secondfix.papers.drawing.legend import (
    LEGEND_WIDTH,
    draw_legend,
    draw_scale_bar,
    legend_rows,
)
from secondfix.papers.drawing.plan_marks import Anchor, draw_marks, marks_by_place
from secondfix.papers.drawing.spots import Spot, spots_of
from secondfix.papers.drawing.storey import (
    clear_of_others,
    draw_room_name,
    extent,
    fitted,
    into_room,
    middle,
    own_room,
    take_structure,
)
from secondfix.papers.drawing.structure import (
    View,
    draw_hatches,
    draw_openings,
    draw_walls,
    wall_class,
)
from secondfix.papers.drawing.symbols import draw_symbol, footprint
from secondfix.papers.palette import DAY, LABEL, Palette

CLEAR = "transparent"
_HIT = 15.0
POSITION_NOT_KNOWN = "Position not known"
"""How the remark begins that lists what could not be drawn; on a screen that list has ways in it."""


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
    points = extent(schedule, storey_id, placed)
    remarks: list[str] = []
    scale = None
    classes = {wall_class(w) for w in house.walls.values() if w.storey == storey_id}
    symbols, shapes = {s.symbol for s in placed}, {n.shape for own in marks.values() for n in own}
    rows = legend_rows(symbols, classes, shapes, doors=storey_id in _doors(schedule))
    field = legend = Rect(width - LEGEND_WIDTH, 4, width, height)
    if points:
        scale, view, field, legend = fitted(points, len(rows), width=width, height=height)
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
        remarks.append(f"{POSITION_NOT_KNOWN}: {'; '.join(named)}.")
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
    return f" (note{'s' if len(own) > 1 else ''} {', '.join(str(n.number) for n in own)})" if own else ""


def _listed(marks: dict[str, list[Keynote]]) -> str:
    return "; ".join(f"{where}{_noted(own)}" for where, own in marks.items())


def _doors(schedule: Schedule) -> set[str]:
    return {schedule.house.walls[d.wall].storey for d in schedule.house.doors.values()}


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
        toward = ways[spot.id] = into_room(house.rooms[spot.room].outline_mm, spot.position)
        at[spot.id] = clear_of_others(
            view(spot.position.x_mm, spot.position.y_mm), toward, spot.symbol, taken
        )
        with canvas.linked(spot.id, f"{spot.id} {house.rooms[spot.room].name}"):
            if spot.id in canvas.ways:
                canvas.rect(
                    _target(middle(footprint(spot.symbol, at[spot.id], toward))), weight=0, fill=CLEAR
                )
            draw_symbol(canvas, spot.symbol, at[spot.id], toward)
        taken.take(footprint(spot.symbol, at[spot.id], toward))
    take_structure(taken, swept, house, storey_id, view)
    anchors: dict[str, Anchor] = {}
    for room_id, room in house.rooms.items():
        if room.storey == storey_id and room.outline_mm:
            outline = tuple(view(*p) for p in room.outline_mm)
            anchors[room_id] = Anchor(draw_room_name(canvas, taken, room.name, outline), (0.0, 1.0), outline)
    labels = [
        Label(
            middle(footprint(s.symbol, at[s.id], ways[s.id])),
            s.lines,
            strong=s.id in house.boxes,
            toward=ways[s.id],
            room=own_room(at[s.id], [view(*p) for p in house.rooms[s.room].outline_mm or ()]),
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
