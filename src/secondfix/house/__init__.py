"""The house document: what stands on the walls and what is wanted."""

from secondfix.house.begin import begin, uuid7
from secondfix.house.building import Layer, Opening, Point, Position, Room, Storey, Wall
from secondfix.house.canonical import as_canonical_json, json_schema
from secondfix.house.devices import Device, Network, OutsideUse
from secondfix.house.document import FORMAT, House
from secondfix.house.faults import Fault
from secondfix.house.read import LARGEST_FILE_BYTES, MOST_FAULTS, read_house
from secondfix.house.scenes import Command, NamePart, NamingPolicy, Scene, SceneRule, Selector, Start
from secondfix.house.schedule import Channel, Row, Schedule, schedule
from secondfix.house.wiring import ABSENT, EARTH, Box, Circuit, Duty, Fact, Gang, Load, Mount, Place, settled

__all__ = [
    "ABSENT",
    "EARTH",
    "FORMAT",
    "LARGEST_FILE_BYTES",
    "MOST_FAULTS",
    "Box",
    "Channel",
    "Circuit",
    "Command",
    "Device",
    "Duty",
    "Fact",
    "Fault",
    "Gang",
    "House",
    "Layer",
    "Load",
    "Mount",
    "NamePart",
    "NamingPolicy",
    "Network",
    "Opening",
    "OutsideUse",
    "Place",
    "Point",
    "Position",
    "Room",
    "Row",
    "Scene",
    "SceneRule",
    "Schedule",
    "Selector",
    "Start",
    "Storey",
    "Wall",
    "as_canonical_json",
    "begin",
    "json_schema",
    "read_house",
    "schedule",
    "settled",
    "uuid7",
]
