"""Houses for selection: the demo house, and models put into it by hand on the plain document."""

import json
from copy import deepcopy
from functools import cache
from pathlib import Path
from typing import Any

from secondfix import electrical
from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model
from secondfix.files import shipped_models
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import House, read_house, schedule
from secondfix.selection import PlaceChoice, Spot, select
from tests.example_house import as_bytes

Plain = dict[str, Any]
DEMO = Path(__file__).resolve().parents[2] / "demo"
GRAVE = {Severity.DANGER, Severity.FAULT}


@cache
def catalogue() -> dict[str, Model]:
    return dict(shipped_models())


def demo(name: str = "house.json") -> Plain:
    return json.loads((DEMO / name).read_text(encoding="utf-8"))  # type: ignore[no-any-return] # JSON is any value


def read(plain: Plain) -> House:
    house = read_house(as_bytes(plain), where="h.json", models=catalogue())
    assert isinstance(house, House), "\n".join(map(str, house))
    return house


def usable(plain: Plain) -> bool:
    return isinstance(read_house(as_bytes(plain), where="h.json", models=catalogue()), House)


def choices(plain: Plain, *, models: dict[str, Model] | None = None, **words: Any) -> tuple[PlaceChoice, ...]:
    return select(read(plain), catalogue() if models is None else models, default_assumptions(), **words)


def at(plain: Plain, place: str, **words: Any) -> PlaceChoice:
    """The one answer at a place."""
    (one,) = choices(plain, places={place}, **words)
    return one


def put_into(plain: Plain, spot: Spot, model: Model, set_to: str | None) -> tuple[Plain, str]:
    """The document with the model in place of what stands at the spot, and the device's id."""
    house = deepcopy(plain)
    device_id = spot.device_id or "Dnew"
    old = house["devices"].pop(device_id, {})
    device: Plain = {"model": model.key}
    if spot.in_box:
        device |= {"box": spot.place, "gangs": [g.id.split(".")[1] for g in spot.gangs]}
        if model.mounts:
            device["mounts"] = list(spot.mounts)
    else:
        device |= {"place": spot.place, "outputs": {str(n): g.load_id for n, g in enumerate(spot.outputs, 1)}}
        fed = {g.load_id for g in spot.outputs}
        gangs = {f"{b}.{n}": g for b, box in house["boxes"].items() for n, g in box["gangs"].items()}
        idle = {gang_id for gang_id, g in gangs.items() if g.get("load") in fed}
        while more := {g for g, gang in gangs.items() if gang.get("extends") in idle} - idle:
            idle |= more
        for gang in (gangs[g] for g in idle):
            gang["duty"] = "scene_only"
            gang.pop("load", None)
            gang.pop("extends", None)
    if set_to:
        device["after_power_loss"] = set_to
    network = house.get("networks", {}).get(old.get("network", ""))
    if network and model.protocol and network["protocol"] == model.protocol.value:
        device["network"] = old["network"]
    house["devices"][device_id] = device
    # a stand of its own: scenes that speak to entries of the device that stood there are not the question
    house["scenes"], house["outside_uses"] = {}, {}
    return house, device_id


def answers_there(plain: Plain, spot: Spot, device_id: str) -> list[Finding]:
    """What the electrical rules say of the whole house at that place."""
    house = read(plain)
    places = {spot.place, device_id, *(g.id for g in spot.gangs)}
    return [
        f
        for f in electrical.check(schedule(house, house.models), default_assumptions())
        if f.place in places or f.place.startswith(f"{device_id}.")
    ]


def found_there(plain: Plain, spot: Spot, device_id: str) -> list[Finding]:
    """The same, passes left out."""
    return [f for f in answers_there(plain, spot, device_id) if f.outcome is not Outcome.PASSES]


def grave(findings: list[Finding]) -> set[str]:
    """Rules that find a danger or fault."""
    return {f.rule for f in findings if f.outcome is Outcome.FAILS and f.severity in GRAVE}


def unknown(findings: list[Finding]) -> set[str]:
    return {f.rule for f in findings if f.outcome is Outcome.CANNOT_TELL}
