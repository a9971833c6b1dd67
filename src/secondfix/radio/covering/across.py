"""What is lost between every station and every place of a grid: the rectangular twin of the counts of pairs.

`find_paths` pairs all sites with each other; here each of many places meets each of few stations.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House
from secondfix.radio.between import Batch
from secondfix.radio.crossing import Floats, Ints, lengths_mm
from secondfix.radio.engine.choosing import kernels
from secondfix.radio.ground import Ground, ground_of
from secondfix.radio.losses import ANGLES_DEG, slant_losses_db, slant_table
from secondfix.radio.openspace import free_space_loss_db
from secondfix.radio.paths import BATCH_PAIRS, NEAREST_MM
from secondfix.radio.sites import sites_of
from secondfix.radio.surfaces import Surface
from secondfix.radio.tiling import sight_lines

HOPELESS_DB = -100.0  # nobody tells places apart below it


@dataclass(frozen=True, slots=True, eq=False)
class Places:
    """Places on one storey, all as high: millimetres, ``room`` numbers rooms (-1: in none that is drawn)."""

    x_mm: Ints
    y_mm: Ints
    z_mm: int
    level: int
    room: Ints

    def __len__(self) -> int:
        return len(self.x_mm)


@dataclass(frozen=True, slots=True, eq=False)
class Field:
    """The house as seen from its stations, in three readings.

    ``table`` is `slant_table` over ``surfaces``; open space takes ``open_db`` at 1 m and ``slope_db`` more
    for each factor of ten.
    """

    ground: Ground
    surfaces: tuple[Surface, ...]
    table: Floats
    open_db: Floats
    slope_db: Floats
    longest_mm: int


def field_of(
    house: House, assumptions: Assumptions, stand_at: list[str], *, band_mhz: tuple[float, ...]
) -> Field:
    """Lay out a house around stations at these places, each on the plan (`position_needs` is empty)."""
    longest_mm = max(assumptions.value("radio_longest_link_m"), 1) * 1000
    sites = sites_of(house, stand_at)
    ground, surfaces = ground_of(house, assumptions, sites, side_mm=longest_mm // 2)
    table = slant_table(surfaces, band_mhz)
    open_db = [
        free_space_loss_db(distance_m=1, frequency_mhz=mhz)
        for mhz in (min(band_mhz), max(band_mhz), max(band_mhz))
    ]
    return Field(ground, tuple(surfaces), table, np.array(open_db), np.full(3, 20.0), longest_mm)


def losses_across_db(field: Field, places: Places, *, plain: bool = False) -> Floats:
    """Give the loss of every path from a place to a station in dB: (3, places, stations), boxes not counted.

    Meaning, sources and omissions as `path_losses_db` over `find_paths`, with the same rules at corners:
    lightest, assumed and heaviest reading; infinity beyond the longest link. A place is taken where it is,
    also inside a wall. The same with the compiled kernel and without (``plain``), but for the last digits.
    """
    work = None if plain else kernels("across_kernel")
    out = np.full((3, len(places), len(field.ground.x)), np.inf)
    if work:
        work.lost(*_arrays(field, places), field.open_db, field.slope_db, field.longest_mm, out)
        return out
    for rows, station, losses in _plain(field, places):
        out[:, rows, station] = losses
    return out


def carried_db(
    field: Field, places: Places, *, budget_db: Floats, route_db: Floats, plain: bool = False
) -> Floats:
    """Give the margin of each place over its best station: (3, places), -100 dB where it is no better.

    ``budget_db`` (3, stations): what a link from there may lose before its margin is 0; ``route_db``: the
    margin of the station's own route, minus infinity where it does not pass on. The worse of the two
    counts. Exact for the losses of `losses_across_db`.
    """
    work = None if plain else kernels("across_kernel")
    out = np.full((3, len(places)), HOPELESS_DB)
    if work:
        work.carried(
            *_arrays(field, places), field.open_db, field.slope_db, field.longest_mm, budget_db, route_db, out
        )
        return out
    for rows, station, losses in _plain(field, places):
        link = np.minimum(budget_db[:, [station]] - losses, route_db[:, [station]])
        out[:, rows] = np.maximum(out[:, rows], link)
    return out


def _plain(field: Field, places: Places) -> Iterator[tuple[Ints, int, Floats]]:
    """Rows of places, a station, and their losses, by the very search of `find_paths`."""
    g, many = field.ground, len(field.ground.x)
    wide = _with_places(g, places)
    for begin in range(0, len(places), BATCH_PAIRS):
        numbers = np.arange(begin, min(begin + BATCH_PAIRS, len(places)))
        for station in range(many):
            first, second, distance, rows, walls = sight_lines(
                wide, np.array([station]), many + numbers, longest_mm=field.longest_mm
            )
            batch = Batch(wide, first, second, np.maximum(distance, 1.0), rows, walls)
            through = np.zeros((3, len(first)))
            for at, surface, cosine in batch.passed():
                for k, lost in enumerate(slant_losses_db(field.table, surface, cosine)):
                    through[k] += np.bincount(at, weights=lost, minlength=len(first))
            far = np.log10(np.maximum(distance, NEAREST_MM) / 1000)
            open_db = field.open_db[:, None] + field.slope_db[:, None] * far
            yield second - many, station, through + open_db


def _with_places(ground: Ground, places: Places) -> Ground:
    """The ground with the places as sites behind its stations; none of them sits in a wall."""
    n = len(places)

    def joined(one: Ints, other: Ints | int) -> Ints:
        out: Ints = np.concatenate([one, np.broadcast_to(np.asarray(other, np.int64), (n,))])
        return out

    s = ground.sites
    sites = replace(
        s,
        places=(*s.places, *[""] * n),
        x_mm=joined(s.x_mm, places.x_mm),
        y_mm=joined(s.y_mm, places.y_mm),
        z_mm=joined(s.z_mm, places.z_mm),
        level=joined(s.level, places.level),
        room=joined(s.room, places.room),
    )
    return replace(
        ground,
        sites=sites,
        x=joined(ground.x, places.x_mm),
        y=joined(ground.y, places.y_mm),
        own=joined(ground.own, -1),
        own_surface=joined(ground.own_surface, -1),
    )


def _arrays(field: Field, places: Places) -> tuple[Any, ...]:
    """What the kernels take of both, by place."""
    g = field.ground
    n = len(places)
    at = np.column_stack(
        [places.x_mm, places.y_mm, np.full(n, places.z_mm), np.full(n, places.level), places.room]
    ).astype(np.int64)
    s, w, o = g.sites, g.walls, g.walls.openings
    return (
        at,
        (g.x, g.y, s.z_mm, s.level, s.room, g.own, g.own_surface),
        (w.lines.x1, w.lines.y1, w.lines.x2, w.lines.y2, w.level),
        lengths_mm(w.lines),
        (o.near_mm, o.far_mm, o.foot_mm, o.head_mm, o.surface),
        (g.foot, g.floors, g.bare, g.open_plan),
        field.table,
        np.array(ANGLES_DEG),
    )
