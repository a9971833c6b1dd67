"""What a house's measured links say of a path that none of them ran over."""

from collections.abc import Mapping
from dataclasses import replace

import numpy as np

from secondfix.radio.covering.across import Field
from secondfix.radio.crossing import Floats
from secondfix.radio.learning.columns import FROM_M, main_material
from secondfix.radio.learning.learned import Learned

Three = tuple[float, float, float]


def as_learned(field: Field, learned: Learned, network: str) -> Field:
    """Give the field with what ``learned`` holds of the house: offset, distance, materials, each crossing.

    Meaning: each is taken at its 5 %, its middle and its 95 % in the lightest, assumed and heaviest reading,
    all together, so the two ends are farther apart than nine in ten. A network without a measured link on
    its frequency stays as it was. Source: see `learn`. Leaves out: what was learned of single devices.
    """
    found: Mapping[str, Three] = {p.name: p.after for p in learned.parameters if network in p.networks}
    if not found:
        return field
    nothing, all_of_it = (0.0, 0.0, 0.0), (100.0, 100.0, 100.0)
    offset = np.array(found.get("offset", nothing))
    slope = 10 * np.array(found["distance"]) if "distance" in found else field.slope_db
    more = np.array(found.get("crossing", nothing))
    # What nobody surveyed keeps its two readings: nothing was learned of it by name.
    known = np.array([s.look is None for s in field.surfaces], np.bool_)
    share = [
        found.get(f"material:{main_material(s)}", all_of_it) if s.look is None else all_of_it
        for s in field.surfaces
    ]
    by_surface = np.array(share).reshape(-1, 3).T[:, :, None] / 100
    table: Floats = field.table * by_surface + (more[:, None] * known)[:, :, None]
    return replace(
        field,
        table=np.maximum(table, 0.0),
        open_db=field.open_db + offset - (slope - field.slope_db) * np.log10(FROM_M),
        slope_db=slope,
    )
