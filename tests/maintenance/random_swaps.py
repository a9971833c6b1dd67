"""Small random houses with a failed device and what is to replace it, as plain documents."""

from dataclasses import dataclass
from random import Random
from typing import Any

from secondfix.catalogue import Model
from secondfix.house import House, read_house
from secondfix.maintenance import Unit
from tests.example_house import as_bytes, seen

Plain = dict[str, Any]
JOIN = {"steps": [{"act": "hold", "button": "the button", "hold_ms": 5500}]}


def model(name: str, **changes: Any) -> Plain:
    """A relay switch of an invented maker whose sheet states all that a swap asks."""
    amps = changes.pop("amps", 10)
    plain = {
        "maker": "tolverne", "name": name, "edition": 1, "title": f"Tolverne {name}", "sheet": "TV 31",
        "form": "switch", "protocol": "zigbee", "supply": "mains", "output": "relay", "mounts": 1, "gangs": 2,
        "neutral": "needed", "whole_entry": False, "code": "none", "join": JOIN, "group_commands": "yes",
        "own_time_limit": "yes", "repeats": "yes", "module_total_ma": 40_000, "depth_behind_plate_mm": 24,
        "peak": {"current_ma": 150_000, "width_us": 400},
        "power_loss": {"settable": ["off", "last"], "as_delivered": "last"},
        "ratings": [
            {"kind": "resistive", "current_ma": amps * 1000, "at_voltage_v": 230, "standard": "IEC 60669-2-1"}
        ],
    }  # fmt: skip
    return {**plain, **changes}


def random_model(r: Random, name: str) -> Plain:
    """Any gang count, width, protocol; most of what may differ differs in one case of a few."""
    protocol = r.choices(["zigbee", "zwave", "matter_thread"], [8, 8, 2])[0]
    whole = protocol == "zwave" and r.random() < 0.6
    output = r.choices(["relay", "dimmer"], [5, 2])[0]
    changes: Plain = {
        "protocol": protocol,
        "gangs": r.choice([1, 2, 3, 4, 4]),
        "mounts": r.choices([1, 2, 3], [8, 3, 1])[0],
        "output": output,
        "whole_entry": whole,
        "neutral": r.choices(["needed", "not_needed"], [3, 2])[0],
        "group_commands": r.choices(["yes", "no", "not_stated"], [6, 1, 1])[0],
        "amps": r.choices([10, 4], [3, 1])[0],
    }
    if whole:
        changes["whole_switches"] = r.choice(["all", "first", "none", "to_be_tested"])
    if r.random() < 0.6:
        changes["reports_presses"] = r.choice([["once", "twice"], ["once", "twice"], ["twice"]])
    if r.random() < 0.15:
        changes["power_loss"] = {"settable": ["last"], "as_delivered": "last"}
    return model(name, **changes)


@dataclass(frozen=True)
class Case:
    """One house, its failed device, what goes in, and whether whole-device commands go over."""

    plain: Plain
    house: House
    models: dict[str, Model]
    failed: str
    unit: Unit
    whole: bool


def case(seed: int) -> Case:
    """The case of this number."""
    r = Random(seed)
    old = random_model(r, "before")
    new = _like(r, old) if r.random() < 0.5 else random_model(r, "after")
    plain = _house(r, old)
    models = {f"tolverne-{m['name']}@1": Model.model_validate(m) for m in (old, new)}
    house = read_house(as_bytes(plain), where="random", models=models)
    assert isinstance(house, House), house
    return Case(plain, house, models, "D1", _unit(r, plain, new), r.random() < 0.8)


def _like(r: Random, old: Plain) -> Plain:
    """The same again but for at most two traits, so that keeping is not rare."""
    new = {**old, "name": "after", "title": "Tolverne after"}
    other = random_model(r, "after")
    for trait in r.sample(
        [
            "gangs",
            "mounts",
            "neutral",
            "ratings",
            "output",
            "group_commands",
            "reports_presses",
            "power_loss",
        ],
        r.choice([0, 1, 1, 2, 2]),
    ):
        if trait in other:
            new[trait] = other[trait]
        else:
            new.pop(trait, None)
    return new


def _unit(r: Random, plain: Plain, new: Plain) -> Unit:
    gangs = list(plain["devices"]["D1"]["gangs"])
    if r.random() < 0.5:
        return Unit("tolverne-after@1")
    r.shuffle(gangs)
    return Unit("tolverne-after@1", gangs=tuple(gangs[: new["gangs"]]))


