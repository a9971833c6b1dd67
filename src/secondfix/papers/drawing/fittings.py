"""Light points, sockets and devices on a wall: small, at their true place, labelled where there is room."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from secondfix.papers.drawing.canvas import Canvas, Rect, text_width, wrapped
from secondfix.papers.drawing.plates import Plate
from secondfix.papers.drawing.symbols import draw_symbol
from secondfix.papers.palette import FITTING, LABEL, LEADER

_HALF, _LINE, _WIDEST = 6.0, 12.0, 120.0


@dataclass(frozen=True, slots=True)
class Fitting:
    """Something on the wall that is no wall box."""

    id: str
    words: str
    x: float
    y: float
    lamp: bool

    @property
    def body(self) -> Rect:
        """The symbol."""
        return Rect(self.x - _HALF, self.y - _HALF, self.x + _HALF, self.y + _HALF)


def draw_fittings(canvas: Canvas, fittings: Sequence[Fitting], plates: Sequence[Plate], wall: Rect) -> None:
    """Each with its label above, below or beside; where none of these is free, its id alone.

    What a plate, being larger than scale, would cover steps out to its side, on a short line.
    """
    placed = [_beside(f, plates, wall) for f in fittings]
    for true, fitting in zip(fittings, placed, strict=True):
        if true.x != fitting.x:
            canvas.line((true.x, true.y), (fitting.x, fitting.y), weight=LEADER)
    full = [*(p.footprint for p in plates), *(f.body for f in placed)]
    for fitting in placed:
        if fitting.lamp:
            draw_symbol(canvas, "luminaire", (fitting.x, fitting.y))
        else:
            canvas.rect(fitting.body, weight=FITTING, fill=canvas.palette.paper)
        spots = [(lines, r) for lines, r in _spots(fitting, wall)]
        lines, at = next(
            ((t, r) for t, r in spots if not any(r.meets(o, 1) for o in full if o != fitting.body)), spots[-1]
        )
        full.append(at)
        for n, line in enumerate(lines):
            middle = ((at.left + at.right) / 2, at.top + 9.5 + _LINE * n)
            canvas.text(middle, line, size=LABEL, anchor="middle", halo=True)


def _beside(fitting: Fitting, plates: Sequence[Plate], wall: Rect) -> Fitting:
    covering = [p.body for p in plates if p.body.meets(fitting.body)]
    if not covering:
        return fitting
    left, right = min(b.left for b in covering) - 10, max(b.right for b in covering) + 10
    fits = [x for x in (right, left) if wall.left + _HALF < x < wall.right - _HALF] or [right]
    return replace(fitting, x=min(fits, key=lambda x: abs(x - fitting.x)))


def _spots(fitting: Fitting, wall: Rect) -> Iterator[tuple[list[str], Rect]]:
    for words in (fitting.words, fitting.id):
        lines = wrapped(words, width=_WIDEST, size=LABEL)
        half = max(text_width(t, LABEL) for t in lines) / 2 + 1
        high = _LINE * len(lines)
        middle = max(min(fitting.x, wall.right - half - 3), wall.left + half + 3)
        above, below = fitting.y - _HALF - 2 - high, fitting.y + _HALF + 2
        if above > wall.top:
            yield lines, Rect(middle - half, above, middle + half, above + high)
        if below + high < wall.bottom:
            yield lines, Rect(middle - half, below, middle + half, below + high)
        for left in (fitting.x + _HALF + 3, fitting.x - _HALF - 3 - 2 * half):
            if wall.left < left and left + 2 * half < wall.right:
                yield lines, Rect(left, fitting.y - high / 2, left + 2 * half, fitting.y + high / 2)
    yield [fitting.id], Rect(middle - half, above, middle + half, above + _LINE)
