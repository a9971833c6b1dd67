"""The legend of a plan: only what stands on the sheet, with the north arrow and the scale bar."""

from collections.abc import Callable, Sequence
from functools import partial

from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, text_width, wrapped
from secondfix.papers.drawing.keynotes import SHAPE_WORDS, draw_mark
from secondfix.papers.drawing.structure import PX_PER_PAPER_MM, WALL_WORDS
from secondfix.papers.drawing.symbols import SYMBOL_WORDS, draw_symbol
from secondfix.papers.palette import FITTING, LABEL, LEADER, WALL
from secondfix.terms import said

Row = tuple[Callable[[Canvas, Xy], None], str]  # what draws the sample, and its words

LEGEND_WIDTH = 216.0
_COLUMN, _PITCH, _HEAD = 246.0, 25.0, 40.0
_RAISED = {
    "two_way": 6.0,
    "switch": 6.0,
    "dimmer": 6.0,
    "socket": 6.0,
    "surface": 6.0,
    "controller": 10.0,
    "repeater": 10.0,
}
_MM_PER_FOOT = 304.8
_METRES = (1, 2, 5, 10, 20, 50)
_DOOR, _COUNT, _FEED = "door", "count", "feed"
_WORDS = {
    **SYMBOL_WORDS,
    **WALL_WORDS,
    _DOOR: "door; the side it hangs on is not surveyed",
    _COUNT: "gangs of a box",
    _FEED: "beneath a light point: the gang that feeds it",
    **{shape: words.lower() for shape, words in SHAPE_WORDS.items() if shape != "passes"},
}


def legend_rows(symbols: set[str], walls: set[str], shapes: set[str], *, doors: bool) -> list[str]:
    """Which rows the legend needs, in the order of the symbols, walls and shapes it knows."""
    wanted = symbols | walls | shapes | ({_DOOR} if doors else set()) | {_COUNT}
    wanted |= {_FEED} if symbols & {"luminaire", "fan"} else set()
    return [key for key in _WORDS if key in wanted]


def legend_height(rows: int, *, width: float) -> float:
    """How much a legend of so many rows needs beneath a plan; each row may take two lines."""
    columns = max(int(width // _COLUMN), 1)
    return _HEAD + _PITCH * -(-rows // columns) + 10


def draw_legend(canvas: Canvas, rows: Sequence[str], at: Rect, *, nec: bool) -> float:
    """As many columns as the width holds; returns how far down it reaches."""
    return draw_rows(canvas, [(partial(_draw_sample, key=k), said(_WORDS[k], nec=nec)) for k in rows], at)


def draw_rows(canvas: Canvas, rows: Sequence[Row], at: Rect) -> float:
    """Samples with their words under the legend's head; returns how far down it reaches."""
    columns = max(int((at.right - at.left) // _COLUMN), 1)
    each = -(-len(rows) // columns)
    canvas.text((at.left, at.top + 14), "Legend", strong=True)
    x, y = at.left + 66, at.top
    canvas.path(f"M{x:.2f} {y + 18:.2f}v-18m-3.5 8l3.5 -9l3.5 9", weight=LEADER)
    canvas.text((x + 8, y + 14), "N", size=LABEL)
    for n, (draw, words) in enumerate(rows):
        column, row = divmod(n, each)
        left, top = at.left + _COLUMN * column, at.top + _HEAD + _PITCH * row
        draw(canvas, (left, top))
        lines = wrapped(words, width=LEGEND_WIDTH - 40, size=LABEL)
        for k, line in enumerate(lines):
            above = 5 if len(lines) > 1 else 0
            canvas.text((left + 34, top + 3 + 12 * k - above), line, size=LABEL)
    return at.top + _HEAD + _PITCH * each


def plan_row(key: str, *, nec: bool) -> Row:
    """A row of a plan's own legend, for another drawing over a plan."""
    return partial(_draw_sample, key=key), said(_WORDS[key], nec=nec)


def _draw_sample(canvas: Canvas, at: Xy, *, key: str) -> None:
    left, y = at
    p = canvas.palette
    if key in SYMBOL_WORDS:
        draw_symbol(canvas, key, (left + 12, y + _RAISED.get(key, 0.0)))
    elif key in WALL_WORDS:
        corners = [(left, y - 6), (left + 24, y - 6), (left + 24, y + 4), (left, y + 4)]
        if key in {"masonry", "light"}:
            canvas.polygon(corners, weight=0, fill=f"url(#{key})")
        canvas.polygon(corners, weight=WALL, dash="5 3" if key == "unmeasured" else "")
    elif key in SHAPE_WORDS:
        draw_mark(canvas, (left + 12, y - 1), key, 1)
    elif key == _DOOR:
        canvas.path(f"M{left + 4:.2f} {y + 6:.2f}v-14", weight=FITTING)
        canvas.path(f"M{left + 4:.2f} {y - 8:.2f}a14 14 0 0 1 14 14", weight=LEADER, colour=p.line)
    else:
        sample = "×2" if key == _COUNT else "B01.1"
        shade = p.ink if key == _COUNT else p.soft
        canvas.text(
            (left + 12, y + 3), sample, size=LABEL, colour=shade, strong=key == _COUNT, anchor="middle"
        )


def draw_scale_bar(canvas: Canvas, scale: int, at: Xy, *, nec: bool) -> None:
    """A bar of a round number of metres, or of feet where the house follows NFPA 70."""
    unit, mm, steps = ("ft", _MM_PER_FOOT, (2, 5, 10, 20, 50, 100)) if nec else ("m", 1000.0, _METRES)
    px = mm * PX_PER_PAPER_MM / scale
    count = next((n for n in steps if n * px >= 70), 2 * steps[-1])
    x, y = at
    end = x + count * px
    soft, words = canvas.palette.soft, f"{count} {unit}"
    canvas.line((x, y), (end, y), weight=WALL)
    for place in (x, (x + end) / 2, end):
        canvas.line((place, y - 4), (place, y + 4), weight=WALL)
    canvas.text((x, y + 15), "0", size=LABEL, colour=soft)
    canvas.text((end, y + 15), words, size=LABEL, colour=soft, anchor="middle")
    canvas.text((end + text_width(words, LABEL), y + 4), f"1:{scale}", size=LABEL, colour=soft)
