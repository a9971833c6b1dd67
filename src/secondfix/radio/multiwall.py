"""The COST 231 multi-wall model over whole paths: another opinion beside the slabs, never added to them."""

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.openspace import FLOOR_CURVE, FLOOR_DB, HEAVY_WALL_DB, LIGHT_WALL_DB, free_space_loss_db
from secondfix.radio.paths import Paths
from secondfix.radio.surfaces import NOT_DRAWN_DB, Surface
from secondfix.terms import LayerMaterial

HEAVY = frozenset({LayerMaterial.BRICK, LayerMaterial.CONCRETE, LayerMaterial.MARBLE})
HEAVY_FROM_MM = 100.0  # the model's border is 10 cm; a wall of just that counts as heavy


def multi_wall_losses_db(paths: Paths, *, frequency_mhz: float) -> Floats:
    """Give the loss of every pair of ``paths`` by the COST 231 multi-wall model, in dB, assumed reading.

    Meaning: free space, 3.4 dB for each light wall, 6.9 for each heavy one, and the curve of 18.3 dB for
    floors. Heavy: 100 mm or more of brick, concrete or marble in its layers; light: every other wall, and a
    door or window (which the model does not tell apart: engineering judgement, not sourced). A wall of
    unknown layers counts as its assumed reading says. NaN where walls between are not drawn, for there is
    nothing to count. Source: as `multi_wall_loss_db`. Leaves out: what that leaves out, the angle, and
    the material of a floor.
    """
    walls_db = np.array([_wall_db(surface) for surface in paths.surfaces], np.float64)
    level = np.array([surface.level for surface in paths.surfaces], np.bool_)
    many = len(paths.first)
    walls = np.bincount(paths.at_pair, weights=walls_db[paths.crossed], minlength=many)
    floors = np.bincount(paths.at_pair[level[paths.crossed]], minlength=many)
    open_db = free_space_loss_db(distance_m=1, frequency_mhz=frequency_mhz) + 20 * np.log10(paths.distance_m)
    out: Floats = open_db + walls + _floors_db(floors)
    return out


def _wall_db(surface: Surface) -> float:
    reading = surface.readings[1]
    if reading.fixed_db >= NOT_DRAWN_DB:
        return np.nan
    if surface.level or not (reading.layers or reading.fixed_db):
        return 0.0
    thick = sum(layer.thickness_mm for layer in reading.layers if layer.material in HEAVY)
    return HEAVY_WALL_DB if thick >= HEAVY_FROM_MM else LIGHT_WALL_DB


def _floors_db(floors: Ints) -> Floats:
    out: Floats = FLOOR_DB * floors ** ((floors + 2) / (floors + 1) - FLOOR_CURVE)
    return out
