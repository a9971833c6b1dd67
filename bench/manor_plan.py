"""The building of a manor: storeys cut into rooms of different size, walls of different make, openings."""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from typing import Any

Layers = tuple[tuple[str, int], ...]

OUTER: tuple[Layers, ...] = (
    (("brick", 100), ("air", 75), ("brick", 112), ("plasterboard", 13)),
    (("concrete", 180), ("plasterboard", 20)),
    (("brick", 300),),
)
HEAVY: tuple[Layers, ...] = ((("brick", 120),), (("brick", 220),), (("concrete", 140),), (("concrete", 200),))
LIGHT: tuple[Layers, ...] = (
    (("plasterboard", 13), ("air", 74), ("plasterboard", 13)),
    (("plasterboard", 25), ("air", 50), ("plasterboard", 25)),
    (("wood", 40),),
    (("chipboard", 18), ("air", 44), ("chipboard", 18)),
)
FLOORS: tuple[Layers, ...] = (
    (("concrete", 160),),
    (("chipboard", 22), ("air", 200), ("plasterboard", 12)),
    (("floorboard", 22), ("air", 180), ("plasterboard", 26)),
)
PANES: tuple[Layers, ...] = ((("glass", 4), ("air", 16), ("glass", 4)), (("glass", 6),))
LEAVES: tuple[Layers, ...] = ((("wood", 40),), (("wood", 38),), (("glass", 8),), (("metal", 2),))
GRID_MM = 10
LEAST_MM = 2200  # the narrower side of a room
SPARE_MM = 250  # between an opening and a corner


def surveyed(value: object, known: str = "measured") -> dict[str, object]:
    """A value as somebody found it."""
    return {"value": value, "known": known}


def layers_of(layers: Layers) -> dict[str, object]:
    """Layers as the document holds them."""
    return surveyed([{"material": material, "thickness_mm": mm} for material, mm in layers])


@dataclass
class Line:
    """A wall along x or y, and the stretches of it that corners and openings have taken."""

    id: str
    along: str
    at: int
    start: int
    end: int
    thick: int
    outer: bool
    taken: list[tuple[int, int]] = field(default_factory=list)

    def free(self, low: int, high: int, wide: int, rng: random.Random) -> int | None:
        """Where a stretch of this width may begin between two coordinates; None if no try finds room."""
        for _ in range(8):
            if high - low < wide + 2 * SPARE_MM:
                return None
            at = rng.randrange(low + SPARE_MM, high - SPARE_MM - wide + 1, GRID_MM)
            if all(at + wide <= a or at >= b for a, b in self.taken):
                return at
        return None


