"""Plates on a wall: each at its true place, moved aside only where two would cover each other."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import product

from secondfix.house import Row
from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, text_width
from secondfix.papers.drawing.keynotes import MARK_HEIGHT, MARK_WIDTH, Keynote, draw_mark
from secondfix.papers.palette import LABEL, LEADER, PLATE, TEXT

BUTTON, PLATE_HEIGHT = 16.0, 34.0
_LABEL_HEIGHT, _TICK = 18.0, 5.0


def least_width(gangs: int) -> float:
    """How wide a plate of so many gangs is drawn, with a hair of wall beside it."""
    return 8 + BUTTON * max(1, gangs) + 4


@dataclass(frozen=True, slots=True)
class Plate:
    """A box on the wall. ``x``, ``y`` is its true centre, ``dx``, ``dy`` how far it stands aside."""

    id: str
    x: float
    y: float
    rows: tuple[Row, ...]
    wall: Rect
    notes: tuple[Keynote, ...] = ()
    far: bool = False
    dx: float = 0.0
    dy: float = 0.0
    marks_left: bool = False

    @property
    def moved(self) -> bool:
        """Whether it stands visibly aside."""
        return abs(self.dx) > 2 or abs(self.dy) > 2

    @property
    def body(self) -> Rect:
        """The plate itself."""
        half, x, y = least_width(len(self.rows)) / 2 - 2, self.x + self.dx, self.y + self.dy
        return Rect(x - half, y - PLATE_HEIGHT / 2, x + half, y + PLATE_HEIGHT / 2)

    @property
    def numbers(self) -> tuple[Keynote, ...]:
        """Its notes, each number once."""
        return tuple({n.number: n for n in self.notes}.values())

    @property
    def label_below(self) -> bool:
        """Whether the label has no room under the ceiling."""
        return self.body.top - _LABEL_HEIGHT < self.wall.top

    @property
    def _half_label(self) -> float:
        return text_width(self.id, TEXT, strong=True) / 2

    @property
    def label_at(self) -> float:
        """The middle of the label: above the plate, or as near as the wall's ends allow."""
        half, middle = self._half_label, self.x + self.dx
        inside = max(min(middle, self.wall.right - half - 3), self.wall.left + half + 3)
        return max(min(inside, middle + half), middle - half)

    @property
    def marks_width(self) -> float:
        """What its marks take beside it, in columns of two."""
        return MARK_WIDTH * ((len(self.numbers) + 1) // 2) + (4 if self.notes else 0)

    @property
    def footprint(self) -> Rect:
        """The plate with its label above or below and its marks beside it."""
        body, half, middle = self.body, self._half_label, self.label_at
        y, down = (body.top + body.bottom) / 2, MARK_HEIGHT if len(self.numbers) > 1 else 0
        low, below = max(body.bottom, y + down), self.label_below
        left, right = (self.marks_width, 0.0) if self.marks_left else (0.0, self.marks_width)
        return Rect(
            min(body.left - left, middle - half),
            min(body.top - (0 if below else _LABEL_HEIGHT), y - down),
            max(body.right + right, middle + half),
            low + (_LABEL_HEIGHT if below else 0),
        )

    @property
    def inside(self) -> bool:
        """Whether its body stays on its wall, or in the middle of a wall that is narrower or lower."""
        body, wall = self.body, self.wall
        wide = max(0.0, (body.right - body.left - wall.right + wall.left) / 2) + 0.5
        high = max(0.0, (body.bottom - body.top - wall.bottom + wall.top) / 2) + 0.5
        beside = wall.left - wide <= body.left and body.right <= wall.right + wide
        return beside and wall.top - high <= body.top and body.bottom <= wall.bottom + high


def set_apart(plates: Sequence[Plate], holes: Sequence[Rect]) -> list[Plate]:
    """The plates with the least shift that keeps them, labels and marks apart and inside their wall.

    Being larger than scale, a plate beside a door or window is moved off it too. First it is tried beside its
    true place at its true height, then above and below; only on a wall too small for all its plates does
    one reach past the wall's end.
    """
    done: list[Plate] = []
    for plate in sorted(plates, key=lambda p: (p.x, p.y, p.id)):
        tries = (
            [p for p in _level(plate, done, holes) if p.inside],
            (p for p in _anywhere(plate, done, holes) if p.inside),
            _level(plate, done, holes),
        )
        for tried in tries:
            free = [p for p in tried if not any(p.footprint.meets(d.footprint, 3) for d in done)]
            if free:
                covered = [(p.x, p.y) for p in plates if p.id != plate.id]
                done.append(min(free, key=lambda p: _cost(p, done, holes, covered)))
                break
    return done


def _level(plate: Plate, done: Sequence[Plate], holes: Sequence[Rect]) -> list[Plate]:
    """At its own height, or no further from it than keeps a plate off floor and ceiling."""
    body, wall = plate.body, plate.wall
    dy = max(0.0, wall.top + 1 - body.top) or min(0.0, wall.bottom - 1 - body.bottom)
    return list(_tried(plate, _shifts(plate, done, holes), [dy]))


def _anywhere(plate: Plate, done: Sequence[Plate], holes: Sequence[Rect]) -> Iterator[Plate]:
    own = plate.footprint
    heights = [s for d in done for s in (d.footprint.bottom - own.top + 4, d.footprint.top - own.bottom - 4)]
    return _tried(plate, _shifts(plate, done, holes), heights)


def _tried(plate: Plate, shifts: Sequence[float], heights: Sequence[float]) -> Iterator[Plate]:
    sides = (False, True) if plate.notes else (False,)
    for left, dx, dy in product(sides, shifts, heights):
        yield replace(plate, dx=dx, dy=dy, marks_left=left)


def _shifts(plate: Plate, done: Sequence[Plate], holes: Sequence[Rect]) -> list[float]:
    wall, body = plate.wall, plate.body
    prints = [replace(plate, marks_left=left).footprint for left in {False, bool(plate.notes)}]
    out = [0.0, wall.left - body.left + 2, wall.right - body.right - 2]
    out.append((wall.left + wall.right) / 2 - plate.x)
    for own in prints:
        out += [wall.left - own.left + 3, wall.right - own.right - 3]
        out += [s for d in done for s in (d.footprint.right - own.left + 4, d.footprint.left - own.right - 4)]
    out += [s for h in holes for s in (h.right - body.left + 4, h.left - body.right - 4)]
    past_all = max((d.footprint.right for d in done), default=0.0) + prints[0].right - prints[0].left
    out += [s for n in range(1, 20) for s in (8.0 * n, -8.0 * n)]
    return [*out, max(past_all - plate.x, 0.0) + 400]


def _cost(plate: Plate, done: Sequence[Plate], holes: Sequence[Rect], others: Sequence[Xy]) -> float:
    """How far from the truth it stands: aside, up or down, past the wall, over an opening or the true place
    of another, out of order."""
    f, wall = plate.footprint, plate.wall
    outside = max(0.0, wall.left - f.left) + max(0.0, f.right - wall.right)
    over = any(plate.body.meets(h, 3) and not h.left < plate.x < h.right for h in holes)
    near = (d for d in done if abs(plate.y - d.y) < 2 * PLATE_HEIGHT)
    swapped = any(plate.x + plate.dx < d.x + d.dx for d in near) and not plate.dy
    aside = abs(plate.dx) + 2 * abs(plate.dy) + 6 * plate.marks_left
    covers = sum(_holds(f, at) for at in others)
    return aside + 2 * outside + 30 * over + 20 * covers + 300 * swapped


def draw_true_place(canvas: Canvas, plate: Plate, plates: Sequence[Plate]) -> None:
    """For a plate that stands aside: a tick beneath it at its true middle, or a line to its true place.

    It is drawn before the plates, so that it strikes through no gang's number; its dot is left out where a
    plate stands over it.
    """
    if not plate.moved:
        return
    body, colour = plate.body, canvas.palette.soft
    if abs(plate.dy) <= 2 and body.left < plate.x < body.right:
        canvas.line((plate.x, body.bottom), (plate.x, body.bottom + _TICK), weight=PLATE, colour=colour)
        return
    true = (plate.x, plate.y)
    near = (min(max(plate.x, body.left), body.right), min(max(plate.y, body.top), body.bottom))
    canvas.line(near, true, weight=LEADER, colour=colour)
    if not any(_holds(p.body, true) for p in plates):
        canvas.circle(true, 2.2, weight=0, fill=canvas.palette.ink)


def _holds(r: Rect, at: Xy) -> bool:
    return r.left - 3 < at[0] < r.right + 3 and r.top - 3 < at[1] < r.bottom + 3


def draw_plate(canvas: Canvas, plate: Plate) -> None:
    """The plate with its gang numbers, name and marks."""
    with canvas.linked(plate.id, f"{plate.id}, {len(plate.rows)} gang{'' if len(plate.rows) == 1 else 's'}"):
        _draw_plate(canvas, plate)


def _draw_plate(canvas: Canvas, plate: Plate) -> None:
    body = plate.body
    y = body.bottom + 14 if plate.label_below else body.top - 5
    canvas.text((plate.label_at, y), plate.id, strong=True, anchor="middle", halo=True)
    _draw_buttons(canvas, plate)
    middle, way = (body.top + body.bottom) / 2, -1 if plate.marks_left else 1
    edge = body.left if plate.marks_left else body.right
    for n, note in enumerate(plate.numbers):
        column, row = divmod(n, 2)
        down = 0.0 if len(plate.numbers) == 1 else (row * 2 - 1) * (MARK_HEIGHT / 2 + 1)
        at = (edge + way * (4 + MARK_WIDTH * (column + 0.5)), middle + down)
        draw_mark(canvas, at, note.shape, note.number)


def _draw_buttons(canvas: Canvas, plate: Plate) -> None:
    p, body = canvas.palette, plate.body
    canvas.rect(body, weight=PLATE, fill=p.paper, round_=2.5, dash="4 2.5" if plate.far else "")
    for n, row in enumerate(plate.rows):
        left = body.left + 4 + BUTTON * n
        button = Rect(left + 1, body.top + 5, left + BUTTON - 1, body.bottom - 5)
        canvas.rect(button, weight=LEADER, colour=p.line, round_=1.5)
        middle = (left + BUTTON / 2, (body.top + body.bottom) / 2 + 3.7)
        canvas.text(middle, row.gang_no, size=LABEL, anchor="middle")
