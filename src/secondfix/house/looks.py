"""Looks that more than one check asks for: one place, one field and one wording for each fact.

Whoever is sent to a wall box is told in the same breath to isolate, lock off and prove dead; what can only
be found while there is voltage is for a licensed person with a proved two-pole indicator.
"""

from secondfix.findings import Look
from secondfix.house.document import House
from secondfix.house.switch_schedule import Row

DEAD_FIRST = "isolate, lock off, prove dead"
_BY_VOLTAGE = "licensed person, proved two-pole indicator; switch circuits off one at a time"


def dead_first(words: str) -> str:
    """What is found in an open box, with what comes before: 'isolate, lock off, prove dead, then …'."""
    return f"{DEAD_FIRST}, then {words}"


def load_words(house: House, load_id: str) -> str:
    """Room, load and id: what a load is called in a sentence."""
    load = house.loads[load_id]
    room = house.rooms[load.room].name
    repeated = load.name.casefold().startswith(room.casefold())
    return f"{load.name if repeated else f'{room} {load.name}'} ({load_id})"


def duty_look(row: Row) -> Look:
    """The look for the duty of a gang."""
    words = f"find out what gang {row.id} does: {DEAD_FIRST}, trace its cores"
    return Look(row.box_id, f"gangs.{row.gang_no}.duty", words)


def line_look(box_id: str, gang_no: str) -> Look:
    """The look for the circuit of a gang's line."""
    words = f"find which circuit feeds gang {box_id}.{gang_no}: {_BY_VOLTAGE}"
    return Look(box_id, f"gangs.{gang_no}.line", words)


def neutral_look(box_id: str, mount: str) -> Look:
    """The look for the neutral at one mount."""
    words = dead_first(f"see in box {box_id} whether a neutral reaches mount {mount}, and of which circuit")
    return Look(box_id, f"mounts.{mount}.neutral", words)


def circuit_look(place: str) -> Look:
    """The look for the circuit that feeds a place outside the wall boxes."""
    return Look(place, "circuit", f"find which circuit feeds {place}: {_BY_VOLTAGE}")


def shell_look(box_id: str) -> Look:
    """The look for what a box is made of."""
    return Look(box_id, "shell", dead_first(f"see whether box {box_id} is plastic or metal"))


def plate_look(box_id: str) -> Look:
    """The look for what the plate of a box is made of; it is seen from the room."""
    return Look(box_id, "plate", f"see whether the plate of {box_id} is metal")


def volume_look(box_id: str) -> Look:
    """The look for the volume of a box."""
    return Look(box_id, "volume_mm3", dead_first(f"read or measure the volume of box {box_id}"))


def model_look(device_id: str) -> Look:
    """The decision which model a device is."""
    return Look(device_id, "model", f"decide the model of {device_id}")


def network_look(device_id: str) -> Look:
    """The decision which network a device joins."""
    return Look(device_id, "network", f"decide the network of {device_id}")


def position_look(place: str) -> Look:
    """The look for where a place is."""
    return Look(place, "position", f"measure where {place} is on the plan, and its height")


def storey_look(room_id: str) -> Look:
    """The note on which storey a room lies."""
    return Look(room_id, "storey", f"note on which storey room {room_id} lies")


def purpose_look(load_id: str, called: str) -> Look:
    """The question what a load is for; ``called`` is its ``load_words``."""
    return Look(load_id, "purpose", f"ask what {called} is for")


def thermostat_look(load_id: str, called: str) -> Look:
    """The look whether a heater has a thermostat of its own; ``called`` is its ``load_words``."""
    return Look(load_id, "own_thermostat", f"see whether {called} has a thermostat of its own")


def dimmable_look(load_id: str, called: str) -> Look:
    """The look whether a load may be dimmed; ``called`` is its ``load_words``."""
    return Look(load_id, "dimmable", f"read on {called} whether it may be dimmed")
