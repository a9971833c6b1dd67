"""Room elevations on the screen: one room after another, or one alone."""

from django.http import HttpRequest, HttpResponse
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_GET

from secondfix.papers import elevations_svg
from secondfix.store import door
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.ink import INK
from secondfix.web.frame.places import way_to
from secondfix.web.frame.showing import show


@require_GET
def elevations(request: HttpRequest, house_id: str, room_id: str = "") -> HttpResponse:
    """The elevations of one room, the first that has a wall box where none is named."""
    about = asked(house_id)
    rooms = _rooms(about)
    shown = room_id or next(iter(rooms), "")
    if shown not in about.house.rooms:
        raise door.UnknownError(f"no room {shown[:20]} in this house")
    context = {
        "about": about,
        "rooms": rooms,
        "shown": shown,
        "room": about.house.rooms[shown],
        "drawing": mark_safe(drawing(about, shown)),  # noqa: S308 - drawn by us, every text of the house escaped
    }
    return show(request, "elevations", "elevations/elevations.html", context, house_id=house_id)


def drawing(about: Asked, room_id: str) -> str:
    """The picture of a room, each plate leading to its rows in the switch schedule."""
    house = about.house
    ways = {box_id: way_to(house, box_id) for box_id, box in house.boxes.items() if box.room == room_id}
    return elevations_svg(about.rows, room_id, about.checked.findings, palette=INK, ways=ways)


def _rooms(about: Asked) -> dict[str, str]:
    """Every room by name; those with a wall box first."""
    with_boxes = {box.room for box in about.house.boxes.values()}
    rooms = sorted(about.house.rooms.items(), key=lambda item: item[0] not in with_boxes)
    return {room_id: room.name for room_id, room in rooms}
