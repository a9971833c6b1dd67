"""What each path loses at the frequencies of a network: lightest, assumed and heaviest reading."""

from collections.abc import Sequence
from functools import cache

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.g9959 import PLANS
from secondfix.radio.openspace import free_space_loss_db
from secondfix.radio.paths import Paths
from secondfix.radio.slab import Layer, Wave, incoherent_loss_db
from secondfix.radio.surfaces import Reading, Surface
from secondfix.terms import Protocol, RadioRegion

# Past 75 degrees a wave goes round a wall rather than through it: engineering judgement, not sourced.
ANGLES_DEG = (0.0, 25.0, 40.0, 50.0, 60.0, 67.5, 75.0)
BAND_2400_MHZ = 2440.0  # the middle of the band; its edges lie within 0.15 dB of free space loss


def band_mhz(protocol: Protocol, region: RadioRegion | None) -> tuple[float, ...]:
    """Frequencies that a network may use, in MHz; all that some region uses where the region is unknown.

    Source: the band of IEEE 802.15.4 (secondary), the plans of `g9959.PLANS`. Leaves out: the channel
    within the band, and the slower Z-Wave rates, which lie within 8 MHz (0.1 dB) of the fast one.
    """
    if protocol is not Protocol.ZWAVE:
        return (BAND_2400_MHZ,)
    plans = [PLANS[region]] if region else list(PLANS.values())
    return tuple(sorted({mhz for plan in plans for mhz in plan.fast_mhz}))


def path_losses_db(paths: Paths, frequencies_mhz: Sequence[float]) -> Floats:
    """Give the loss of every pair of ``paths`` in dB, three rows: lightest, assumed, heaviest reading.

    Meaning: free space plus the fringe-averaged slab loss of each surface at its angle (TE, the heavier
    polarisation), lightest over the frequencies for the first row and heaviest for the others. Source:
    ITU-R P.525 (from memory) and P.2040-4 (secondary). Leaves out: studs, pipes, reinforcement and
    furniture, so it errs towards too little loss; the spread must cover that.
    """
    through = crossing_losses_db(paths, frequencies_mhz)
    lost = np.empty((3, len(paths.first)))
    for k, mhz in enumerate((min(frequencies_mhz), max(frequencies_mhz), max(frequencies_mhz))):
        walls = np.bincount(paths.at_pair, weights=through[k], minlength=len(paths.first))
        lost[k] = (
            walls + free_space_loss_db(distance_m=1, frequency_mhz=mhz) + 20 * np.log10(paths.distance_m)
        )
    return lost


def crossing_losses_db(paths: Paths, frequencies_mhz: Sequence[float]) -> Floats:
    """Give what each crossing of ``paths`` loses in dB, three rows as `path_losses_db`, which sums them."""
    return slant_losses_db(slant_table(paths.surfaces, frequencies_mhz), paths.crossed, paths.cosine)


def slant_table(surfaces: Sequence[Surface], frequencies_mhz: Sequence[float]) -> Floats:
    """Give what each surface takes in dB at each of `ANGLES_DEG`: (3, surfaces, angles), as its readings."""
    rows = [
        [_slant_losses(surface.readings[k], tuple(frequencies_mhz), heaviest=k > 0) for surface in surfaces]
        for k in range(3)
    ]
    return np.array(rows, np.float64).reshape(3, len(surfaces), len(ANGLES_DEG))


def slant_losses_db(table: Floats, surface: Ints, cosine: Floats) -> Floats:
    """Read the loss of surfaces at their angles out of `slant_table`, in a straight line between two."""
    low, share = _between_angles(cosine)
    out: Floats = table[:, surface, low] * (1 - share) + table[:, surface, low + 1] * share
    return out


def _between_angles(cosine: Floats) -> tuple["np.ndarray[tuple[int], np.dtype[np.intp]]", Floats]:
    angle = np.degrees(np.arccos(np.clip(cosine, 0.0, 1.0)))
    at = np.interp(angle, ANGLES_DEG, np.arange(len(ANGLES_DEG), dtype=np.float64))
    low = np.minimum(at.astype(np.intp), len(ANGLES_DEG) - 2)
    return low, at - low


@cache
def _slant_losses(reading: Reading, frequencies_mhz: tuple[float, ...], *, heaviest: bool) -> list[float]:
    pick = max if heaviest else min
    return [
        pick(
            min(_slab(reading.layers, mhz, angle) + reading.fixed_db, reading.most_db)
            for mhz in frequencies_mhz
        )
        for angle in ANGLES_DEG
    ]


@cache
def _slab(layers: tuple[Layer, ...], mhz: float, angle_deg: float) -> float:
    return incoherent_loss_db(layers, Wave(mhz, angle_deg)) if layers else 0.0
