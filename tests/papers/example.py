"""A small invented house for the papers: every kind of duty, place, wall and doubt at least once."""

from __future__ import annotations

import json
from typing import Any

from secondfix.catalogue import Model
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.papers import Key

LONG = "Bücherregal" + "beleuchtung" * 4 + "oben"  # 59 characters without a space
HOSTILE = [
    "#pagebreak() *x*",
    "$a_b$ `raw`",
    r"back\slash \u{41}",
    "<b>&amp;</b> \"q\" 'q'",
    "= head @ref ~ --- //",
]


def _model(**more: Any) -> Model:
    plain: dict[str, Any] = {
        "maker": "tolvarp",
        "name": "fen-2",
        "edition": 1,
        "title": "Tolvarp Fen 2-gang relay",
        "sheet": "TV-118 rev. 2",
        "form": "switch",
        "protocol": "zigbee",
        "supply": "mains",
        "output": "relay",
        "mounts": 1,
        "gangs": 2,
        "neutral": "needed",
        "repeats": "yes",
        "whole_entry": False,
        "code": "zigbee_install_code",
        "code_printed_at": "back of the module",
        "join": {"steps": [{"act": "hold", "button": "gang 1", "hold_ms": 7000}], "near_s": 15, "far_s": 50},
    }
    return Model.model_validate(plain | more)


MODELS = {
    m.key: m
    for m in (
        _model(),
        _model(
            maker="orrebeck",
            name="quad",
            title="Orrebeck Quad",
            protocol="zwave",
            mounts=2,
            gangs=4,
            whole_entry=True,
            whole_switches="all",
            code="zwave_dsk",
            live_parts_front_off="yes",
        ),
        _model(
            maker="tolvarp",
            name="heath-dim",
            title="Tolvarp Heath dimmer",
            output="dimmer",
            gangs=1,
            neutral="either",
        ),
        _model(
            maker="sollumeer", name="relay-plug", title="Sollumeer plug", form="plug_in", mounts=0, gangs=1
        ),
        _model(
            maker="sollumeer",
            name="drop",
            title="Sollumeer Drop, module at a luminaire",
            form="luminaire_module",
            mounts=0,
            gangs=1,
        ),
        _model(
            maker="sollumeer",
            name="pebble",
            title="Sollumeer Pebble, battery button",
            form="battery_button",
            supply="battery",
            output="none",
            mounts=0,
            gangs=2,
            neutral=None,
        ),
    )
}


def _fact(value: Any, known: str = "seen_open") -> dict[str, Any]:
    return {"value": value, "known": known}


def _at(x: int, y: int, h: int = 1050) -> dict[str, int]:
    return {"x_mm": x, "y_mm": y, "height_mm": h}


def _box(
    room: str, position: dict[str, int] | None, gangs: dict[str, Any], mounts: int = 1
) -> dict[str, Any]:
    plain = {"room": room, "mounts": {str(n): {} for n in range(1, mounts + 1)}, "gangs": gangs}
    return plain | ({"position": position} if position else {})


def _feeds(load: str, mount: str = "1") -> dict[str, Any]:
    return {"duty": "feeds", "load": load, "mount": mount, "line": _fact("C1")}


