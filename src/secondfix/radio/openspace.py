"""Loss with distance: free space, and the multi-wall model as a documented alternative to slabs."""

import math

from secondfix.radio.slab import LIGHT_M_PER_S


def free_space_loss_db(*, distance_m: float, frequency_mhz: float) -> float:
    """Give the loss between two isotropic antennas in free space, 20 log₁₀(4πdf/c), in dB.

    Range: both above 0, and the distance beyond the near field (about a third of a wavelength: 4 cm at
    2.4 GHz, 11 cm at 868 MHz). Raises ValueError at or below 0. Source: ITU-R P.525 (from memory);
    figures computed. Leaves out: walls, reflections, the antennas' own pattern.
    """
    if distance_m <= 0 or frequency_mhz <= 0:
        raise ValueError(f"distance and frequency are above 0, not {distance_m} m and {frequency_mhz} MHz")
    return 20 * math.log10(4 * math.pi * distance_m * frequency_mhz * 1e6 / LIGHT_M_PER_S)


LIGHT_WALL_DB = 3.4
HEAVY_WALL_DB = 6.9
FLOOR_DB = 18.3
FLOOR_CURVE = 0.46


def multi_wall_loss_db(
    *, distance_m: float, frequency_mhz: float, light_walls: int, heavy_walls: int, floors: int
) -> float:
    """Give the loss by the COST 231 multi-wall model, in dB: an alternative to slab losses, not an addition.

    Equation: free space + 3.4 per light wall + 6.9 per heavy wall + 18.3·k^{(k+2)/(k+1) − 0.46} for k
    floors. Light: plasterboard, or thinner than 10 cm; heavy: load-bearing or thicker (from memory).
    Range: the wall and floor figures were measured at 1800 MHz. Raises ValueError for negative counts.
    Source: COST 231 Final Report 4.7.2, through 3GPP TR 25.952 5.1.1 (secondary). Its figures are
    effective ones, with studs, reinforcement and furniture in them, so they lie above the slab values.
    Leaves out: the constant of the fit, taken as 0 (from memory).
    """
    if min(light_walls, heavy_walls, floors) < 0:
        raise ValueError("walls and floors are counted from 0")
    open_db = free_space_loss_db(distance_m=distance_m, frequency_mhz=frequency_mhz)
    floors_db = FLOOR_DB * math.pow(floors, (floors + 2) / (floors + 1) - FLOOR_CURVE)
    return open_db + LIGHT_WALL_DB * light_walls + HEAVY_WALL_DB * heavy_walls + floors_db
