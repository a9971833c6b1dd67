# ruff: noqa: E501 - a row of a table stays one line
"""Which way each number that a rule reads is the worse one, and why other rules have none."""

from dataclasses import dataclass

from tests.actions.faults_electrical import PINTLE, iron_rated, sixth_without_neutral, transformers
from tests.actions.faults_other import crowd, pergola, thread_crowd
from tests.actions.worlds import Change
from tests.example_house import seen

RADIO = ("radio.reach", "no_parent")


@dataclass(frozen=True)
class Way:
    """A number of the document (``*`` for any id), the rules that read it so, and moves to the worse side.

    ``times`` and ``plus`` are moves from a little to far; a move that the reader refuses is left out.
    """

    field: str
    rules: tuple[str, ...]
    times: tuple[float, ...] = ()
    plus: tuple[int, ...] = ()


def pushed(box: str) -> Change:
    """The light L01 pushed by wire from its second place, where no other load brings line, over one spare core."""
    return {
        "loads.L01.multiway.others": seen("input"),
        "loads.L01.multiway.spare_cores": seen(1),
        f"boxes.{box}.gangs.2": {"duty": "scene_only", "line": seen("C1")},
    }


LOADED = ("contact", "module_total", "circuit_load", "nec_motor", "ganged_dimmers")
MORE, LESS = (1.2, 2.0, 6.0), (0.85, 0.5, 0.12)

WAYS: tuple[Way, ...] = (
    Way("loads.*.power_mw", LOADED, MORE),
    Way("loads.*.count", (*LOADED, "inrush", "breaker_inrush"), (2.0, 5.0, 30.0)),
    Way("loads.*.power_factor_permille", LOADED, LESS),
    Way("models.*.ratings.*.current_ma", ("contact", "nec_motor", "ganged_dimmers"), LESS),
    Way("models.*.module_total_ma", ("module_total",), LESS),
    Way("circuits.*.other_load_ma", ("circuit_load",), MORE),
    Way("circuits.*.breaker_a", ("circuit_load", "breaker_inrush"), LESS),
    Way("loads.*.inrush_peak_ma", ("inrush", "breaker_inrush"), (1.2, 6.0, 40.0)),
    Way("loads.*.inrush_width_us", ("inrush",), MORE),
    Way("models.*.peak.current_ma", ("inrush",), LESS),
    Way("models.*.peak.width_us", ("inrush",), LESS),
    Way("loads.*.power_mw", ("least_load", "glow"), LESS),
    Way("loads.*.count", ("least_load", "glow"), LESS),
    Way("models.*.least_load_mw", ("least_load", "glow"), MORE),
    Way("loads.*.bypass_nf", ("glow",), LESS),
    Way("models.*.standby_mw", ("glow",), MORE),
    Way("loads.*.transformer_least_mw", ("transformer",), MORE),
    Way("boxes.*.depth_mm", ("depth",), LESS),
    Way("boxes.*.set_back_mm", ("depth",), LESS),
    Way("models.*.depth_behind_plate_mm", ("depth",), MORE),
    Way("boxes.*.volume_mm3", ("box_fill", "box_asked"), LESS),
    Way("boxes.*.conductors.*", ("box_fill",), plus=(1, 3, 9)),
    Way("boxes.*.grounds.*", ("box_fill",), plus=(1, 3, 9)),
    Way("boxes.*.fittings", ("box_fill",), plus=(1, 2, 4)),
    Way("models.*.box_volume_per_yoke_mm3", ("box_asked",), MORE),
    Way("loads.*.multiway.spare_cores", ("multiway_supply",), plus=(-1, -2, -4)),
    Way("walls.*.layers.*.thickness_mm", RADIO, (1.1, 1.5, 3.0)),
    Way("models.*.transmit_power_dbm", RADIO, plus=(-3, -9, -20)),
    Way("networks.*.transmit_power_dbm", RADIO, plus=(-3, -9, -20)),
    Way("models.*.sensitivity_dbm", RADIO, plus=(4, 12, 30)),
    Way("networks.*.sensitivity_dbm", RADIO, plus=(4, 12, 30)),
    Way("latitude_mdeg", ("scenes.start",), (1.1, 1.4, 1.6)),
    Way("mains_voltage_v", ("two_supplies",), (1.1, 2.2)),
)

