"""Where a place is, in words that a person standing in the room can follow."""

from math import hypot

from secondfix.house import House, Opening, Point, Position, Room, Wall

ON_WALL_MM = 600  # a plate farther than this from a wall's centre line is not said to be on that wall
NEAR_OPENING_MM = 3_000


def whereabouts(house: House, place_id: str) -> str:
    """Height, wall and the nearest door or window of that wall.

    ``1.05 m up, on wall W3, 0.4 m right of door D2``.
    Left and right are those of somebody who stands in the room and faces the wall; without the
    room's outline they are left out. Distance is from the nearer edge of the opening. Points of the
    compass are left out: the document does not say where north is.
    """
    box = house.boxes.get(place_id)
    room_id, position = (box.room, box.position) if box else _of_place(house, place_id)
    if position is None:
        return "position not known: look for it in the room"
    said = [f"{position.height_mm / 1000:.2f} m up"]
    found = _wall_of(house, house.rooms[room_id], position)
    if found:
        wall_id, wall = found
        said.append(f"on wall {wall_id}")
        opening = _beside(house, wall_id, wall, house.rooms[room_id], position)
        if opening:
            said.append(opening)
    return ", ".join(said)


def _of_place(house: House, place_id: str) -> tuple[str, Position | None]:
    place = house.places[place_id]
    return place.room, place.position


def _wall_of(house: House, room: Room, position: Position) -> tuple[str, Wall] | None:
    near = [
        (distance, wall_id)
        for wall_id, wall in house.walls.items()
        if room.storey is None or wall.storey == room.storey
        if (distance := _off_line(wall, position)) <= ON_WALL_MM
    ]
    if not near:
        return None
    wall_id = min(near)[1]
    return wall_id, house.walls[wall_id]


def _along(wall: Wall, position: Position) -> tuple[float, float]:
    """How far along the wall from its start, and its length, in mm."""
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    length = hypot(x2 - x1, y2 - y1)
    if length == 0:
        return 0.0, 0.0
    along = ((position.x_mm - x1) * (x2 - x1) + (position.y_mm - y1) * (y2 - y1)) / length
    return along, length


def _off_line(wall: Wall, position: Position) -> float:
    along, length = _along(wall, position)
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    share = min(max(along / length, 0.0), 1.0) if length else 0.0
    return hypot(position.x_mm - x1 - share * (x2 - x1), position.y_mm - y1 - share * (y2 - y1))


def _beside(house: House, wall_id: str, wall: Wall, room: Room, position: Position) -> str | None:
    """The nearest opening of the wall, and on which side of it the place is."""
    along, _ = _along(wall, position)
    kinds = (("door", house.doors), ("window", house.windows))
    near = [
        (abs(gap), kind, opening_id, gap)
        for kind, openings in kinds
        for opening_id, opening in openings.items()
        if opening.wall == wall_id and abs(gap := _gap(opening, along)) <= NEAR_OPENING_MM
    ]
    if not near:
        return None
    distance, kind, opening_id, gap = min(near)
    if gap == 0:
        return f"under or over {kind} {opening_id}"
    side = _side(wall, room, ahead=gap > 0)
    return f"{distance / 1000:.1f} m {side} {kind} {opening_id}"


def _gap(opening: Opening, along: float) -> float:
    """From the opening's nearer edge to the place, along the wall; 0 within its width."""
    near, far = opening.along_mm, opening.along_mm + opening.width_mm
    return along - far if along > far else min(along - near, 0.0)


def _side(wall: Wall, room: Room, *, ahead: bool) -> str:
    if room.outline_mm is None:
        return "beside"
    inside_left = _left_of(wall, _middle(room.outline_mm))
    # Seen from the wall's left side, its own direction runs to the left hand.
    right = ahead != inside_left
    return "right of" if right else "left of"


def _left_of(wall: Wall, point: tuple[float, float]) -> bool:
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    return (x2 - x1) * (point[1] - y1) - (y2 - y1) * (point[0] - x1) > 0


def _middle(outline: tuple[Point, ...]) -> tuple[float, float]:
    xs, ys = zip(*outline, strict=True)
    return sum(xs) / len(xs), sum(ys) / len(ys)
