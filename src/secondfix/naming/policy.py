"""Putting a name together from the parts of the house's naming policy."""

from collections.abc import Mapping

from secondfix.house import Duty, House, Load, NamePart, Row, Schedule
from secondfix.naming.folding import composed

TIGHT_BYTES = 16  # what the tightest place of limits.ATTRIBUTES holds (from memory)
_MARKS = {Duty.SCENE_ONLY: "scene", Duty.CAPPED: "capped", Duty.NOT_KNOWN: "not known"}


def load_name(house: House, load: Load, gang: Row | None) -> str:
    """The name of the entry that feeds a load, room and storey being the load's own."""
    parts = {
        **_of_room(house, load.room),
        NamePart.LOAD: load.name,
        NamePart.BOX: gang.box_id if gang else "",
        NamePart.GANG: gang.gang_no if gang else "",
        NamePart.DEVICE: _device(house, gang.device_id) if gang and gang.device_id else "",
    }
    return _joined(house, house.naming.gang_entry, parts) or composed(load.name)


def output_name(schedule: Schedule, device_id: str, number: int, load: Load) -> str:
    """The name of the output that feeds a load from a device outside a wall box."""
    house = schedule.house
    parts = {
        **_of_room(house, load.room),
        NamePart.LOAD: load.name,
        NamePart.BOX: _place(schedule, device_id),
        NamePart.GANG: str(number),
        NamePart.DEVICE: _device(house, device_id),
    }
    return _joined(house, house.naming.gang_entry, parts) or composed(load.name)


def idle_name(schedule: Schedule, gang: Row) -> str:
    """The name of a gang that feeds nothing known: what it is and its id, so never two alike.

    Where that is longer than ``TIGHT_BYTES`` the room and the id are enough: a name of our own making
    shall not be one that we then advise against.
    """
    house = schedule.house
    room = house.rooms[gang.box.room].name
    end = _extended(schedule, gang) if gang.gang.extends else None
    if end and end.load:
        return _tight(house, (load_name(house, end.load, end), "extension", gang.id), (room, gang.id))
    mark = "extension" if gang.gang.extends else _MARKS.get(gang.gang.duty, "not known")
    return _tight(house, (room, mark, gang.id), (room, gang.id))


def spare_name(schedule: Schedule, device_id: str, number: int) -> str:
    """The name of a gang that the model has and the box does not use; short where it must be."""
    house = schedule.house
    room, gang_id = house.rooms[schedule.room_of_device(device_id)].name, f"{device_id}.{number}"
    return _tight(house, (room, "spare", gang_id), (room, gang_id))


def whole_name(schedule: Schedule, device_id: str) -> str:
    """The name of a whole-device entry: after its place; it has no load, so that part is empty."""
    return _of_device(schedule, device_id, schedule.house.naming.whole_entry, "")


def place_name(schedule: Schedule, device_id: str, number: int, *, alone: bool) -> str:
    """The name of a device that feeds nothing, numbered by button unless it has only one entry."""
    naming = schedule.house.naming
    gang = "" if alone else str(number)
    name = _of_device(schedule, device_id, naming.place_entry, gang)
    return name if alone or NamePart.GANG in naming.place_entry else _with(schedule.house, name, gang)


def _of_device(schedule: Schedule, device_id: str, parts: tuple[NamePart, ...], gang: str) -> str:
    house = schedule.house
    values = {
        **_of_room(house, schedule.room_of_device(device_id)),
        NamePart.BOX: _place(schedule, device_id),
        NamePart.GANG: gang,
        NamePart.DEVICE: _device(house, device_id),
    }
    return _joined(house, parts, values) or device_id


def _extended(schedule: Schedule, gang: Row) -> Row:
    """The gang at the end of a chain of extensions (the reader refuses rings)."""
    while gang.gang.extends:
        gang = schedule.rows[gang.gang.extends]
    return gang


def _of_room(house: House, room_id: str) -> dict[NamePart, str]:
    room = house.rooms[room_id]
    return {
        NamePart.ROOM: room.name,
        NamePart.STOREY: house.storeys[room.storey].name if room.storey else "",
    }


def _place(schedule: Schedule, device_id: str) -> str:
    place = schedule.place_of_device(device_id)
    places = schedule.house.places
    return places[place].name if place in places else place


def _device(house: House, device_id: str) -> str:
    return house.devices[device_id].name or device_id


def _joined(house: House, parts: tuple[NamePart, ...], values: Mapping[NamePart, str]) -> str:
    return _with(house, *(values.get(part, "") for part in parts))


def _with(house: House, *parts: str) -> str:
    kept = [composed(part) for part in parts]
    return composed(house.naming.between.join(part for part in kept if part))


def _tight(house: House, full: tuple[str, ...], short: tuple[str, ...]) -> str:
    name = _with(house, *full)
    return name if len(name.encode()) <= TIGHT_BYTES else _with(house, *short)
