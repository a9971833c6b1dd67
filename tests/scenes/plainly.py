"""The same question answered a second time, slowly and plainly, from the document as it stands.

Written from the words of docs/methods-names-scenes.md alone and sharing no code with secondfix.scenes: every
unknown is tried in every way, all purposes and all storeys included.
"""

from itertools import product
from typing import Any

from secondfix.terms import PURPOSES, Purpose
from tests.scenes.models import MODELS

Plain = dict[str, Any]
Answer = tuple[str, str | None, int | None, tuple[str, ...]]
"""Kind, to, level asked for, demands refused."""


def answer(house: Plain, scene: Plain, load_id: str) -> Answer:
    """What the scene does to the load; ('cannot_tell', None, None, ()) where the unknowns differ."""
    answers = {_definite(scene, world) for world in _worlds(house, scene, load_id)}
    if len(answers) > 1:
        return "cannot_tell", None, None, ()
    (one,) = answers
    if one[0] == "switched" and feeding_device(house, load_id) is None:
        return "cannot_tell", None, None, one[3]
    return one


def feeding_device(house: Plain, load_id: str) -> tuple[str, int] | None:
    """The device and its entry that feed a load."""
    for device_id, device in house["devices"].items():
        for n, gang in enumerate(device.get("gangs", []), start=1):
            if house["boxes"][device["box"]]["gangs"][gang].get("load") == load_id:
                return device_id, n
        for n, load in device.get("outputs", {}).items():
            if load == load_id:
                return device_id, int(n)
    return None


def _worlds(house: Plain, scene: Plain, load_id: str) -> list[Plain]:
    load = house["loads"][load_id]
    room = house["rooms"][load["room"]]
    purposes = [load["purpose"]] if "purpose" in load else [p.value for p in Purpose]
    storeys = [room["storey"]] if "storey" in room else ["S0", "S1", "elsewhere"]
    certain, maybe = _commands(house, scene, load_id)
    worlds = []
    for purpose, storey, fit in product(purposes, storeys, _fits(house, load_id)):
        for chosen in product([False, True], repeat=len(maybe)):
            reached = certain + [m for m, yes in zip(maybe, chosen, strict=True) if yes]
            worlds.append(
                {
                    "load": load_id,
                    "room": load["room"],
                    "tags": set(load["tags"]) | set(room["tags"]),
                    "purpose": purpose,
                    "storey": storey,
                    "fit": fit,
                    "reached": reached,
                }
            )
    return worlds


def _fits(house: Plain, load_id: str) -> list[bool]:
    load = house["loads"][load_id]
    fact = load.get("own_thermostat")
    thermostat = fact["value"] if fact and fact["known"] != "assumed" else None
    feed = feeding_device(house, load_id)
    model = MODELS.get(house["devices"][feed[0]].get("model", "")) if feed else None
    limited = "time_limit_s" in load or (model is not None and model.own_time_limit.value == "yes")
    if thermostat is False:
        return [False]
    return [True] if thermostat and limited else [True, False]


def _commands(house: Plain, scene: Plain, load_id: str) -> tuple[list[Plain], list[Plain]]:
    """Direct commands that surely reach the load, and those that may."""
    certain, maybe = [], []
    for command in scene["commands"]:
        device = house["devices"][command["device"]]
        model = MODELS.get(device.get("model", ""))
        listed = len(device.get("gangs", [])) or len(device.get("outputs", {}))
        if command["entry"]:
            touched = [(command["entry"], True)]
        else:
            whole = model.whole_switches.value if model else "to_be_tested"
            touched = {
                "all": [(n, True) for n in range(1, listed + 1)],
                "first": [(1, True)],
                "none": [],
                "to_be_tested": [(n, False) for n in range(1, listed + 1)],
            }[whole]
        for n, sure in touched:
            does = _touches(house, device, n, load_id)
            if does == "yes" and sure:
                certain.append(command)
            elif does != "no":
                maybe.append(command)
    return certain, maybe


def _touches(house: Plain, device: Plain, n: int, load_id: str) -> str:
    known_loads = {g.get("load") for b in house["boxes"].values() for g in b["gangs"].values()}
    known_loads |= {v for d in house["devices"].values() for v in d.get("outputs", {}).values()}
    loose = "no" if load_id in known_loads else "perhaps"
    if "box" not in device:
        if str(n) in device.get("outputs", {}):
            return "yes" if device["outputs"][str(n)] == load_id else "no"
        return "no" if "model" in device else loose  # a sensor has no output; an undecided device may
    if n > len(device["gangs"]):
        return "no" if "model" in device else loose
    gang = house["boxes"][device["box"]]["gangs"][device["gangs"][n - 1]]
    if gang["duty"] == "feeds":
        return "yes" if gang["load"] == load_id else "no"
    if gang["duty"] == "extends":
        box, number = gang["extends"].split(".")
        return "perhaps" if house["boxes"][box]["gangs"][number]["load"] == load_id else "no"
    return loose if gang["duty"] == "not_known" else "no"


def _fits_selector(selector: Plain, world: Plain) -> bool:
    return all(
        wanted in world["tags"] if name == "tag" else name == "every_load" or world[name] == wanted
        for name, wanted in selector.items()
    )


def _may(world: Plain, to: str, *, by_name: bool) -> str:
    """'yes', 'kept' or 'refused'."""
    policy = PURPOSES[Purpose(world["purpose"])]
    if to == "off":
        word = policy.all_off.value
        if word == "off":
            return "yes"
        if not by_name:
            return "kept"
        return "yes" if word == "leave" else "refused"
    word = policy.unattended_on.value
    if word == "never" or (word == "own_thermostat" and not world["fit"]):
        return "refused"
    return "kept" if word == "named_only" and not by_name else "yes"


def _definite(scene: Plain, world: Plain) -> Answer:
    chosen, excluded = _chosen(scene, world)
    asked = [(r["to"], r.get("level_pct"), "load" in r["select"]) for r in chosen]
    gangs = [(c["to"], None, True) for c in world["reached"] if c["entry"]]
    whole = {c["to"] for c in world["reached"] if not c["entry"]}
    answers = [(to, level, _may(world, to, by_name=by_name)) for to, level, by_name in asked + gangs]
    said = {(to, level) for to, level, may in answers if may == "yes"}
    no = tuple(sorted({to for to, _, may in answers if may == "refused"}))
    heeded = any(may == "yes" for _, _, may in answers[len(asked) :])
    conflict = ("conflict", None, None, no)
    if (heeded and excluded and not chosen) or len(said) > 1:
        return conflict
    if whole and said and said != {(to, None) for to in whole}:
        return conflict
    if whole and not said:
        if chosen or excluded or len(whole) > 1 or any(_may(world, t, by_name=False) != "yes" for t in whole):
            return conflict
        said = {(to, None) for to in whole}
    if not said:
        return "left_alone", None, None, no
    ((to, level),) = said
    return "switched", to, level, no


def _chosen(scene: Plain, world: Plain) -> tuple[list[Plain], list[Plain]]:
    """The rules that speak of the load, and those that take it out by an exception."""
    chosen: list[Plain] = []
    excluded: list[Plain] = []
    for rule in scene["rules"]:
        if _fits_selector(rule["select"], world):
            out = any(_fits_selector(s, world) for s in rule["leave_out"])
            (excluded if out else chosen).append(rule)
    by_name = [rule for rule in chosen if "load" in rule["select"]]
    return by_name or chosen, excluded
