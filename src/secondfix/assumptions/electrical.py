"""Assumptions of the electrical checks (facts marked common practice carry that mark to the page).

Each kind of load has its power factor under ``power_factor_<kind>_permille``: the range is meant to hold
every lamp or motor of the kind that a survey could meet.
"""

from secondfix.assumptions.assumption import Assumption

_CP = "common practice, no source"
_POWER_FACTOR = "power_factor_"


def _power_factor(kind: str, of: str, *, value: int, low: int, high: int, source: str = _CP) -> Assumption:
    name = f"{_POWER_FACTOR}{kind}_permille"
    means = f"power factor of {of} where none is printed"
    return Assumption(name, value, low, high, "‰", means, source, least=100, most=1000)


ASSUMPTIONS: tuple[Assumption, ...] = (
    _power_factor(
        "resistive",
        "a substantially resistive load",
        value=1000,
        low=950,
        high=1000,
        source="EN 60669-1:2018 scope (read): substantially resistive is a power factor of 0.95 and above",
    ),
    _power_factor(
        "tungsten",
        "a tungsten filament lamp",
        value=1000,
        low=1000,
        high=1000,
        source="circuit theory: a filament is a resistor",
    ),
    _power_factor("led_lamp", "an LED lamp with built-in driver", value=600, low=400, high=950),
    _power_factor("led_driver", "a separate LED driver", value=900, low=500, high=980),
    _power_factor(
        "fluorescent_electronic",
        "a fluorescent lamp on an electronic ballast",
        value=950,
        low=900,
        high=990,
        source="LRC technical note 2011 (secondary); range common practice, no source",
    ),
    _power_factor(
        "fluorescent_iron",
        "a fluorescent lamp on an iron ballast, uncorrected to corrected",
        value=500,
        low=450,
        high=950,
    ),
    _power_factor("iron_transformer", "a lamp on an iron-core transformer", value=900, low=800, high=950),
    _power_factor(
        "electronic_transformer", "a lamp on an electronic transformer", value=950, low=900, high=990
    ),
    _power_factor(
        "motor",
        "a small motor",
        value=650,
        low=600,
        high=950,
        source="EN 60669-1:2018 scope (read): motors of 0.6 and above; upper end common practice, no source",
    ),
    Assumption(
        "led_share_of_other_rating_pct",
        10,
        10,
        25,
        "%",
        "share of a tungsten or resistive rating for lamps with gear, where no rating for them is printed",
        _CP,
        least=0,
        most=100,
    ),
    Assumption(
        "rating_carries_down_to_pct",
        80,
        80,
        80,
        "%",
        "lowest mains voltage to which printed amperes carry over, as a share of their own voltage",
        "common practice, no source; firm setting",
        least=50,
        most=100,
    ),
    Assumption(
        "cable_allowance_mm",
        10,
        5,
        15,
        "mm",
        "depth that folded cables take behind a device",
        _CP,
        least=0,
        most=90,
    ),
    Assumption(
        "plate_projection_mm",
        2,
        0,
        4,
        "mm",
        "how far the rear of a plate reaches into the box, in front of the depth printed for the device",
        _CP,
        least=-30,
        most=30,
    ),
    Assumption(
        "plain_mechanism_depth_mm",
        22,
        18,
        25,
        "mm",
        "depth behind its plate of the plain switch that stays in front of a module",
        "common practice, no source; the maker's drawing is better",
        least=0,
        most=90,
    ),
    Assumption(
        "breaker_pulse_factor_pct",
        100,
        100,
        1000,
        "%",
        "how far above its instantaneous trip a breaker bears a pulse of microseconds",
        "that it bears more: BEAMA guide 2021 (secondary); range engineering judgement, not sourced",
        least=100,
        most=10_000,
    ),
    Assumption(
        "iron_transformer_least_pct",
        80,
        70,
        85,
        "%",
        "least load of an iron-core transformer on a dimmer, as a share of its volt-amperes",
        _CP,
        least=0,
        most=100,
    ),
    Assumption(
        "electronic_transformer_least_mw",
        20_000,
        10_000,
        30_000,
        "mW",
        "least load of an electronic transformer where none is printed",
        _CP,
        least=0,
        most=500_000,
    ),
    Assumption(
        "dimmer_one_neighbour_pct",
        80,
        70,
        90,
        "%",
        "what is left of a dimmer's rating with one dimmer beside it",
        "one instruction sheet, 500 W to 400 W (secondary); range common practice, no source",
        least=0,
        most=100,
    ),
    Assumption(
        "dimmer_two_neighbours_pct",
        60,
        50,
        80,
        "%",
        "what is left of a dimmer's rating with dimmers on both sides",
        "one instruction sheet, 500 W to 300 W (secondary); range common practice, no source",
        least=0,
        most=100,
    ),
    Assumption(
        "glow_voltage_v",
        30,
        10,
        60,
        "V",
        "voltage left across LED lamps above which they glow or flash while switched off",
        _CP,
        least=0,
        most=300,
    ),
)

POWER_FACTORS: tuple[str, ...] = tuple(a.name for a in ASSUMPTIONS if a.name.startswith(_POWER_FACTOR))
