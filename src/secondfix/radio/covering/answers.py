"""What `cover` answers: for each place of a grid, how well a device put there would be carried."""

from dataclasses import dataclass
from math import erfc, sqrt

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints


@dataclass(frozen=True, slots=True, eq=False)
class Cover:
    """One network on one storey. ``x_mm`` numbers the columns of the grid, ``y_mm`` its rows.

    ``room`` (rows, columns) numbers the rooms of the house in its order: -1 outside all of them, and
    everywhere where no outline is drawn. ``margin_db`` (3, rows, columns) is the margin of the weakest link
    on the best route of a device put there, at the most favourable, assumed and least favourable reading:
    NaN outside the house, minus 100 dB where there is no route worth the name. A place is likely from
    ``likely_db`` at the least favourable reading and unlikely below ``unlikely_db`` at the most favourable
    one; between the two it is doubtful. ``spread_db`` is that of the assumed reading, ``height_mm`` the
    height above the floor, ``step_mm`` the pitch of the grid, ``assumptions`` names of those that entered.
    """

    network: str
    storey: str
    x_mm: Ints
    y_mm: Ints
    room: Ints
    margin_db: Floats
    spread_db: float
    likely_db: float
    unlikely_db: float
    height_mm: int
    step_mm: int
    assumptions: tuple[str, ...]

    @property
    def inside(self) -> Bools:
        """Which places of the grid are in the house."""
        return np.asarray(~np.isnan(self.margin_db[1]))

    @property
    def chance(self) -> Floats:
        """The chance of the assumed reading at each place, 0 to 1; NaN outside the house."""
        root = self.spread_db * sqrt(2)
        out = [0.5 * erfc(-m / root) for m in self.margin_db[1].ravel().tolist()]
        return np.array(out).reshape(self.margin_db[1].shape)

    @property
    def likely(self) -> Bools:
        """Where a device put there is likely to be carried, whatever is assumed."""
        return np.asarray(self.margin_db[2] >= self.likely_db)

    @property
    def unlikely(self) -> Bools:
        """Where it is not even at the most favourable reading."""
        return np.asarray(self.margin_db[0] < self.unlikely_db)
