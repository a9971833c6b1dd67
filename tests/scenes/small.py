"""A small whole house as a plain document, and what is asked of it."""

import json
from copy import deepcopy
from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.radio import sending
from secondfix.scenes import Air, Crossing, check, resolve
from tests.scenes.models import MODELS, key

Plain = dict[str, Any]


AIR = Air(sending(None))


def seen(value: object, known: str = "seen_open") -> Plain:
    return {"value": value, "known": known}


def feeds(load: str) -> Plain:
    return {"duty": "feeds", "load": load}


_SMALL: Plain = {
    "format": 1,
    "id": "01946c10-3b52-7e09-9a41-7c5ad1e0f362",
    "name": "Quince Yard 3",
    "time_zone": "EET",
    "latitude_mdeg": 59370,
    "longitude_mdeg": 24810,
    "storeys": {
        "S0": {"name": "Ground", "level_mm": 0},
        "S1": {"name": "Upper", "level_mm": 2700},
    },
    "rooms": {
        "R1": {"name": "Hall", "storey": "S0"},
        "R2": {"name": "Den", "storey": "S1", "tags": ["quiet"]},
    },
    "boxes": {
        "B1": {"room": "R1", "mounts": {"1": {}}, "gangs": {str(n): feeds(f"L{n}") for n in (1, 2, 3)}},
        "B2": {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": feeds("L4"), "2": {"duty": "scene_only"}}},
        "B3": {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": {"duty": "capped"}}},
    },
    "places": {"P1": {"kind": "light_point", "name": "Alcove", "room": "R2"}},
    "loads": {
        "L1": {"name": "Ceiling", "room": "R1", "purpose": "lighting", "dimmable": seen(False)},
        "L2": {"name": "Strip", "room": "R1", "purpose": "lighting", "tags": ["late"]},
        "L3": {"name": "Tank", "room": "R1", "purpose": "animal_care"},
        "L4": {"name": "Lamp", "room": "R2", "purpose": "lighting", "dimmable": seen(True)},
        "L5": {"name": "Shelf", "room": "R2", "purpose": "lighting"},
    },
    "devices": {
        "D1": {"model": key("all-three"), "box": "B1", "mounts": ["1"], "gangs": ["1", "2", "3"]},
        "D2": {"model": key("dim-two"), "box": "B2", "mounts": ["1"], "gangs": ["1", "2"]},
        "D3": {"model": key("lamp-module"), "place": "P1", "outputs": {"1": "L5"}},
        "D4": {"model": key("sensor"), "place": "P1", "name": "Eye"},
    },
}  # fmt: skip


def small(*, rules: list[Plain] | None = None, commands: list[Plain] | None = None, **more: Any) -> Plain:
    """The house with one scene SC1."""
    plain = deepcopy(_SMALL)
    plain["scenes"] = {"SC1": {"name": "Dusk", "rules": rules or [], "commands": commands or [], **more}}
    return plain


def read(plain: Plain) -> Schedule:
    house = read_house(json.dumps(plain).encode(), where="small.json", models=MODELS)
    assert isinstance(house, House), "\n".join(map(str, house))
    return schedule(house, house.models)


def crossing(plain: Plain, load: str) -> Crossing:
    return resolve(read(plain))[0].crossings[load]


def asked(plain: Plain) -> list[Finding]:
    return check(read(plain), default_assumptions(), AIR)


def told(plain: Plain) -> list[tuple[str, str, str]]:
    """Rule, severity or 'cannot_tell', place: of everything that does not pass."""
    wrong = [f for f in asked(plain) if f.outcome is not Outcome.PASSES]
    return [(f.rule, str(f.severity if f.outcome is Outcome.FAILS else f.outcome), f.place) for f in wrong]


def rule(to: str, *, level: int | None = None, out: list[Plain] | None = None, **select: Any) -> Plain:
    one: Plain = {"select": select, "to": to, "leave_out": out or []}
    return one | ({"level_pct": level} if level else {})


def command(device: str, entry: int, to: str = "off") -> Plain:
    return {"device": device, "entry": entry, "to": to}
