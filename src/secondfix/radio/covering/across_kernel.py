"""Loss of each path from a station to a place of a grid, compiled: exact in whole millimetres."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

from math import acos, degrees, log10, sqrt

import numpy as np

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.engine.compiling import kernel

Five = tuple[Ints, Ints, Ints, Ints, Ints]
Seven = tuple[Ints, Ints, Ints, Ints, Ints, Ints, Ints]


@kernel
def add(table: Floats, angles: Floats, surface: int, cosine: float, out: Floats) -> None:
    """Add what a surface takes at an angle, in all three readings; between two angles in a straight line."""
    angle = degrees(acos(min(max(cosine, 0.0), 1.0)))
    low = 0
    while low < len(angles) - 2 and angle >= angles[low + 1]:
        low += 1
    share = min((angle - angles[low]) / (angles[low + 1] - angles[low]), 1.0)
    for k in range(3):
        out[k] += table[k, surface, low] * (1 - share) + table[k, surface, low + 1] * share


@kernel
def met(openings: Five, wall: int, along_mm: float, z_mm: float) -> int:
    """The surface that a crossing meets: an opening of the wall, or the wall itself."""
    near, far, foot, head, surface = openings
    out = wall
    for k in range(near.shape[1]):
        inside = surface[wall, k] >= 0 and near[wall, k] <= along_mm < far[wall, k]
        if inside and foot[wall, k] <= z_mm < head[wall, k]:
            out = surface[wall, k]
    return out


@kernel
def lose(  # noqa: C901, PLR0912 - the rules of a crossing in one loop, as the compiler likes it
    at: Ints,
    station: int,
    stations: Seven,
    walls: Five,
    lengths: Floats,
    openings: Five,
    ground: tuple[Ints, Ints, Ints, Ints],
    table: Floats,
    angles: Floats,
    out: Floats,
) -> None:
    """Put into ``out`` what all surfaces take between a station and a place: x, y, z, level and room of it.

    The rules are those of `between.Batch` and `crossing.crossings`, one pair at a time.
    """
    x1, y1, x2, y2, wall_level = walls
    foot, floors, bare, open_plan = ground
    ax, ay, az = stations[0][station], stations[1][station], stations[2][station]
    level, own = stations[3][station], stations[5][station]
    bx, by, bz = at[0], at[1], at[2]
    low, high = min(level, at[3]), max(level, at[3])
    distance = max(sqrt(float((bx - ax) ** 2 + (by - ay) ** 2 + (bz - az) ** 2)), 1.0)
    left, right, under, over = min(ax, bx), max(ax, bx), min(ay, by), max(ay, by)
    backward = bx < ax or (bx == ax and by < ay)
    between = ax * by - ay * bx
    out[:] = 0.0
    parted = own >= 0
    for w in range(len(x1)):
        if max(x1[w], x2[w]) < left or min(x1[w], x2[w]) > right:
            continue
        if max(y1[w], y2[w]) < under or min(y1[w], y2[w]) > over or not low <= wall_level[w] <= high:
            continue
        dx, dy = x2[w] - x1[w], y2[w] - y1[w]
        a = dx * (ay - y1[w]) - dy * (ax - x1[w])
        b = dx * (by - y1[w]) - dy * (bx - x1[w])
        if (a > 0) == (b > 0):
            continue
        one = (bx * y1[w] - by * x1[w]) - (ax * y1[w] - ay * x1[w]) + between
        two = (bx * y2[w] - by * x2[w]) - (ax * y2[w] - ay * x2[w]) + between
        first, second = (-one > 0, -two > 0) if backward else (one > 0, two > 0)
        if first == second:
            continue
        parted = True
        if w == own:
            continue
        z = az + float(a) / float(a - b) * (bz - az)
        if low != high:
            if wall_level[w] > low and z < foot[wall_level[w]]:
                continue
            if wall_level[w] < high and z >= foot[wall_level[w] + 1]:
                continue
        along = float(one) / float(one - two) * lengths[w]
        add(table, angles, met(openings, w, along, z), abs(float(b - a)) / (lengths[w] * distance), out)
    if own >= 0:
        add(table, angles, stations[6][station], 1.0, out)
    if low == high and not parted and at[4] != stations[4][station] and bare[low] < 0:
        add(table, angles, open_plan[low], 1.0, out)
    rise = abs(float(az - bz)) / distance
    for n in range(low, high + 1):
        if n > low:
            add(table, angles, floors[n], rise, out)
        if bare[n] >= 0:
            add(table, angles, bare[n], 1.0, out)


@kernel
def apart(place: Ints, station: int, stations: Seven) -> tuple[int, float]:
    """How far apart: in mm², and as the logarithm of metres, 0.1 m at least."""
    dx, dy = place[0] - stations[0][station], place[1] - stations[1][station]
    square = dx * dx + dy * dy + (place[2] - stations[2][station]) ** 2
    return square, log10(max(sqrt(float(square)), 100.0) / 1000)


@kernel
def lost(
    places: Ints,
    stations: Seven,
    walls: Five,
    lengths: Floats,
    openings: Five,
    ground: tuple[Ints, Ints, Ints, Ints],
    table: Floats,
    angles: Floats,
    open_db: Floats,
    slope_db: Floats,
    longest_mm: int,
    out: Floats,
) -> None:
    """Fill ``out`` (3, places, stations) with whole losses in dB; infinity beyond the longest link."""
    one = np.zeros(3)
    for p in range(len(places)):
        for s in range(len(stations[0])):
            square, far = apart(places[p], s, stations)
            if square > longest_mm * longest_mm:
                out[:, p, s] = np.inf
                continue
            lose(places[p], s, stations, walls, lengths, openings, ground, table, angles, one)
            for k in range(3):
                out[k, p, s] = one[k] + (open_db[k] + slope_db[k] * far)


@kernel
def carried(
    places: Ints,
    stations: Seven,
    walls: Five,
    lengths: Floats,
    openings: Five,
    ground: tuple[Ints, Ints, Ints, Ints],
    table: Floats,
    angles: Floats,
    open_db: Floats,
    slope_db: Floats,
    longest_mm: int,
    budget_db: Floats,
    route_db: Floats,
    out: Floats,
) -> None:
    """Fill ``out`` (3, places) with the best over stations of the worse of link and route.

    A station whose open space alone already makes it no better than the best so far is not asked.
    """
    many = len(stations[0])
    one, bound, far = np.zeros(3), np.zeros((3, many)), np.zeros(many)
    for p in range(len(places)):
        for s in range(many):
            square, far[s] = apart(places[p], s, stations)
            for k in range(3):
                bound[k, s] = min(budget_db[k, s] - (open_db[k] + slope_db[k] * far[s]), route_db[k, s])
                if square > longest_mm * longest_mm:
                    bound[k, s] = -np.inf
        for s in np.argsort(-bound[1]):
            if bound[0, s] <= out[0, p] and bound[1, s] <= out[1, p] and bound[2, s] <= out[2, p]:
                continue
            lose(places[p], s, stations, walls, lengths, openings, ground, table, angles, one)
            for k in range(3):
                link = budget_db[k, s] - (one[k] + (open_db[k] + slope_db[k] * far[s]))
                out[k, p] = max(out[k, p], min(link, route_db[k, s]))
