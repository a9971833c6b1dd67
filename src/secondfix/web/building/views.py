"""Rooms, boxes and circuits: what the house is made of, from nothing."""

from html import escape

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from secondfix.exchange import KINDS
from secondfix.house import Channel, Fault, Position, Row, is_nec
from secondfix.store import door
from secondfix.terms import feet_inches
from secondfix.web.changing import answered, number_of, take
from secondfix.web.frame.asked import Asked, asked, asked_at
from secondfix.web.frame.showing import show
from secondfix.web.things.adding import KNOWNS, add, known_of, quick_row
from secondfix.web.things.forms import groups_of, parts_of, read_parts
from secondfix.web.things.tables import Extra, Table, table_of


def _position(about: Asked, position: Position | None) -> str:
    if position is None:
        return '<span class="soft">not known</span>'
    feet = f" ({escape(feet_inches(position.height_mm))})" if is_nec(about.house) else ""
    return f"{position.x_mm}, {position.y_mm}; {position.height_mm} high{feet}"


def _gangs(about: Asked, box_id: str) -> str:
    count = len(about.house.boxes[box_id].gangs)
    if not count:
        return "none"
    way = reverse("box", args=[about.house.id, box_id])
    words = "gang of {}, what it does" if count == 1 else "gangs of {}, what they do"
    return f'<a href="{way}">{count}<span class="apart"> {words.format(box_id)}</span></a>'


def _outline(about: Asked, room_id: str) -> str:
    corners = about.house.rooms[room_id].outline_mm
    return f"{len(corners)} corners" if corners else '<span class="soft">not known</span>'


def _boxes(about: Asked, room_id: str) -> str:
    own = [i for i, box in about.house.boxes.items() if box.room == room_id]
    return ", ".join(own) or '<span class="soft">none</span>'


def _fed_by(about: Asked, load_id: str) -> str:
    feeder = about.rows.fed_by.get(load_id)
    if feeder is None:
        return '<span class="soft">not known</span>'
    row = feeder if isinstance(feeder, Row) else feeder.row
    if row is not None:
        return escape(row.id)
    assert isinstance(feeder, Channel)  # an output outside the boxes
    return escape(f"{feeder.device_id}.{feeder.number}")


POSITION_OF_BOX = Extra("Position on the plan, mm", lambda a, i: _position(a, a.house.boxes[i].position))
POSITION_OF_PLACE = Extra("Position on the plan, mm", lambda a, i: _position(a, a.house.places[i].position))
MOUNTS = Extra("Mounts", lambda a, i: escape(", ".join(a.house.boxes[i].mounts)))
TABLES: tuple[tuple[str, str, tuple[str | Extra, ...]], ...] = (
    ("storey", "Storeys", ("name", "level", "ceiling", "floor")),
    ("room", "Rooms", ("name", "storey", Extra("Outline", _outline), Extra("Wall boxes", _boxes))),
    (
        "box", "Wall boxes",
        ("room", MOUNTS, Extra("Gangs", _gangs), POSITION_OF_BOX, "depth", "volume", "shell", "finish"),
    ),
    ("circuit", "Circuits", ("name", "breaker", "curve", "label", "label-rooms", "other-load")),
    ("load", "Loads", ("name", "room", "purpose", "kind", "power", "count", Extra("Fed by", _fed_by))),
    ("wall", "Walls", ("storey", "from", "to", "thickness", "layers")),
    ("door", "Doors", ("wall", "along", "width", "opening-height", "leaf")),
    ("window", "Windows", ("wall", "along", "width", "sill", "opening-height", "leaf")),
    ("place", "Other places", ("place-kind", "name", "room", POSITION_OF_PLACE, "circuit")),
)  # fmt: skip


@require_http_methods(["GET", "POST"])
def building(request: HttpRequest, house_id: str) -> HttpResponse:
    """Facts of the house, and a table of each kind of thing with a row to add one."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        here = reverse("building", args=[house_id])
        made = (
            _facts(request, house_id)
            if request.POST.get("act") == "facts"
            else add(request, house_id, to=here)
        )
        if isinstance(made, HttpResponse):
            return made
        faults = made
    about = asked(house_id)
    tables = about.once("tables of the building", _tables)
    context = {
        "about": about,
        "facts": groups_of(
            about.house,
            parts_of(about.house, KINDS["house"], ""),
            request.POST if request.POST.get("act") == "facts" else {},
            faults,
        )[0],
        "tables": [(table, quick_row(about.house, table.kind, request, faults)) for table in tables],
        "knowns": KNOWNS,
        "faults": faults,
        "bare": not about.house.storeys and not about.house.circuits,
    }
    status = 422 if faults else 200
    return show(request, "building", "building/building.html", context, house_id=house_id, status=status)


def _facts(request: HttpRequest, house_id: str) -> HttpResponse | tuple[Fault, ...]:
    """What is stated of the house as a whole."""
    base = number_of(request)
    seen = asked_at(house_id, base) if base is not None else asked(house_id)
    read = read_parts(seen.house, parts_of(seen.house, KINDS["house"], ""), request.POST, known_of(request))
    if read.faults:
        return read.faults
    answer = take(request, house_id, read.changes)
    if isinstance(answer, door.Saved) and answer.new:
        messages.success(request, f"Facts of the house saved, edit {answer.number}.")
    gone = answered(request, house_id, answer, to=reverse("building", args=[house_id]))
    if gone is not None:
        return gone
    assert isinstance(answer, door.Refused)  # the others were answered
    return answer.faults


def _tables(about: Asked) -> list[Table]:
    return [table_of(about, kind, title, columns) for kind, title, columns in TABLES]
