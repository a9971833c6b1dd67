"""What can be picked on the form of a scene."""

from collections.abc import Iterator
from typing import Any

from secondfix.house import Command, House
from secondfix.terms import PURPOSES
from secondfix.web.frame.asked import Asked
from secondfix.web.naming.asking import named_of
from secondfix.web.scenes.typed import entry_text, picked_text

BY_WORDS = {
    "gang": "a press of a gang",
    "time": "a time of day",
    "sun": "the sun",
    "sensor": "a sensor or button",
}
PRESSES = {"once": "once", "twice": "twice", "three_times": "three times", "held": "held"}

LISTS = ("gangs", "devices", "loads", "entries", "tags")


def choices_of(about: Asked) -> dict[str, Any]:
    """Values with their words for the lists of the form, made once for every edit."""
    return about.once("scene choices", _choices)


def _choices(about: Asked) -> dict[str, Any]:
    house = about.house
    return {
        "by": BY_WORDS,
        "presses": PRESSES,
        "purposes": {key.value: policy.label for key, policy in PURPOSES.items()},
        "rooms": {key: room.name for key, room in house.rooms.items()},
        "storeys": {key: storey.name for key, storey in house.storeys.items()},
        "loads": [picked_text(house, load) for load in house.loads],
        "gangs": [picked_text(house, gang) for gang in about.rows.rows],
        "devices": [picked_text(house, device) for device in house.devices],
        "entries": list(_entries(about)),
        "tags": _tags(house),
    }


def _entries(about: Asked) -> Iterator[str]:
    for entry in named_of(about).names.entries():
        yield entry_text(about.house, Command(device=entry.device_id, entry=entry.number, to="off"))


def _tags(house: House) -> list[str]:
    of_loads = {tag for load in house.loads.values() for tag in load.tags}
    return sorted(of_loads.union(*(room.tags for room in house.rooms.values())))