# Documents in which a number bears on a rule that would else not be asked, or not hang on it.
GROUNDS: dict[tuple[str, str], Change] = {
    ("glow", "iec"): {"loads.L35.count": seen(1), "loads.L35.bypass_nf": seen(1000)},
    ("glow", "nec"): {"loads.L22.count": seen(2), "loads.L22.bypass_nf": seen(1000)},
    ("transformer", "iec"): transformers("L35", "electronic_transformer", va=40, also=[]),
    ("transformer", "nec"): transformers("L22", "iron_transformer", va=35, also=[]) | iron_rated(),
    ("depth", "iec"): {"boxes.B10.depth_mm": seen(40), "boxes.B10.set_back_mm": seen(8)},
    ("depth", "nec"): {"boxes.B08.depth_mm": seen(56), "boxes.B08.set_back_mm": seen(8)},
    ("multiway_supply", "iec"): pushed("B11"),
    ("multiway_supply", "nec"): pushed("B07"),
}

# Changes of which each is worse than the one before, where no single number of the document is.
SERIES: dict[tuple[str, str], tuple[Change, ...]] = {
    ("radio.reach", "iec"): tuple(pergola("iec", "P94", far_m=m) for m in (12, 20, 28, 36, 60)),
    ("radio.reach", "nec"): tuple(pergola("nec", "P91", far_m=m) for m in (12, 20, 28, 36, 60)),
    ("radio.thread_routers", "iec"): tuple(crowd(n) for n in (3, 20, 30, 40)),
    ("radio.thread_routers", "nec"): tuple(thread_crowd(n) for n in (3, 20, 33, 40)),
    ("no_parent", "iec"): tuple(
        {"assumptions.parent_margin_db": {"value": db}} for db in (10, 18, 24, 32, 40)
    ),
    ("no_parent", "nec"): tuple(
        {"assumptions.parent_margin_db": {"value": db}} for db in (10, 18, 24, 32, 40)
    ),
    ("box_fill", "nec"): tuple({"boxes.B01.volume_mm3": seen(254_967), f"{PINTLE}.yokes": n} for n in (0, 1)),
    ("nec_no_neutral", "nec"): ({}, sixth_without_neutral()),
    ("names.length", "iec"): tuple({"loads.L05.name": "w" * n} for n in (1, 7, 8, 9, 30)),
    ("names.length", "nec"): tuple({"loads.L14.name": "w" * n} for n in (1, 7, 8, 9, 30)),
    ("scenes.time", "iec"): tuple(
        {"assumptions.scene_slow_ms": {"value": ms}} for ms in (4000, 1000, 400, 250, 50)
    ),
    ("scenes.time", "nec"): tuple(
        {"assumptions.scene_slow_ms": {"value": ms}} for ms in (4000, 1000, 400, 200, 50)
    ),
}

_WHETHER = "asks whether a fact is stated and which it is; no quantity"
_NAMES = "compares names; no quantity"
_SCENES = "compares what scenes ask for; a level or a time is the same or not, never worse"

# Rules without a number, each with the reason.
NO_NUMBER: dict[str, str] = {
    **dict.fromkeys(
        (
            "duty", "board_label", "earth_as_neutral", "metal_earthed", "bath_zone", "neutral", "neutral_circuit",
            "borrowed_neutral", "shared_neutral", "neutral_through", "dimming", "dimmed_socket", "mixed_loads",
            "reversing", "permanent_supply", "power_loss", "power_loss_wanted", "multiway_arrangement",
            "multiway_series", "multiway_parallel", "multiway_other_circuit", "circuit_known", "removal_first",
            "code_captured", "front_on",
        ),
        _WHETHER,
    ),
    "hazard": "asks whether a time limit is stated and kept, not how long it is",
    "radio.one_repeater": "counts who hangs on one repeater: a weaker link may leave more on it, or nobody",
    **dict.fromkeys(("names.unique", "names.characters", "names.whole_device", "names.explained"), _NAMES),
    "names.by_ear": "its thresholds are assumptions, tried over their range in tests/naming/by_ear",
    **dict.fromkeys(
        (
            "scenes.refused", "scenes.conflict", "scenes.decided", "scenes.whole_entry", "scenes.entry",
            "scenes.level", "scenes.selects", "scenes.start_twice", "scenes.times_clash",
        ),
        _SCENES,
    ),
}  # fmt: skip
