"""Assumptions of what others on the air do to a network at 2.4 GHz."""

from secondfix.assumptions.assumption import Assumption

_JUDGED = "engineering judgement, not sourced"

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "air_heard_db",
        0,
        -6,
        6,
        "dB",
        "how far what others send lies, at a device, from what the survey heard at the nearest place",
        _JUDGED,
        least=-30,
        most=30,
    ),
    Assumption(
        "air_duty_pct",
        10,
        1,
        100,
        "%",
        "share of the time that a transmitter sends whose share the survey does not state",
        "low end: ten beacons a second of 1 ms (from memory); else engineering judgement, not sourced",
        least=0,
        most=100,
    ),
    Assumption(
        "air_adjacent_db",
        25,
        0,
        40,
        "dB",
        "what a receiver at 2.4 GHz takes from what is sent into the channel beside its own, 5 MHz away",
        "low end IEEE 802.15.4-2006 6.5.3.4 (from memory); else engineering judgement, not sourced",
        least=0,
        most=100,
    ),
    Assumption(
        "air_alternate_db",
        40,
        30,
        55,
        "dB",
        "what a receiver at 2.4 GHz takes from what is sent 10 MHz away and farther",
        "low end IEEE 802.15.4-2006 6.5.3.4 (from memory); else engineering judgement, not sourced",
        least=0,
        most=100,
    ),
    Assumption(
        "air_better_channel_pct",
        5,
        2,
        10,
        "%",
        "share of frames that another channel must lose less, for all devices to be moved to it",
        _JUDGED,
        least=0,
        most=100,
    ),
)

OF_AIR: tuple[str, ...] = tuple(a.name for a in ASSUMPTIONS)
