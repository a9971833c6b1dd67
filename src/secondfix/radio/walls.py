"""The walls of a house as arrays, with their openings, in tiles; and on which side of its wall a site is."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House, Point
from secondfix.radio.crossing import Floats, Ints, Lines, along_wall_mm, lengths_mm
from secondfix.radio.sites import Sites, levels
from secondfix.radio.surfaces import Surface, opening_surface, openings_of, wall_surface

Cell = tuple[int, int, int]  # level, column, row
MOST_SQUARES = 100


@dataclass(frozen=True, slots=True, eq=False)
class Openings:
    """Openings of each wall (row), padded: near and far side along the wall, foot and head above datum.

    ``surface`` is -1 where there is none.
    """

    near_mm: Ints
    far_mm: Ints
    foot_mm: Ints
    head_mm: Ints
    surface: Ints


@dataclass(frozen=True, slots=True, eq=False)
class Walls:
    """Walls in the document's order; wall number n is surface number n."""

    lines: Lines
    level: Ints
    thickness_mm: Ints
    openings: Openings


def walls_of(house: House, assumptions: Assumptions) -> tuple[Walls, list[Surface]]:
    """The walls and their surfaces, openings' surfaces after those of the walls."""
    rank = {key: number for number, keys in levels(house).items() for key in keys}
    surfaces = [wall_surface(key, wall, assumptions) for key, wall in house.walls.items()]
    ends = np.array([(*w.from_mm, *w.to_mm) for w in house.walls.values()], np.int64).reshape(-1, 4)
    unknown_mm = assumptions.value("radio_wall_thickness_mm")
    thickness = [
        w.thickness_mm or (sum(s.thickness_mm for s in w.layers.value) if w.layers else unknown_mm)
        for w in house.walls.values()
    ]
    openings = _openings(house, assumptions, surfaces)
    return Walls(
        Lines(*(np.ascontiguousarray(column) for column in ends.T)),
        np.array([rank[w.storey] for w in house.walls.values()], np.int64),
        np.array(thickness, np.int64),
        openings,
    ), surfaces


def _openings(house: House, assumptions: Assumptions, surfaces: list[Surface]) -> Openings:
    number = {key: n for n, key in enumerate(house.walls)}
    rows: list[list[tuple[int, int, int, int, int]]] = [[] for _ in house.walls]
    for key, opening, door in openings_of(house):
        wall = house.walls[opening.wall]
        foot = house.storeys[wall.storey].level_mm + opening.sill_mm
        near = opening.along_mm
        rows[number[opening.wall]].append(
            (near, near + opening.width_mm, foot, foot + opening.height_mm, len(surfaces))
        )
        surfaces.append(opening_surface(key, opening, assumptions, door=door))
    most = max(map(len, rows), default=0)
    blank = (0, 0, 0, 0, -1)
    table = np.array([row + [blank] * (most - len(row)) for row in rows], np.int64)
    table = table.reshape(len(rows), most, 5)
    return Openings(*(np.ascontiguousarray(table[:, :, k]) for k in range(5)))


def through_openings(walls: Walls, wall: Ints, sight: Lines, z_mm: Floats) -> Ints:
    """The surface that each crossing really meets: an opening of the wall, or the wall itself.

    ``wall`` numbers the wall of each crossing, ``sight`` is its sight line, ``z_mm`` its height.
    Half-open: the near side and the foot belong to the opening, the far side and the head do not.
    """
    at = along_wall_mm(sight, walls.lines.take(wall))
    met = wall.copy()
    o = walls.openings
    for k in range(o.surface.shape[1]):
        beside = (at >= o.near_mm[wall, k]) & (at < o.far_mm[wall, k])
        level = (z_mm >= o.foot_mm[wall, k]) & (z_mm < o.head_mm[wall, k])
        inside = beside & level & (o.surface[wall, k] >= 0)
        met[inside] = o.surface[wall, k][inside]
    return met


