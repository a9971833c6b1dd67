"""Small random houses, each as a plain document that ``read_house`` accepts."""

from typing import Any

from hypothesis import strategies as st

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Edge, NeutralNeed, Stated
from secondfix.terms import (
    Kind,
    Known,
    PlateMaterial,
    PowerLossState,
    Purpose,
    RatingKind,
    ShellMaterial,
)
from tests.electrical.sound import LATEST, model

Plain = dict[str, Any]
CIRCUITS, ROOMS, LEVELS = ("C1", "C2"), ("R1", "R2"), ("S0", "S1")
KNOWN = st.sampled_from([Known.MEASURED, Known.SEEN_OPEN, Known.TOLD] * 3 + [Known.ASSUMED])
SAID = st.sampled_from([True] * 9 + [False])


def fact(values: st.SearchStrategy[Any]) -> st.SearchStrategy[Plain]:
    """A value known in any way, now and then only assumed."""
    return st.fixed_dictionaries({"value": values, "known": KNOWN.map(lambda k: k.value)})


def words(enum: Any) -> st.SearchStrategy[str]:
    """The words of an enumeration."""
    return st.sampled_from([w.value for w in enum])


@st.composite
def some(draw: st.DrawFn, whole: Plain, optional: Plain) -> Plain:
    """All of the first, most of the second: a house with too many gaps decides nothing."""
    said = {key: draw(values) for key, values in whole.items()}
    return said | {key: draw(values) for key, values in optional.items() if draw(SAID)}


@st.composite
def printed(draw: st.DrawFn) -> list[Plain]:
    """Ratings for most kinds, most of them at a voltage that serves 230 V."""
    kinds = [kind.value for kind in RatingKind if draw(SAID)]
    milliamperes, volts = st.integers(50, 16_000), st.sampled_from([230, 240, 250] * 4 + [120])
    standard = st.sampled_from([LATEST, "EN 60669-1:2018", "EN 60669-1:1999+A2:2008"])
    return [
        {"kind": k, "current_ma": draw(milliamperes), "at_voltage_v": draw(volts), "standard": draw(standard)}
        for k in kinds
    ]


@st.composite
def models(draw: st.DrawFn, *, name: str, form: str, mounts: int, gangs: int) -> Plain:
    """One model of the given shape."""
    loss = st.fixed_dictionaries(
        {
            "settable": st.lists(words(PowerLossState), unique=True, max_size=3),
            "as_delivered": words(PowerLossState),
        }
    )
    outputs = ["relay", "relay", "dimmer", "dimmer", "fan_control"] + ["shutter"] * (gangs % 2 == 0)
    said = draw(
        some(
            {"output": st.sampled_from(outputs), "ratings": printed()},
            {
                "yokes": st.integers(0, mounts),
                "box_volume_per_yoke_mm3": st.integers(100_000, 400_000),
                "standby_mw": st.integers(100, 3000),
                "neutral": words(NeutralNeed),
                "peak": st.fixed_dictionaries(
                    {"current_ma": st.integers(1000, 90_000), "width_us": st.integers(50, 500)}
                ),
                "module_total_ma": st.integers(500, 16_000),
                "least_load_mw": st.integers(1_000, 60_000),
                "depth_behind_plate_mm": st.integers(10, 45),
                "own_time_limit": words(Stated),
                "power_loss": loss,
            },
        )
    )
    if said["output"] == "dimmer" and draw(SAID):
        said["edge"] = draw(words(Edge))
    if gangs > 1 and draw(SAID):
        said["interlocked"] = draw(words(Stated))
    return model("ambry", name, form=form, mounts=mounts, gangs=gangs, **said)


