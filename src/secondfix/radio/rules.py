"""What the radio package asks of a house."""

from secondfix.findings import Rule

_LEANS_ON = (
    "radio_spread_db",
    "radio_fading_db",
    "radio_likely_pct",
    "radio_unlikely_pct",
    "radio_longest_link_m",
    "radio_plastic_box_db",
    "radio_metal_box_db",
    "radio_luminaire_db",
    "radio_wall_thickness_mm",
    "radio_floor_thickness_mm",
    "radio_wall_most_db",
    "radio_leaf_most_db",
    "radio_transmit_power_dbm",
    "radio_sensitivity_dbm",
)

REACH = Rule(
    "radio.reach",
    "Is radio likely to carry each device to its controller, within its protocol's limits?",
    "ITU-R P.2040-4 eq. 43-44 (secondary), P.525 (from memory); Zigbee R22 3.5.1 depth (secondary); "
    "ITU-T G.9959 routes of four repeaters (secondary)",
    _LEANS_ON,
)
ONE_REPEATER = Rule(
    "radio.one_repeater",
    "Do devices hang on one repeater alone?",
    "common practice, no source; links as in radio.reach",
    _LEANS_ON,
)
THREAD_ROUTERS = Rule(
    "radio.thread_routers",
    "Has a Thread network more devices that could repeat than may repeat at one time?",
    "Thread: at most 32 active routers (from memory)",
)

RULES: tuple[Rule, ...] = (REACH, ONE_REPEATER, THREAD_ROUTERS)
