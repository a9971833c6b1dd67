"""A house with as many gangs as a slow scene needs, on one network."""

from typing import Any

from secondfix.catalogue import Model
from tests.scenes.models import MODELS, model
from tests.scenes.small import Plain, feeds, rule


def _of(name: str, protocol: str, group: str | None) -> Model:
    return model(name, protocol=protocol, gangs=1, **({"group_commands": group} if group else {}))


_GROUPED = [
    _of(f"{protocol}-{word}".replace("_", "-"), protocol, group)
    for protocol in ("zigbee", "zwave", "matter_thread")
    for word, group in (("able", "yes"), ("unable", "no"), ("mute", None))
]
MODELS |= {m.key: m for m in _GROUPED}


def many(count: int, *, protocol: str = "zigbee", word: str = "able", **house: Any) -> Plain:
    """``count`` one-gang switches, all told off by one rule of scene SC1, on network N1."""
    key = f"veltrane-{protocol}-{word}@1".replace("_", "-")
    numbers = range(1, count + 1)
    plain: Plain = {
        "format": 1,
        "id": "01947f02-55c8-7a16-b3de-91f04c2a8e79",
        "name": "Sorrel Bank 40",
        "rooms": {"R1": {"name": "Hall"}},
        "boxes": {
            f"B{n}": {"room": "R1", "mounts": {"1": {}}, "gangs": {"1": feeds(f"L{n}")}} for n in numbers
        },
        "loads": {f"L{n}": {"name": f"Lamp {n}", "room": "R1", "purpose": "lighting"} for n in numbers},
        "networks": {"N1": {"name": "Upper net", "protocol": protocol}},
        "devices": {
            f"D{n}": {"model": key, "network": "N1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]}
            for n in numbers
        },
        "scenes": {"SC1": {"name": "Out", "rules": [rule("off", purpose="lighting")]}},
    }
    return plain | house
