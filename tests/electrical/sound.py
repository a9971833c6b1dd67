"""Two small invented houses in which every electrical rule is asked and none finds a fault; to be spoilt.

SOUND follows IEC 60364 at 230 V; SOUND_NEC follows the NEC at 120 V.
"""

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
    standby_mw=400,
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
DIMMER = {"output": "dimmer", "neutral": "needed", "least_load_mw": 10_000, "depth_behind_plate_mm": 30}
ARC = model("orrinby", "arc", **DIMMER, edge="leading", ratings=ratings(iron_transformer=1000))
ARCH = model("orrinby", "arch", **DIMMER, edge="trailing", ratings=ratings(electronic_transformer=900))
WINCH = model(
    "tarnlow",
    "winch",
    output="shutter",
    gangs=2,
    neutral="needed",
    interlocked="yes",
    ratings=ratings(motor=2500),
    module_total_ma=2500,
    depth_behind_plate_mm=31,
    power_loss={"settable": ["off"], "as_delivered": "off"},
)
PEG = model(
    "tarnlow",
    "peg",
    neutral="needed",
    ratings=[{**ratings(resistive=10_000)[0], "standard": "EN 60669-1:2018"}],
    depth_behind_plate_mm=25,
)
PLASTIC: dict[str, object] = {"shell": seen("plastic"), "plate": seen("plastic")}
ROOMY = PLASTIC | {"depth_mm": seen(61), "set_back_mm": seen(0)}
BLIND: dict[str, object] = {
    "room": "R1",
    "kind": seen("motor"),
    "purpose": "covering",
    "power_mw": seen(95_000),
    "count": seen(1),
    "reversing": seen(True),
}

SOUND: dict[str, Any] = {
    "format": 1,
    "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e5",
    "name": "Crake End 3",
    "mains_voltage_v": 230,
    "mains_frequency_hz": 50,
    "wiring_rules": "iec",
    "storeys": {"S0": {"name": "Ground", "level_mm": 0}, "S1": {"name": "Upper", "level_mm": 2700}},
    "rooms": {
        "R1": {"name": "Snug", "storey": "S0"},
        "R2": {"name": "Gallery", "storey": "S1", "tags": ["bathroom"]},
    },
    "circuits": {
        "C1": {
            "name": "Lights",
            "label_rooms": ["R1", "R2"],
            "breaker_a": seen(16),
            "curve": seen("D"),
            "other_load_ma": seen(850),
        },
        "C2": {"name": "Heat", "label_rooms": ["R1"], "breaker_a": seen(13), "other_load_ma": seen(0)},
        "C3": {
            "name": "Shed",
            "label_rooms": ["R1"],
            "shares_neutral_with": seen(["C4"]),
            "opens_together": seen(True),
        },
        "C4": {
            "name": "Yard",
            "label_rooms": ["R1"],
            "shares_neutral_with": seen(["C3"]),
            "opens_together": seen(True),
        },
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
            "shell": seen("metal"),
            "plate": seen("plastic"),
            "earthed": seen(True),
        },
        "B2": {
            "room": "R2",
            "mounts": {"1": {"neutral": seen("absent")}},
            "gangs": {"1": {"duty": "feeds", "load": "L3", "line": seen("C1")}},
            "depth_mm": seen(46),
            "set_back_mm": seen(2),
            **PLASTIC,
            "zone": seen("outside"),
        },
        "B3": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C2")}},
            "gangs": {"1": {"duty": "feeds", "load": "L4", "line": seen("C2")}},
            "depth_mm": seen(61),
            "set_back_mm": seen(0),
            **PLASTIC,
        },
        "B4": {
            "room": "R2",
            "mounts": {"1": {"neutral": seen("absent")}},
            "gangs": {"1": {"duty": "extends", "extends": "B1.1", "line": seen("C1")}},
            **PLASTIC,
            "zone": seen("outside"),
        },
        "B5": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C1")}, "2": {"neutral": seen("C1")}},
            "gangs": {
                "1": {"duty": "feeds", "load": "L6", "line": seen("C1")},
                "2": {"mount": "2", "duty": "feeds", "load": "L7", "line": seen("C1")},
            },
            **ROOMY,
        },
        "B6": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C1")}},
            "gangs": {
                "1": {"duty": "feeds", "load": "L8", "line": seen("C1")},
                "2": {"duty": "feeds", "load": "L9", "line": seen("C1")},
            },
            **ROOMY,
        },
        "B7": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("C3"), "neutral_through": seen(True)}},
            "gangs": {"1": {"duty": "feeds", "load": "L10", "line": seen("C4")}},
            **ROOMY,
            "two_supplies_label": seen(True),
        },
    },
    "places": {
        "P1": {"kind": "light_point", "name": "Fan", "room": "R2", "circuit": seen("C1")},
        "P2": {"kind": "light_point", "name": "Spots", "room": "R2"},
        "P3": {"kind": "light_point", "name": "Snug", "room": "R1"},
    },
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
            "multiway": {
                "arrangement": seen("together"),
                "gangs": ["B1.1", "B4.1"],
                "others": seen("input"),
                "spare_cores": seen(0),
            },
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
            "place": "P2",
            "kind": seen("led_lamp"),
            "purpose": "lighting",
            "power_mw": seen(6_500),
            "count": seen(4),
            "dimmable": seen(True),
            "bypass_nf": seen(1000),
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
        "L6": {
            "name": "pendants",
            "room": "R1",
            "place": "P3",
            "kind": seen("iron_transformer"),
            "also_kinds": seen([]),
            "purpose": "lighting",
            "power_mw": seen(45_000),
            "count": seen(2),
            "transformer_va": seen(50),
        },
        "L7": {
            "name": "bowls",
            "room": "R1",
            "place": "P3",
            "kind": seen("electronic_transformer"),
            "also_kinds": seen(["tungsten"]),
            "purpose": "lighting",
            "power_mw": seen(40_000),
            "count": seen(1),
            "transformer_va": seen(60),
            "transformer_least_mw": seen(25_000),
        },
        "L8": BLIND | {"name": "blind up", "other_direction": "L9"},
        "L9": BLIND | {"name": "blind down", "other_direction": "L8"},
        "L10": {
            "name": "winnower",
            "room": "R1",
            "kind": seen("motor"),
            "purpose": "comfort_fan",
            "power_mw": seen(80_000),
            "count": seen(1),
            "continuous": seen(True),
            "neutral": seen("C3"),
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
        "D6": {"model": "orrinby-arc@1", "box": "B5", "mounts": ["1"], "gangs": ["1"]},
        "D7": {"model": "orrinby-arch@1", "box": "B5", "mounts": ["2"], "gangs": ["2"]},
        "D8": {"model": "tarnlow-winch@1", "box": "B6", "mounts": ["1"], "gangs": ["1", "2"]},
        "D9": {"model": "tarnlow-peg@1", "box": "B7", "mounts": ["1"], "gangs": ["1"]},
    },
    "models": {
        "wexcombe-pair@1": PAIR,
        "orrinby-glow@1": GLOW,
        "orrinby-nub@1": NUB,
        "tarnlow-leaf@1": LEAF,
        "orrinby-arc@1": ARC,
        "orrinby-arch@1": ARCH,
        "tarnlow-winch@1": WINCH,
        "tarnlow-peg@1": PEG,
    },
}

