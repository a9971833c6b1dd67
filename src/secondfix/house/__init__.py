"""The house document: what stands on the walls and what is wanted."""

from secondfix.house.beginning import begin, uuid7
from secondfix.house.building import Layer, Opening, Point, Position, Room, Storey, Wall
from secondfix.house.canonical import as_canonical_json, json_schema, plain_of
from secondfix.house.devices import Device, Eui64, KeyRef, ModelKey, Network, OutsideUse
from secondfix.house.document import FORMAT, UUID7, House, is_nec
from secondfix.house.editing import Change, edited, steps_of
from secondfix.house.faces import FAR_MM, Face, Hole, faces_of, holes_of, nearest_face, opening_ends
from secondfix.house.faults import Fault
from secondfix.house.multiway import Arrangement, Multiway, OthersAct
from secondfix.house.parts import GangId, Id, Name, Note, Part, Slot
from secondfix.house.read import LARGEST_FILE_BYTES, MOST_FAULTS, read_house
from secondfix.house.scenes import Command, NamePart, NamingPolicy, Scene, SceneRule, Selector, Start
from secondfix.house.switch_schedule import Channel, Row, Schedule, schedule
from secondfix.house.text import parse
from secondfix.house.wiring import ABSENT, EARTH, Box, Circuit, Duty, Fact, Gang, Load, Mount, Place, settled

__all__ = [
    "ABSENT",
    "EARTH",
    "FAR_MM",
    "FORMAT",
    "LARGEST_FILE_BYTES",
    "MOST_FAULTS",
    "UUID7",
    "Arrangement",
    "Box",
    "Change",
    "Channel",
    "Circuit",
    "Command",
    "Device",
    "Duty",
    "Eui64",
    "Face",
    "Fact",
    "Fault",
    "Gang",
    "GangId",
    "Hole",
    "House",
    "Id",
    "KeyRef",
    "Layer",
    "Load",
    "ModelKey",
    "Mount",
    "Multiway",
    "Name",
    "NamePart",
    "NamingPolicy",
    "Network",
    "Note",
    "Opening",
    "OthersAct",
    "OutsideUse",
    "Part",
    "Place",
    "Point",
    "Position",
    "Room",
    "Row",
    "Scene",
    "SceneRule",
    "Schedule",
    "Selector",
    "Slot",
    "Start",
    "Storey",
    "Wall",
    "as_canonical_json",
    "begin",
    "edited",
    "faces_of",
    "holes_of",
    "is_nec",
    "json_schema",
    "nearest_face",
    "opening_ends",
    "parse",
    "plain_of",
    "read_house",
    "schedule",
    "settled",
    "steps_of",
    "uuid7",
]
