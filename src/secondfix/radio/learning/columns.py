"""What the loss of each link is made of: a column for each thing that may be otherwise than computed."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.stations import Station
from secondfix.radio.surfaces import NOT_DRAWN_DB, Surface
from secondfix.terms import LayerMaterial

NINETY = 1.644854  # spreads of a normal within which nine in ten lie, on either side
# The same for a house that is, one time in five, three times as wide: 0.8 Φ(z) + 0.2 Φ(z/3) = 0.95.
WIDE_NINETY = 2.371759
FROM_M = 5.0  # the distance at which the term of distance is nothing
BLANK_MOST_DB = 60.0  # what nobody surveyed or measured is drawn as if it took no more than this
LEARNED_MOST_DB = 40.0
SURROUNDINGS = {
    "radio_plastic_box_db": "a plastic box",
    "radio_metal_box_db": "a metal box",
    "radio_luminaire_db": "a luminaire",
}


@dataclass(frozen=True, slots=True)
class Column:
    """One thing: its standard deviation before anything is measured (times the spread if ``with_spread``).

    Told to people as ``middle + scale × weight`` in ``unit`` where ``words`` say what it is.
    """

    name: str
    sd: float
    with_spread: bool = False
    words: str = ""
    unit: str = "dB"
    middle: float = 0.0
    scale: float = 1.0


@dataclass(slots=True)
class Columns:
    """The columns of one band, numbered as they are first asked for."""

    assumptions: Assumptions
    numbers: dict[str, int] = field(default_factory=dict)
    all: list[Column] = field(default_factory=list)

    def number(self, column: Column) -> int:
        """The number of a column, or −1 where nothing about it is uncertain."""
        if column.sd <= 0:
            return -1
        if column.name not in self.numbers:
            self.numbers[column.name] = len(self.all)
            self.all.append(column)
        return self.numbers[column.name]

    def sd(self, name: str) -> float:
        """The standard deviation of an assumption whose range holds nine in ten."""
        low, _, high = self.assumptions.span(name)
        return (high - low) / (2 * WIDE_NINETY)

    def house_offset(self) -> int:
        """All links of the house."""
        name = "radio_house_offset_db"
        middle = float(self.assumptions.value(name))
        words = "all links lose more than computed by"
        return self.number(Column("offset", self.sd(name), words=words, middle=middle))

    def distance(self) -> int:
        """The exponent of distance, in dB for each factor of ten."""
        name = "radio_distance_tenths"
        middle = self.assumptions.value(name) / 10
        words = "exponent of distance beside the walls"
        column = Column("distance", self.sd(name), words=words, unit="", middle=middle, scale=0.1)
        return self.number(column)

    def material(self, surface: Surface) -> int:
        """Walls, floors and leaves of one material; its share is told in percent."""
        name, words = "radio_wall_scale_pct", main_material(surface).value.replace("_", " ")
        middle = float(self.assumptions.value(name))
        words = f"what {words} takes, as a share of what is computed"
        return self.number(
            Column(f"material:{main_material(surface)}", self.sd(name), words=words, unit="%", middle=middle)
        )

    def surroundings(self, name: str) -> int:
        """What one kind of box or luminaire takes."""
        middle = float(self.assumptions.value(name))
        words = f"what {SURROUNDINGS[name]} takes"
        return self.number(Column(name, self.sd(name), words=words, middle=middle))

    def power(self) -> int:
        """Half of what is not known of powers that no sheet states: alike in the whole house."""
        name = "radio_transmit_power_dbm"
        middle, words = float(self.assumptions.value(name)), "power of devices whose sheet states none"
        return self.number(Column(name, self.sd(name) / 2**0.5, words=words, unit="dBm", middle=middle))

    def own_power(self, station: str) -> int:
        """The other half: each device's own."""
        return self.number(Column(f"power:{station}", self.sd("radio_transmit_power_dbm") / 2**0.5))

    def around(self, station: str, shared: float) -> int:
        """What the surroundings of one device add to all its links beside what is computed."""
        return self.number(Column(f"around:{station}", (shared / 2) ** 0.5, with_spread=True))

    def blank(self, name: str) -> int:
        """What nobody surveyed, in standard deviations from the middle of its readings."""
        return self.number(Column(f"blank:{name}", 1.0))


@dataclass(frozen=True, slots=True, eq=False)
class Entries:
    """A sparse table as (row, column, value); several of one row and column add up."""

    row: Ints
    column: Ints
    value: Floats


class Filling:
    """Collects the entries of a table; a column of −1 is left out."""

    def __init__(self) -> None:
        self._parts: list[tuple[Ints, Ints, Floats]] = []

    def add(self, rows: Ints, columns: Ints | int, values: Floats | float) -> None:
        """Put values at rows and columns, each alone or one for all."""
        column = np.broadcast_to(np.asarray(columns, np.int64), rows.shape)
        value = np.broadcast_to(np.asarray(values, np.float64), rows.shape)
        kept = (column >= 0) & (value != 0)
        self._parts.append((rows[kept], column[kept], value[kept]))

    def entries(self) -> Entries:
        """All of them."""
        rows = [p[0] for p in self._parts] or [np.zeros(0, np.int64)]
        columns = [p[1] for p in self._parts] or [np.zeros(0, np.int64)]
        values = [p[2] for p in self._parts] or [np.zeros(0)]
        return Entries(np.concatenate(rows), np.concatenate(columns), np.concatenate(values))


def main_material(surface: Surface) -> LayerMaterial:
    """The material of its thickest layer that is not air (of the assumed reading)."""
    layers = [s for s in surface.readings[1].layers if s.material is not LayerMaterial.AIR]
    return max(layers, key=lambda s: s.thickness_mm).material if layers else LayerMaterial.AIR


def blank_station(station: Station) -> bool:
    """Whether nobody knows what surrounds a station, or it is closed in metal."""
    return station.loss_db[1] >= NOT_DRAWN_DB or len(surrounding_of(station)) > 1


def surrounding_of(station: Station) -> Sequence[str]:
    """The assumptions that stand for what surrounds a station."""
    return [name for name in station.assumptions if name in SURROUNDINGS]


def unstated_power(station: Station) -> bool:
    """Whether its sheet states no transmit power."""
    return station.power_dbm[0] != station.power_dbm[2]


def readings_of(stations: Sequence[Station], name: str) -> Floats:
    """One property of all stations, three readings a row."""
    return np.array([getattr(s, name) for s in stations], np.float64).reshape(-1, 3)


def mids(light: Floats, heavy: Floats) -> tuple[Floats, Floats]:
    """Middle and standard deviation of what may be anything between two readings, nine times in ten.

    The middle lies at a quarter, for what nobody surveyed is more often light than heavy, and no more than
    40 dB count: engineering judgement, not sourced.
    """
    top = np.minimum(heavy, np.maximum(LEARNED_MOST_DB, light))
    return light + (top - light) / 4, (top - light) / (2 * WIDE_NINETY)


def told(columns: Sequence[Column]) -> Iterator[tuple[int, Column]]:
    """The columns that people are told of, with their numbers."""
    return ((n, column) for n, column in enumerate(columns) if column.words)
