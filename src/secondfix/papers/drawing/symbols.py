"""Our own symbols, drawn after the descriptions in IEC 60617 (clause numbers from memory).

Switch: a small circle with a slanted stroke and an end tick; two-way: two opposed strokes; dimmer: a
switch with a wedge; button: a circle in a circle; luminaire: a circle with a cross; socket: half a
circle on a stem; fan: a circle with two blades. Controller and repeater have no symbol there: ours.
"""

import math
from collections.abc import Callable

from secondfix.papers.drawing.canvas import Canvas, Rect, Xy
from secondfix.papers.palette import FITTING

SIZE = 8.0  # half the side of the square that every symbol keeps to

# What the legend says beside each, in its order.
SYMBOL_WORDS = {
    "switch": "switch in a wall box",
    "two_way": "switch with an extension, or the extension",
    "dimmer": "dimmer",
    "button": "button, scenes only",
    "box": "wall box, nothing chosen for it",
    "luminaire": "light point",
    "fan": "fan",
    "socket": "socket",
    "surface": "device on a surface",
    "controller": "controller",
    "repeater": "repeater",
}


def footprint(name: str, at: Xy, toward: Xy) -> Rect:
    """What a symbol covers on the sheet."""
    ahead = {"luminaire": 0.0, "fan": 0.0, "button": 0.0, "box": 0.0}.get(
        name, 6.0 if name != "two_way" else 10.0
    )
    x, y = _turned(at, toward, ahead, 0)
    if name in {"controller", "repeater"}:
        x, y = _turned(at, toward, 10, 0)
        return Rect(x - 8, y - 15, x + 8, y + 8)
    half = SIZE + (4 if name == "two_way" else 1)
    return Rect(x - half, y - half, x + half, y + half)


def draw_symbol(canvas: Canvas, name: str, at: Xy, toward: Xy = (0.0, -1.0)) -> None:
    """One symbol at a point; ``toward`` is the unit direction into the room (y downward)."""
    _DRAWN[name](canvas, at, toward)


def _turned(at: Xy, toward: Xy, along: float, aside: float) -> Xy:
    """A point ``along`` the direction and ``aside`` to its right."""
    return at[0] + along * toward[0] - aside * toward[1], at[1] + along * toward[1] + aside * toward[0]


def _stroke(canvas: Canvas, at: Xy, toward: Xy, angle: float) -> None:
    """A slanted stroke from the small circle, with its tick."""
    turn = math.radians(angle)
    way = (
        toward[0] * math.cos(turn) - toward[1] * math.sin(turn),
        toward[0] * math.sin(turn) + toward[1] * math.cos(turn),
    )
    end = _turned(at, way, 12, 0)
    canvas.line(_turned(at, way, 2.6, 0), end, weight=1.1)
    canvas.line(end, _turned(end, way, 0, 4 if angle > 0 else -4), weight=1.1)


def _dot(canvas: Canvas, at: Xy) -> None:
    canvas.circle(at, 2.6, weight=1.1, fill=canvas.palette.paper)


def _switch(canvas: Canvas, at: Xy, toward: Xy) -> None:
    _stroke(canvas, at, toward, 30)
    _dot(canvas, at)


def _two_way(canvas: Canvas, at: Xy, toward: Xy) -> None:
    middle = _turned(at, toward, 10, 0)
    _stroke(canvas, middle, toward, 55)
    _stroke(canvas, middle, (-toward[0], -toward[1]), 55)
    _dot(canvas, middle)


def _dimmer(canvas: Canvas, at: Xy, toward: Xy) -> None:
    _switch(canvas, at, toward)
    wedge = [_turned(at, toward, 4, -6), _turned(at, toward, 12, -8), _turned(at, toward, 12, -3)]
    canvas.polygon(wedge, weight=FITTING)


def _button(canvas: Canvas, at: Xy, toward: Xy) -> None:
    del toward
    canvas.circle(at, 5.5, fill=canvas.palette.paper)
    canvas.circle(at, 2.4, weight=0, fill=canvas.palette.ink)


def _box(canvas: Canvas, at: Xy, toward: Xy) -> None:
    del toward
    canvas.circle(at, 4.5, weight=1.1, fill=canvas.palette.paper)


def _luminaire(canvas: Canvas, at: Xy, toward: Xy) -> None:
    del toward
    canvas.circle(at, 6.5, fill=canvas.palette.paper)
    d = 6.5 * math.sqrt(0.5)
    for s in (1, -1):
        canvas.line((at[0] - d, at[1] - s * d), (at[0] + d, at[1] + s * d))


def _fan(canvas: Canvas, at: Xy, toward: Xy) -> None:
    del toward
    x, y = at
    canvas.circle(at, 6.5, fill=canvas.palette.paper)
    canvas.path(
        f"M{x:.2f} {y:.2f}c2 -3.4 4.2 -3.4 4.8 0c-.6 3.4 -2.8 3.4 -4.8 0"
        "c-2 -3.4 -4.2 -3.4 -4.8 0c.6 3.4 2.8 3.4 4.8 0z"
    )


def _socket(canvas: Canvas, at: Xy, toward: Xy) -> None:
    """Half a circle that opens to the room, on a stem from the wall."""
    a, b = _turned(at, toward, 9, -6), _turned(at, toward, 9, 6)
    canvas.line(at, _turned(at, toward, 3, 0), weight=1.1)
    canvas.path(f"M{a[0]:.2f} {a[1]:.2f}A6 6 0 0 0 {b[0]:.2f} {b[1]:.2f}", weight=1.1)


def _surface(canvas: Canvas, at: Xy, toward: Xy) -> None:
    x, y = _turned(at, toward, 6, 0)
    canvas.polygon([(x - 4.5, y - 4.5), (x + 4.5, y - 4.5), (x + 4.5, y + 4.5), (x - 4.5, y + 4.5)])


def _aerial(canvas: Canvas, at: Xy) -> None:
    x, y = at
    canvas.line((x, y), (x, y - 8))
    canvas.path(f"M{x - 4:.2f} {y - 11:.2f}L{x:.2f} {y - 6:.2f}L{x + 4:.2f} {y - 11:.2f}")


def _controller(canvas: Canvas, at: Xy, toward: Xy) -> None:
    x, y = _turned(at, toward, 10, 0)
    square = [(x - 7, y - 3), (x + 7, y - 3), (x + 7, y + 7), (x - 7, y + 7)]
    canvas.polygon(square, weight=1.1, fill=canvas.palette.ink)
    _aerial(canvas, (x, y - 3))


def _repeater(canvas: Canvas, at: Xy, toward: Xy) -> None:
    x, y = _turned(at, toward, 10, 0)
    square = [(x - 7, y - 3), (x + 7, y - 3), (x + 7, y + 7), (x - 7, y + 7)]
    canvas.polygon(square, weight=1.1, fill=canvas.palette.paper)
    _aerial(canvas, (x, y - 3))


_DRAWN: dict[str, Callable[[Canvas, Xy, Xy], None]] = {
    "switch": _switch,
    "two_way": _two_way,
    "dimmer": _dimmer,
    "button": _button,
    "box": _box,
    "luminaire": _luminaire,
    "fan": _fan,
    "socket": _socket,
    "surface": _surface,
    "controller": _controller,
    "repeater": _repeater,
}