class Tiles:
    """Walls by level and square of ``side_mm``: those near a stretch of the plan without asking all."""

    def __init__(self, walls: Walls, *, side_mm: int) -> None:
        self._side = side_mm
        self._cells: dict[Cell, list[int]] = {}
        self._endless: dict[int, list[int]] = {}  # by level: walls too long to be put into squares
        x1, x2 = np.minimum(walls.lines.x1, walls.lines.x2), np.maximum(walls.lines.x1, walls.lines.x2)
        y1, y2 = np.minimum(walls.lines.y1, walls.lines.y2), np.maximum(walls.lines.y1, walls.lines.y2)
        boxes = np.stack([x1, y1, x2, y2], axis=1) // side_mm
        for number, (box, level) in enumerate(zip(boxes.tolist(), walls.level.tolist(), strict=True)):
            if (box[2] - box[0] + 1) * (box[3] - box[1] + 1) > MOST_SQUARES:
                self._endless.setdefault(level, []).append(number)
                continue
            for column in range(box[0], box[2] + 1):
                for row in range(box[1], box[3] + 1):
                    self._cells.setdefault((level, column, row), []).append(number)

    def near(self, box_mm: tuple[int, int, int, int], level_range: range) -> Ints:
        """Numbers of walls that may touch the rectangle (x1, y1, x2, y2) on these levels, each once."""
        x1, y1, x2, y2 = (edge // self._side for edge in box_mm)
        found = [
            self._cells.get((level, column, row), [])
            for level in level_range
            for column in range(x1, x2 + 1)
            for row in range(y1, y2 + 1)
        ]
        found += [self._endless.get(level, []) for level in level_range]
        return np.array(sorted({n for numbers in found for n in numbers}), np.int64)


def settle_in_walls(house: House, sites: Sites, walls: Walls, tiles: Tiles) -> tuple[Ints, Ints, Ints]:
    """Move each site that stands inside a wall to the side of its own room: x, y, and the wall left over.

    A switch in a wall faces its room, so its own wall lies behind it. The third array numbers the wall
    of a site whose side the room's outline does not tell, else -1.
    """
    x, y = sites.x_mm.copy(), sites.y_mm.copy()
    left_over = np.full(len(x), -1, np.int64)
    rooms = list(house.rooms.values())
    for n in range(len(x)):
        at = (int(x[n]), int(y[n]))
        number = _wall_around(walls, tiles, at, int(sites.level[n]))
        if number < 0:
            continue
        outline = rooms[int(sites.room[n])].outline_mm
        moved = _room_side(walls, number, at, outline) if outline else None
        if moved is None:
            left_over[n] = number
        else:
            x[n], y[n] = moved
    return x, y, left_over


def _wall_around(walls: Walls, tiles: Tiles, at: Point, level: int) -> int:
    reach = int(walls.thickness_mm.max(initial=0)) // 2
    box = (at[0] - reach, at[1] - reach, at[0] + reach, at[1] + reach)
    near = tiles.near(box, range(level, level + 1))
    if not len(near):
        return -1
    away = _distance_mm(at, walls.lines.take(near))
    depth = walls.thickness_mm[near] / 2 - away
    best = int(np.argmax(depth))
    return int(near[best]) if depth[best] > 0 else -1


def _distance_mm(at: Point, lines: Lines) -> Floats:
    dx, dy = lines.x2 - lines.x1, lines.y2 - lines.y1
    share = ((at[0] - lines.x1) * dx + (at[1] - lines.y1) * dy) / (dx * dx + dy * dy)
    share = np.clip(share, 0.0, 1.0)
    out: Floats = np.hypot(at[0] - lines.x1 - share * dx, at[1] - lines.y1 - share * dy)
    return out


def _room_side(walls: Walls, number: int, at: Point, outline: Sequence[Point]) -> Point | None:
    line = walls.lines.take(np.array([number]))
    length = float(lengths_mm(line)[0])
    nx, ny = -float(line.y2[0] - line.y1[0]) / length, float(line.x2[0] - line.x1[0]) / length
    from_line = (at[0] - int(line.x1[0])) * nx + (at[1] - int(line.y1[0])) * ny
    step = float(walls.thickness_mm[number]) / 2 + 1
    inside = []
    for side in (step, -step):
        shift = side - from_line
        point = (round(at[0] + nx * shift), round(at[1] + ny * shift))
        if _encloses(outline, point):
            inside.append(point)
    return inside[0] if len(inside) == 1 else None


def _encloses(outline: Sequence[Point], p: Point) -> bool:
    inside = False
    for a, b in zip(outline, (*outline[1:], outline[0]), strict=True):
        if (a[1] > p[1]) != (b[1] > p[1]):
            turn = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
            inside ^= (turn > 0) == (b[1] > a[1])
    return inside
