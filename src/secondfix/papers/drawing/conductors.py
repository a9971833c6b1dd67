"""The conductors of a light worked from several places, as found and after: points in a row, cores between.

Nothing is told by colour. Each core bears its number in the table beside the drawing; a bar at both ends
is a cap, a star a core to re-mark.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from secondfix.electrical import Drawn, DrawnCore, DrawnPoint
from secondfix.papers.drawing.canvas import Canvas, Rect, text_width, wrapped
from secondfix.papers.palette import FITTING, LABEL, LEADER, PLATE, TEXT, Palette

_POINT, _LEAST_RUN = 120.0, 150.0  # widths of a point and of the run to the next one
_ROW, _HEAD, _FOOT = 24.0, 20.0, 12.0  # a core's row, the line above a half, the gap beneath it
_CAP_GAP, _CAP_HALF = 12.0, 5.0
_LAMP = 8.0


@dataclass(frozen=True, slots=True)
class ConductorPicture:
    """One drawing; a long row of points is cut into several, the last point of one begins the next."""

    svg: str
    width: float
    height: float
    alt: str


def conductor_pictures(
    picture: Drawn, *, palette: Palette, width: float, say: Callable[[str], str]
) -> list[ConductorPicture]:
    """The drawings of one conversion, none wider than ``width`` (units of 1/96 inch).

    ``say`` turns the labels into the house's own words.
    """
    each = max(int((width - _POINT - 2) // (_POINT + _LEAST_RUN)), 1)
    points = picture.points
    starts = range(0, max(len(points) - 1, 1), each)
    return [_one(picture, points[i : i + each + 1], palette=palette, width=width, say=say) for i in starts]


def _one(
    picture: Drawn,
    points: Sequence[DrawnPoint],
    *,
    palette: Palette,
    width: float,
    say: Callable[[str], str],
) -> ConductorPicture:
    ids = [p.id for p in points]
    runs = [[c for c in picture.cores if (c.a, c.b) == pair] for pair in pairwise(ids)]
    run = min((width - _POINT - 2) / max(len(points) - 1, 1), 2 * _LEAST_RUN + _POINT)
    words = [_point_lines(p, after=after, say=say) for p in points for after in (False, True)]
    high = max(
        max((len(r) for r in runs), default=0) * _ROW + 14,
        max(len(lines) for lines in words) * 15 + 12.0 + 2 * _LAMP + 6,
    )
    canvas = Canvas(palette)
    top = 0.0
    for after in (False, True):
        canvas.text((0, top + 13), "After" if after else "As found", size=TEXT, strong=True)
        top += _HEAD
        for i, point in enumerate(points):
            left = 1 + i * run
            _draw_point(canvas, point, Rect(left, top, left + _POINT, top + high), after=after, say=say)
            for row, core in enumerate(runs[i] if i < len(runs) else ()):
                x1, x2 = left + _POINT, 1 + (i + 1) * run
                _draw_core(canvas, core, (x1, x2), top + _ROW * (row + 1), after=after, say=say)
        top += high + _FOOT
    wide = (len(points) - 1) * run + _POINT + 2
    title = say(picture.title)
    ends = f"{say(points[0].words)} to {say(points[-1].words)}"
    alt = f"{title}: conductors as found and after, {ends}"
    svg = canvas.svg(width=wide, height=top, title=title, says=alt)
    return ConductorPicture(svg, wide, top, alt)


def _point_lines(point: DrawnPoint, *, after: bool, say: Callable[[str], str]) -> list[tuple[str, bool]]:
    """Lines of words in a point, and which are strong."""
    told = [(point.words, True), (point.after if after else point.before, False)]
    if point.supplied:
        told.append(("supply comes in here", False))
    width = _POINT - 12
    return [
        (line, strong) for words, strong in told for line in wrapped(say(words), width=width, strong=strong)
    ]


def _draw_point(
    canvas: Canvas, point: DrawnPoint, at: Rect, *, after: bool, say: Callable[[str], str]
) -> None:
    canvas.rect(at, weight=PLATE)
    y = at.top + 16
    for line, strong in _point_lines(point, after=after, say=say):
        canvas.text((at.left + 7, y), line, size=LABEL if not strong else TEXT, strong=strong)
        y += 15
    if point.before == "lamp":
        _draw_lamp(canvas, (at.left + 7 + _LAMP, at.bottom - 7 - _LAMP))


def _draw_lamp(canvas: Canvas, at: tuple[float, float]) -> None:
    """A circle with a cross: a lamp, after the description in IEC 60617 (from memory)."""
    x, y = at
    arm = _LAMP * 0.7071
    canvas.circle(at, _LAMP, weight=FITTING)
    canvas.line((x - arm, y - arm), (x + arm, y + arm))
    canvas.line((x - arm, y + arm), (x + arm, y - arm))


def _draw_core(
    canvas: Canvas,
    core: DrawnCore,
    ends: tuple[float, float],
    y: float,
    *,
    after: bool,
    say: Callable[[str], str],
) -> None:
    x1, x2 = ends
    capped = after and core.capped
    if capped:
        x1, x2 = x1 + _CAP_GAP, x2 - _CAP_GAP
    canvas.line((x1, y), (x2, y), weight=LEADER if capped else 1.0)
    for x in (x1, x2) if capped else ():
        canvas.line((x, y - _CAP_HALF), (x, y + _CAP_HALF), weight=2.0)
    label = core.after if after else core.before
    words = f"{say(label)} *" if after and core.marked else say(label)
    strong = after and core.marked
    number = str(core.number)
    left = ends[0] + _CAP_GAP + 4
    canvas.text((left, y - 5), number, strong=True)
    canvas.text((left + text_width(number, strong=True) + 6, y - 5), words, strong=strong)
