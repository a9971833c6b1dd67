"""ITU-R P.1238: loss inside buildings from distance alone, without a plan: older form and present one.

No answer uses these: they stand beside the loss by surfaces (docs/decisions/loss-model.md). The
Recommendation was not at hand; each figure says how it was come by.
"""

import math
from dataclasses import dataclass
from enum import StrEnum

DWELLING = 28.0  # N of the older form for dwellings: 1.8 to 2 GHz secondary, 2.4 GHz from memory
OFFICE_900_MHZ = 33.0  # N of the older form for offices at 900 MHz: secondary


class Site(StrEnum):
    """The rows of the present form: kind of site, and whether the ends see each other."""

    OFFICE_SEEN = "office, in sight"
    OFFICE_UNSEEN = "office, out of sight"
    CORRIDOR_SEEN = "corridor, in sight"
    CORRIDOR_UNSEEN = "corridor, out of sight"
    INDUSTRIAL_SEEN = "industrial, in sight"
    INDUSTRIAL_UNSEEN = "industrial, out of sight"
    CONFERENCE_SEEN = "conference room, in sight"
    CONFERENCE_UNSEEN = "conference room, out of sight"


@dataclass(frozen=True, slots=True)
class Fit:
    """One row: 10·a·log₁₀ d + b + 10·g·log₁₀ f, spread in dB, distances in m, lowest frequency in MHz."""

    a: float
    b: float
    g: float
    spread_db: float
    least_m: float
    most_m: float
    least_mhz: float


# ITU-R P.1238-13 (09/2025), through one open implementation (secondary). There is no row for dwellings.
FITS: dict[Site, Fit] = {
    Site.OFFICE_SEEN: Fit(1.47, 34.17, 2.08, 3.68, 2, 27, 300),
    Site.OFFICE_UNSEEN: Fit(2.39, 30.13, 2.40, 5.01, 4, 30, 300),
    Site.CORRIDOR_SEEN: Fit(1.57, 29.46, 2.24, 3.77, 2, 160, 300),
    Site.CORRIDOR_UNSEEN: Fit(2.78, 28.62, 2.54, 7.58, 3, 94, 625),
    Site.INDUSTRIAL_SEEN: Fit(2.27, 24.79, 2.10, 2.62, 2, 102, 625),
    Site.INDUSTRIAL_UNSEEN: Fit(2.80, 23.55, 2.16, 5.70, 3, 110, 625),
    Site.CONFERENCE_SEEN: Fit(1.56, 30.47, 2.23, 2.92, 2, 21, 450),
    Site.CONFERENCE_UNSEEN: Fit(1.40, 39.53, 2.37, 3.33, 4, 25, 450),
}


def site_loss_db(site: Site, *, distance_m: float, frequency_mhz: float) -> float:
    """Give the loss on one floor by the present form, 10·a·log₁₀ d + b + 10·g·log₁₀ f, in dB.

    d in m, f in GHz. ValueError outside the row's distances or below its frequency. Source: ITU-R
    P.1238-13, same floor (secondary). Walls and furniture are in the fit, so wall losses must not be added.
    Leaves out: floors between, dwellings (no row), and the row's spread, which stands in `FITS`.
    """
    fit = FITS[site]
    if not fit.least_m <= distance_m <= fit.most_m:
        raise ValueError(f"{site.value} is stated from {fit.least_m} to {fit.most_m} m, not at {distance_m}")
    if frequency_mhz < fit.least_mhz:
        raise ValueError(f"{site.value} is stated from {fit.least_mhz} MHz, not at {frequency_mhz}")
    return 10 * fit.a * math.log10(distance_m) + fit.b + 10 * fit.g * math.log10(frequency_mhz / 1000)


def older_site_loss_db(
    *, distance_m: float, frequency_mhz: float, power_coefficient: float, floors_db: float = 0.0
) -> float:
    """Give the loss by the older form, 20·log₁₀ f + N·log₁₀ d + Lf − 28, in dB.

    f in MHz, d in m, N the power coefficient (`DWELLING`, `OFFICE_900_MHZ`), Lf what floors between
    lose. Range: beyond 1 m; ValueError below. Source: ITU-R P.1238 up to edition 8 (secondary). It states
    no N for dwellings at 900 MHz: using 28 there is our choice. N above 20 holds walls and furniture, so
    wall losses must not be added. Leaves out: the spread (8 dB in dwellings, from memory).
    """
    if distance_m < 1:
        raise ValueError(f"the older form is stated beyond 1 m, not at {distance_m} m")
    return 20 * math.log10(frequency_mhz) + power_coefficient * math.log10(distance_m) + floors_db - 28


def dwelling_floors_db(*, floors: int) -> float:
    """Give what floors between lose in a dwelling by the older form, 4·n dB; 0 for none.

    ValueError below 0. Source: ITU-R P.1238 up to edition 8 at 1.8 to 2 GHz (secondary); at 2.4 GHz figures
    from memory lie between 5 and 10 dB a floor, so it errs towards too little loss.
    """
    if floors < 0:
        raise ValueError("floors are counted from 0")
    return 4.0 * floors
