"""A small invented house in which every electrical rule is asked and none finds a fault; to be spoilt."""

from copy import deepcopy
from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.electrical import check
from secondfix.findings import Finding, Outcome
from secondfix.house import House, read_house, schedule
from tests.example_house import as_bytes, seen

JOIN = {"steps": [{"act": "hold", "button": "any button", "hold_ms": 7500}]}
LATEST = "IEC 60669-2-1:2021"


def ratings(**current_ma: int) -> list[dict[str, object]]:
    """Printed ratings at 240 V by kind."""
    return [
        {"kind": kind, "current_ma": ma, "at_voltage_v": 240, "standard": LATEST}
        for kind, ma in current_ma.items()
    ]


def model(maker: str, name: str, **changes: object) -> dict[str, object]:
    """A one-gang relay switch in edition 1, with what ``changes`` say otherwise."""
    plain: dict[str, object] = {
        "maker": maker,
        "name": name,
        "edition": 1,
        "title": f"{maker} {name}",
        "sheet": "sheet 4, page 2",
        "form": "switch",
        "protocol": "zigbee",
        "supply": "mains",
        "output": "relay",
        "mounts": 1,
        "gangs": 1,
        "whole_entry": False,
        "code": "none",
        "join": JOIN,
    }
    return {k: v for k, v in {**plain, **changes}.items() if v is not None}


PAIR = model(
    "wexcombe",
    "pair",
    gangs=2,
    neutral="needed",
    ratings=ratings(
        resistive=8000, tungsten=4000, self_ballasted=1200, externally_ballasted=1500, motor=2000
    ),
    peak={"current_ma": 90_000, "width_us": 400},
    module_total_ma=9000,
    depth_behind_plate_mm=26,
    power_loss={"settable": ["off", "last"], "as_delivered": "last"},
)
GLOW = model(
    "orrinby",
    "glow",
    output="dimmer",
    neutral="not_needed",
    ratings=ratings(tungsten=1300, self_ballasted=450),
    least_load_mw=15_000,
    depth_behind_plate_mm=29,
)
NUB = model(
    "orrinby",
    "nub",
    form="in_box_module",
    mounts=0,
    neutral="needed",
    ratings=ratings(resistive=13_000),
    depth_behind_plate_mm=17,
    own_time_limit="yes",
    power_loss={"settable": ["off", "on"], "as_delivered": "on"},
)
LEAF = model(
    "tarnlow", "leaf", form="luminaire_module", mounts=0, neutral="needed", ratings=ratings(motor=1600)
)