def plain_house() -> dict[str, Any]:
    """The document as plain values, for tests to change."""
    masonry = _fact([{"material": "brick", "thickness_mm": 200}])
    light = _fact([{"material": "plasterboard", "thickness_mm": 150}])
    return {
        "format": 1,
        "id": "0192f0c1-7a51-7b3e-9c44-3d5e6f708192",
        "name": "Quillfen Lane 12",
        "time_zone": "Europe/Oslo",
        "mains_voltage_v": 230,
        "wiring_rules": "iec",
        "storeys": {
            "S1": {"name": "Ground floor", "level_mm": 0, "height_mm": 2520},
            "S2": {"name": "Loft", "level_mm": 2800},
        },
        "rooms": {
            "R1": {
                "name": "Dining room",
                "storey": "S1",
                "outline_mm": [[0, 0], [4200, 0], [4200, 3100], [0, 3100]],
            },
            "R2": {
                "name": "Hall",
                "storey": "S1",
                "outline_mm": [[4350, 0], [7000, 0], [7000, 4600], [5600, 4600], [5600, 3100], [4350, 3100]],
            },
            "R3": {"name": "Loft room", "storey": "S2"},
        },
        "walls": {
            "W1": {
                "storey": "S1",
                "from_mm": [-100, -100],
                "to_mm": [7100, -100],
                "thickness_mm": 200,
                "layers": masonry,
            },
            "W2": {
                "storey": "S1",
                "from_mm": [7100, -100],
                "to_mm": [7100, 4700],
                "thickness_mm": 200,
                "layers": masonry,
            },
            "W3": {
                "storey": "S1",
                "from_mm": [7100, 4700],
                "to_mm": [5500, 4700],
                "thickness_mm": 200,
                "layers": masonry,
            },
            "W4": {"storey": "S1", "from_mm": [5500, 4700], "to_mm": [5500, 3200], "thickness_mm": 200},
            "W5": {"storey": "S1", "from_mm": [5500, 3200], "to_mm": [-100, 3200]},
            "W6": {
                "storey": "S1",
                "from_mm": [-100, 3200],
                "to_mm": [-100, -100],
                "thickness_mm": 200,
                "layers": masonry,
            },
            "W7": {
                "storey": "S1",
                "from_mm": [4275, -100],
                "to_mm": [4275, 3200],
                "thickness_mm": 150,
                "layers": light,
            },
        },
        "doors": {"D1": {"wall": "W7", "along_mm": 400, "width_mm": 900, "height_mm": 2050}},
        "windows": {
            "V1": {"wall": "W1", "along_mm": 1200, "width_mm": 1500, "sill_mm": 900, "height_mm": 1200}
        },
        "circuits": {"C1": {"name": "Lights down"}, "C4": {"name": "Sockets"}},
        "boxes": {
            "B01": _box(
                "R1",
                _at(2000, 3100),
                {"1": _feeds("L01"), "2": _feeds("L02"), "3": _feeds("L03", "2"), "4": _feeds("L04", "2")},
                2,
            ),
            "B02": _box("R1", _at(2150, 3100, 1100), {"1": {"duty": "extends", "extends": "B01.1"}}),
            "B03": _box("R1", _at(4200, 1500), {"1": _feeds("L05"), "2": {"duty": "not_known"}}),
            "B04": _box("R2", _at(4350, 1500), {"1": _feeds("L06"), "2": {"duty": "scene_only"}}),
            "B05": _box("R2", _at(6000, 2000), {"1": {"duty": "capped"}}),
            "B06": _box("R2", None, {"1": _feeds("L07")}),
            "B07": _box("R3", _at(9000, 100, 1200), {"1": _feeds("L08"), "2": {"duty": "capped"}}),
        },
        "places": {
            "P01": {
                "kind": "light_point",
                "name": "Middle of the ceiling",
                "room": "R1",
                "position": _at(2100, 1550, 2520),
            },
            "P02": {"kind": "socket", "name": "By the window", "room": "R1", "position": _at(600, 0, 300)},
            "P05": {
                "kind": "light_point",
                "name": "Cupboard ceiling",
                "room": "R2",
                "position": _at(6400, 4000, 2520),
                "circuit": _fact("C1", "told"),
            },
            "P06": {"kind": "socket", "name": "Hall socket", "room": "R2", "position": _at(7000, 600, 300)},
            "P07": {"kind": "surface", "name": "Shoe shelf", "room": "R2", "position": _at(6900, 2600, 900)},
            "P03": {
                "kind": "controller_spot",
                "name": "Meter cupboard",
                "room": "R2",
                "position": _at(6800, 4300, 1800),
            },
            "P04": {"kind": "light_point", "name": "Hall", "room": "R2", "position": _at(5700, 1500, 2520)},
        },
        "loads": {
            "L01": {
                "name": "Ceiling",
                "room": "R1",
                "place": "P01",
                "kind": _fact("led_lamp"),
                "purpose": "lighting",
                "power_mw": _fact(7000),
                "count": _fact(4),
            },
            "L02": {"name": "Cove", "room": "R1", "kind": _fact("led_driver"), "purpose": "lighting"},
            "L03": {"name": "Table", "room": "R1", "purpose": "lighting"},
            "L04": {
                "name": "Radiant heater",
                "room": "R1",
                "kind": _fact("resistive"),
                "purpose": "heater_radiant",
            },
            "L05": {"name": LONG, "room": "R1"},
            "L06": {"name": "Hall ceiling", "room": "R2", "place": "P04", "purpose": "lighting"},
            "L07": {"name": "Porch", "room": "R2"},
            "L09": {
                "name": "Cupboard fan",
                "room": "R2",
                "place": "P05",
                "kind": _fact("motor"),
                "purpose": "extract_fan",
                "power_mw": _fact(18500, "told"),
            },
            "L08": {"name": HOSTILE[0], "room": "R3"},
        },
        "networks": {
            "N1": {
                "name": "Zigbee of the house",
                "protocol": "zigbee",
                "controller_place": "P03",
                "channel": 20,
            },
            "N2": {"name": "Z-Wave of the house", "protocol": "zwave", "controller_place": "P03"},
        },
        "devices": {
            "D01": {
                "model": "orrebeck-quad@1",
                "network": "N2",
                "box": "B01",
                "mounts": ["1", "2"],
                "gangs": ["1", "2", "3", "4"],
                "code_ref": "K01",
            },
            "D02": {
                "model": "tolvarp-fen-2@1",
                "network": "N1",
                "box": "B03",
                "mounts": ["1"],
                "gangs": ["1", "2"],
            },
            "D03": {
                "model": "tolvarp-heath-dim@1",
                "network": "N1",
                "box": "B04",
                "mounts": ["1"],
                "gangs": ["1"],
            },
            "D05": {"model": "sollumeer-drop@1", "network": "N1", "place": "P05", "outputs": {"1": "L09"}},
            "D06": {"model": "sollumeer-pebble@1", "network": "N1", "place": "P07"},
            "D04": {
                "model": "sollumeer-relay-plug@1",
                "network": "N1",
                "place": "P02",
                "name": "Window repeater",
            },
        },
        "scenes": {
            "X1": {
                "name": "Goodnight",
                "starts": [{"by": "gang", "gang": "B04.2", "press": "held"}],
                "rules": [{"select": {"every_load": True}, "to": "off"}],
            },
            "X2": {
                "name": "Dinner",
                "starts": [{"by": "time", "at": "18:40", "days": ["fri", "sat"]}],
                "rules": [{"select": {"load": "L01"}, "to": "on", "level_pct": 30}],
            },
        },
        "outside_uses": {
            "U1": {
                "kind": "routine",
                "device": "D02",
                "words": "The family's own morning routine uses gang 2.",
            }
        },
    }


