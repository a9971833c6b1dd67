"""Outlines close without crossing themselves; openings lie in their wall; positions lie where they say."""

from collections.abc import Iterator, Sequence
from math import dist, hypot

from secondfix.house.building import Point, Position
from secondfix.house.document import House
from secondfix.house.misfit import Misfit

FARTHEST_OUTSIDE_MM = 600  # a box may stand in the thickness of its room's wall, not beyond
LAYERS_TOLERANCE_MM = 5


def geometry_faults(house: House) -> Iterator[Misfit]:
    """Every outline, wall, opening and position that cannot be true."""
    for key, room in house.rooms.items():
        if room.outline_mm is not None:
            yield from _outline(f"rooms.{key}.outline_mm", room.outline_mm)
    yield from _walls(house)
    yield from _openings(house)
    for key, box in house.boxes.items():
        yield from _position(house, f"boxes.{key}.position", box.position, box.room)
    for key, place in house.places.items():
        yield from _position(house, f"places.{key}.position", place.position, place.room)


def doubled_area_mm2(outline: Sequence[Point]) -> int:
    """Twice the signed area (positive counter-clockwise), exact."""
    following = (*outline[1:], outline[0])
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(outline, following, strict=True))


def _outline(path: str, outline: Sequence[Point]) -> Iterator[Misfit]:
    if outline[0] == outline[-1]:
        yield Misfit(
            path, "its first point again at the end", "each corner once: the outline closes by itself"
        )
    elif len(set(outline)) != len(outline):
        yield Misfit(path, "a corner twice", "each corner once")
    elif doubled_area_mm2(outline) == 0:
        yield Misfit(path, "no area", "corners in order around the room")
    elif (pair := _crossing(outline)) is not None:
        yield Misfit(path, f"sides {pair[0] + 1} and {pair[1] + 1} cross", "corners in order around the room")


def _side(p: Point, q: Point, r: Point) -> int:
    cross = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    return (cross > 0) - (cross < 0)


def _within(p: Point, q: Point, r: Point) -> bool:
    return min(p[0], q[0]) <= r[0] <= max(p[0], q[0]) and min(p[1], q[1]) <= r[1] <= max(p[1], q[1])


def _touch(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether segments ab and cd share a point (exact, integers)."""
    s = (_side(a, b, c), _side(a, b, d), _side(c, d, a), _side(c, d, b))
    if s[0] * s[1] < 0 and s[2] * s[3] < 0:
        return True
    ends = ((a, b, c), (a, b, d), (c, d, a), (c, d, b))
    return any(side == 0 and _within(*end) for side, end in zip(s, ends, strict=True))


def _crossing(outline: Sequence[Point]) -> tuple[int, int] | None:
    n = len(outline)
    for i in range(n):
        for j in range(i + 2, n):
            if (j + 1) % n == i:
                continue  # neighbours share a corner
            if _touch(outline[i], outline[i + 1], outline[j], outline[(j + 1) % n]):
                return i, j
    return None


def _walls(house: House) -> Iterator[Misfit]:
    for key, wall in house.walls.items():
        if wall.from_mm == wall.to_mm:
            yield Misfit(f"walls.{key}", "a wall of no length", "two ends that differ")
        if wall.thickness_mm is not None and wall.layers is not None:
            total = sum(layer.thickness_mm for layer in wall.layers.value)
            if abs(total - wall.thickness_mm) > LAYERS_TOLERANCE_MM:
                yield Misfit(
                    f"walls.{key}.layers", f"{total} mm together", f"the wall's {wall.thickness_mm} mm"
                )


def _openings(house: House) -> Iterator[Misfit]:
    for name, openings in (("doors", house.doors), ("windows", house.windows)):
        for key, opening in openings.items():
            wall = house.walls.get(opening.wall)
            if wall is None:
                continue
            length, end = dist(wall.from_mm, wall.to_mm), opening.along_mm + opening.width_mm
            if end > length + 1:
                yield Misfit(
                    f"{name}.{key}", f"ends {end} mm along {opening.wall}", f"within its {length:.0f} mm"
                )


def _position(house: House, path: str, position: Position | None, room_id: str) -> Iterator[Misfit]:
    room = house.rooms.get(room_id)
    if position is None or room is None:
        return
    storey = house.storeys.get(room.storey or "")
    if storey is not None and storey.height_mm is not None and position.height_mm > storey.height_mm:
        yield Misfit(f"{path}.height_mm", str(position.height_mm), f"at most the storey's {storey.height_mm}")
    if room.outline_mm is not None:
        away = _outside_mm(room.outline_mm, (position.x_mm, position.y_mm))
        if away > FARTHEST_OUTSIDE_MM:
            yield Misfit(
                path, f"{away:.0f} mm outside {room_id}", f"within {FARTHEST_OUTSIDE_MM} mm of its room"
            )


def _outside_mm(outline: Sequence[Point], p: Point) -> float:
    """How far ``p`` lies outside the outline; 0 inside."""
    inside, nearest = False, float("inf")
    for a, b in zip(outline, (*outline[1:], outline[0]), strict=True):
        if (a[1] > p[1]) != (b[1] > p[1]) and p[0] < (b[0] - a[0]) * (p[1] - a[1]) / (b[1] - a[1]) + a[0]:
            inside = not inside
        nearest = min(nearest, _to_side_mm(a, b, p))
    return 0.0 if inside else nearest


def _to_side_mm(a: Point, b: Point, p: Point) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    along = (p[0] - a[0]) * dx + (p[1] - a[1]) * dy
    t = max(0.0, min(1.0, along / (dx * dx + dy * dy or 1)))  # a corner given twice has no length
    return hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy)
