"""Small random houses with scenes, as plain documents that the reader accepts."""

from typing import Any

from hypothesis import strategies as st

from secondfix.terms import Purpose
from tests.scenes.models import MODELS, key

Plain = dict[str, Any]

_PURPOSES = [p.value for p in Purpose]
_ROOMS = ["R1", "R2", "R3"]
_STOREYS = ["S0", "S1"]
_TAGS = ["dim", "late"]
_SWITCHES = ["plain-two", "dim-two", "timed-two", "all-three", "first-two", "none-two", "silent-two"]
_ON_OFF = st.sampled_from(["on", "off"])


def _fact(value: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    known = st.sampled_from(["told", "measured", "assumed"])
    return st.builds(lambda v, k: {"value": v, "known": k}, value, known)


def _some(draw: st.DrawFn, plain: Plain, **fields: st.SearchStrategy[Any]) -> Plain:
    """``plain`` with each field drawn, or absent in one case of four."""
    for name, values in fields.items():
        if draw(st.integers(0, 3)):
            plain[name] = draw(values)
    return plain


def _purposes() -> st.SearchStrategy[str]:
    return st.one_of(st.sampled_from(["lighting", "night_light", "animal_care"]), st.sampled_from(_PURPOSES))


@st.composite
def _loads(draw: st.DrawFn) -> dict[str, Plain]:
    out = {}
    for n in range(draw(st.integers(1, 5))):
        load: Plain = {"name": f"Thing {n}", "room": draw(st.sampled_from(_ROOMS))}
        load["tags"] = draw(st.lists(st.sampled_from(_TAGS), unique=True, max_size=1))
        out[f"L{n + 1}"] = _some(
            draw,
            load,
            purpose=_purposes(),
            own_thermostat=_fact(st.booleans()),
            time_limit_s=st.just(3100),
            dimmable=_fact(st.booleans()),
        )
    return out


@st.composite
def _selector(draw: st.DrawFn, loads: list[str]) -> Plain:
    one = st.one_of(
        st.fixed_dictionaries({"load": st.sampled_from(loads)}),
        st.just({"every_load": True}),
        st.fixed_dictionaries({"purpose": _purposes()}),
        st.fixed_dictionaries({"room": st.sampled_from(_ROOMS)}),
        st.fixed_dictionaries({"storey": st.sampled_from(_STOREYS)}),
        st.fixed_dictionaries({"tag": st.sampled_from(_TAGS)}),
    )
    merged: Plain = {}
    for part in draw(st.lists(one, min_size=1, max_size=2)):
        merged |= part
    return merged


@st.composite
def _rule(draw: st.DrawFn, loads: list[str]) -> Plain:
    rule = {
        "select": draw(_selector(loads)),
        "to": draw(_ON_OFF),
        "leave_out": draw(st.lists(_selector(loads), max_size=1)),
    }
    if rule["to"] == "on" and draw(st.booleans()):
        rule["level_pct"] = draw(st.sampled_from([30, 100]))
    return rule


def _entries(device: Plain) -> list[int]:
    if "model" not in device:
        return [0, 1, 2]
    model = MODELS[device["model"]]
    return list(range(0 if model.whole_entry else 1, max(model.gangs, 1) + 1))


@st.composite
def _scene(draw: st.DrawFn, n: int, loads: list[str], devices: dict[str, Plain]) -> Plain:
    commands = []
    for _ in range(draw(st.integers(0, 2)) if devices else 0):
        device = draw(st.sampled_from(sorted(devices)))
        entry = draw(st.sampled_from(_entries(devices[device])))
        commands.append({"device": device, "entry": entry, "to": draw(_ON_OFF)})
    rules = draw(st.lists(_rule(loads), max_size=3))
    starts = draw(st.lists(st.sampled_from(_STARTS), unique_by=str, max_size=2))
    return {"name": f"Scene {n}", "rules": rules, "commands": commands, "starts": starts}


_STARTS: list[Plain] = [
    {"by": "gang", "gang": "B1.1", "press": "held"},
    {"by": "gang", "gang": "B2.2", "press": "twice"},
    {"by": "time", "at": "19:05"},
    {"by": "time", "at": "19:05", "days": ["fri"]},
    {"by": "sun", "sun": "sunset", "offset_min": 10},
    {"by": "sensor", "device": "D9"},
]


def _gangs(draw: st.DrawFn, unfed: list[str], earlier: list[str]) -> dict[str, Plain]:
    gangs: dict[str, Plain] = {}
    for n in ("1", "2", "3"):
        duty = draw(
            st.sampled_from(["feeds", "feeds", "feeds", "not_known", "extends", "scene_only", "capped"])
        )
        if duty == "feeds" and unfed:
            gangs[n] = {"duty": duty, "load": unfed.pop()}
        elif duty == "extends" and earlier:
            gangs[n] = {"duty": duty, "extends": draw(st.sampled_from(earlier))}
        else:
            gangs[n] = {"duty": duty if duty in {"scene_only", "capped"} else "not_known"}
    return gangs


@st.composite
def houses(draw: st.DrawFn) -> Plain:
    """Three rooms, two boxes of three gangs, a module and a sensor, up to five loads, one or two scenes."""
    loads = draw(_loads())
    rooms: dict[str, Plain] = {}
    for room in _ROOMS:
        rooms[room] = _some(draw, {"name": f"Room {room}"}, storey=st.sampled_from(_STOREYS))
        rooms[room]["tags"] = draw(st.lists(st.sampled_from(_TAGS), max_size=1))
    unfed = draw(st.permutations(sorted(loads)))
    boxes: dict[str, Plain] = {}
    devices: dict[str, Plain] = {"D9": _some(draw, {"place": "P1"}, model=st.just(key("sensor")))}
    feeding: list[str] = []
    for n in ("1", "2"):
        gangs = _gangs(draw, unfed, list(feeding))
        feeding += [f"B{n}.{g}" for g, gang in gangs.items() if gang["duty"] == "feeds"]
        boxes[f"B{n}"] = {"room": draw(st.sampled_from(_ROOMS)), "mounts": {"1": {}}, "gangs": gangs}
        device = _some(draw, {"box": f"B{n}", "mounts": ["1"]}, model=st.sampled_from(_SWITCHES).map(key))
        model = MODELS.get(device.get("model", ""))
        device["gangs"] = ["1", "2", "3"][: model.gangs if model else 3]
        if draw(st.integers(0, 4)):
            devices[f"D{n}"] = device
    if unfed and draw(st.booleans()):
        devices["D3"] = _some(
            draw, {"place": "P1", "outputs": {"1": unfed.pop()}}, model=st.just(key("lamp-module"))
        )
    scenes = {
        f"SC{n}": draw(_scene(n, sorted(loads), devices)) for n in range(1, draw(st.integers(1, 2)) + 1)
    }
    plain: Plain = {
        "format": 1,
        "id": "01947f02-55c8-7a16-b3de-91f04c2a8e77",
        "name": "Nettle Row 8",
        "storeys": {s: {"name": f"Floor {s}", "level_mm": 0} for s in _STOREYS},
        "rooms": rooms,
        "boxes": boxes,
        "places": {"P1": {"kind": "light_point", "name": "Point", "room": "R1"}},
        "loads": loads,
        "devices": devices,
        "scenes": scenes,
    }
    return _some(
        draw,
        plain,
        time_zone=st.just("WET"),
        latitude_mdeg=st.sampled_from([-33100, 68400]),
        longitude_mdeg=st.just(-9200),
    )
