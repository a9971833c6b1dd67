"""Circuits, wall boxes with their mounts and gangs, loads, and the other places a device may stand."""

from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field, Strict

from secondfix.house.building import Position
from secondfix.house.multiway import Multiway
from secondfix.house.parts import Fact, GangId, Id, Name, Note, Part, Slot, Tags, settled
from secondfix.terms import Finish, Kind, PlateMaterial, PowerLossState, Purpose, ShellMaterial

__all__ = [
    "ABSENT",
    "EARTH",
    "Box",
    "Circuit",
    "Duty",
    "Fact",
    "Gang",
    "Load",
    "Mount",
    "Place",
    "settled",
]

ABSENT = "absent"  # no neutral reaches the mount
EARTH = "earth"  # a protective conductor is used as neutral: always a danger

Loose = Strict(False)
Count = Annotated[int, Field(ge=1, le=500)]
Power = Annotated[int, Field(ge=1, le=20_000_000)]
Permille = Annotated[int, Field(ge=100, le=1_000)]
Awg = Literal["18", "16", "14", "12", "10", "8", "6"]  # the sizes of NEC table 314.16(B)
OfSize = dict[Awg, Annotated[int, Field(ge=0, le=60)]]
Kinds = Annotated[tuple[Annotated[Kind, Loose], ...], Loose]


class Circuit(Part):
    """A final circuit. ``label_rooms`` are the rooms that the board's label claims it serves."""

    name: Name
    breaker_a: Fact[Annotated[int, Field(ge=1, le=125)]] | None = None
    curve: Fact[Literal["B", "C", "D"]] | None = None
    label: Note = ""
    label_rooms: Annotated[tuple[Id, ...], Loose] | None = None
    other_load_ma: Fact[Annotated[int, Field(ge=0, le=125_000)]] | None = Field(
        None, description="what hangs on it beside the loads of this house that gangs and outputs feed"
    )
    phase: Fact[Literal["L1", "L2", "L3"]] | None = None
    shares_neutral_with: Fact[Annotated[tuple[Id, ...], Loose]] | None = Field(
        None, description="the other circuits of a multiwire circuit; empty where its neutral is its own"
    )
    opens_together: Fact[bool] | None = Field(
        None, description="its breaker and those that share its neutral open together"
    )
    feeder: Fact[Name] | None = None


class Duty(StrEnum):
    """What a gang is there for."""

    FEEDS = "feeds"
    EXTENDS = "extends"
    SCENE_ONLY = "scene_only"
    CAPPED = "capped"
    NOT_KNOWN = "not_known"


class Mount(Part):
    """One plate width or yoke of a wall box.

    ``neutral`` is the circuit whose neutral reaches it, ``absent``, or ``earth`` where a
    protective conductor was found in its place. ``largest_awg`` is the largest conductor that ends at
    its device; ``neutral_through`` whether the neutral goes on by a joint of its own, so that taking
    the device off does not break it.
    """

    neutral: Fact[Id | Literal["absent", "earth"]] | None = None
    neutral_through: Fact[bool] | None = None
    largest_awg: Fact[Awg] | None = None


class Gang(Part):
    """One switching position: what it is for, its load or the gang it extends, and its line."""

    mount: Slot = "1"
    duty: Annotated[Duty, Loose] = Duty.NOT_KNOWN
    load: Id | None = None
    extends: GangId | None = None
    line: Fact[Id] | None = Field(None, description="the circuit that the line conductor belongs to")
    note: Note = ""