@st.composite
def loads(draw: st.DrawFn) -> Plain:
    """A load; its power factor and the least load of its transformer lie within the range of their kind.

    Beyond it a surveyed figure counts and cannot be guessed once it is missing (docs/methods-electrical.md).
    Of an iron core none is stated: it is a share of the volt-amperes on a dimmer, and nothing on a relay.
    """
    load = draw(
        some(
            {"name": st.just("lamp"), "room": st.sampled_from(ROOMS)},
            {
                "kind": fact(words(Kind)),
                "purpose": words(Purpose),
                "power_mw": fact(st.integers(2_000, 60_000) | st.integers(60_000, 2_500_000)),
                "count": fact(st.integers(1, 8)),
                "inrush_peak_ma": fact(st.integers(500, 60_000)),
                "inrush_width_us": fact(st.integers(50, 500)),
                "permanent_supply": fact(st.booleans()),
                "own_thermostat": fact(st.booleans()),
                "time_limit_s": st.integers(60, 7200),
                "after_power_loss": words(PowerLossState),
                "neutral": fact(st.sampled_from(("C1", "C1", "C2"))),
                "place": st.sampled_from(["P1", "P1", "P2"]),
                "dimmable": fact(st.booleans()),
                "continuous": fact(st.booleans()),
                "reversing": fact(st.booleans()),
                "bypass_nf": fact(st.sampled_from([0, 47, 330, 1000])),
                "transformer_va": fact(st.integers(20, 150)),
                "transformer_least_mw": fact(st.integers(10_000, 30_000)),
            },
        )
    )
    if load.get("kind", {}).get("value") != "electronic_transformer":
        load.pop("transformer_least_mw", None)
    if load.get("kind", {}).get("value") in {"iron_transformer", "electronic_transformer"} and draw(SAID):
        load["also_kinds"] = draw(fact(st.lists(words(Kind), max_size=2)))
    if draw(st.booleans()):
        kind = load["kind"]["value"] if "kind" in load else "led_driver"
        low, _, high = default_assumptions().span(f"power_factor_{kind}_permille")
        load["power_factor_permille"] = draw(fact(st.integers(low, high)))
    return load


def contents() -> Plain:
    """What is counted inside a box under the NEC."""
    counts = fact(st.dictionaries(st.sampled_from(["16", "14", "12"]), st.integers(0, 6), max_size=2))
    return {
        "volume_mm3": fact(st.sampled_from([163_871, 229_419, 294_967, 344_128, 700_000])),
        "conductors": counts,
        "loops": fact(st.dictionaries(st.sampled_from(["14", "12"]), st.integers(0, 2), max_size=1)),
        "grounds": counts,
        "clamps": fact(st.booleans()),
        "fittings": fact(st.integers(0, 1)),
    }


@st.composite
def circuits(draw: st.DrawFn, circuit_id: str) -> Plain:
    """A circuit that may share its neutral with the other."""
    labels = st.sampled_from([[], ["R1"], ["R2"], ["R1", "R2"], ["R1", "R2"]])
    other = "C2" if circuit_id == "C1" else "C1"
    return draw(
        some(
            {"name": st.just(circuit_id)},
            {
                "label_rooms": labels,
                "breaker_a": fact(st.sampled_from([6, 10, 16, 32])),
                "curve": fact(st.sampled_from(["B", "C", "D"])),
                "other_load_ma": fact(st.integers(0, 9000)),
                "phase": fact(st.sampled_from(["L1", "L2"])),
                "shares_neutral_with": fact(st.sampled_from([[], [], [other]])),
                "opens_together": fact(st.booleans()),
                "feeder": fact(st.just("main")),
            },
        )
    )


@st.composite
def boxes(draw: st.DrawFn, house: Plain, box_id: str) -> Plain:
    """A wall box with up to three gangs on up to two mounts; its loads and devices go into the house."""
    numbers = [str(n) for n in range(1, draw(st.integers(1, 2)) + 1)]
    mount = {
        "neutral": fact(st.sampled_from(["C1", "C1", "C1", "C2", "absent", "earth"])),
        "neutral_through": fact(st.booleans()),
    }
    box = draw(
        some(
            {
                "room": st.sampled_from(ROOMS),
                "mounts": st.fixed_dictionaries({n: some({}, mount) for n in numbers}),
            },
            {
                "depth_mm": fact(st.integers(16, 90)),
                "set_back_mm": fact(st.integers(0, 12)),
                "shell": fact(words(ShellMaterial)),
                "plate": fact(words(PlateMaterial)),
                "earthed": fact(st.booleans()),
                "zone": fact(st.sampled_from(["0", "1", "2", "outside", "outside"])),
                "two_supplies_label": fact(st.booleans()),
            },
        )
    )
    box |= draw(some({}, contents()))
    for number in numbers:
        sizes = list(box.get("conductors", {"value": {}})["value"])
        if sizes and draw(SAID):
            box["mounts"][number]["largest_awg"] = draw(fact(st.sampled_from(sizes)))
    box["gangs"] = {}
    for gang_no in map(str, range(1, draw(st.integers(0, 3)) + 1)):
        box["gangs"][gang_no] = draw(gangs(house, f"{box_id}.{gang_no}", numbers))
    return box


