"""Assumptions of what measured links teach: how far a whole house may lie from what is computed of it."""

from secondfix.assumptions.assumption import Assumption

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "radio_house_offset_db",
        0,
        -8,
        8,
        "dB",
        "how much more all links of a house together may lose than computed, before any is measured",
        "three measured sites, 5 dB taken off for each obstructed end: 6 dB more to 8 dB less (computed); "
        "ends engineering judgement, not sourced",
        least=-30,
        most=30,
    ),
    Assumption(
        "radio_wall_scale_pct",
        100,
        75,
        145,
        "%",
        "what walls and floors of one material take in this house, as a share of what is computed",
        "brick and concrete by two editions of ITU-R P.2040: 72 to 148 % (computed); ends engineering "
        "judgement, not sourced",
        least=10,
        most=400,
    ),
    Assumption(
        "radio_distance_tenths",
        22,
        15,
        28,
        "tenths",
        "exponent of distance beside the walls, which are counted apart",
        "ITU-R P.1238-13: 1.47 in sight to 2.78 along corridors out of sight (secondary)",
        least=5,
        most=60,
    ),
    Assumption(
        "radio_shared_pct",
        30,
        0,
        60,
        "%",
        "part of the spread that all links of one device share, for what surrounds it is the same",
        "engineering judgement, not sourced",
        least=0,
        most=95,
    ),
    Assumption(
        "radio_reading_db",
        3,
        1,
        6,
        "dB",
        "how far the signal read of a link on one day and channel lies from the level that it keeps",
        "both directions at once differ by 1 dB rms, channels by up to 5.6 dB (computed); value engineering "
        "judgement, not sourced",
        least=1,
        most=20,
    ),
)

OF_MEASURED_LINKS: tuple[str, ...] = tuple(a.name for a in ASSUMPTIONS)