@dataclass
class Cell:
    """A room between four centre lines: left, low, right, high."""

    x1: int
    y1: int
    x2: int
    y2: int
    sides: tuple[Line, Line, Line, Line]

    def outline(self) -> list[list[int]]:
        left, low, right, high = (side.thick // 2 for side in self.sides)
        x1, y1, x2, y2 = self.x1 + left, self.y1 + low, self.x2 - right, self.y2 - high
        return [[x1, y1], [x2, y1], [x2, y2], [x1, y2]]


class Building:
    """Storeys, rooms, walls and openings of a house, drawn with one generator."""

    def __init__(self, rng: random.Random, *, storeys: int, rooms: int) -> None:
        self.rng = rng
        self.parts: dict[str, dict[str, Any]] = {
            key: {} for key in ("storeys", "rooms", "walls", "doors", "windows")
        }
        self.cells: dict[str, Cell] = {}
        self.height_mm = rng.choice((2400, 2500, 2620, 2800))
        area = rng.uniform(13e6, 19e6) * rooms / storeys
        wide = int((area * rng.uniform(1.1, 1.9)) ** 0.5) // GRID_MM * GRID_MM
        deep = int(area / wide) // GRID_MM * GRID_MM
        outer = rng.choice(OUTER)
        for n in range(storeys):
            self._storey(n, wide, deep, outer, rooms // storeys + (n < rooms % storeys))

    def _storey(self, n: int, wide: int, deep: int, outer: Layers, rooms: int) -> None:
        key = f"S{n}"
        storey = {"name": f"Storey {n}", "level_mm": (self.height_mm + 270) * n, "height_mm": self.height_mm}
        if n and self.rng.random() < 0.9:
            storey["floor"] = layers_of(self.rng.choice(FLOORS))
        self.parts["storeys"][key] = storey
        left, right = (self._wall(key, "y", at, (0, deep), outer, outside=True) for at in (0, wide))
        low, high = (self._wall(key, "x", at, (0, wide), outer, outside=True) for at in (0, deep))
        begun = len(self.cells)
        self._cut(key, Cell(0, 0, wide, deep, (left, low, right, high)), rooms, depth=0)
        for room in list(self.cells)[begun:]:
            self._open(room)

    def _wall(
        self, storey: str, along: str, at: int, span: tuple[int, int], made: Layers, *, outside: bool
    ) -> Line:
        key = f"W{len(self.parts['walls']) + 1}"
        thick, (start, end) = sum(mm for _, mm in made), span
        ends = ([start, at], [end, at]) if along == "x" else ([at, start], [at, end])
        wall = {"storey": storey, "from_mm": ends[0], "to_mm": ends[1], "thickness_mm": thick}
        if self.rng.random() > 0.04:
            wall["layers"] = layers_of(made)
        self.parts["walls"][key] = wall
        return Line(key, along, at, start, end, thick, outside)

    def _cut(self, storey: str, cell: Cell, rooms: int, *, depth: int) -> None:
        """Cut a cell across its longer side until it is so many rooms, or too narrow to be cut."""
        across_x = cell.x2 - cell.x1 >= cell.y2 - cell.y1
        low, high = (cell.x1, cell.x2) if across_x else (cell.y1, cell.y2)
        if rooms < 2 or high - low < 2 * LEAST_MM:
            self.cells[f"R{len(self.cells) + 1}"] = cell
            self.parts["rooms"][f"R{len(self.cells)}"] = {
                "name": f"Room {len(self.cells)}",
                "storey": storey,
                "outline_mm": cell.outline(),
            }
            return
        first = max(1, min(rooms - 1, round(rooms * self.rng.uniform(0.35, 0.65))))
        at = low + int((high - low) * first / rooms * self.rng.uniform(0.7, 1.3))
        at = min(max(at, low + LEAST_MM), high - LEAST_MM) // GRID_MM * GRID_MM
        made = self.rng.choice(HEAVY if self.rng.random() < 0.9 - 0.15 * depth else LIGHT)
        left, bottom, right, top = cell.sides
        span = (cell.y1, cell.y2) if across_x else (cell.x1, cell.x2)
        wall = self._wall(storey, "y" if across_x else "x", at, span, made, outside=False)
        for side in (bottom, top) if across_x else (left, right):
            side.taken.append((at - wall.thick // 2, at + wall.thick // 2))
        if across_x:
            one = Cell(cell.x1, cell.y1, at, cell.y2, (left, bottom, wall, top))
            two = Cell(at, cell.y1, cell.x2, cell.y2, (wall, bottom, right, top))
        else:
            one = Cell(cell.x1, cell.y1, cell.x2, at, (left, bottom, right, wall))
            two = Cell(cell.x1, at, cell.x2, cell.y2, (left, wall, right, top))
        self._cut(storey, one, first, depth=depth + 1)
        self._cut(storey, two, rooms - first, depth=depth + 1)

    def _open(self, room: str) -> None:
        """A door in one inner side, and windows in some of the outer ones."""
        cell = self.cells[room]
        inner = [n for n in range(4) if not cell.sides[n].outer]
        if inner:
            self._opening("doors", cell, self.rng.choice(inner), self.rng.choice((800, 900, 1200)))
        for n in range(4):
            if cell.sides[n].outer and self.rng.random() < 0.7:
                self._opening("windows", cell, n, self.rng.choice((900, 1400, 2100)))

    def _opening(self, what: str, cell: Cell, side: int, wide: int) -> None:
        line = cell.sides[side]
        low, high = (cell.x1, cell.x2) if line.along == "x" else (cell.y1, cell.y2)
        at = line.free(low, high, wide, self.rng)
        if at is None:
            return
        line.taken.append((at, at + wide))
        sill, tall = (0, 2030) if what == "doors" else self.rng.choice(((900, 1200), (350, 1900)))
        opening = {"wall": line.id, "along_mm": at - line.start, "width_mm": wide, "height_mm": tall}
        if sill:
            opening["sill_mm"] = sill
        if self.rng.random() > 0.06:
            opening["leaf"] = layers_of(self.rng.choice(LEAVES if what == "doors" else PANES))
        self.parts[what][f"{'Door' if what == 'doors' else 'Win'}{len(self.parts[what]) + 1}"] = opening

    def on_wall(self, room: str, wide: int) -> tuple[int, int] | None:
        """A point on the face of one of a room's walls, clear of openings; None if no try finds room."""
        cell = self.cells[room]
        outline = cell.outline()
        for side in self.rng.sample(range(4), 4):
            line = cell.sides[side]
            low, high = (cell.x1, cell.x2) if line.along == "x" else (cell.y1, cell.y2)
            at = line.free(low, high, wide, self.rng)
            if at is not None:
                line.taken.append((at, at + wide))
                middle = at + wide // 2
                face = (outline[0][0], outline[0][1], outline[2][0], outline[2][1])[side]
                return (middle, face) if line.along == "x" else (face, middle)
        return None

    def inside(self, room: str) -> tuple[int, int]:
        """Some point of a room, half a metre from its walls at least."""
        (x1, y1), _, (x2, y2), _ = self.cells[room].outline()
        return self.rng.randrange(x1 + 500, x2 - 499), self.rng.randrange(y1 + 500, y2 - 499)