def house_of(plain: dict[str, Any]) -> House:
    """The document as read."""
    house = read_house(json.dumps(plain).encode(), where="example", models=MODELS)
    assert isinstance(house, House), house
    return house


def example() -> Schedule:
    """The example's switch schedule."""
    house = house_of(plain_house())
    return schedule(house, house.models)


RULE = Rule(
    "contact-rating",
    "Does the contact carry the load?",
    "EN 60669-1:2018, scope (secondary)",
    ("power_factor_led_lamp_permille",),
)
FINDINGS: tuple[Finding, ...] = (
    fails(
        RULE,
        Severity.FAULT,
        "B01.2",
        "Four drivers on one contact, 73.6 A peak together.",
        value="73.6 A",
        limit="50 A at that width",
        remedy="Split over two gangs, or measure.",
        also=("L02",),
    ),
    fails(
        Rule("heater-on", "Does a heater switch on unattended?", "common practice, no source"),
        Severity.DANGER,
        "B01.4",
        "A radiant heater returns on after a power loss.",
        value="returns on",
        limit="returns off",
        remedy="Set the state after power loss to off.",
    ),
    fails(
        Rule("label", "Does the board's label agree?", "common practice, no source"),
        Severity.ADVICE,
        "B03",
        "The board's label names another room.",
        value="Hall",
        limit="Dining room",
        remedy="Correct the label.",
    ),
    cannot_tell(
        Rule("neutral", "Is a neutral there?", "common practice, no source"),
        Severity.FAULT,
        "B04",
        "Whether a neutral is in the box is not known.",
        looks=(Look("B04", "mounts.1.neutral", "look for a neutral conductor behind the switch"),),
        limit="a neutral of the same circuit",
    ),
    cannot_tell(
        Rule("depth", "Does it fit behind the plate?", "common practice, no source"),
        Severity.FAULT,
        "B06",
        "The depth of the box is not known.",
        looks=(Look("B06", "depth_mm", "measure the box's depth"),),
    ),
    cannot_tell(
        Rule("no-parent", "Is there a good parent?", "common practice, no source", ("parent_margin_db",)),
        Severity.ADVICE,
        "D05",
        "Whether the module hears a parent is not known.",
        looks=(Look("P05", "radio", "measure the link at the cupboard ceiling"),),
    ),
    cannot_tell(
        Rule("time-zone", "Is the time zone known?", "common practice, no source"),
        Severity.ADVICE,
        "house",
        "The time zone is not confirmed.",
        looks=(Look("house", "time_zone", "ask where the house stands"),),
    ),
    passes(Rule("module-total", "Is the module's total kept?", "data sheet"), "D02"),
)

CODE = "34028-23669-20938-46346-33746-07431-56821-14553"
KEYS = (
    Key("K01", "Orrebeck Quad at B01", CODE, f"ZW:{CODE}"),
    Key("K02", "Key of network N1", "with the firm"),
)
