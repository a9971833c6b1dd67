"""Small invented houses for the joining tests, put together in code."""

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from secondfix.catalogue import Model
from secondfix.house import House, Schedule, schedule
from secondfix.joining import CONTROLLER, NetworkLinks

HOUSE_ID = "01890a5d-ac96-7bde-8d3a-5a2c6f0e1b11"


def a_model(**changes: Any) -> Model:
    """An invented two-gang Z-Wave relay that repeats and joins by three presses with its front on."""
    plain: dict[str, Any] = {
        "maker": "brindle",
        "name": "rook-two",
        "edition": 1,
        "title": "Brindle Rook, two-gang relay",
        "sheet": "Brindle sheet 7, page 2",
        "form": "switch",
        "protocol": "zwave",
        "supply": "mains",
        "output": "relay",
        "mounts": 1,
        "gangs": 2,
        "repeats": "yes",
        "whole_entry": True,
        "live_parts_front_off": "yes",
        "removal_before_join": "when_used",
        "code": "none",
        "join": {"steps": [{"act": "press", "button": "gang 1", "times": 3, "within_ms": 1500}]},
    }
    return Model.model_validate({**plain, **changes})


def with_front_off(**changes: Any) -> Model:
    """The same, joined by a button behind the front."""
    steps = [{"act": "release_front"}, {"act": "press", "button": "the hidden button", "times": 2}]
    return a_model(**{"name": "rook-back", "join": {"steps": steps}, **changes})


def zigbee_relay(**changes: Any) -> Model:
    """An invented one-gang Zigbee relay that repeats."""
    own = {"name": "wren", "title": "Brindle Wren, one-gang relay", "protocol": "zigbee", "gangs": 1}
    return a_model(**{**own, "whole_entry": False, **changes})


def battery_button(**changes: Any) -> Model:
    """An invented Zigbee button on a battery."""
    own = {"name": "tick", "form": "battery_button", "supply": "battery", "output": "none", "mounts": 0}
    return zigbee_relay(**{**own, "repeats": "no", "title": "Brindle Tick, battery button", **changes})


def plug_in(**changes: Any) -> Model:
    """An invented Zigbee repeater that goes into a socket."""
    own = {"name": "stilt", "form": "plug_in", "output": "none", "mounts": 0, "gangs": 0}
    return zigbee_relay(**{**own, "title": "Brindle Stilt, plug-in repeater", **changes})


def fact(value: object) -> dict[str, object]:
    return {"value": value, "known": "seen_open"}


def a_box(
    room: str, *, lines: Sequence[str | None], at: tuple[int, int] | None = None, duty: str = "capped"
) -> dict[str, Any]:
    """A box of one mount whose gangs are of one duty; ``lines`` are their circuits."""
    box: dict[str, Any] = {
        "room": room,
        "mounts": {"1": {"neutral": fact("absent")}},
        "gangs": {
            str(n): {"duty": duty, **({"line": fact(line)} if line else {})}
            for n, line in enumerate(lines, 1)
        },
    }
    if at:
        box["position"] = {"x_mm": at[0], "y_mm": at[1], "height_mm": 1050}
    return box


def a_house(models: Sequence[Model] = (), **parts: Any) -> Schedule:
    """A schedule of a house of one hall, one Z-Wave and one Zigbee network, and ``parts``."""
    plain: dict[str, Any] = {
        "format": 1,
        "id": HOUSE_ID,
        "name": "Tern Cottage",
        "rooms": {"R1": {"name": "Hall"}},
        "boxes": {},
        "networks": {
            "N1": {"name": "Wave", "protocol": "zwave"},
            "N2": {"name": "Bee", "protocol": "zigbee"},
        },
        **parts,
    }
    plain.setdefault("circuits", {c: {"name": f"Ring {c}"} for c in circuit_ids(plain)})
    house = House.model_validate(plain)
    return schedule(house, {m.key: m for m in models})


def circuit_ids(plain: Mapping[str, Any]) -> list[str]:
    gangs = [g for box in plain["boxes"].values() for g in box["gangs"].values()]
    return sorted({g["line"]["value"] for g in gangs if "line" in g})


def links(ids: Sequence[str], margins: Mapping[tuple[str, str], float | None]) -> NetworkLinks:
    """Links of one network; what ``margins`` does not name is out of reach, None is not known."""
    names = (CONTROLLER, *ids)
    table = np.full((len(names), len(names)), -np.inf)
    for (a, b), margin in margins.items():
        i, j = names.index(a), names.index(b)
        table[i, j] = table[j, i] = np.nan if margin is None else margin
    return NetworkLinks(names, table)


def all_heard(ids: Sequence[str], margin_db: float = 20.0) -> NetworkLinks:
    """Every pair hears each other well."""
    names = (CONTROLLER, *ids)
    return NetworkLinks(names, np.full((len(names), len(names)), margin_db))
