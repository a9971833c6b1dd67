"""Plates on a wall: each at its true height, moved aside only where two would cover each other."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from secondfix.house import Row
from secondfix.papers.drawing.canvas import Canvas, Rect, text_width
from secondfix.papers.drawing.keynotes import MARK_HEIGHT, MARK_WIDTH, Keynote, draw_mark
from secondfix.papers.palette import LABEL, LEADER, PLATE, TEXT

BUTTON, PLATE_HEIGHT = 16.0, 34.0


@dataclass(frozen=True, slots=True)
class Plate:
    """A box on the wall. ``x``, ``y`` is its true centre, ``shift`` how far it stands aside."""

    id: str
    x: float
    y: float
    rows: tuple[Row, ...]
    notes: tuple[Keynote, ...] = ()
    far: bool = False
    bounds: tuple[float, float] = (0.0, 1e6)
    ceiling: float = 0.0
    shift: float = 0.0

    @property
    def body(self) -> Rect:
        """The plate itself."""
        wide = 8 + BUTTON * max(1, len(self.rows))
        x = self.x + self.shift
        return Rect(x - wide / 2, self.y - PLATE_HEIGHT / 2, x + wide / 2, self.y + PLATE_HEIGHT / 2)

    @property
    def label_below(self) -> bool:
        """Whether the label has no room under the ceiling."""
        return self.body.top - 18 < self.ceiling

    @property
    def _half_label(self) -> float:
        return text_width(self.id, TEXT, strong=True) / 2

    @property
    def label_at(self) -> float:
        """The middle of the label: above the plate, or as near as the wall's ends allow."""
        (left, right), half, middle = self.bounds, self._half_label, self.x + self.shift
        inside = max(min(middle, right - half - 3), left + half + 3)
        return max(min(inside, middle + half), middle - half)

    @property
    def footprint(self) -> Rect:
        """The plate with its label above and its marks to the right."""
        body = self.body
        middle, half = self.label_at, self._half_label
        marks = MARK_WIDTH * ((len(self.notes) + 1) // 2) + (4 if self.notes else 0)
        low = max(body.bottom, self.y + (MARK_HEIGHT if len(self.notes) > 1 else 0))
        return Rect(
            min(body.left, middle - half),
            body.top if self.label_below else body.top - 18,
            max(body.right + marks, middle + half),
            low + 18 if self.label_below else low,
        )


def set_apart(plates: Sequence[Plate], holes: Sequence[Rect], *, left: float, right: float) -> list[Plate]:
    """The plates with the least sideways shift that keeps them, labels and marks apart.

    Being larger than scale, a plate beside a door or window is moved off it too. Heights are never
    touched. Where a wall is too short for its plates they reach past its end.
    """
    done: list[Plate] = []
    for plate in sorted(plates, key=lambda p: (p.x, p.y, p.id)):
        free = [
            replace(plate, shift=s)
            for s in _shifts(plate, done, holes, left=left, right=right)
            if not any(replace(plate, shift=s).footprint.meets(d.footprint, 3) for d in done)
        ]
        done.append(min(free, key=lambda p: _cost(p, done, holes, left=left, right=right)))
    return done


def _shifts(
    plate: Plate, done: Sequence[Plate], holes: Sequence[Rect], *, left: float, right: float
) -> list[float]:
    own = plate.footprint
    beside = [s for d in done for s in (d.footprint.right - own.left + 4, d.footprint.left - own.right - 4)]
    body = plate.body
    beside += [s for h in holes for s in (h.right - body.left + 4, h.left - body.right - 4)]
    steps = [s for n in range(1, 30) for s in (6.0 * n, -6.0 * n)]
    past_all = max((d.footprint.right for d in done), default=0.0) + own.right - own.left - plate.x
    return [0.0, left - own.left + 3, right - own.right - 3, *beside, *steps, max(past_all, 0.0) + 400]


def _cost(plate: Plate, done: Sequence[Plate], holes: Sequence[Rect], *, left: float, right: float) -> float:
    """How far from the truth it stands: aside, past the wall's end, over an opening, out of order."""
    f = plate.footprint
    outside = max(0.0, left - f.left) + max(0.0, f.right - right)
    over = any(plate.body.meets(h, 3) and not h.left < plate.x < h.right for h in holes)
    near = (d for d in done if abs(plate.y - d.y) < 2 * PLATE_HEIGHT)
    swapped = any(plate.x + plate.shift < d.x + d.shift for d in near)
    return abs(plate.shift) + 2 * outside + 30 * over + 300 * swapped


def draw_plate(canvas: Canvas, plate: Plate) -> None:
    """The plate with its gang numbers, name and marks; a bracket beneath where it was moved aside."""
    body = plate.body
    if abs(plate.shift) > 2:
        # One foot of the bracket at the true place, the other at the plate.
        canvas.path(
            f"M{plate.x:.2f} {body.bottom:.2f}v5H{plate.x + plate.shift:.2f}v-5",
            weight=LEADER,
            colour=canvas.palette.soft,
        )
    y = body.bottom + 14 if plate.label_below else body.top - 5
    canvas.text((plate.label_at, y), plate.id, strong=True, anchor="middle", halo=True)
    _draw_buttons(canvas, plate)
    for n, note in enumerate(plate.notes):
        column, row = divmod(n, 2)
        down = 0.0 if len(plate.notes) == 1 else (row * 2 - 1) * (MARK_HEIGHT / 2 + 1)
        draw_mark(canvas, (body.right + 4 + MARK_WIDTH * (column + 0.5), plate.y + down), note)


def _draw_buttons(canvas: Canvas, plate: Plate) -> None:
    p, body = canvas.palette, plate.body
    canvas.rect(body, weight=PLATE, fill=p.paper, round_=2.5, dash="4 2.5" if plate.far else "")
    for n, row in enumerate(plate.rows):
        left = body.left + 4 + BUTTON * n
        button = Rect(left + 1, body.top + 5, left + BUTTON - 1, body.bottom - 5)
        canvas.rect(button, weight=LEADER, colour=p.line, round_=1.5)
        canvas.text((left + BUTTON / 2, plate.y + 3.7), row.gang_no, size=LABEL, anchor="middle")