KEEL = model(
    "marlsett",
    "keel",
    neutral="either",
    yokes=1,
    box_volume_per_yoke_mm3=204_838,
    ratings=[
        {"kind": kind, "current_ma": ma, "at_voltage_v": 120, "standard": "UL 20:2018"}
        for kind, ma in (("resistive", 15_000), ("motor", 10_000))
    ],
    least_load_mw=20_000,
    depth_behind_plate_mm=34,
)

SOUND_NEC: dict[str, Any] = {
    "format": 1,
    "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e7",
    "name": "Sorrel Draw 58",
    "mains_voltage_v": 120,
    "mains_frequency_hz": 60,
    "wiring_rules": "nec",
    "rooms": {"R1": {"name": "Mudroom"}},
    "circuits": {
        "C1": {
            "name": "Mudroom",
            "label_rooms": ["R1"],
            "breaker_a": seen(15),
            "other_load_ma": seen(2500),
            "phase": seen("L1"),
            "feeder": seen("main panel"),
        },
        "C2": {"name": "Porch", "label_rooms": ["R1"], "phase": seen("L2"), "feeder": seen("main panel")},
    },
    "boxes": {
        "B1": {
            "room": "R1",
            "mounts": {"1": {"neutral": seen("absent"), "largest_awg": seen("14")}},
            "gangs": {"1": {"duty": "feeds", "load": "L1", "line": seen("C1")}},
            "depth_mm": seen(89),
            "set_back_mm": seen(0),
            **PLASTIC,
            "volume_mm3": seen(294_967),
            "conductors": seen({"14": 5}),
            "loops": seen({}),
            "grounds": seen({"14": 2}),
            "clamps": seen(True),
            "fittings": seen(0),
        },
        "B2": {
            "room": "R1",
            "mounts": {"1": {}},
            "gangs": {
                "1": {"line": seen("C1"), "duty": "capped"},
                "2": {"line": seen("C2"), "duty": "capped"},
            },
            "two_supplies_label": seen(True),
        },
    },
    "loads": {
        "L1": {
            "name": "ceiling fan",
            "room": "R1",
            "kind": seen("motor"),
            "purpose": "comfort_fan",
            "power_mw": seen(560_000),
            "count": seen(1),
            "power_factor_permille": seen(700),
            "continuous": seen(True),
        },
    },
    "devices": {"D1": {"model": "marlsett-keel@1", "box": "B1", "mounts": ["1"], "gangs": ["1"]}},
    "models": {"marlsett-keel@1": KEEL},
}
HOUSES = {"iec": SOUND, "nec": SOUND_NEC}


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


def spoilt(changes: dict[str, object], *, of: str = "iec") -> dict[str, Any]:
    """A sound house with some values put or taken away."""
    plain = HOUSES[of]
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
