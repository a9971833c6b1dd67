"""Small random houses, each as a plain document that ``read_house`` accepts."""

from typing import Any

from hypothesis import strategies as st

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import NeutralNeed, Stated
from secondfix.terms import Kind, Known, PowerLossState, Purpose, RatingKind
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
    return [
        {"kind": k, "current_ma": draw(milliamperes), "at_voltage_v": draw(volts), "standard": LATEST}
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
    said = draw(
        some(
            {"output": st.sampled_from(["relay", "dimmer"]), "ratings": printed()},
            {
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
    return model("ambry", name, form=form, mounts=mounts, gangs=gangs, **said)


@st.composite
def loads(draw: st.DrawFn) -> Plain:
    """A load; its surveyed power factor lies within the range of its kind (docs/methods-electrical.md)."""
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
            },
        )
    )
    if draw(st.booleans()):
        kind = load["kind"]["value"] if "kind" in load else "led_driver"
        low, _, high = default_assumptions().span(f"power_factor_{kind}_permille")
        load["power_factor_permille"] = draw(fact(st.integers(low, high)))
    return load


@st.composite
def boxes(draw: st.DrawFn, house: Plain, box_id: str) -> Plain:
    """A wall box with up to three gangs on up to two mounts; its loads and devices go into the house."""
    numbers = [str(n) for n in range(1, draw(st.integers(1, 2)) + 1)]
    neutral = fact(st.sampled_from(["C1", "C1", "C1", "C2", "absent", "earth"]))
    box = draw(
        some(
            {
                "room": st.sampled_from(ROOMS),
                "mounts": st.fixed_dictionaries({n: some({}, {"neutral": neutral}) for n in numbers}),
            },
            {"depth_mm": fact(st.integers(16, 90)), "set_back_mm": fact(st.integers(0, 12))},
        )
    )
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
    labels = st.sampled_from([[], ["R1"], ["R2"], ["R1", "R2"], ["R1", "R2"]])
    house: Plain = {
        "format": 1,
        "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e6",
        "name": "Any",
        "storeys": {"S0": {"name": "Low", "level_mm": 0}, "S1": {"name": "High", "level_mm": 2600}},
        "rooms": {
            r: draw(some({"name": st.just(r)}, {"storey": st.sampled_from(["S0", "S1"])})) for r in ROOMS
        },
        "circuits": {c: draw(some({"name": st.just(c)}, {"label_rooms": labels})) for c in CIRCUITS},
        "boxes": {},
        "loads": {},
        "devices": {},
        "models": {},
        "places": {"P1": {"kind": "light_point", "name": "Point", "room": "R1"}},
        "feeding": [],
    }
    if draw(SAID):
        house["mains_voltage_v"] = 230
    for box_id in [f"B{n}" for n in range(1, draw(st.integers(1, 3)) + 1)]:
        box = house["boxes"][box_id] = draw(boxes(house, box_id))
        split = draw(st.integers(0, len(box["gangs"])))
        front, behind = list(box["gangs"])[:split], list(box["gangs"])[split:]
        if front:
            stands = {"box": box_id, "mounts": list(box["mounts"]), "gangs": front}
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
    del house["feeding"]
    return house
