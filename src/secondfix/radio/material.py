"""Electrical properties of building materials at radio frequencies, after ITU-R P.2040.

The constants are those of the current edition (P.2040-4, Table 3) as read in a secondary source, an
open-source ray tracer that cites the table; the Recommendation itself was not at hand. Thickness,
moisture and reinforcement of a real wall vary more than the last digits do.
"""

import cmath
import math
from dataclasses import dataclass
from enum import StrEnum

from secondfix.terms import LayerMaterial

EDITION = "ITU-R P.2040-4 Table 3, read in a secondary source"
VACUUM_PERMITTIVITY = 8.854_187_8188e-12  # F/m, CODATA 2022


class Validity(StrEnum):
    """Whether the table covers a frequency, or the formula is carried past its stated range."""

    INSIDE = "inside"
    EXTRAPOLATED = "extrapolated"


@dataclass(frozen=True, slots=True)
class Constants:
    """Constants of P.2040: relative permittivity a·f^b, conductivity c·f^d in S/m, f in GHz."""

    a: float
    b: float
    c: float
    d: float
    low_ghz: float
    high_ghz: float


AIR = Constants(1.0, 0.0, 0.0, 0.0, 0.001, 100.0)

TABLE: dict[LayerMaterial, Constants] = {
    LayerMaterial.AIR: AIR,
    LayerMaterial.BRICK: Constants(3.91, 0.0, 0.0238, 0.16, 1.0, 40.0),
    LayerMaterial.CEILING_BOARD: Constants(1.48, 0.0, 0.0011, 1.0750, 1.0, 100.0),
    LayerMaterial.CHIPBOARD: Constants(2.58, 0.0, 0.0217, 0.7800, 1.0, 100.0),
    LayerMaterial.CONCRETE: Constants(5.24, 0.0, 0.0462, 0.7822, 1.0, 100.0),
    LayerMaterial.FLOORBOARD: Constants(3.66, 0.0, 0.0044, 1.3515, 50.0, 100.0),
    LayerMaterial.GLASS: Constants(6.31, 0.0, 0.0036, 1.3394, 0.1, 100.0),
    LayerMaterial.MARBLE: Constants(7.074, 0.0, 0.0055, 0.9262, 1.0, 60.0),
    LayerMaterial.METAL: Constants(1.0, 0.0, 1e7, 0.0, 1.0, 100.0),
    LayerMaterial.PLASTERBOARD: Constants(2.73, 0.0, 0.0085, 0.9395, 1.0, 100.0),
    LayerMaterial.PLYWOOD: Constants(2.71, 0.0, 0.33, 0.0, 1.0, 40.0),
    LayerMaterial.WOOD: Constants(1.99, 0.0, 0.0047, 1.0718, 0.001, 100.0),
}


def permittivity(constants: Constants, *, frequency_mhz: float) -> complex:
    """Give the complex relative permittivity, ε′ − jσ/(2πfε₀).

    Meaning: how strongly the material slows (real part) and absorbs (imaginary part, negative) a wave.
    Range: any positive frequency; ask `validity` whether the table covers it. Raises ValueError at or
    below 0 MHz. Source: ITU-R P.2040, formulas for ε′ and σ (secondary). Leaves out: moisture, grain
    of wood, reinforcement.
    """
    if not (math.isfinite(frequency_mhz) and frequency_mhz > 0):
        raise ValueError(f"a frequency is above 0 MHz, not {frequency_mhz}")
    ghz = frequency_mhz / 1000
    conductivity = constants.c * ghz**constants.d
    return complex(
        constants.a * ghz**constants.b,
        -conductivity / (2 * math.pi * frequency_mhz * 1e6 * VACUUM_PERMITTIVITY),
    )


def validity(material: LayerMaterial, *, frequency_mhz: float) -> Validity:
    """Tell whether the table covers this material at this frequency.

    At 868 and 908 MHz most rows are extrapolated (they begin at 1 GHz).
    Source: the frequency range column of the table (secondary).
    """
    row = TABLE[material]
    inside = row.low_ghz <= frequency_mhz / 1000 <= row.high_ghz
    return Validity.INSIDE if inside else Validity.EXTRAPOLATED


def refraction(eta: complex, *, sine_squared: float) -> complex:
    """Give √(η − sin²θ), the branch whose wave dies away inside the material (imaginary part ≤ 0)."""
    root = cmath.sqrt(eta - sine_squared)
    return -root if root.imag > 0 else root
