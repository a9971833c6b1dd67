"""Invented houses with invented truth: what every link of them would read, for whoever learns from a few."""

from __future__ import annotations

import itertools
import json
import random
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from secondfix.assumptions import Assumptions, default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.radio import Measured, Reach, reach
from secondfix.radio.learning.columns import Columns
from secondfix.radio.learning.making import Crossed, made
from secondfix.radio.learning.spreads import before
from secondfix.radio.losses import BAND_2400_MHZ, crossing_losses_db
from secondfix.radio.openspace import free_space_loss_db

Floats = NDArray[np.float64]
DEFAULTS = default_assumptions()
SHARED = 0.3
WALLS = (
    (("brick", 100),),
    (("brick", 200),),
    (("plasterboard", 12), ("air", 75), ("plasterboard", 12)),
    (("concrete", 120),),
)
FLOORS = ((("concrete", 160),), (("chipboard", 22), ("air", 200), ("plasterboard", 12)))
MODEL = "plimmet-osier-three@1"


@dataclass(frozen=True)
class Truth:
    """A house, what is computed of it, and of each link the level read at its ``b`` from its ``a``, in dBm.

    ``heard`` tells which levels lie above the receiver's sensitivity; ``computed`` the level as computed,
    ``away`` ten times the logarithm of the distance.
    """

    rows: Schedule
    answer: Reach
    level: Floats
    computed: Floats
    away: Floats
    parts: Floats
    heard: NDArray[np.bool_]

    def measured(self, links: NDArray[np.int64]) -> list[Measured]:
        """These links as somebody would write them down: whole decibels, or not heard."""
        of = self.answer.networks["N1"]
        ids = [s.id for s in of.stations]
        return [
            Measured(ids[of.a[n]], ids[of.b[n]], float(round(self.level[n])) if self.heard[n] else None)
            for n in links.tolist()
        ]


def plain_house(seed: int) -> dict[str, Any]:
    """A house of 16 to 40 devices on one or two storeys, rooms and walls at random."""
    r = random.Random(seed)
    storeys, columns, rows = r.choice((1, 2, 2)), r.randint(2, 4), r.randint(2, 3)
    xs = [0]
    for _ in range(columns):
        xs.append(xs[-1] + r.randrange(2600, 5400, 10))
    ys = [0]
    for _ in range(rows):
        ys.append(ys[-1] + r.randrange(2600, 5400, 10))
    floor = {"value": _layers(r.choice(FLOORS)), "known": "measured"}
    main, inner = r.choice(WALLS), r.choice(WALLS)
    house: dict[str, Any] = {
        "format": 1,
        "id": "0193c5d1-77aa-7b34-a1f0-3be0914c2d59",
        "name": "Pellow Bank",
        "radio_region": "eu",
        "storeys": {
            f"S{k}": {"name": f"Storey {k}", "level_mm": 2750 * k, "height_mm": 2450, "floor": floor}
            for k in range(storeys)
        },
        "rooms": {}, "walls": {}, "boxes": {}, "devices": {}, "places": {},
    }  # fmt: skip
    for k in range(storeys):
        for n, (x, x2) in enumerate(itertools.pairwise(xs)):
            for m, y in enumerate(ys):
                _wall(house, f"X{k}-{n}-{m}", f"S{k}", (x, y, x2, y), main if m in (0, rows) else inner)
            for m, (y, y2) in enumerate(itertools.pairwise(ys)):
                house["rooms"][f"R{k}-{n}-{m}"] = {
                    "name": f"Room {k}-{n}-{m}",
                    "storey": f"S{k}",
                    "outline_mm": [
                        [x + 60, y + 60],
                        [x2 - 60, y + 60],
                        [x2 - 60, y2 - 60],
                        [x + 60, y2 - 60],
                    ],
                }
        for n, x in enumerate(xs):
            for m, (y, y2) in enumerate(itertools.pairwise(ys)):
                _wall(house, f"Y{k}-{n}-{m}", f"S{k}", (x, y, x, y2), main if n in (0, columns) else inner)
    keys = sorted(house["rooms"])
    shell = r.choice(("plastic", "plastic", "metal"))
    for number in range(min(r.randint(16, 40), 3 * len(keys))):
        _device(house, r, number, keys[number % len(keys)], shell)
    x, y = house["rooms"][r.choice(keys)]["outline_mm"][0]
    room = next(key for key in keys if house["rooms"][key]["outline_mm"][0] == [x, y])
    house["places"]["P0"] = {
        "kind": "controller_spot", "name": "Shelf", "room": room,
        "position": {"x_mm": x + 900, "y_mm": y + 1100, "height_mm": 1700},
    }  # fmt: skip
    network = {"name": "House", "protocol": "zigbee", "controller_place": "P0"}
    house["networks"] = {"N1": network | {"transmit_power_dbm": 8, "sensitivity_dbm": -100}}
    return house


def _layers(layers: tuple[tuple[str, int], ...]) -> list[dict[str, Any]]:
    return [{"material": material, "thickness_mm": mm} for material, mm in layers]


