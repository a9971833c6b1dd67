"""What stands on a plan: which symbol each box and place wears, and the words beside it."""

from dataclasses import dataclass

from secondfix.catalogue import Form, Output
from secondfix.house import Channel, Duty, Place, Position, Row, Schedule
from secondfix.papers.duties import rows_of_box
from secondfix.terms import Purpose

_FANS = {Purpose.EXTRACT_FAN, Purpose.COMFORT_FAN}


@dataclass(frozen=True, slots=True)
class Spot:
    """A symbol on the plan: where it belongs, which way the room lies, what stands beside it."""

    id: str
    symbol: str
    position: Position | None
    lines: tuple[str, ...]
    room: str


def spots_of(schedule: Schedule) -> list[Spot]:
    """Every box and place of the house."""
    house = schedule.house
    out = [
        Spot(i, _box_symbol(schedule, i), b.position, (f"{i} ×{len(b.gangs)}",), b.room)
        for i, b in house.boxes.items()
    ]
    for place_id, place in house.places.items():
        fed = _fed_at(schedule, place_id)
        lines = (place_id, *dict.fromkeys(fed)) if fed else (place_id,)
        out.append(
            Spot(place_id, _place_symbol(schedule, place_id, place), place.position, lines[:4], place.room)
        )
    return out


def _fed_at(schedule: Schedule, place_id: str) -> list[str]:
    """From which gang each load at a place is switched."""
    out = []
    for load_id, load in schedule.house.loads.items():
        if load.place == place_id:
            feeder = schedule.fed_by.get(load_id)
            out.append(_name_of(feeder) if feeder else "not switched")
    return out


def _name_of(feeder: Row | Channel) -> str:
    row = feeder if isinstance(feeder, Row) else feeder.row
    if row:
        return row.id
    assert isinstance(feeder, Channel)
    return f"{feeder.device_id}.{feeder.number}"


def _box_symbol(schedule: Schedule, box_id: str) -> str:
    rows = rows_of_box(schedule, box_id)
    models = [r.model for r in rows if r.model]
    if rows and all(r.gang.duty is Duty.SCENE_ONLY for r in rows):
        return "button"
    if any(r.gang.duty is Duty.EXTENDS or r.id in schedule.extended_by for r in rows):
        return "two_way"
    if any(m.output is Output.DIMMER for m in models):
        return "dimmer"
    if any(m.form is Form.BATTERY_BUTTON for m in models):
        return "button"
    return "switch" if models else "box"


def _place_symbol(schedule: Schedule, place_id: str, place: Place) -> str:
    house = schedule.house
    if place.kind == "controller_spot":
        return "controller"
    forms = {m.form for i, d in house.devices.items() if d.place == place_id and (m := schedule.model_of(i))}
    if Form.PLUG_IN in forms:
        return "repeater"
    if Form.BATTERY_BUTTON in forms:
        return "button"
    if place.kind == "light_point":
        fan = any(x.place == place_id and x.purpose in _FANS for x in house.loads.values())
        return "fan" if fan else "luminaire"
    return place.kind
