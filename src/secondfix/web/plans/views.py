"""The plan of a storey on the screen, and what could not be drawn for want of a position."""

from django.http import HttpRequest, HttpResponse
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_GET

from secondfix.papers import PlanOnScreen, plan_on_screen
from secondfix.store import door
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.ink import INK
from secondfix.web.frame.places import way_to
from secondfix.web.frame.showing import show


@require_GET
def plans(request: HttpRequest, house_id: str, storey_id: str = "") -> HttpResponse:
    """The plan of one storey, the first where none is named."""
    about = asked(house_id)
    storeys = about.house.storeys
    shown = storey_id or next(iter(storeys), "")
    if storey_id and storey_id not in storeys:
        raise door.UnknownError(f"no storey {storey_id[:20]} in this house")
    plan = about.once(f"plan of {shown}", lambda a: _drawn(a, shown)) if shown else None
    context = {
        "about": about,
        "shown": shown,
        "storey": storeys.get(shown),
        "plan": plan,
        "picture": mark_safe(plan.svg) if plan else "",  # noqa: S308 - drawn by us, every text of the house escaped
        "lost": _lost(about, shown),
        "homeless": [i for i, room in about.house.rooms.items() if room.storey is None],
    }
    return show(request, "plans", "plans/plans.html", context, house_id=house_id)


def _drawn(about: Asked, storey_id: str) -> PlanOnScreen:
    house = about.house
    ways = {i: way_to(house, i) for i in (*house.boxes, *house.places)}
    return plan_on_screen(about.rows, storey_id, about.checked.findings, palette=INK, ways=ways)


def _lost(about: Asked, storey_id: str) -> list[str]:
    """Boxes and places of the storey whose position nobody knows."""
    house = about.house
    own = {i for i, room in house.rooms.items() if room.storey == storey_id}
    boxes = [i for i, box in house.boxes.items() if box.position is None and box.room in own]
    return boxes + [i for i, place in house.places.items() if place.position is None and place.room in own]
