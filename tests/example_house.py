"""The one shared example: a small house, whole in every kind of statement, as a plain document."""

import json
from copy import deepcopy
from typing import Any

from secondfix.catalogue import Model, read_model
from secondfix.house import House, read_house

SWITCH_TOML = """
maker = "corvell"
name = "pair"
edition = 1
title = "Corvell Pair, two gangs on one mount"
sheet = "CV-214, page 3"
form = "switch"
protocol = "zwave"
supply = "mains"
output = "relay"
mounts = 1
gangs = 2
neutral = "needed"
module_total_ma = 8000
depth_behind_plate_mm = 27
repeats = "yes"
whole_entry = true
whole_switches = "all"
transmit_power_dbm = 4
sensitivity_dbm = -98
live_parts_front_off = "no"
removal_before_join = "always"
code = "zwave_dsk"
code_printed_at = "inside the front"
power_loss = { settable = ["off", "last"], as_delivered = "last" }
ratings = [
  { kind = "resistive", current_ma = 6000, at_voltage_v = 230, standard = "IEC 60669-2-1:2021" },
  { kind = "self_ballasted", current_ma = 900, at_voltage_v = 230, standard = "IEC 60669-2-1:2021" },
]
[join]
near_s = 9
far_s = 47
steps = [{ act = "press", button = "gang 1", times = 4, within_ms = 1800 }]
[remove]
steps = [{ act = "press", button = "gang 1", times = 4, within_ms = 1800 }]
"""

BUTTON_TOML = """
maker = "corvell"
name = "pebble"
edition = 2
title = "Corvell Pebble, battery button"
sheet = "CV-090, page 1"
form = "battery_button"
protocol = "zwave"
supply = "battery"
output = "none"
mounts = 0
gangs = 1
repeats = "no"
whole_entry = false
removal_before_join = "when_used"
code = "none"
[join]
steps = [{ act = "hold", button = "the only button", hold_ms = 4500 }]
"""

_TEXTS = {"corvell-pair@1": SWITCH_TOML, "corvell-pebble@2": BUTTON_TOML}


def models() -> dict[str, Model]:
    """The two models of the example, by key."""
    read = {key: read_model(text, where=key) for key, text in _TEXTS.items()}
    return {key: model for key, model in read.items() if isinstance(model, Model)}


def seen(value: object) -> dict[str, object]:
    """A fact seen with the box open."""
    return {"value": value, "known": "seen_open"}


DOCUMENT: dict[str, Any] = {
    "format": 1,
    "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b604",
    "name": "Pellow Lane 11",
    "time_zone": "CET",
    "mains_voltage_v": 230,
    "mains_frequency_hz": 50,
    "wiring_rules": "iec",
    "radio_region": "eu",
    "storeys": {"S0": {"name": "Ground floor", "level_mm": 0, "height_mm": 2600}},
    "rooms": {
        "R1": {"name": "Hall", "storey": "S0", "outline_mm": [[0, 0], [3000, 0], [3000, 4000], [0, 4000]]},
        "R2": {
            "name": "Study",
            "storey": "S0",
            "outline_mm": [[3100, 0], [6100, 0], [6100, 4000], [3100, 4000]],
        },
    },
    "walls": {
        "W1": {
            "storey": "S0",
            "from_mm": [3050, 0],
            "to_mm": [3050, 4000],
            "thickness_mm": 100,
            "layers": seen([{"material": "brick", "thickness_mm": 100}]),
        }
    },
    "doors": {"D1": {"wall": "W1", "along_mm": 2900, "width_mm": 800, "height_mm": 2000}},
    "circuits": {
        "C1": {
            "name": "Lights",
            "breaker_a": seen(10),
            "curve": seen("B"),
            "label": "lights",
            "label_rooms": ["R1", "R2"],
        }
    },
    "boxes": {
        "B1": {
            "room": "R1",
            "position": {"x_mm": 3000, "y_mm": 2500, "height_mm": 1040},
            "mounts": {"1": {"neutral": seen("C1")}},
            "gangs": {
                "1": {"duty": "feeds", "load": "L1", "line": seen("C1")},
                "2": {"duty": "feeds", "load": "L2", "line": seen("C1")},
            },
            "depth_mm": seen(47),
            "set_back_mm": seen(0),
            "shell": seen("plastic"),
            "plate": seen("plastic"),
            "finish": seen("plaster"),
            "cables": seen(3),
        },
        "B2": {
            "room": "R2",
            "position": {"x_mm": 3100, "y_mm": 2500, "height_mm": 1040},
            "mounts": {"1": {"neutral": seen("absent")}},
            "gangs": {"1": {"duty": "extends", "extends": "B1.2", "line": seen("C1")}},
        },
    },
    "places": {
        "P1": {
            "kind": "controller_spot",
            "name": "Shelf",
            "room": "R2",
            "position": {"x_mm": 5900, "y_mm": 3600, "height_mm": 1600},
        },
        "P2": {"kind": "surface", "name": "Beside the bed", "room": "R2"},
    },
    "loads": {
        "L1": {
            "name": "Ceiling",
            "room": "R1",
            "kind": seen("led_lamp"),
            "purpose": "lighting",
            "power_mw": seen(7000),
            "count": seen(3),
            "dimmable": seen(False),
            "permanent_supply": seen(False),
            "after_power_loss": "off",
            "neutral": seen("C1"),
        },
        "L2": {
            "name": "Desk",
            "room": "R2",
            "kind": seen("led_lamp"),
            "purpose": "lighting",
            "power_mw": seen(11000),
            "count": seen(1),
            "dimmable": seen(False),
            "permanent_supply": seen(False),
            "after_power_loss": "last",
            "neutral": seen("C1"),
            "tags": ["work"],
        },
    },
    "networks": {
        "N1": {
            "name": "Main",
            "protocol": "zwave",
            "controller_place": "P1",
            "transmit_power_dbm": 4,
            "sensitivity_dbm": -100,
        }
    },
    "devices": {
        "D01": {
            "model": "corvell-pair@1",
            "network": "N1",
            "box": "B1",
            "mounts": ["1"],
            "gangs": ["1", "2"],
            "code_ref": "K01",
        },
        "D02": {"model": "corvell-pebble@2", "network": "N1", "place": "P2", "name": "Bedside"},
    },
    "scenes": {
        "SC1": {
            "name": "Leaving",
            "starts": [{"by": "sensor", "device": "D02"}],
            "rules": [{"select": {"purpose": "lighting"}, "leave_out": [{"tag": "work"}], "to": "off"}],
        }
    },
    "outside_uses": {
        "U1": {
            "kind": "routine",
            "device": "D01",
            "entry": 2,
            "words": "a family routine turns the desk lamp on",
        }
    },
}


def document() -> dict[str, Any]:
    """A fresh copy to change."""
    return deepcopy(DOCUMENT)


def as_bytes(plain: object) -> bytes:
    """The document as the bytes of a file."""
    return json.dumps(plain).encode()


def house(plain: dict[str, Any] | None = None) -> House:
    """The example, or a changed copy of it, read; an AssertionError shows the faults if it is unusable."""
    read = read_house(as_bytes(plain or DOCUMENT), where="example.json", models=models())
    assert isinstance(read, House), "\n".join(map(str, read))
    return read
