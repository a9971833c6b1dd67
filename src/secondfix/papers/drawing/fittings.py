"""Light points, sockets and devices on a wall: small, at their true place, labelled where there is room."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from secondfix.papers.drawing.canvas import Canvas, Rect, text_width, wrapped
from secondfix.papers.drawing.symbols import draw_symbol
from secondfix.papers.palette import FITTING, LABEL

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


def draw_fittings(canvas: Canvas, fittings: Sequence[Fitting], taken: Sequence[Rect], wall: Rect) -> None:
    """Each with its label above, below or beside; where none of these is free, its id alone.

    ``taken`` are the plates with what belongs to them: drawn later, over a fitting on the same spot.
    """
    full = [*taken, *(f.body for f in fittings)]
    for fitting in fittings:
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


def _spots(fitting: Fitting, wall: Rect) -> Iterator[tuple[list[str], Rect]]:
    for words in (fitting.words, fitting.id):
        lines = wrapped(words, width=_WIDEST, size=LABEL)
        half = max(text_width(t, LABEL) for t in lines) / 2 + 1
        high = _LINE * len(lines)
        middle = max(min(fitting.x, wall.right - half - 3), wall.left + half + 3)
        above = fitting.y - _HALF - 2 - high
        if above > wall.top:
            yield lines, Rect(middle - half, above, middle + half, above + high)
        below = fitting.y + _HALF + 2
        if below + high < wall.bottom:
            yield lines, Rect(middle - half, below, middle + half, below + high)
        for left in (fitting.x + _HALF + 3, fitting.x - _HALF - 3 - 2 * half):
            yield lines, Rect(left, fitting.y - high / 2, left + 2 * half, fitting.y + high / 2)
