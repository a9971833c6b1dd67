"""The way from an id to the row or picture where it can be changed, and what it is in words."""

from django.urls import reverse

from secondfix.house import House
from secondfix.papers import about_words
from secondfix.web.frame.sheets import SHEETS

_SHEET_OF = (
    ("boxes", "schedule"),
    ("loads", "building"),
    ("rooms", "building"),
    ("storeys", "building"),
    ("circuits", "building"),
    ("places", "building"),
    ("walls", "building"),
    ("doors", "building"),
    ("windows", "building"),
    ("scenes", "scenes"),
    ("networks", "networks"),
    ("devices", "networks"),
    ("outside_uses", "networks"),
)


def way_to(house: House, thing: str) -> str:
    """The address of the sheet where a box, gang, load, device, scene … stands, at its row."""
    head = thing.split(".", maxsplit=1)[0]
    if head in house.boxes and not house.boxes[head].gangs:  # no row on the switch schedule
        return f"{reverse('building', args=[house.id])}#{head}"
    for kind, sheet in _SHEET_OF:
        if head in getattr(house, kind) and sheet in SHEETS:
            return f"{reverse(sheet, args=[house.id])}#{thing}"
    return reverse("house", args=[house.id])


def beside(house: House, thing: str) -> str:
    """The name and room that stand beside an id."""
    return about_words(house, thing)
