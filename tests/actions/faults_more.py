"""Further faults, for severities that the first fault of a rule does not show."""

from tests.actions.worlds import Answers, Change, mended, told
from tests.example_house import seen


def lamp_posts(count: int) -> Change:
    """A row of repeaters out in the pergola, each hearing its neighbours alone."""
    house = mended("iec")
    tern, at = house["models"]["plimmet-tern@1"], house["places"]["P82"]["position"]
    changes: Change = {
        "rooms.R80": {"name": "Pergola", "storey": "G"},
        "models.plimmet-tarn@1": tern | {"name": "tarn", "protocol": "zwave", "code": "zwave_dsk"},
    }
    for n in range(1, count + 1):
        position = {**at, "x_mm": at["x_mm"] + 24_000 * n}
        place = {"kind": "socket", "name": f"lamp post {n}", "room": "R80", "circuit": seen("C4")}
        changes[f"places.P{100 + n}"] = place | {"position": position}
        device = {"model": "plimmet-tarn@1", "network": "N2", "place": f"P{100 + n}", "name": f"Tarn {n}"}
        changes[f"devices.D{100 + n}"] = device | {"code_ref": f"K{100 + n}"}
    return changes


# Name to the world, what is changed, and every answer that is then not a pass.
MORE: dict[str, tuple[str, Change, Answers]] = {
    "a pump for animals that stays off when power returns": (
        "iec",
        {"devices.D08.after_power_loss": "off", "loads.L22.after_power_loss": None},
        told("power_loss B08.3 fault"),
    ),
    "a level for a lamp that may not be dimmed": (
        "iec",
        {"loads.L08.dimmable": seen(False)},
        told("scenes.level S3 fault", "dimming B04.1 fault"),
    ),
    "a sunset where some days have none": (
        "nec",
        {"latitude_mdeg": 67_000},
        told("scenes.start S4 advice"),
    ),
    "a whole-device entry that reaches a load no rule names": (
        "nec",
        {"scenes.S5.commands": [{"device": "D21", "entry": 0, "to": "on"}]},
        told("scenes.whole_entry S5 advice"),
    ),
    "more links than the protocol allows": (
        "iec",
        lamp_posts(6),
        told(
            "no_parent P106 advice",
            "radio.reach P106 fault",
            *(f"radio.one_repeater P{n} advice" for n in (101, 102, 103, 104)),
        ),
    ),
}
