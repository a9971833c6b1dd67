"""Fields of the house itself, of storeys, rooms, walls and openings, circuits, wall boxes and places."""

from secondfix.exchange.switch_sheet import NEUTRAL, Choice, Figure, Known, Words, YesNo
from secondfix.exchange.things.cells import Bare, Corner, Corners, Layers, Length, Pairs, Several
from secondfix.exchange.things.field import (
    CIRCUIT,
    MATERIALS,
    MS,
    NAME,
    NOTE,
    POSITION,
    ROOM,
    TAGS,
    Field,
    ThingKind,
    of_sheet,
    words,
)
from secondfix.terms import RadioRegion

_PLACE_KINDS = words("light_point", "socket", "surface", "controller_spot")
_SIZES = words("18", "16", "14", "12", "10", "8", "6")
_ZONES = words("0", "1", "2", "outside")
_RULES = Choice({"iec": "IEC 60364", "nec": "NFPA 70, the NEC"})
_REGIONS = Choice({r.value: r.value.upper() for r in RadioRegion})
_BY_SIZE = Pairs("size", "count", figures=True)

HOUSE_KIND = ThingKind(
    "house", "", "house", "", (
        Field("name", "Name of the house", "name", Words()),
        Field("mains", "Mains voltage, V", "mains_voltage_v", Figure("V")),
        Field("frequency", "Mains frequency, Hz", "mains_frequency_hz", Figure("Hz")),
        Field("rules", "Wiring rules", "wiring_rules", _RULES),
        Field("region", "Radio region", "radio_region", _REGIONS),
        Field("zone", "Time zone", "time_zone", Words(), hint="as the tz database names it, such as CET"),
        Field("latitude", "Latitude, °, north positive", "latitude_mdeg", Figure("°", MS, 3)),
        Field("longitude", "Longitude, °, east positive", "longitude_mdeg", Figure("°", MS, 3)),
        NOTE,
    ),
)  # fmt: skip
STOREY_KIND = ThingKind(
    "storey", "storeys", "storey", "St", (
        NAME,
        Field("level", "Finished floor above the datum, mm", "level_mm", Length()),
        Field("ceiling", "Floor to ceiling, mm", "height_mm", Length()),
        Field(
            "floor", "Floor below it, layer by layer", "floor", Layers(MATERIALS), fact=True, wide=True,
            hint="from the top, such as chipboard 22, air 200, plasterboard 13",
        ),
    ),
)  # fmt: skip
ROOM_KIND = ThingKind(
    "room", "rooms", "room", "R", (
        NAME,
        Field("storey", "Storey", "storey", Known("storeys", "a storey")),
        TAGS,
        Field(
            "outline", "Corners of its outline, mm", "outline_mm", Corners(), wide=True,
            hint="x and y of each corner, inside face of the walls, such as 0 0, 4200 0, 4200 3100, 0 3100",
        ),
    ),
)  # fmt: skip
WALL_KIND = ThingKind(
    "wall", "walls", "wall", "W", (
        Field("storey", "Storey", "storey", Known("storeys", "a storey")),
        Field("from", "Centre line from, mm", "from_mm", Corner(), hint="x y on the plan"),
        Field("to", "to, mm", "to_mm", Corner(), hint="x y on the plan"),
        Field("thickness", "Thickness, mm", "thickness_mm", Length()),
        Field(
            "layers", "Layers", "layers", Layers(MATERIALS), fact=True, wide=True,
            hint="from its left face to its right as seen from its start, such as plasterboard 13, brick 110",
        ),
    ),
)  # fmt: skip
_OPENING = (
    Field("wall", "Wall", "wall", Bare("walls", "a wall")),
    Field("along", "From the wall's start, mm", "along_mm", Length()),
    Field("width", "Width, mm", "width_mm", Length()),
    Field("sill", "Sill above the floor, mm", "sill_mm", Length()),
    Field("opening-height", "Height, mm", "height_mm", Length()),
    Field("leaf", "Leaf, layer by layer", "leaf", Layers(MATERIALS), fact=True, wide=True),
)
DOOR_KIND = ThingKind("door", "doors", "door", "Door", _OPENING)
WINDOW_KIND = ThingKind("window", "windows", "window", "Win", _OPENING)
CIRCUIT_KIND = ThingKind(
    "circuit", "circuits", "circuit", "C", (
        NAME,
        Field("breaker", "Breaker, A", "breaker_a", Figure("A"), fact=True),
        Field("curve", "Curve", "curve", words("B", "C", "D"), fact=True),
        Field("label", "Label at the board", "label", Words()),
        Field(
            "label-rooms", "Rooms on the label", "label_rooms", Several(Known("rooms", "a room")),
            hint="ids of rooms with commas between",
        ),
        Field("other-load", "What else hangs on it, A", "other_load_ma", Figure("A", MS, 3), fact=True),
        Field("phase", "Phase", "phase", words("L1", "L2", "L3"), fact=True),
        Field(
            "shares", "Shares its neutral with", "shares_neutral_with", Several(CIRCUIT),
            fact=True, hint="ids of circuits; none where its neutral is its own",
        ),
        Field("together", "Breakers open together", "opens_together", YesNo(), fact=True),
        Field("feeder", "Fed from", "feeder", Words(), fact=True),
    ),
)  # fmt: skip
BOX_KIND = ThingKind(
    "box", "boxes", "wall box", "B", (
        *of_sheet("box"),
        *POSITION,
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
        NOTE,
    ),
)  # fmt: skip
MOUNT_KIND = ThingKind(
    "mount", "mounts", "mount", "", (
        Field("neutral", "Neutral", "neutral", NEUTRAL, fact=True),
        Field("through", "Neutral goes on without the device", "neutral_through", YesNo(), fact=True),
        Field("largest", "Largest conductor there, AWG", "largest_awg", _SIZES, fact=True, only="nec"),
    ),
)  # fmt: skip
GANG_KIND = ThingKind("gang", "gangs", "gang", "", (Field("mount", "Mount", "mount", Words()),))
PLACE_KIND = ThingKind(
    "place", "places", "place", "P", (
        Field("place-kind", "Kind of place", "kind", _PLACE_KINDS),
        NAME,
        ROOM,
        *POSITION,
        Field("circuit", "Circuit", "circuit", CIRCUIT, fact=True),
    ),
)  # fmt: skip

OF_BUILDING = (
    HOUSE_KIND, STOREY_KIND, ROOM_KIND, WALL_KIND, DOOR_KIND, WINDOW_KIND, CIRCUIT_KIND, BOX_KIND, MOUNT_KIND,
    GANG_KIND, PLACE_KIND,
)  # fmt: skip