def _house(r: Random, old: Plain) -> Plain:
    gangs: dict[str, Plain] = {}
    loads: dict[str, Plain] = {}
    for n in range(1, old["gangs"] + 1):
        duty = r.choices(["feeds", "scene_only", "capped"], [8, 2, 1])[0] if n > 1 else "feeds"
        gangs[str(n)] = {"duty": duty, "line": seen("C1")}
        if duty == "feeds":
            gangs[str(n)]["load"] = f"L{n}"
            loads[f"L{n}"] = _load(r, n)
    loads["L9"] = _load(r, 9)
    b2: Plain = {"1": {"duty": "feeds", "load": "L9", "line": seen("C1")}}
    if r.random() < 0.2:
        b2["2"] = {"duty": "extends", "extends": "B1.1", "line": seen("C1")}
    networks = {"N1": {"name": "Near", "protocol": "zigbee"}, "N2": {"name": "Far", "protocol": "zwave"}}
    own = {"zigbee": "N1", "zwave": "N2"}.get(old["protocol"], "N3")
    if own == "N3":
        networks["N3"] = {"name": "Third", "protocol": "matter_thread"}
    mounts = {
        str(n): {"neutral": seen("absent" if r.random() < 0.4 else "C1")}
        for n in range(1, max(old["mounts"], r.choice([1, 2, 3])) + 1)
    }
    device: Plain = {
        "model": "tolverne-before@1", "network": own, "box": "B1",
        "mounts": [str(n) for n in range(1, old["mounts"] + 1)], "gangs": list(gangs),
    }  # fmt: skip
    if r.random() < 0.7:
        device["after_power_loss"] = r.choice(old["power_loss"]["settable"])
    plain: Plain = {
        "format": 1, "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b604", "name": "Random", "mains_voltage_v": 230,
        "rooms": {"R1": {"name": "Scullery"}, "R2": {"name": "Porch"}},
        "circuits": {"C1": {"name": "Lights"}},
        "boxes": {
            "B1": {"room": "R1", "mounts": mounts, "gangs": gangs, "depth_mm": seen(60)},
            "B2": {"room": "R2", "mounts": {"1": {"neutral": seen("C1")}}, "gangs": b2, "depth_mm": seen(60)},
        },
        "loads": loads,
        "networks": networks,
        "devices": {"D1": device},
        "scenes": {f"S{n}": _scene(r, old, gangs, list(loads)) for n in range(1, r.choice([2, 3, 4]))},
    }  # fmt: skip
    if r.random() < 0.2:
        entry = r.choice([None, 1, old["gangs"], *([0] if old["whole_entry"] else [])])
        plain["outside_uses"] = {
            "U1": {"kind": "routine", "device": "D1", "entry": entry, "words": "the neighbour's"}
        }
    if r.random() < 0.06:
        plain["naming"] = {"gang_entry": ["load", "device"]}
    return plain


def _load(r: Random, n: int) -> Plain:
    purpose = r.choices(["lighting", "night_light", "animal_care"], [6, 2, 1])[0]
    load = {
        "name": f"Lamp {n}", "room": r.choice(["R1", "R2"]), "kind": seen("resistive"), "purpose": purpose,
        "power_mw": seen(2_000_000 if r.random() < 0.2 else 60_000), "count": seen(1),
        "permanent_supply": seen(False), "neutral": seen("C1"),
    }  # fmt: skip
    if r.random() < 0.7:
        load["dimmable"] = seen(r.random() < 0.5)
    return load


def _scene(r: Random, old: Plain, gangs: dict[str, Plain], loads: list[str]) -> Plain:
    scene: Plain = {"name": f"Scene {r.randrange(1000)}", "starts": [], "rules": [], "commands": []}
    for _ in range(r.choice([0, 1, 1])):
        rule: Plain = {"select": _selector(r, loads), "to": r.choice(["on", "off"])}
        if r.random() < 0.4:
            rule["leave_out"] = [_selector(r, loads)]
        if rule["to"] == "on" and r.random() < 0.3:
            rule["level_pct"] = r.choice([25, 70])
        scene["rules"].append(rule)
    for _ in range(r.choice([0, 1, 1, 2])):
        least = 0 if old["whole_entry"] else 1
        scene["commands"].append(
            {
                "device": "D1",
                "entry": r.choice([least, *range(least, old["gangs"] + 1)]),
                "to": r.choice(["on", "off"]),
            }
        )
    if r.random() < 0.25:
        gang = r.choice(list(gangs))
        scene["starts"].append({"by": "gang", "gang": f"B1.{gang}", "press": r.choice(["once", "twice"])})
    return scene


def _selector(r: Random, loads: list[str]) -> Plain:
    return r.choice(
        [
            {"every_load": True},
            {"purpose": "lighting"},
            {"room": r.choice(["R1", "R2"])},
            {"load": r.choice(loads)},
        ]
    )
