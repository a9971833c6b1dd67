"""The walls of a room as one faces them from inside: which one a place hangs on, and what it is called.

The outline is walked clockwise, so that the walls follow each other as a person turning to the
right meets them and left on a drawing is left on the wall. A wall is named after the direction
one looks in when facing it; up on the plan is north.
"""

import math
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from secondfix.house.building import Opening, Point, Position, Wall
from secondfix.house.document import House

COMPASS = ("North", "North-east", "East", "South-east", "South", "South-west", "West", "North-west")
# A box on a wall stands in its face. Half a metre allows for a survey by pace; farther is said.
FAR_MM = 500
_NOMINAL_WALL_MM = 100


@dataclass(frozen=True, slots=True)
class Face:
    """One wall as one faces it: from its left end to its right end on the plan."""

    name: str
    left_mm: Point
    right_mm: Point

    @property
    def length_mm(self) -> float:
        """Its length."""
        return math.dist(self.left_mm, self.right_mm)

    def along_mm(self, x_mm: float, y_mm: float) -> float:
        """How far right of the left end the foot of a point lies; may fall outside the wall."""
        (ax, ay), (bx, by) = self.left_mm, self.right_mm
        return ((x_mm - ax) * (bx - ax) + (y_mm - ay) * (by - ay)) / self.length_mm

    def away_mm(self, x_mm: float, y_mm: float) -> float:
        """Distance of a point from the wall."""
        t = min(max(self.along_mm(x_mm, y_mm), 0.0), self.length_mm) / self.length_mm
        (ax, ay), (bx, by) = self.left_mm, self.right_mm
        return math.dist((x_mm, y_mm), (ax + t * (bx - ax), ay + t * (by - ay)))


@dataclass(frozen=True, slots=True)
class Hole:
    """A door or window as it shows on one face."""

    id: str
    door: bool
    from_mm: float
    to_mm: float
    sill_mm: int
    height_mm: int


def faces_of(outline: Sequence[Point]) -> list[Face]:
    """The walls in order, clockwise, from the first that faces north where there is one."""
    ring = _without_straight_corners([p for i, p in enumerate(outline) if p != outline[i - 1]])
    if len(ring) < 3:
        return []
    if _twice_area(ring) > 0:
        ring.reverse()
    plain = [_facing(a, b) for a, b in _edges(ring)]
    many = {name for name, count in Counter(plain).items() if count > 1}
    start = plain.index("North") if "North" in plain else 0
    seen = Counter[str]()
    out = []
    for i in [*range(start, len(ring)), *range(start)]:
        seen[plain[i]] += 1
        number = f" {seen[plain[i]]}" if plain[i] in many else ""
        out.append(Face(f"{plain[i]} wall{number}", ring[i], ring[(i + 1) % len(ring)]))
    return out


def nearest_face(faces: Sequence[Face], position: Position) -> tuple[int, float]:
    """Which wall a point hangs on, and how far it is away from it; of equal ones the first in order."""
    away = [face.away_mm(position.x_mm, position.y_mm) for face in faces]
    best = min(range(len(faces)), key=away.__getitem__)
    return best, away[best]


def holes_of(house: House, storey_id: str, face: Face) -> Iterator[Hole]:
    """Doors and windows of the storey's walls that run along this face."""
    for openings, door in ((house.doors, True), (house.windows, False)):
        for opening_id, opening in openings.items():
            wall = house.walls[opening.wall]
            if wall.storey == storey_id and (span := _span(wall, opening, face)):
                yield Hole(opening_id, door, *span, opening.sill_mm, opening.height_mm)


def opening_ends(wall: Wall, opening: Opening) -> tuple[tuple[float, float], tuple[float, float]]:
    """The two ends of an opening on its wall's centre line."""
    (ax, ay), (bx, by) = wall.from_mm, wall.to_mm
    length = math.dist(wall.from_mm, wall.to_mm) or 1.0
    ux, uy = (bx - ax) / length, (by - ay) / length
    near, far = opening.along_mm, opening.along_mm + opening.width_mm
    return (ax + ux * near, ay + uy * near), (ax + ux * far, ay + uy * far)


def _span(wall: Wall, opening: Opening, face: Face) -> tuple[float, float] | None:
    ends = opening_ends(wall, opening)
    allowed = (wall.thickness_mm or _NOMINAL_WALL_MM) / 2 + 150
    along = sorted(face.along_mm(*p) for p in ends)
    # Only a wall that runs with the face shows its opening at full width there.
    if along[1] - along[0] < 0.98 * opening.width_mm:
        return None
    middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
    if face.away_mm(*middle) > allowed:
        return None
    left, right = max(along[0], 0.0), min(along[1], face.length_mm)
    return (left, right) if right - left > 50 else None


def _edges(ring: Sequence[Point]) -> Iterator[tuple[Point, Point]]:
    return ((p, ring[(i + 1) % len(ring)]) for i, p in enumerate(ring))


def _facing(a: Point, b: Point) -> str:
    """Clockwise, the outside is on the left hand of the edge: that is where one looks."""
    bearing = math.degrees(math.atan2(-(b[1] - a[1]), b[0] - a[0])) % 360
    return COMPASS[round(bearing / 45) % 8]


def _twice_area(ring: Sequence[Point]) -> int:
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in _edges(ring))


def _without_straight_corners(ring: list[Point]) -> list[Point]:
    def turns(i: int) -> bool:
        (ax, ay), (bx, by), (cx, cy) = ring[i - 1], ring[i], ring[(i + 1) % len(ring)]
        return (bx - ax) * (cy - by) != (by - ay) * (cx - bx)

    return [p for i, p in enumerate(ring) if turns(i)]
