"""What may be filled in of each kind of thing: heading, where it stands within it, what a text may be."""

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from secondfix.exchange.switch_sheet import (
    COLUMNS,
    NEUTRAL,
    Cell,
    Choice,
    Figure,
    Known,
    Words,
    YesNo,
)
from secondfix.exchange.things.cells import Address, Corners, InRoom, Layers, Length, Pairs, Several
from secondfix.house import Arrangement, House, OthersAct, is_nec
from secondfix.terms import (
    KIND_LABELS,
    POWER_LOSS_LABELS,
    PROTOCOLS,
    LayerMaterial,
    RadioRegion,
)

Only = Literal["iec", "nec", ""]


@dataclass(frozen=True, slots=True)
class Field:
    """One field of a thing. ``path`` is within the thing; ``fact`` says that it carries how it is known.

    ``only`` keeps a field to houses of one world; ``wide`` one whose text may be long.
    """

    key: str
    heading: str
    path: str
    cell: Cell
    fact: bool = False
    only: Only = ""
    hint: str = ""
    wide: bool = False


@dataclass(frozen=True, slots=True)
class ThingKind:
    """One kind of thing: its collection in the document, its words, the letter of its ids, its fields."""

    name: str
    collection: str
    one: str
    letter: str
    fields: tuple[Field, ...]


def _of_sheet(on: str) -> tuple[Field, ...]:
    """The columns that the switch schedule has of a thing."""
    return tuple(Field(c.key, c.heading, c.field, c.cell, c.fact, c.only) for c in COLUMNS if c.on == on)


def _words(*values: str) -> Choice:
    return Choice({v: v.replace("_", " ") for v in values})


_ARRANGEMENTS = {
    Arrangement.TOGETHER: "line and load together",
    Arrangement.OPPOSITE_ENDS: "line and load at opposite ends",
    Arrangement.SWITCH_LOOP: "switch loop",
    Arrangement.FEED_AT_LUMINAIRE: "feed at the luminaire",
    Arrangement.SWITCHED_NEUTRAL: "switched neutral",
    Arrangement.NOT_JOINED: "not joined",
}
_OTHERS = {
    OthersAct.INPUT: "by its input", OthersAct.RADIO: "by radio", OthersAct.IN_SERIES: "in series",
    OthersAct.IN_PARALLEL: "in parallel",
}  # fmt: skip
_MATERIALS = {m.value: m.value.replace("_", " ") for m in LayerMaterial}
_PLACE_KINDS = _words("light_point", "socket", "surface", "controller_spot")
_SIZES = _words("18", "16", "14", "12", "10", "8", "6")
_ZONES = _words("0", "1", "2", "outside")
_RULES = Choice({"iec": "IEC 60364", "nec": "NFPA 70, the NEC"})
_REGIONS = Choice({r.value: r.value.upper() for r in RadioRegion})
_CIRCUIT = Known("circuits", "a circuit")
_OUTPUTS = Pairs("output", "load", empty="")
_NUMBERS = Several(Words(), empty="")
_BY_SIZE = Pairs("size", "count", figures=True)
_BY_NAME = "a reference such as K07, never what it stands for"
_MS = Decimal(1000)
_ROOM = Field("room", "Room", "room", Known("rooms", "a room"))
_NOTE = Field("note", "Note", "note", Words(), wide=True)
_NAME = Field("name", "Name", "name", Words())
_TAGS = Field("tags", "Tags", "tags", Several(Words(), empty=""), hint="small letters, with commas between")
_RETURNS = Choice({s.value: words for s, words in POWER_LOSS_LABELS.items()})
_POSITION = (
    Field("x", "To the right on the plan, mm", "position.x_mm", Length()),
    Field("y", "Up on the plan, mm", "position.y_mm", Length()),
    Field("height", "Above the finished floor, mm", "position.height_mm", Length()),
)

