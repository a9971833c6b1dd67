"""Walls, doors and windows of one storey on the plan."""

import math
from collections.abc import Callable
from dataclasses import dataclass

from secondfix.house import House, Opening, Wall, opening_ends
from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.palette import FITTING, LEADER, WALL
from secondfix.terms import LayerMaterial

NOMINAL_MM = 100
PX_PER_PAPER_MM = 96 / 25.4
_MASONRY = {LayerMaterial.BRICK, LayerMaterial.CONCRETE, LayerMaterial.MARBLE}
WALL_WORDS = {
    "masonry": "wall with brick, concrete or stone",
    "light": "wall of light layers",
    "unknown": "wall, layers not known",
    "unmeasured": "wall, thickness not known",
}


@dataclass(frozen=True, slots=True)
class View:
    """From millimetres of the house to units of the sheet; y turns over."""

    left_mm: float
    top_mm: float
    px_per_mm: float
    left: float
    top: float

    def __call__(self, x_mm: float, y_mm: float) -> Xy:
        """A point of the house on the sheet."""
        return self.left + (x_mm - self.left_mm) * self.px_per_mm, self.top + (
            self.top_mm - y_mm
        ) * self.px_per_mm


def wall_class(wall: Wall) -> str:
    """Which legend row a wall belongs to."""
    if wall.thickness_mm is None and wall.layers is None:
        return "unmeasured"
    if wall.layers is None:
        return "unknown"
    return "masonry" if any(layer.material in _MASONRY for layer in wall.layers.value) else "light"


def thickness_mm(wall: Wall) -> int:
    """Measured, else the sum of the layers, else nominal (drawn broken)."""
    if wall.thickness_mm is not None:
        return wall.thickness_mm
    return sum(layer.thickness_mm for layer in wall.layers.value) if wall.layers else NOMINAL_MM


def draw_hatches(canvas: Canvas) -> None:
    """The two hatches, in the sheet's own grid so that joined walls share their lines."""
    gaps: tuple[tuple[str, int, float], ...] = (("masonry", 45, 4.5), ("light", 0, 7.0))
    for name, turn, gap in gaps:
        stroke = f'<path d="M0 0V{gap}" stroke="{canvas.palette.line}" stroke-width="0.7"/>'
        canvas.parts.append(
            f'<pattern id="{name}" width="{gap}" height="{gap}" patternUnits="userSpaceOnUse" '
            f'patternTransform="rotate({turn})">{stroke}</pattern>'
        )


def draw_walls(canvas: Canvas, house: House, storey_id: str, view: View) -> None:
    """Outlines first, bodies over them, thin walls before thick: corners and joints come out clean."""
    walls = [w for w in house.walls.values() if w.storey == storey_id and w.from_mm != w.to_mm]
    bodies = sorted(((w, _body(w, walls)) for w in walls), key=lambda item: thickness_mm(item[0]))
    for wall, body in bodies:
        dash = "5 3" if wall_class(wall) == "unmeasured" else ""
        canvas.polygon([view(*p) for p in body], weight=2 * WALL, dash=dash)
    for wall, body in bodies:
        places = [view(*p) for p in body]
        canvas.polygon(places, weight=0, fill=canvas.palette.paper)
        if wall_class(wall) in {"masonry", "light"}:
            canvas.polygon(places, weight=0, fill=f"url(#{wall_class(wall)})")


def _body(wall: Wall, walls: list[Wall]) -> list[Xy]:
    """The wall's four corners, run on into a wall that it meets by that wall's half thickness."""
    (ax, ay), (bx, by) = wall.from_mm, wall.to_mm
    length = math.dist(wall.from_mm, wall.to_mm)
    ux, uy = (bx - ax) / length, (by - ay) / length
    half = thickness_mm(wall) / 2
    near = _run_on(wall.from_mm, (-ux, -uy), wall, walls)
    far = _run_on(wall.to_mm, (ux, uy), wall, walls)
    start, end = (ax - ux * near, ay - uy * near), (bx + ux * far, by + uy * far)
    return _band(start, end, -uy * half, ux * half)


def _band(a: Xy, b: Xy, sx: float, sy: float) -> list[Xy]:
    """The four corners of a line from ``a`` to ``b`` given its body on both sides."""
    return [(a[0] + sx, a[1] + sy), (b[0] + sx, b[1] + sy), (b[0] - sx, b[1] - sy), (a[0] - sx, a[1] - sy)]


