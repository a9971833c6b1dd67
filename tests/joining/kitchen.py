"""A kitchen with one switch, and its worksheets."""

from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model
from secondfix.house import Schedule
from secondfix.joining import Links, Worksheet, walk, worksheets
from secondfix.naming import names
from tests.joining.houses import (
    a_box,
    a_house,
    a_model,
    all_heard,
    fact,
)

DEFAULTS = default_assumptions()


STEPS = {"steps": [{"act": "press", "button": "gang 1", "times": 3, "within_ms": 1500}]}


def sheets(house: Schedule, heard: Links) -> tuple[Worksheet, ...]:
    return worksheets(house, walk(house, heard, DEFAULTS), names(house))


def kitchen(model: Model | None = None, loads: dict[str, Any] | None = None, **device: Any) -> Schedule:
    """One box of two gangs, a sink light and a cove, worked by one device."""
    model = model or a_model()
    fed = {"sink": {"name": "Sink", "room": "R1", "purpose": "lighting"}}
    both = {"L1": fed["sink"], "L2": {"name": "Cove", "room": "R1", "purpose": "lighting"}, **(loads or {})}
    box = a_box("R1", lines=["C1"])
    box["gangs"] = {n: {"duty": "feeds", "load": f"L{n}", "line": fact("C1")} for n in ("1", "2")}
    standing = {"model": model.key, "network": "N1", "box": "B1", "mounts": ["1"], "gangs": ["1", "2"]}
    return a_house(
        [model],
        rooms={"R1": {"name": "Kitchen"}},
        boxes={"B1": box},
        loads=both,
        devices={"D1": {**standing, **device}},
    )


def sheet(model: Model | None = None, loads: dict[str, Any] | None = None, **device: Any) -> Worksheet:
    return sheets(kitchen(model, loads, **device), {"N1": all_heard(["D1"])})[0]