def _wall(house: dict[str, Any], key: str, storey: str, ends: tuple[int, int, int, int], layers: Any) -> None:
    house["walls"][f"W{key}"] = {
        "storey": storey,
        "from_mm": [ends[0], ends[1]],
        "to_mm": [ends[2], ends[3]],
        "thickness_mm": sum(mm for _, mm in layers),
        "layers": {"value": _layers(layers), "known": "measured"},
    }


def _device(house: dict[str, Any], r: random.Random, number: int, room: str, shell: str) -> None:
    (x, y), _, (x2, y2), _ = house["rooms"][room]["outline_mm"]
    sure = {"known": "seen_open"}
    across = r.random() < 0.5
    house["boxes"][f"B{number}"] = {
        "room": room,
        "position": {
            "x_mm": r.randrange(x + 200, x2 - 200) if across else r.choice((x, x2)),
            "y_mm": r.choice((y, y2)) if across else r.randrange(y + 200, y2 - 200),
            "height_mm": r.choice((300, 1050, 1100)),
        },
        "mounts": {"1": {}},
        "gangs": {"1": {}, "2": {}, "3": {}},
        "shell": {"value": shell, **sure},
        "plate": {"value": "plastic", **sure},
        "finish": {"value": "plaster", **sure},
    }
    house["devices"][f"D{number}"] = {"model": MODEL, "network": "N1", "box": f"B{number}"}
    house["devices"][f"D{number}"] |= {"mounts": ["1"], "gangs": ["1", "2", "3"]}


def house_with_truth(seed: int, *, elsewhere: bool = False) -> Truth:
    """House number ``seed``. Its truth is drawn from the assumptions, or ``elsewhere``: by another law."""
    rows = _read(plain_house(seed))
    answer = reach(rows, DEFAULTS)
    links = answer.networks["N1"]
    power = np.array([s.power_dbm[1] for s in links.stations])[links.a]
    draw = np.random.default_rng([seed, 7])
    columns = Columns(DEFAULTS)
    paths = answer.paths
    open_db = free_space_loss_db(distance_m=1, frequency_mhz=BAND_2400_MHZ) + 20 * np.log10(paths.distance_m)
    crossed = Crossed(paths, crossing_losses_db(paths, (BAND_2400_MHZ,)), open_db)
    one = made("N1", links, crossed, columns, shared=SHARED)
    parts = np.zeros((len(links.a), len(columns.all)))
    np.add.at(parts, (one.parts.row, one.parts.column), one.parts.value)
    lost = (
        _elsewhere(answer, draw) if elsewhere else _as_assumed(one.known_db, parts, columns, DEFAULTS, draw)
    )
    level = power - lost
    house_wide = np.array([not c.with_spread for c in columns.all])
    away = 10 * np.log10(paths.distance_m[links.pair])
    return Truth(rows, answer, level, power - links.loss_db, away, parts[:, house_wide], level > -100)


def _read(plain: dict[str, Any]) -> Schedule:
    house = read_house(json.dumps(plain).encode(), where="bench", models=shipped_models())
    if not isinstance(house, House):
        raise RuntimeError(f"the house is unusable: {house[0]}")
    return schedule(house, house.models)


def _as_assumed(
    known_db: Floats, parts: Floats, columns: Columns, assumptions: Assumptions, draw: np.random.Generator
) -> Floats:
    """Loss of each link with everything drawn from the range of its assumption."""
    possible = before(assumptions)
    at = draw.choice(len(possible.spreads), p=possible.chances)
    spread, width = possible.spreads[at], possible.widths[at]
    sd = np.array([c.sd * (spread if c.with_spread else width) for c in columns.all])
    weights = sd * draw.standard_normal(len(sd))
    own = spread * np.sqrt(1 - SHARED) * draw.standard_normal(len(known_db))
    day = assumptions.value("radio_reading_db") * draw.standard_normal(len(known_db))
    out: Floats = known_db + parts @ weights + own + day
    return out


def _elsewhere(answer: Reach, draw: np.random.Generator) -> Floats:
    """Loss by a law of distance, every wall with a loss of its own, and devices that share less or more."""
    links, paths = answer.networks["N1"], answer.paths
    spread, shared = draw.uniform(4, 9), draw.uniform(0, 0.5)
    each = draw.gamma(2.0, draw.uniform(1.0, 3.0), len(paths.surfaces))
    walls = np.bincount(paths.at_pair, weights=each[paths.crossed], minlength=len(paths.first))[links.pair]
    away = 10 * draw.uniform(1.5, 2.6) * np.log10(paths.distance_m[links.pair])
    device = spread * np.sqrt(shared / 2) * draw.standard_normal(len(links.stations))
    around = device[links.a] + device[links.b]
    own = spread * np.sqrt(1 - shared) * draw.standard_t(6, len(links.a)) / np.sqrt(6 / 4)
    out: Floats = 40.2 + draw.normal(8, 6) + away + walls + around + own
    return out
