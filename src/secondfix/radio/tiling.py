"""The search on the plan, tile by tile: which sites are near enough, and which walls lie between."""

from collections.abc import Iterator

import numpy as np

from secondfix.radio.crossing import Floats, Ints, Points, crossings
from secondfix.radio.ground import Ground


def tile_pairs(ground: Ground, *, side_mm: int) -> Iterator[tuple[Ints, Ints]]:
    """Sites of every two tiles near enough, each two once; the same tile twice stands for its own pairs.

    A tile is half the longest link wide, so sites three tiles apart are farther from each other than that.
    """
    cells: dict[tuple[int, int, int], list[int]] = {}
    level, x, y = ground.sites.level, ground.x // side_mm, ground.y // side_mm
    for n, cell in enumerate(zip(level.tolist(), x.tolist(), y.tolist(), strict=True)):
        cells.setdefault(cell, []).append(n)
    members = {cell: np.array(numbers, np.int64) for cell, numbers in cells.items()}
    steps = range(-2, 3)
    for cell, here in members.items():
        for other_level in range(len(ground.foot)):
            for column in steps:
                for row in steps:
                    other = (other_level, cell[1] + column, cell[2] + row)
                    if other >= cell and other in members:
                        yield here, members[other]


def sight_lines(
    ground: Ground, a: Ints, b: Ints, *, longest_mm: int
) -> tuple[Ints, Ints, Floats, Ints, Ints]:
    """Pairs between two tiles within ``longest_mm`` (lower number first), and the walls they cross.

    First and second site, their distance in space, then rows of pairs and numbers of walls that cross on
    the plan, at whatever height.
    """
    ia, ib = (grid.ravel() for grid in np.meshgrid(np.arange(len(a)), np.arange(len(b)), indexing="ij"))
    if a is b:
        ia, ib = ia[ia <= ib], ib[ia <= ib]
    first, second = a[ia], b[ib]
    dx, dy = ground.x[first] - ground.x[second], ground.y[first] - ground.y[second]
    dz = ground.sites.z_mm[first] - ground.sites.z_mm[second]
    square = dx * dx + dy * dy + dz * dz
    near = square <= longest_mm**2
    ia, ib, first, second = ia[near], ib[near], first[near], second[near]
    walls = _corridor(ground, a, b)
    rows, columns = crossings(
        Points(ground.x[a], ground.y[a]),
        Points(ground.x[b], ground.y[b]),
        (ia, ib),
        ground.walls.lines.take(walls),
    )
    distance = np.sqrt(square[near].astype(np.float64))
    return np.minimum(first, second), np.maximum(first, second), distance, rows, walls[columns]


def _corridor(ground: Ground, a: Ints, b: Ints) -> Ints:
    """Numbers of walls that may lie between the two tiles."""
    both = np.concatenate([a, b])
    x, y = ground.x[both], ground.y[both]
    low, high = sorted((int(ground.sites.level[a[0]]), int(ground.sites.level[b[0]])))
    box = (int(x.min()), int(y.min()), int(x.max()), int(y.max()))
    near = ground.tiles.near(box, range(low, high + 1))
    ax, ay = float(ground.x[a].mean()), float(ground.y[a].mean())
    nx, ny = ay - float(ground.y[b].mean()), float(ground.x[b].mean()) - ax
    across = x * nx + y * ny
    lines = ground.walls.lines.take(near)
    one, two = lines.x1 * nx + lines.y1 * ny, lines.x2 * nx + lines.y2 * ny
    # A millimetre aside for rounding: this only spares work, the exact test comes after.
    slack = np.hypot(nx, ny)
    beside = (np.maximum(one, two) < across.min() - slack) | (np.minimum(one, two) > across.max() + slack)
    kept: Ints = near[~beside]
    return kept
