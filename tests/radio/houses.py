"""Houses made to measure for the radio tests: rooms in a row or grid, every fact known unless taken away."""

from copy import deepcopy
from typing import Any

from secondfix.assumptions import Assumptions, Override, default_assumptions
from secondfix.catalogue import Model, read_model
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.radio import Reach, reach
from tests.example_house import as_bytes, seen

_TOML = """
maker = "wrenfold"
name = "{name}"
edition = 1
title = "Wrenfold {name}"
sheet = "WF-31, page 2"
form = "{form}"
protocol = "{protocol}"
supply = "{supply}"
output = "none"
mounts = {mounts}
gangs = 1
repeats = "{repeats}"
whole_entry = false
{power}
code = "none"
[join]
steps = [{{ act = "hold", button = "the only button", hold_ms = 6000 }}]
"""
POWER = "transmit_power_dbm = 8\nsensitivity_dbm = -100"
SURVEYED = ("shell", "plate", "finish")
_PROTOCOLS = ("zigbee", "zwave", "matter_thread")


def _read(name: str, **words: object) -> tuple[str, Model]:
    text = _TOML.format(name=name, **words)
    model = read_model(text, where=name)
    assert isinstance(model, Model), model
    return model.key, model


MODELS: dict[str, Model] = dict(
    entry
    for p in _PROTOCOLS
    for entry in (
        _read(
            f"relay-{p.replace('_', '-')}",
            form="switch",
            protocol=p,
            supply="mains",
            mounts=1,
            repeats="yes",
            power=POWER,
        ),
        _read(
            f"leaf-{p.replace('_', '-')}",
            form="switch",
            protocol=p,
            supply="mains",
            mounts=1,
            repeats="no",
            power=POWER,
        ),
        _read(
            f"mute-{p.replace('_', '-')}",
            form="switch",
            protocol=p,
            supply="mains",
            mounts=1,
            repeats="not_stated",
            power=POWER,
        ),
        _read(
            f"cell-{p.replace('_', '-')}",
            form="battery_button",
            protocol=p,
            supply="battery",
            mounts=0,
            repeats="yes",
            power=POWER,
        ),
        _read(
            f"plug-{p.replace('_', '-')}",
            form="plug_in",
            protocol=p,
            supply="mains",
            mounts=0,
            repeats="yes",
            power=POWER,
        ),
        _read(
            f"bare-{p.replace('_', '-')}",
            form="switch",
            protocol=p,
            supply="mains",
            mounts=1,
            repeats="yes",
            power="",
        ),
    )
)


def key(kind: str, protocol: str = "zigbee") -> str:
    """The key of one of the models: relay, leaf, mute, cell, plug or bare."""
    return f"wrenfold-{kind}-{protocol.replace('_', '-')}@1"


def brick(thickness_mm: int = 100) -> dict[str, object]:
    return seen([{"material": "brick", "thickness_mm": thickness_mm}])


def row_of_rooms(
    count: int, *, protocol: str = "zigbee", kind: str = "relay", room_mm: int = 4000, wall_mm: int = 100
) -> dict[str, Any]:
    """Rooms side by side, a brick wall between each two, a switch in each, the controller in the first."""
    rooms, walls, boxes, devices = {}, {}, {}, {}
    for n in range(count):
        x = n * room_mm
        rooms[f"R{n}"] = {
            "name": f"Room {n}",
            "storey": "S0",
            "outline_mm": [[x, 0], [x + room_mm, 0], [x + room_mm, 5000], [x, 5000]],
        }
        if n:
            walls[f"W{n}"] = {
                "storey": "S0",
                "from_mm": [x, -500],
                "to_mm": [x, 5500],
                "thickness_mm": wall_mm,
                "layers": brick(wall_mm),
            }
        boxes[f"B{n}"] = {
            "room": f"R{n}",
            "position": {"x_mm": x + room_mm // 2, "y_mm": 60, "height_mm": 1100},
            "mounts": {"1": {}},
            "gangs": {"1": {"duty": "scene_only"}},
            "shell": seen("plastic"),
            "plate": seen("plastic"),
            "finish": seen("plaster"),
        }
        devices[f"D{n}"] = {
            "model": key(kind, protocol),
            "network": "N1",
            "box": f"B{n}",
            "mounts": ["1"],
            "gangs": ["1"],
        }
    if count == 1:
        walls["W0"] = {"storey": "S0", "from_mm": [0, -500], "to_mm": [0, 5500], "layers": brick()}
    return {
        "format": 1,
        "id": "0193a7c2-1b58-7e0d-9c41-6f20d8b35e17",
        "name": "Row at Tollgate Green",
        "radio_region": "eu",
        "storeys": {"S0": {"name": "Ground", "level_mm": 0, "height_mm": 2500}},
        "rooms": rooms,
        "walls": walls,
        "boxes": boxes,
        "places": {
            "P0": {
                "kind": "controller_spot",
                "name": "Shelf",
                "room": "R0",
                "position": {"x_mm": room_mm // 2, "y_mm": 4000, "height_mm": 1500},
            }
        },
        "networks": {
            "N1": {
                "name": "Row",
                "protocol": protocol,
                "controller_place": "P0",
                "transmit_power_dbm": 8,
                "sensitivity_dbm": -100,
            }
        },
        "devices": devices,
    }


def far(plain: dict[str, Any], *, power_dbm: int) -> dict[str, Any]:
    """The same house with a weaker controller."""
    changed = deepcopy(plain)
    changed["networks"]["N1"]["transmit_power_dbm"] = power_dbm
    return changed


def rows_of(plain: dict[str, Any]) -> Schedule:
    """The house read, as the schedule that `reach` takes; an AssertionError shows the faults."""
    read = read_house(as_bytes(plain), where="row.json", models=MODELS)
    assert isinstance(read, House), "\n".join(map(str, read))
    return schedule(read, read.models or MODELS)


def assumed(**values: int) -> Assumptions:
    """The defaults with some set to a certain value."""
    return default_assumptions().overridden({k: Override(v) for k, v in values.items()}, set_by="house")


def asked(plain: dict[str, Any]) -> Reach:
    """The answer; a house may ask for its own longest link."""
    own = plain.get("assumptions", {}).get("radio_longest_link_m", {"value": 30})
    return reach(rows_of(plain), assumed(radio_longest_link_m=own["value"]))