def _run_on(end: Xy, outward: Xy, wall: Wall, walls: list[Wall]) -> float:
    """How much further the end must go to reach the far face of the wall it meets; nothing if it is there."""
    missing = [0.0]
    for other in walls:
        half = thickness_mm(other) / 2
        foot = _foot(end, other)
        if other is not wall and math.dist(end, foot) <= half + 1:
            past = (end[0] - foot[0]) * outward[0] + (end[1] - foot[1]) * outward[1]
            missing.append(half - past)
    return max(missing)


def _foot(point: Xy, wall: Wall) -> Xy:
    """The nearest point of a wall's centre line."""
    (ax, ay), (bx, by) = wall.from_mm, wall.to_mm
    square = (bx - ax) ** 2 + (by - ay) ** 2
    t = min(max(((point[0] - ax) * (bx - ax) + (point[1] - ay) * (by - ay)) / square, 0.0), 1.0)
    return ax + t * (bx - ax), ay + t * (by - ay)


def draw_openings(canvas: Canvas, house: House, storey_id: str, view: View) -> None:
    """Doors with leaf and arc, drawn as hung at the wall's start (it is not surveyed); windows with glass."""
    kinds: tuple[tuple[dict[str, Opening], Callable[[Canvas, View, Wall, Opening], None]], ...] = (
        (house.doors, _draw_door),
        (house.windows, _draw_window),
    )
    for openings, draw in kinds:
        for opening in openings.values():
            wall = house.walls[opening.wall]
            if wall.storey == storey_id and wall.from_mm != wall.to_mm:
                draw(canvas, view, wall, opening)


def _gap(canvas: Canvas, view: View, wall: Wall, opening: Opening) -> list[Xy]:
    """Clear the wall between the jambs and draw these; returns the four corners on the sheet."""
    (ax, ay), (bx, by) = opening_ends(wall, opening)
    length = math.dist((ax, ay), (bx, by))
    half = thickness_mm(wall) / 2
    sx, sy = -(by - ay) / length * half, (bx - ax) / length * half
    corners = [(ax + sx, ay + sy), (bx + sx, by + sy), (bx - sx, by - sy), (ax - sx, ay - sy)]
    on_sheet = [view(*c) for c in corners]
    canvas.polygon(on_sheet, weight=2 * WALL + 0.4, colour=canvas.palette.paper, fill=canvas.palette.paper)
    canvas.line(on_sheet[0], on_sheet[3], weight=WALL)
    canvas.line(on_sheet[1], on_sheet[2], weight=WALL)
    return on_sheet


def swing(a: Xy, b: Xy) -> list[Xy]:
    """From the open leaf's edge back to the far jamb, in steps; ``a`` is the jamb it is drawn to hang on.

    The leaf stands square to the wall, on its left face.
    """
    out = []
    for n in range(13):
        turn = math.radians(90 - 7.5 * n)
        along, aside = math.cos(turn), math.sin(turn)
        dx, dy = b[0] - a[0], b[1] - a[1]
        out.append((a[0] + along * dx + aside * dy, a[1] + along * dy - aside * dx))
    return out


def _draw_door(canvas: Canvas, view: View, wall: Wall, opening: Opening) -> None:
    a, b, _, _ = _gap(canvas, view, wall, opening)
    radius = math.dist(a, b)
    leaf = swing(a, b)[0]
    canvas.line(a, leaf, weight=FITTING)
    canvas.path(
        f"M{leaf[0]:.2f} {leaf[1]:.2f}A{radius:.2f} {radius:.2f} 0 0 1 {b[0]:.2f} {b[1]:.2f}",
        weight=LEADER,
        colour=canvas.palette.line,
    )


def _draw_window(canvas: Canvas, view: View, wall: Wall, opening: Opening) -> None:
    a, b, c, d = _gap(canvas, view, wall, opening)
    for t in (0.0, 0.42, 0.58, 1.0):
        canvas.line(
            (a[0] + (d[0] - a[0]) * t, a[1] + (d[1] - a[1]) * t),
            (b[0] + (c[0] - b[0]) * t, b[1] + (c[1] - b[1]) * t),
            weight=WALL if t in {0.0, 1.0} else LEADER,
        )
