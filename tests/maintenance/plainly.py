"""Whether a swap keeps everything, answered a second time: plainly, from the document, by trying every way.

Shares no code with secondfix.maintenance or secondfix.scenes. It knows only what random_swaps makes: loads
of known purpose, resistive and of known power; devices in one box; every fact of the wiring known but the
neutral.
"""

from itertools import product
from typing import Any

from secondfix.catalogue import Model
from secondfix.terms import PURPOSES, Purpose
from tests.maintenance.random_swaps import Case

Plain = dict[str, Any]


def over(case: Case) -> tuple[list[str], dict[int, int]]:
    """The gangs that the new device works, and which old entry goes to which new one."""
    old, model = case.plain["devices"]["D1"], case.models["tolverne-after@1"]
    gangs = (
        list(case.unit.gangs)
        if case.unit.gangs is not None
        else _missed_most(case, old["gangs"], model.gangs)
    )
    led = {old["gangs"].index(g) + 1: gangs.index(g) + 1 for g in old["gangs"] if g in gangs}
    if case.whole and case.models["tolverne-before@1"].whole_entry and model.whole_entry:
        led[0] = 0
    return gangs, led


def _missed_most(case: Case, gangs: list[str], count: int) -> list[str]:
    pressed = {s["gang"] for scene in case.plain["scenes"].values() for s in scene["starts"]}
    groups: list[list[str]] = [[], [], [], []]
    for g in gangs:
        duty = case.plain["boxes"]["B1"]["gangs"][g]["duty"]
        rank = 0 if duty == "feeds" else 1 if f"B1.{g}" in pressed else 2 if duty == "scene_only" else 3
        groups[rank].append(g)
    kept = [g for group in groups for g in group][:count]
    return [g for g in gangs if g in kept]


def after(case: Case) -> Plain:
    """The document with the new device in place of the old, scenes led over."""
    gangs, led = over(case)
    house = {**case.plain, "devices": {"D2": {"model": "tolverne-after@1", "gangs": gangs}}}
    house["scenes"] = {
        key: {
            **scene,
            "commands": [
                {**c, "device": "D2", "entry": led[c["entry"]]}
                for c in scene["commands"]
                if c["entry"] in led
            ],
        }
        for key, scene in case.plain["scenes"].items()
    }
    return house


def does(
    house: Plain, models: dict[str, Model], scene: Plain, load_id: str
) -> tuple[str, str | None, int | None, bool]:
    """Kind, to, level, and whether some way something is asked that the purpose never allows."""
    (device,) = house["devices"].values()
    model = models[device["model"]]
    gangs = house["boxes"]["B1"]["gangs"]
    certain: list[Plain] = []
    maybe: list[Plain] = []
    for c in scene["commands"]:
        if c["entry"] == 0:
            many = {"all": len(device["gangs"]), "first": 1, "none": 0, "to_be_tested": len(device["gangs"])}
            numbers = range(1, many[model.whole_switches.value] + 1)
        else:
            numbers = range(c["entry"], min(c["entry"], len(device["gangs"])) + 1)
        if any(gangs[device["gangs"][n - 1]].get("load") == load_id for n in numbers):
            untested = c["entry"] == 0 and model.whole_switches.value == "to_be_tested"
            (maybe if untested else certain).append(c)
    ways = [
        _decide(house, scene, load_id, certain + [m for m, yes in zip(maybe, chosen, strict=True) if yes])
        for chosen in product([False, True], repeat=len(maybe))
    ]
    hazard = any(w[3] for w in ways)
    if len({(*w[:3], w[4]) for w in ways}) > 1:
        return "cannot_tell", None, None, hazard
    kind, to, level, _, _ = ways[0]
    if kind == "switched" and not _fed(house, load_id):
        return "cannot_tell", None, None, hazard
    return kind, to, level if model.output.value == "dimmer" else None, hazard


def _fed(house: Plain, load_id: str) -> bool:
    (device,) = house["devices"].values()
    return any(house["boxes"]["B1"]["gangs"][g].get("load") == load_id for g in device["gangs"])


def _selected(house: Plain, selector: Plain, load_id: str) -> bool:
    load = house["loads"][load_id]
    ((by, wanted),) = selector.items()
    return {
        "every_load": True,
        "purpose": load["purpose"] == wanted,
        "room": load["room"] == wanted,
        "load": load_id == wanted,
    }[by]


def _may(house: Plain, load_id: str, to: str, *, named: bool) -> str:
    policy = PURPOSES[Purpose(house["loads"][load_id]["purpose"])]
    if to == "on":
        return "yes" if policy.unattended_on.value == "yes" or named else "kept"
    word = policy.all_off.value
    if word == "off" or (word == "leave" and named):
        return "yes"
    return "refused" if word == "never" and named else "kept"


def _decide(
    house: Plain, scene: Plain, load_id: str, reached: list[Plain]
) -> tuple[str, str | None, int | None, bool, bool]:
    speak = [r for r in scene["rules"] if _selected(house, r["select"], load_id)]
    stated = [r for r in speak if not any(_selected(house, s, load_id) for s in r.get("leave_out", []))]
    excepted = len(stated) < len(speak)
    heard = [r for r in stated if "load" in r["select"]] or stated
    asked = [(r["to"], r.get("level_pct"), "load" in r["select"]) for r in heard]
    asked += [(c["to"], None, True) for c in reached if c["entry"]]
    answers = [(to, level, _may(house, load_id, to, named=named)) for to, level, named in asked]
    refused = any(a == "refused" for _, _, a in answers)
    said = {(to, level) for to, level, a in answers if a == "yes"}
    whole = {c["to"] for c in reached if not c["entry"]}
    obeyed = any(a == "yes" for _, _, a in answers[len(heard) :])
    hazard = any(_may(house, load_id, to, named=True) == "refused" for to in whole)
    quarrel = ("conflict", None, None)
    if (obeyed and excepted and not heard) or len(said) > 1:
        return *quarrel, refused, refused
    if whole and said and said != {(to, None) for to in whole}:
        return *quarrel, refused or hazard, refused
    if whole and not said:
        general = {_may(house, load_id, to, named=False) for to in whole}
        if general != {"yes"} or excepted or heard:
            return *quarrel, refused or hazard, refused
        if len(whole) > 1:
            return *quarrel, refused, refused
        said = {(to, None) for to in whole}
    if not said:
        return "left_alone", None, None, refused, refused
    ((to, level),) = said
    return "switched", to, level, refused, refused