class Box(Part):
    """A wall box as surveyed. ``depth_mm`` is inside, ``set_back_mm`` the finish proud of its rim."""

    room: Id
    position: Position | None = None
    mounts: Annotated[dict[Slot, Mount], Field(min_length=1, max_length=6)]
    gangs: Annotated[dict[Slot, Gang], Field(max_length=24)]
    depth_mm: Fact[Annotated[int, Field(ge=5, le=150)]] | None = None
    set_back_mm: Fact[Annotated[int, Field(ge=0, le=60)]] | None = None
    shell: Fact[Annotated[ShellMaterial, Loose]] | None = None
    plate: Fact[Annotated[PlateMaterial, Loose]] | None = None
    finish: Fact[Annotated[Finish, Loose]] | None = None
    cables: Fact[Annotated[int, Field(ge=0, le=30)]] | None = None
    earthed: Fact[bool] | None = Field(
        None, description="whatever of box and plate is metal is joined to the protective conductor"
    )
    zone: Fact[Literal["0", "1", "2", "outside"]] | None = None
    two_supplies_label: Fact[bool] | None = Field(
        None, description="a label at the box says that more than one circuit feeds it"
    )
    volume_mm3: Fact[Annotated[int, Field(ge=10_000, le=5_000_000)]] | None = None
    conductors: Fact[OfSize] | None = Field(
        None, description="conductors from outside that end, are joined or pass through, by AWG"
    )
    loops: Fact[OfSize] | None = Field(None, description="conductors looped through unbroken, by AWG")
    grounds: Fact[OfSize] | None = Field(None, description="equipment grounding conductors, by AWG")
    clamps: Fact[bool] | None = Field(None, description="has clamps inside")
    fittings: Fact[Annotated[int, Field(ge=0, le=4)]] | None = Field(
        None, description="kinds of stud or hickey inside"
    )
    note: Note = ""


class Load(Part):
    """What a contact feeds: kind is what the contact sees, purpose is what it is for.

    ``power_mw`` is of one lamp or motor, ``count`` how many hang on the same wire; behind
    transformers both speak of one transformer with its lamps. ``other_direction`` is the load that
    drives the same motor the other way.
    """

    name: Name
    room: Id
    place: Id | None = None
    kind: Fact[Annotated[Kind, Loose]] | None = None
    purpose: Annotated[Purpose, Loose] | None = None
    also_kinds: Fact[Kinds] | None = Field(
        None, description="beside a transformer: what else hangs on the same wire; empty for nothing"
    )
    power_mw: Fact[Power] | None = None
    count: Fact[Count] | None = None
    power_factor_permille: Fact[Permille] | None = None
    inrush_peak_ma: Fact[Annotated[int, Field(ge=1, le=2_000_000)]] | None = None
    inrush_width_us: Fact[Annotated[int, Field(ge=1, le=100_000)]] | None = None
    transformer_va: Fact[Annotated[int, Field(ge=1, le=5_000)]] | None = None
    transformer_least_mw: Fact[Annotated[int, Field(ge=0, le=500_000)]] | None = None
    bypass_nf: Fact[Annotated[int, Field(ge=0, le=5_000)]] | None = Field(
        None, description="capacitor across the lamps for a switch without neutral; 0 for none"
    )
    dimmable: Fact[bool] | None = None
    to_be_dimmed: bool | None = Field(None, description="whether somebody wants it dimmed")
    continuous: Fact[bool] | None = Field(None, description="may be on for 3 h or more at a time")
    reversing: Fact[bool] | None = Field(None, description="a motor that turns both ways")
    other_direction: Id | None = None
    permanent_supply: Fact[bool] | None = Field(None, description="needs its supply at all times")
    own_thermostat: Fact[bool] | None = None
    time_limit_s: int | None = Field(None, ge=1, le=86_400, description="longest time on per command")
    after_power_loss: Annotated[PowerLossState, Loose] | None = None
    neutral: Fact[Id] | None = Field(None, description="the circuit that its neutral belongs to")
    multiway: Multiway | None = Field(None, description="the places that work it, where there are several")
    tags: Tags = ()
    note: Note = ""


class Place(Part):
    """A place other than a mount where a device may stand."""

    kind: Literal["light_point", "socket", "surface", "controller_spot"]
    name: Name
    room: Id
    position: Position | None = None
    circuit: Fact[Id] | None = None
