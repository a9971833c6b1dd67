"""Where a place is, in words that a person standing in the room can follow."""

from collections.abc import Iterable
from math import hypot

from secondfix.house import (
    FAR_MM,
    Face,
    House,
    Position,
    Room,
    Wall,
    faces_of,
    holes_of,
    is_nec,
    nearest_face,
)
from secondfix.terms import taped_gap, taped_height

NEAR_OPENING_MM = 3_000


def whereabouts(house: House, place_id: str) -> str:
    """Height, wall and the nearest door or window of that wall.

    ``1.05 m up, on the east wall, 0.4 m right of door D2``: the wall that the room's elevation draws it
    on, y being north; left and right are those of somebody who stands in the room and faces the wall.
    Without the room's outline ``on wall W3, 0.4 m beside door D2``. Distance is from the nearer edge of
    the opening. In NEC houses feet and inches: ``3'-5 3/8" up, on the east wall, 1'-4" right of door D2``.
    """
    box = house.boxes.get(place_id)
    room_id, position = (box.room, box.position) if box else _of_place(house, place_id)
    if position is None:
        return "position not known: look for it in the room"
    room = house.rooms[room_id]
    on_wall = _on_face(house, room, position) if room.outline_mm else _on_wall(house, room, position)
    return ", ".join((f"{taped_height(position.height_mm, nec=is_nec(house))} up", *on_wall))


def _of_place(house: House, place_id: str) -> tuple[str, Position | None]:
    place = house.places[place_id]
    return place.room, place.position


def _on_face(house: House, room: Room, position: Position) -> Iterable[str]:
    faces = faces_of(room.outline_mm or ())
    if not faces:
        return
    number, away = nearest_face(faces, position)
    if away > FAR_MM:
        return
    face = faces[number]
    yield f"on the {face.name.lower()}"
    yield from _beside_hole(house, room, face, face.along_mm(position.x_mm, position.y_mm))


def _beside_hole(house: House, room: Room, face: Face, along_mm: float) -> Iterable[str]:
    """The nearest opening, and on which side of it the place is; along the face runs to the right."""
    gaps = [
        (abs(gap), "door" if hole.door else "window", hole.id, "right of" if gap > 0 else "left of")
        for hole in holes_of(house, room.storey or "", face)
        if abs(gap := _gap(along_mm, hole.from_mm, hole.to_mm)) <= NEAR_OPENING_MM
    ]
    yield from _nearest(house, gaps)


def _on_wall(house: House, room: Room, position: Position) -> Iterable[str]:
    near = [
        (distance, wall_id)
        for wall_id, wall in house.walls.items()
        if room.storey is None or wall.storey == room.storey
        if (distance := _off_line(wall, position)) <= FAR_MM
    ]
    if not near:
        return
    wall_id = min(near)[1]
    yield f"on wall {wall_id}"
    along, _ = _along(house.walls[wall_id], position)
    gaps = [
        (abs(gap), kind, opening_id, "beside")
        for kind, openings in (("door", house.doors), ("window", house.windows))
        for opening_id, opening in openings.items()
        if opening.wall == wall_id
        if abs(gap := _gap(along, opening.along_mm, opening.along_mm + opening.width_mm)) <= NEAR_OPENING_MM
    ]
    yield from _nearest(house, gaps)


def _nearest(house: House, gaps: list[tuple[float, str, str, str]]) -> Iterable[str]:
    if gaps:
        distance, kind, opening_id, side = min(gaps)
        within = f"under or over {kind} {opening_id}"
        gap = taped_gap(distance, nec=is_nec(house))
        yield f"{gap} {side} {kind} {opening_id}" if distance else within


def _along(wall: Wall, position: Position) -> tuple[float, float]:
    """How far along the wall from its start, and its length, in mm."""
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    length = hypot(x2 - x1, y2 - y1)
    if length == 0:
        return 0.0, 0.0
    return ((position.x_mm - x1) * (x2 - x1) + (position.y_mm - y1) * (y2 - y1)) / length, length


def _off_line(wall: Wall, position: Position) -> float:
    along, length = _along(wall, position)
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    share = min(max(along / length, 0.0), 1.0) if length else 0.0
    return hypot(position.x_mm - x1 - share * (x2 - x1), position.y_mm - y1 - share * (y2 - y1))


def _gap(along: float, near: float, far: float) -> float:
    """From the opening's nearer edge to the place, along the wall; 0 within its width."""
    return along - far if along > far else min(along - near, 0.0)
