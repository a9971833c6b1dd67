"""Labels beside their symbols, none over another: the nearest free spot, a thin leader where it is far."""

import math
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, text_width
from secondfix.papers.palette import LABEL, LEADER

_CELL = 40.0


@dataclass(slots=True)
class Taken:
    """Which parts of the sheet are taken; looked up by cell, so that thousands stay quick."""

    frame: Rect
    cells: dict[tuple[int, int], list[Rect]] = field(default_factory=lambda: defaultdict(list))

    def take(self, r: Rect) -> None:
        """Mark a box as taken."""
        for cell in _cells(r):
            self.cells[cell].append(r)

    def free(self, r: Rect) -> bool:
        """Whether nothing stands there and it lies inside the frame."""
        f = self.frame
        if r.left < f.left or r.right > f.right or r.top < f.top or r.bottom > f.bottom:
            return False
        return not any(r.meets(o) for cell in _cells(r) for o in self.cells.get(cell, ()))


@dataclass(frozen=True, slots=True)
class Label:
    """Words that belong to a point, in one or more lines."""

    at: Xy
    lines: tuple[str, ...]
    strong: bool = False
    toward: Xy = (1.0, 0.0)
    room: tuple[Xy, ...] = ()


def draw_labels(canvas: Canvas, taken: Taken, swept: Taken, labels: list[Label]) -> list[Label]:
    """Set each label at the nearest free spot; returns those for which there is none.

    A label stays in its own room if it can, for through a wall it would be read as another's; the
    sweep of a door is given up before that.
    """
    lost = []
    for label in labels:
        spot = _best(label, taken, swept)
        if spot is None:
            lost.append(label)
            continue
        taken.take(spot)
        _draw(canvas, label, spot)
    return lost


def _draw(canvas: Canvas, label: Label, spot: Rect) -> None:
    p = canvas.palette
    draw_leader(canvas, label.at, spot)
    for n, line in enumerate(label.lines):
        colour = p.ink if n == 0 else p.soft
        at = (spot.left, spot.top + 9.5 + 12 * n)
        canvas.text(at, line, size=LABEL, colour=colour, strong=label.strong and n == 0, halo=True)


def draw_leader(canvas: Canvas, at: Xy, spot: Rect) -> None:
    """A thin line from a symbol to what belongs to it, where that stands far from it."""
    x, y = at
    near = (min(max(x, spot.left), spot.right), min(max(y, spot.top), spot.bottom))
    gap = math.dist(near, at)
    if gap > 16:
        start = (x + (near[0] - x) * 11 / gap, y + (near[1] - y) * 11 / gap)
        canvas.line(start, near, weight=LEADER, colour=canvas.palette.line)


def _best(label: Label, taken: Taken, swept: Taken) -> Rect | None:
    wide = max(text_width(t, LABEL, strong=label.strong) for t in label.lines)
    high = 12.0 * len(label.lines)
    return free_spot(label.at, (wide, high), taken, swept, toward=label.toward, room=label.room)


def free_spot(
    at: Xy, size: Xy, taken: Taken, swept: Taken, *, toward: Xy = (1.0, 0.0), room: Sequence[Xy] = ()
) -> Rect | None:
    """The nearest free box of a size beside a point, in its own room if it can; None if there is none."""
    spots = [(r, far) for r, far in _spots(at, size, toward) if taken.free(r)]
    ranked = [(far > 60, not _within(r, room), not swept.free(r), n) for n, (r, far) in enumerate(spots)]
    return spots[min(ranked)[-1]][0] if ranked else None


def inside(point: Xy, outline: Sequence[Xy]) -> bool:
    """Whether a point lies within a closed outline (even-odd rule)."""
    x, y = point
    within = False
    for i, (bx, by) in enumerate(outline):
        ax, ay = outline[i - 1]
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            within = not within
    return within


def _within(r: Rect, outline: Sequence[Xy]) -> bool:
    corners = ((r.left, r.top), (r.right, r.top), (r.right, r.bottom), (r.left, r.bottom))
    return all(inside(c, outline) for c in corners)


def _spots(at: Xy, size: Xy, toward: Xy) -> Iterator[tuple[Rect, float]]:
    """Candidate boxes around a point with their distance: nearest first, and first towards the room."""
    (x, y), (wide, high) = at, size
    facing = math.atan2(toward[1], toward[0])
    for ring in range(16):
        r = 11.0 + 8 * ring
        turns = range(0, 181, 45 if ring < 2 else 15)
        for turn in (t for half in turns for t in {half: 1, -half: 1}):
            a = facing + math.radians(turn)
            cx, cy = math.cos(a), math.sin(a)
            left = x + r * cx - wide * (1 - cx) / 2
            top = y + r * cy - high * (1 - cy) / 2
            yield Rect(left, top, left + wide, top + high), r


def _cells(r: Rect) -> Iterator[tuple[int, int]]:
    for i in range(int(r.left // _CELL), int(r.right // _CELL) + 1):
        for j in range(int(r.top // _CELL), int(r.bottom // _CELL) + 1):
            yield i, j