def outcome(case: Case) -> str:
    """``kept``, ``kept_with_losses`` or ``refused``."""
    if refused(case):
        return "refused"
    return "kept_with_losses" if losses(case) else "kept"


def refused(case: Case) -> set[str]:
    """The kinds of reason against it."""
    model, box = case.models["tolverne-after@1"], case.plain["boxes"]["B1"]
    found = set()
    if model.mounts > len(box["mounts"]):
        found.add("no_room")
    if model.protocol.value not in {n["protocol"] for n in case.plain["networks"].values()}:
        found.add("no_network")
    if found:
        return found
    if model.neutral.value == "needed" and not _neutral(case, model.mounts):
        old = case.models["tolverne-before@1"]
        if old.neutral.value != "needed" or _neutral(case, old.mounts):
            found.add("fault")
    gangs, _ = over(case)
    for n, gang in box["gangs"].items():
        load = case.plain["loads"].get(gang.get("load", ""))
        if load is None:
            continue
        if n not in gangs and load["purpose"] == "animal_care":
            found.add("supply")
        if n in gangs and load["power_mw"]["value"] / 230 > model.ratings[0].current_ma:
            found.add("danger")
    if any(_turn(b, a) == "never" for b, a in crossings(case)):
        found.add("scene")
    return found


def _neutral(case: Case, mounts: int) -> bool:
    found = case.plain["boxes"]["B1"]["mounts"]
    own = [str(n) for n in range(1, mounts + 1)]
    return any(found[m]["neutral"]["value"] == "C1" for m in own)


def crossings(case: Case) -> list[tuple[Any, Any]]:
    """What each scene does to each load, before and after."""
    now = after(case)
    return [
        (does(case.plain, case.models, scene, load), does(now, case.models, now["scenes"][key], load))
        for key, scene in case.plain["scenes"].items()
        for load in case.plain["loads"]
    ]


def _turn(before: Any, now: Any) -> str:
    """``same``, ``less`` (to be accepted) or ``never``."""
    if now[3] and not before[3]:
        return "never"
    if before[:3] == now[:3]:
        return "same"
    if now[0] == "conflict":
        return "never"
    if before[0] == "left_alone" and now[0] == "switched":
        return "never"
    if before[0] == now[0] == "switched" and before[1] != now[1]:
        return "never"
    return "less"


def losses(case: Case) -> set[str]:
    """The kinds of loss."""
    old, new = case.models["tolverne-before@1"], case.models["tolverne-after@1"]
    device, gangs_of = case.plain["devices"]["D1"], case.plain["boxes"]["B1"]["gangs"]
    gangs, led = over(case)
    found = {"scene" for b, a in crossings(case) if _turn(b, a) == "less"}
    if any(g not in gangs and gangs_of[g]["duty"] != "capped" for g in device["gangs"]):
        found.add("gang")
    if old.output.value == "dimmer" and new.output.value == "relay":
        dims = (case.plain["loads"][gangs_of[g]["load"]] for g in gangs if "load" in gangs_of[g])
        found |= {"dimming" for load in dims if load.get("dimmable", {}).get("value") is not False}
    scenes = case.plain["scenes"].values()
    found |= {
        "press" for start in (s for scene in scenes for s in scene["starts"]) if _press_lost(case, start)
    }
    if 0 not in led and any(c["entry"] == 0 for scene in scenes for c in scene["commands"]):
        found.add("whole_command")
    in_scenes = any(s["rules"] or s["commands"] for s in scenes)
    if old.group_commands.value == "yes" != new.group_commands.value and led and in_scenes:
        found.add("group_command")
    if old.protocol is not new.protocol:
        found.add("network")
    if device.get("after_power_loss") and device["after_power_loss"] not in {
        s.value for s in new.power_loss.settable
    }:
        found.add("power_loss")
    uses = case.plain.get("outside_uses", {}).values()
    if any(use["entry"] is not None and use["entry"] not in led for use in uses):
        found.add("outside_use")
    named_after_device = case.plain.get("naming", {}).get("gang_entry")
    if named_after_device and any("load" in gangs_of[g] for g in gangs):
        found.add("name")
    return found


def _press_lost(case: Case, start: Plain) -> bool:
    slot = start["gang"].split(".")[1]
    duty = case.plain["boxes"]["B1"]["gangs"][slot]["duty"]
    was = _told(case.models["tolverne-before@1"], duty, start["press"])
    now = _told(case.models["tolverne-after@1"], duty, start["press"]) if slot in over(case)[0] else "no"
    return (was, now) in {("yes", "no"), ("yes", "perhaps"), ("perhaps", "no")}


def _told(model: Model, duty: str, press: str) -> str:
    if duty == "capped":
        return "no"
    if model.reports_presses is not None:
        return "yes" if press in model.reports_presses else "no"
    return "perhaps"
