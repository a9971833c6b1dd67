"""What every plan of a storey begins with: its extent, its scale, where symbols stand and rooms are named."""

import math
from collections.abc import Iterable, Iterator, Sequence

from secondfix.house import House, Point, Position, Schedule, faces_of, nearest_face, opening_ends
from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, text_width, wrapped
from secondfix.papers.drawing.labels import Taken, inside
from secondfix.papers.drawing.legend import LEGEND_WIDTH, legend_height
from secondfix.papers.drawing.spots import Spot
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM, View, swing, thickness_mm
from secondfix.papers.drawing.symbols import footprint
from secondfix.papers.palette import TEXT

_SCALES = (20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000, 5000, 10000)


def extent(schedule: Schedule, storey_id: str, placed: Iterable[Spot]) -> list[Xy]:
    """Every corner of the storey and all that stands on it, in millimetres."""
    house = schedule.house
    points: list[Xy] = [p for r in house.rooms.values() if r.storey == storey_id for p in r.outline_mm or ()]
    for wall in house.walls.values():
        if wall.storey == storey_id:
            half = thickness_mm(wall) / 2
            for x, y in (wall.from_mm, wall.to_mm):
                points += [(x - half, y - half), (x + half, y + half)]
    return points + [(s.position.x_mm, s.position.y_mm) for s in placed if s.position]


def fitted(points: Sequence[Xy], rows: int, *, width: float, height: float) -> tuple[int, View, Rect, Rect]:
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


def own_room(at: Xy, outline: Sequence[Xy]) -> tuple[Xy, ...]:
    """The room as the label's home, unless the symbol itself stands outside it, as a porch light does."""
    return tuple(outline) if inside(at, outline) else ()


def middle(r: Rect) -> Xy:
    return (r.left + r.right) / 2, (r.top + r.bottom) / 2


def clear_of_others(at: Xy, toward: Xy, symbol: str, taken: Taken) -> Xy:
    """Step aside along the wall where another symbol stands already."""
    for n in range(40):
        step = (n + 1) // 2 * (4 if n % 2 else -4)
        beside = (at[0] - step * toward[1], at[1] + step * toward[0])
        if taken.free(footprint(symbol, beside, toward)):
            return beside
    return at


def into_room(outline: Sequence[Point] | None, position: Position) -> Xy:
    """From the nearest wall into the room, as a unit vector on the sheet."""
    sides = faces_of(outline or ())
    if not sides:
        return 0.0, -1.0
    side = sides[nearest_face(sides, position)[0]]
    (ax, ay), (bx, by) = side.left_mm, side.right_mm
    # As one faces the wall, the room lies behind: to the right of left-to-right; y turns over.
    return (by - ay) / side.length_mm, (bx - ax) / side.length_mm


def take_structure(taken: Taken, swept: Taken, house: House, storey_id: str, view: View) -> None:
    """Mark where walls stand, and apart from that where doors swing."""
    for wall in house.walls.values():
        if wall.storey == storey_id:
            half = thickness_mm(wall) * view.px_per_mm / 2 + 2
            _take_wall(taken, view(*wall.from_mm), view(*wall.to_mm), half)
    for door in house.doors.values():
        if house.walls[door.wall].storey == storey_id:
            for x, y in swing(*(view(*p) for p in opening_ends(house.walls[door.wall], door))):
                swept.take(Rect(x - 1, y - 1, x + 1, y + 1))


def _take_wall(taken: Taken, a: Xy, b: Xy, half: float) -> None:
    steps = max(int(math.dist(a, b) / max(half, 4)), 1)
    for n in range(steps + 1):
        x, y = a[0] + (b[0] - a[0]) * n / steps, a[1] + (b[1] - a[1]) * n / steps
        taken.take(Rect(x - half, y - half, x + half, y + half))


def draw_room_name(canvas: Canvas, taken: Taken, name: str, outline: Sequence[Xy]) -> Xy:
    """In the middle of the room, or the nearest free line above or below; returns where.

    A name that finds no room in full is cut to two lines, then to one, and ends in dots.
    """
    xs, ys = [p[0] for p in outline], [p[1] for p in outline]
    room = Rect(min(xs), min(ys), max(xs), max(ys))
    lines = wrapped(name, width=max(room.right - room.left - 30, 60), size=TEXT)
    for most in dict.fromkeys((len(lines), 2, 1)):
        shown = lines if len(lines) <= most else [*lines[: most - 1], f"{lines[most - 1]} …"]
        ways = list(_name_spots(room, shown))
        spot = next((s for s in ways if _within(s, room) and taken.free(s)), None)
        if spot is not None:
            break
    else:
        spot = next((s for s in ways if taken.free(s)), ways[0])
    taken.take(spot)
    for n, line in enumerate(shown):
        canvas.text(
            ((spot.left + spot.right) / 2, spot.top + 11 + 14 * n),
            line,
            colour=canvas.palette.soft,
            anchor="middle",
            halo=True,
        )
    return middle(spot)


def _name_spots(room: Rect, lines: Sequence[str]) -> Iterator[Rect]:
    """Where a name may stand, the middle first."""
    wide, high = max(text_width(t) for t in lines), 14.0 * len(lines)
    x, y = middle(room)
    for step in (0, 1, -1, 2, -2, 3, -3, 4, -4):
        for aside in (0, 1, -1):
            cx, cy = x + aside * (room.right - room.left) / 5, y + step * 13
            yield Rect(cx - wide / 2, cy - high / 2, cx + wide / 2, cy + high / 2)


def _within(spot: Rect, room: Rect) -> bool:
    return (
        room.left <= spot.left
        and spot.right <= room.right
        and room.top <= spot.top
        and spot.bottom <= room.bottom
    )
