"""A block of flats as one house: square rooms on storeys, a device in every room, one Zigbee network."""

from __future__ import annotations

import random
from typing import Any

ROOM_MM = 4000
LAYERS = {
    "value": [{"material": "brick", "thickness_mm": 100}, {"material": "plasterboard", "thickness_mm": 12}],
    "known": "measured",
}
FLOOR = {"value": [{"material": "concrete", "thickness_mm": 160}], "known": "measured"}


def block(*, devices: int, storeys: int = 2, seed: int = 4711) -> dict[str, Any]:
    """A house document with so many devices; about two walls for each, at the same density for any size."""
    side = next(n for n in range(1, 1000) if n * n * storeys >= devices)
    house: dict[str, Any] = {
        "format": 1,
        "id": "0193c5d1-77aa-7b34-a1f0-3be0914c2d58",
        "name": "Fellgate block",
        "radio_region": "eu",
        "storeys": {
            f"S{k}": {"name": f"Storey {k}", "level_mm": 2800 * k, "height_mm": 2500, "floor": FLOOR}
            for k in range(storeys)
        },
        "rooms": {},
        "walls": {},
        "boxes": {},
        "devices": {},
        "places": {},
    }
    for k in range(storeys):
        _walls(house, k, side)
        _rooms(house, k, side)
    for number, key in enumerate(random.Random(seed).sample(sorted(house["rooms"]), devices)):
        _device(house, number, key)
    middle = f"R0-{side // 2}-{side // 2}"
    x, y = house["rooms"][middle]["outline_mm"][0]
    house["places"]["P0"] = {
        "kind": "controller_spot",
        "name": "Rack",
        "room": middle,
        "position": {"x_mm": x + 1900, "y_mm": y + 2100, "height_mm": 1900},
    }
    network = {"name": "Block", "protocol": "zigbee", "controller_place": "P0"}
    house["networks"] = {"N1": network | {"transmit_power_dbm": 8, "sensitivity_dbm": -100}}
    return house


def _walls(house: dict[str, Any], storey: int, side: int) -> None:
    for line in range(side + 1):
        for n in range(side):
            a, b, c = line * ROOM_MM, n * ROOM_MM, (n + 1) * ROOM_MM
            for across, ends in (("X", ([a, b], [a, c])), ("Y", ([b, a], [c, a]))):
                house["walls"][f"W{storey}{across}{line}-{n}"] = {
                    "storey": f"S{storey}",
                    "from_mm": ends[0],
                    "to_mm": ends[1],
                    "thickness_mm": 112,
                    "layers": LAYERS,
                }


def _rooms(house: dict[str, Any], storey: int, side: int) -> None:
    for column in range(side):
        for row in range(side):
            x, y = column * ROOM_MM, row * ROOM_MM
            near, far = 56, ROOM_MM - 56
            house["rooms"][f"R{storey}-{column}-{row}"] = {
                "name": f"Flat {storey}-{column}-{row}",
                "storey": f"S{storey}",
                "outline_mm": [
                    [x + near, y + near],
                    [x + far, y + near],
                    [x + far, y + far],
                    [x + near, y + far],
                ],
            }


def _device(house: dict[str, Any], number: int, room: str) -> None:
    x, y = house["rooms"][room]["outline_mm"][0]
    sure = {"known": "seen_open"}
    house["boxes"][f"B{number}"] = {
        "room": room,
        "position": {"x_mm": x + 700 + 37 * (number % 60), "y_mm": y, "height_mm": 1050},
        "mounts": {"1": {}},
        "gangs": {"1": {}, "2": {}, "3": {}},
        "shell": {"value": "plastic", **sure},
        "plate": {"value": "plastic", **sure},
        "finish": {"value": "plaster", **sure},
    }
    house["devices"][f"D{number}"] = {"model": "plimmet-osier-three@1", "network": "N1", "box": f"B{number}"}
    house["devices"][f"D{number}"] |= {"mounts": ["1"], "gangs": ["1", "2", "3"]}