SOUND: dict[str, Any] = {
    "format": 1,
    "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e5",
    "name": "Crake End 3",
    "mains_voltage_v": 230,
    "storeys": {"S0": {"name": "Ground", "level_mm": 0}, "S1": {"name": "Upper", "level_mm": 2700}},
    "rooms": {
        "R1": {"name": "Snug", "storey": "S0"},
        "R2": {"name": "Gallery", "storey": "S1"},
    },
    "circuits": {
        "C1": {"name": "Lights", "label_rooms": ["R1", "R2"]},
        "C2": {"name": "Heat", "label_rooms": ["R1"]},
    },
    "boxes": {
        "B1": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C1")}},
            "gangs": {
                "1": {"duty": "feeds", "load": "L1", "line": seen("C1")},
                "2": {"duty": "feeds", "load": "L2", "line": seen("C1")},
            },
            "depth_mm": seen(45),
            "set_back_mm": seen(0),
        },
        "B2": {
            "room": "R2",
            "mounts": {"1": {"neutral": seen("absent")}},
            "gangs": {"1": {"duty": "feeds", "load": "L3", "line": seen("C1")}},
            "depth_mm": seen(46),
            "set_back_mm": seen(2),
        },
        "B3": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C2")}},
            "gangs": {"1": {"duty": "feeds", "load": "L4", "line": seen("C2")}},
            "depth_mm": seen(61),
            "set_back_mm": seen(0),
        },
        "B4": {
            "room": "R2",
            "mounts": {"1": {"neutral": seen("absent")}},
            "gangs": {"1": {"duty": "extends", "extends": "B1.1", "line": seen("C1")}},
        },
    },
    "places": {"P1": {"kind": "light_point", "name": "Fan", "room": "R2"}},
    "loads": {
        "L1": {
            "name": "strip",
            "room": "R2",
            "kind": seen("led_driver"),
            "purpose": "lighting",
            "power_mw": seen(40_000),
            "count": seen(3),
            "power_factor_permille": seen(920),
            "inrush_peak_ma": seen(28_000),
            "inrush_width_us": seen(180),
            "permanent_supply": seen(False),
            "neutral": seen("C1"),
        },
        "L2": {
            "name": "chandelier",
            "room": "R1",
            "kind": seen("tungsten"),
            "purpose": "lighting",
            "power_mw": seen(42_000),
            "count": seen(7),
            "after_power_loss": "off",
            "neutral": seen("C1"),
        },
        "L3": {
            "name": "spots",
            "room": "R2",
            "kind": seen("led_lamp"),
            "purpose": "lighting",
            "power_mw": seen(6_500),
            "count": seen(4),
            "neutral": seen("C1"),
        },
        "L4": {
            "name": "panel heater",
            "room": "R1",
            "kind": seen("resistive"),
            "purpose": "heater_fixed",
            "power_mw": seen(1_750_000),
            "count": seen(1),
            "own_thermostat": seen(True),
            "time_limit_s": 5400,
            "neutral": seen("C2"),
        },
        "L5": {
            "name": "extract fan",
            "room": "R2",
            "kind": seen("motor"),
            "purpose": "extract_fan",
            "power_mw": seen(35_000),
            "count": seen(1),
            "permanent_supply": seen(False),
        },
    },
    "devices": {
        "D1": {
            "model": "wexcombe-pair@1",
            "box": "B1",
            "mounts": ["1"],
            "gangs": ["1", "2"],
            "after_power_loss": "off",
        },
        "D2": {"model": "orrinby-glow@1", "box": "B2", "mounts": ["1"], "gangs": ["1"]},
        "D3": {"model": "orrinby-nub@1", "box": "B3", "gangs": ["1"], "after_power_loss": "off"},
        "D5": {"model": "tarnlow-leaf@1", "place": "P1", "outputs": {"1": "L5"}},
    },
    "models": {
        "wexcombe-pair@1": PAIR,
        "orrinby-glow@1": GLOW,
        "orrinby-nub@1": NUB,
        "tarnlow-leaf@1": LEAF,
    },
}


def put(plain: dict[str, Any], path: str, value: object) -> dict[str, Any]:
    """A copy with one value put at a dotted path; None takes away what stands there."""
    copy = deepcopy(plain)
    *way, last = path.split(".")
    at: Any = copy
    for key in way:
        at = at[int(key)] if isinstance(at, list) else at.setdefault(key, {})
    if value is None:
        del at[int(last) if isinstance(at, list) else last]
    else:
        at[last] = value
    return copy


def spoilt(changes: dict[str, object]) -> dict[str, Any]:
    """The sound house with some values put or taken away."""
    plain = SOUND
    for path, value in changes.items():
        plain = put(plain, path, value)
    return plain


def read(plain: dict[str, Any]) -> House:
    """The house; an AssertionError shows the faults if it is unusable."""
    house = read_house(as_bytes(plain), where="sound.json", models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return house


def answers(plain: dict[str, Any]) -> list[Finding]:
    """Every electrical answer about the document, under the default assumptions."""
    house = read(plain)
    return check(schedule(house, house.models), default_assumptions())


def at(findings: list[Finding], rule: str, place: str) -> Finding | None:
    """The one answer of a rule at a place, or None."""
    found = [f for f in findings if (f.rule, f.place) == (rule, place)]
    assert len(found) <= 1
    return found[0] if found else None


def troubles(findings: list[Finding]) -> set[tuple[str, str, str, str | None]]:
    """Rule, place, outcome and severity of all that is not a pass."""
    return {
        (f.rule, f.place, f.outcome.value, f.severity.value if f.severity else None)
        for f in findings
        if f.outcome is not Outcome.PASSES
    }
