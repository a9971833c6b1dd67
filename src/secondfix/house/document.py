"""The whole document, format 1."""

from typing import Annotated, Literal

from pydantic import Field, Strict

from secondfix.catalogue import Model
from secondfix.house.building import Opening, Room, Storey, Wall
from secondfix.house.devices import Device, ModelKey, Network, OutsideUse
from secondfix.house.parts import Id, Name, Note, Part
from secondfix.house.scenes import NamingPolicy, Scene
from secondfix.house.wiring import Box, Circuit, Load, Place
from secondfix.terms import RadioRegion, WiringRules

FORMAT = 1
Loose = Strict(False)
UUID7 = r"^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$"


class AssumptionChoice(Part):
    """A house's own value for an assumption, with an own range and source where it has one."""

    value: int
    low: int | None = None
    high: int | None = None
    source: Note | None = None


class House(Part):
    """What stands on the walls and what is wanted.

    Only ``format``, ``id``, ``name``, rooms with names, and boxes with their mounts and gangs are
    required. Everything else may be absent, which means: not known.
    """

    format: Literal[1]
    id: Annotated[str, Field(pattern=UUID7)]
    name: Name
    note: Note = ""
    time_zone: Annotated[str, Field(max_length=64)] | None = None
    latitude_mdeg: int | None = Field(
        None, ge=-90_000, le=90_000, description="thousandths of a degree, north positive"
    )
    longitude_mdeg: int | None = Field(
        None, ge=-180_000, le=180_000, description="thousandths of a degree, east positive"
    )
    mains_voltage_v: int | None = Field(None, ge=100, le=277)
    mains_frequency_hz: Literal[50, 60] | None = None
    wiring_rules: Annotated[WiringRules, Loose] | None = None
    radio_region: Annotated[RadioRegion, Loose] | None = None
    storeys: dict[Id, Storey] = Field(default_factory=dict)
    rooms: Annotated[dict[Id, Room], Field(min_length=1)]
    walls: dict[Id, Wall] = Field(default_factory=dict)
    doors: dict[Id, Opening] = Field(default_factory=dict)
    windows: dict[Id, Opening] = Field(default_factory=dict)
    circuits: dict[Id, Circuit] = Field(default_factory=dict)
    boxes: dict[Id, Box]
    places: dict[Id, Place] = Field(default_factory=dict)
    loads: dict[Id, Load] = Field(default_factory=dict)
    networks: dict[Id, Network] = Field(default_factory=dict)
    devices: dict[Id, Device] = Field(default_factory=dict)
    scenes: dict[Id, Scene] = Field(default_factory=dict)
    naming: NamingPolicy = NamingPolicy()
    outside_uses: dict[Id, OutsideUse] = Field(default_factory=dict)
    assumptions: dict[str, AssumptionChoice] = Field(default_factory=dict)
    models: dict[ModelKey, Model] = Field(default_factory=dict, description="a copy of each edition used")


def is_nec(house: House) -> bool:
    """Whether the house is said to follow NFPA 70, and so speaks its words and measures."""
    return house.wiring_rules is WiringRules.NEC