@st.composite
def gangs(draw: st.DrawFn, house: Plain, gang_id: str, mounts: list[str]) -> Plain:
    """A gang of any duty; it extends a gang drawn before, if one feeds."""
    line = fact(st.sampled_from(("C1", "C1", "C2")))
    gang = draw(some({"mount": st.sampled_from(mounts)}, {"line": line}))
    duties = ["feeds", "feeds", "feeds", "scene_only", "capped", "not_known"]
    gang["duty"] = draw(st.sampled_from([*duties, "extends"] if house["feeding"] else duties))
    if gang["duty"] == "extends":
        gang["extends"] = draw(st.sampled_from(house["feeding"]))
    if gang["duty"] == "feeds":
        gang["load"] = f"L{len(house['loads']) + 1}"
        house["loads"][gang["load"]] = draw(loads())
        house["feeding"].append(gang_id)
    return gang


@st.composite
def devices(draw: st.DrawFn, house: Plain, *, stands: Plain, form: str) -> Plain:
    """A device of a model of its own, or of an undecided one."""
    number = len(house["devices"]) + 1
    mounts, worked = len(stands.get("mounts", ())), max(1, len(stands.get("gangs", ())))
    made = draw(models(name=f"m{number}", form=form, mounts=mounts, gangs=worked + draw(st.integers(0, 1))))
    device = dict(stands)
    if draw(SAID):
        key = f"ambry-m{number}@1"
        house["models"][key] = made
        device["model"] = key
        settable = made.get("power_loss", {}).get("settable")
        if settable and draw(st.booleans()):
            device["after_power_loss"] = draw(st.sampled_from(settable))
    return device


@st.composite
def houses(draw: st.DrawFn) -> Plain:
    """Two rooms, two circuits, up to three wall boxes with switches, modules behind them, both or none."""
    house: Plain = {
        "format": 1,
        "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e6",
        "name": "Any",
        "storeys": {"S0": {"name": "Low", "level_mm": 0}, "S1": {"name": "High", "level_mm": 2600}},
        "rooms": {
            r: draw(
                some(
                    {"name": st.just(r)},
                    {"storey": st.sampled_from(LEVELS), "tags": st.sampled_from([[], ["bathroom"]])},
                )
            )
            for r in ROOMS
        },
        "circuits": {c: draw(circuits(c)) for c in CIRCUITS},
        "boxes": {},
        "loads": {},
        "devices": {},
        "models": {},
        "places": {
            p: {"kind": kind, "name": "Point", "room": "R1", "circuit": draw(fact(st.sampled_from(CIRCUITS)))}
            for p, kind in (("P1", "light_point"), ("P2", "socket"))
        },
        "feeding": [],
    }
    if draw(SAID):
        house["mains_voltage_v"] = 230
    if draw(SAID):
        house["mains_frequency_hz"] = 50
    if draw(SAID):
        house["wiring_rules"] = draw(st.sampled_from(["iec", "nec"]))
    for box_id in [f"B{n}" for n in range(1, draw(st.integers(1, 3)) + 1)]:
        box = house["boxes"][box_id] = draw(boxes(house, box_id))
        split = draw(st.integers(0, len(box["gangs"])))
        front, behind = list(box["gangs"])[:split], list(box["gangs"])[split:]
        if front:
            apart = len(front) > 1 and len(box["mounts"]) > 1 and draw(st.booleans())
            parts = [("1", front[:1]), ("2", front[1:])] if apart else [("12", front)]
            for mounts, worked in parts:
                stands = {"box": box_id, "mounts": [m for m in box["mounts"] if m in mounts], "gangs": worked}
                house["devices"][f"D{len(house['devices']) + 1}"] = draw(
                    devices(house, stands=stands, form="switch")
                )
        if behind and draw(st.booleans()):
            stands = {"box": box_id, "gangs": behind}
            made = draw(devices(house, stands=stands, form="in_box_module"))
            house["devices"][f"D{len(house['devices']) + 1}"] = made
    if draw(st.booleans()):
        house["loads"]["L90"] = draw(loads())
        stands = {"place": "P1", "outputs": {"1": "L90"}}
        house["devices"]["D90"] = draw(devices(house, stands=stands, form="luminaire_module"))
    ids = list(house["loads"])
    if len(ids) > 1 and draw(st.booleans()):
        for one, other in (ids[:2], ids[1::-1]):
            house["loads"][one]["other_direction"] = other
            house["loads"][one]["reversing"] = draw(fact(st.just(True)))
    del house["feeding"]
    return house