HOUSE = ThingKind(
    "house", "", "house", "", (
        Field("name", "Name of the house", "name", Words()),
        Field("mains", "Mains voltage, V", "mains_voltage_v", Figure("V")),
        Field("frequency", "Mains frequency, Hz", "mains_frequency_hz", Figure("Hz")),
        Field("rules", "Wiring rules", "wiring_rules", _RULES),
        Field("region", "Radio region", "radio_region", _REGIONS),
        Field("zone", "Time zone", "time_zone", Words(), hint="as the tz database names it, such as CET"),
        Field("latitude", "Latitude, °, north positive", "latitude_mdeg", Figure("°", _MS, 3)),
        Field("longitude", "Longitude, °, east positive", "longitude_mdeg", Figure("°", _MS, 3)),
        _NOTE,
    ),
)  # fmt: skip
STOREY = ThingKind(
    "storey", "storeys", "storey", "St", (
        _NAME,
        Field("level", "Finished floor above the datum, mm", "level_mm", Length()),
        Field("ceiling", "Floor to ceiling, mm", "height_mm", Length()),
        Field(
            "floor", "Floor below it, layer by layer", "floor", Layers(_MATERIALS), fact=True, wide=True,
            hint="from the top, such as chipboard 22, air 200, plasterboard 13",
        ),
    ),
)  # fmt: skip
ROOM = ThingKind(
    "room", "rooms", "room", "R", (
        _NAME,
        Field("storey", "Storey", "storey", Known("storeys", "a storey")),
        _TAGS,
        Field(
            "outline", "Corners of its outline, mm", "outline_mm", Corners(), wide=True,
            hint="x and y of each corner, inside face of the walls, such as 0 0, 4200 0, 4200 3100, 0 3100",
        ),
    ),
)  # fmt: skip
CIRCUIT = ThingKind(
    "circuit", "circuits", "circuit", "C", (
        _NAME,
        Field("breaker", "Breaker, A", "breaker_a", Figure("A"), fact=True),
        Field("curve", "Curve", "curve", _words("B", "C", "D"), fact=True),
        Field("label", "Label at the board", "label", Words()),
        Field(
            "label-rooms", "Rooms on the label", "label_rooms", Several(Known("rooms", "a room")),
            hint="ids of rooms with commas between",
        ),
        Field("other-load", "What else hangs on it, A", "other_load_ma", Figure("A", _MS, 3), fact=True),
        Field("phase", "Phase", "phase", _words("L1", "L2", "L3"), fact=True),
        Field(
            "shares", "Shares its neutral with", "shares_neutral_with", Several(_CIRCUIT),
            fact=True, hint="ids of circuits; none where its neutral is its own",
        ),
        Field("together", "Breakers open together", "opens_together", YesNo(), fact=True),
        Field("feeder", "Fed from", "feeder", Words(), fact=True),
    ),
)  # fmt: skip
BOX = ThingKind(
    "box", "boxes", "wall box", "B", (
        *_of_sheet("box"),
        *_POSITION,
        Field("zone", "Zone of a room with bath or shower", "zone", _ZONES, fact=True),
        Field("two-supplies", "Label: two supplies", "two_supplies_label", YesNo(), fact=True),
        Field(
            "conductors", "Conductors from outside, by AWG", "conductors", _BY_SIZE,
            fact=True, only="nec", hint="such as 14: 4, 12: 3",
        ),
        Field(
            "loops", "Loops, by AWG", "loops", _BY_SIZE, fact=True, only="nec",
        ),
        Field(
            "grounds", "Equipment grounds, by AWG", "grounds", _BY_SIZE, fact=True,
            only="nec",
        ),
        Field("clamps", "Clamps inside", "clamps", YesNo(), fact=True, only="nec"),
        Field("fittings", "Studs and hickeys, kinds of", "fittings", Figure(""), fact=True, only="nec"),
        _NOTE,
    ),
)  # fmt: skip
MOUNT = ThingKind(
    "mount", "mounts", "mount", "", (
        Field("neutral", "Neutral", "neutral", NEUTRAL, fact=True),
        Field("through", "Neutral goes on without the device", "neutral_through", YesNo(), fact=True),
        Field("largest", "Largest conductor there, AWG", "largest_awg", _SIZES, fact=True, only="nec"),
    ),
)  # fmt: skip
GANG = ThingKind("gang", "gangs", "gang", "", (Field("mount", "Mount", "mount", Words()),))
_LOAD_OF_SHEET = {f.key: f for f in _of_sheet("load")}
LOAD = ThingKind(
    "load", "loads", "load", "L", (
        _NAME,
        _ROOM,
        Field("place", "Hangs at", "place", Known("places", "a place")),
        _LOAD_OF_SHEET["purpose"],
        _LOAD_OF_SHEET["kind"],
        _LOAD_OF_SHEET["power"],
        _LOAD_OF_SHEET["count"],
        _LOAD_OF_SHEET["load-neutral"],
        Field(
            "also-kinds", "Beside a transformer, also", "also_kinds",
            Several(Choice({k.value: v for k, v in KIND_LABELS.items()}), ";"), fact=True,
            hint="kinds with semicolons between; none for nothing",
        ),
        Field("factor", "Power factor", "power_factor_permille", Figure("", _MS, 3), fact=True),
        Field("inrush", "Inrush peak, A", "inrush_peak_ma", Figure("A", _MS, 3), fact=True),
        Field("inrush-width", "Inrush width, µs", "inrush_width_us", Figure("µs"), fact=True),
        Field("transformer", "Transformer, VA", "transformer_va", Figure("VA"), fact=True),
        Field(
            "transformer-least", "Least load of the transformer, W", "transformer_least_mw",
            Figure("W", _MS, 3), fact=True,
        ),
        Field("bypass", "Bypass, nF", "bypass_nf", Figure("nF"), fact=True, hint="0 for none"),
        Field("dimmable", "May be dimmed", "dimmable", YesNo(), fact=True),
        Field("to-be-dimmed", "To be dimmed", "to_be_dimmed", YesNo()),
        Field("continuous", "On for 3 h or more", "continuous", YesNo(), fact=True),
        Field("reversing", "Motor that turns both ways", "reversing", YesNo(), fact=True),
        Field("other-direction", "Its other direction", "other_direction", Known("loads", "a load")),
        Field("permanent", "Needs its supply at all times", "permanent_supply", YesNo(), fact=True),
        Field("thermostat", "Thermostat of its own", "own_thermostat", YesNo(), fact=True),
        Field("limit", "Longest time on, s", "time_limit_s", Figure("s")),
        Field("returns", "After a power loss it", "after_power_loss", _RETURNS),
        Field(
            "arrangement", "Arrangement, if multi-way", "multiway.arrangement",
            Choice({a.value: words for a, words in _ARRANGEMENTS.items()}), fact=True,
        ),
        Field(
            "places", "Gangs along the conductors", "multiway.gangs", Several(Words(), empty=""),
            hint="in their order, such as B01.1, B11.1",
        ),
        Field(
            "others", "The others act on the one that feeds", "multiway.others",
            Choice({o.value: words for o, words in _OTHERS.items()}), fact=True,
        ),
        Field("spare-cores", "Spare cores", "multiway.spare_cores", Figure(""), fact=True),
        _TAGS,
        _NOTE,
    ),
)  # fmt: skip
PLACE = ThingKind(
    "place", "places", "place", "P", (
        Field("place-kind", "Kind of place", "kind", _PLACE_KINDS),
        _NAME,
        _ROOM,
        *_POSITION,
        Field("circuit", "Circuit", "circuit", _CIRCUIT, fact=True),
    ),
)  # fmt: skip
NETWORK = ThingKind(
    "network", "networks", "network", "N", (
        _NAME,
        Field("protocol", "Protocol", "protocol", Choice({p.value: w.label for p, w in PROTOCOLS.items()})),
        Field("controller", "Controller stands at", "controller_place", Known("places", "a place")),
        Field("channel", "Channel", "channel", Figure("")),
        Field("transmit", "Controller transmits, dBm", "transmit_power_dbm", Figure("dBm")),
        Field("hears", "Controller hears down to, dBm", "sensitivity_dbm", Figure("dBm")),
        Field("key-ref", "Reference of its key", "key_ref", Words(), hint=_BY_NAME),
    ),
)  # fmt: skip
DEVICE = ThingKind(
    "device", "devices", "device", "D", (
        Field("model", "Model", "model", Words()),
        Field("network", "Network", "network", Known("networks", "a network")),
        Field("box", "Wall box", "box", InRoom("boxes", "a wall box")),
        Field("mounts", "Mounts it takes", "mounts", _NUMBERS, hint="such as 1, 2"),
        Field("gangs", "Gangs it works", "gangs", _NUMBERS, hint="in its own order, such as 1, 2, 3"),
        Field("place", "Or at a place", "place", Known("places", "a place")),
        Field("outputs", "Outputs there", "outputs", _OUTPUTS, hint="such as 1: L05, 2: L06"),
        Field("device-name", "Name in the controller", "name", Words()),
        Field("source", "Powered by", "power_source", _words("mains", "battery"), fact=True),
        Field("repeats", "Carries the radio of others", "repeats", YesNo(), fact=True),
        Field("returns", "After a power loss it", "after_power_loss", _RETURNS),
        Field("address", "Address", "address", Address()),
        Field("code-ref", "Reference of its code", "code_ref", Words(), hint=_BY_NAME),
        _NOTE,
    ),
)  # fmt: skip
KINDS = {k.name: k for k in (HOUSE, STOREY, ROOM, CIRCUIT, BOX, MOUNT, GANG, LOAD, PLACE, NETWORK, DEVICE)}


def fields_of(kind: ThingKind, house: House) -> tuple[Field, ...]:
    """The fields of a kind in a house: what only one world asks stays away from the other."""
    world = "nec" if is_nec(house) else "iec" if house.wiring_rules is not None else ""
    return tuple(f for f in kind.fields if not world or f.only in {"", world})


def kind_of(house: House, thing_id: str) -> ThingKind | None:
    """The kind of a thing that stands in the house; None where none has this id."""
    return next((k for k in KINDS.values() if thing_id in (getattr(house, k.collection, None) or {})), None)
