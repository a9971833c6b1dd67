"""A small house whose one light is worked from several places, as a plain document to be spoilt."""

from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.electrical.multiway import check
from secondfix.findings import Finding, Outcome
from secondfix.house import House, read_house, schedule
from tests.electrical.sound import model
from tests.example_house import as_bytes, seen

Plain = dict[str, Any]
NEEDS = model("osgar", "needs", neutral="needed")
FREE = model("osgar", "free", neutral="not_needed")
ROSE = model("osgar", "rose", form="luminaire_module", mounts=0, neutral="needed")
UNIT = model(
    "osgar", "unit", form="extension_unit", output="none", protocol=None, join=None, neutral="not_needed"
)


def light(
    *,
    arrangement: str | None = "together",
    others: str | None = "input",
    places: int = 2,
    module: str = "1",
    needs_neutral: bool = True,
    neutral_at: frozenset[str] = frozenset("1"),
    foreign: bool = False,
    spare: int | None = 0,
) -> Plain:
    """Boxes B1, B2, … with one gang each; the device stands in box ``module``, or at the luminaire."""
    numbers = [str(n) for n in range(1, places + 1)]
    gangs = {
        n: {"duty": "extends", "extends": f"B{module}.1", "line": seen("C2" if foreign else "C1")}
        for n in numbers
    }
    model_key = f"osgar-{'needs' if needs_neutral else 'free'}@1"
    device: Plain = {"model": model_key, "box": f"B{module}", "mounts": ["1"], "gangs": ["1"]}
    if module == "lamp":
        device = {"model": "osgar-rose@1", "place": "P1", "outputs": {"1": "L1"}}
        gangs = {n: {"duty": "scene_only", "line": g["line"]} for n, g in gangs.items()}
    else:
        gangs[module] = {"duty": "feeds", "load": "L1", "line": seen("C1")}
    multiway: Plain = {"gangs": [f"B{n}.1" for n in numbers]}
    if arrangement:
        multiway["arrangement"] = seen(arrangement)
    if others:
        multiway["others"] = seen(others)
    if spare is not None:
        multiway["spare_cores"] = seen(spare)
    return {
        "format": 1,
        "id": "01936b1e-7a40-7c21-8f3e-5d2c9a71b6e7",
        "name": "Sallow Rise 8",
        "rooms": {"R1": {"name": "Stair"}},
        "circuits": {"C1": {"name": "Lamps"}, "C2": {"name": "Attic"}},
        "boxes": {
            f"B{n}": {
                "room": "R1",
                "mounts": {"1": {"neutral": seen("C1" if n in neutral_at else "absent")}},
                "gangs": {"1": gangs[n]},
            }
            for n in numbers
        },
        "places": {"P1": {"kind": "light_point", "name": "Rose", "room": "R1", "circuit": seen("C1")}},
        "loads": {"L1": {"name": "pendant", "room": "R1", "multiway": multiway}},
        "devices": {"D1": device},
        "models": {"osgar-needs@1": NEEDS, "osgar-free@1": FREE, "osgar-rose@1": ROSE, "osgar-unit@1": UNIT},
    }


def asked(plain: Plain) -> list[Finding]:
    """What the multi-way rules answer."""
    house = read_house(as_bytes(plain), where="light.json", models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return check(schedule(house, house.models), default_assumptions())


def told(plain: Plain) -> set[tuple[str, str, str, str | None]]:
    """All that is not a pass: rule, place, outcome, severity."""
    return {
        (f.rule, f.place, f.outcome.value, f.severity)
        for f in asked(plain)
        if f.outcome is not Outcome.PASSES
    }
