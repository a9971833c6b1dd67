"""What those heard put into each channel of a network, at each of its stations."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House
from secondfix.radio.channels.carrying import Carried, carried
from secondfix.radio.channels.heard import Transmitter
from secondfix.radio.channels.overlap import MESH_CHANNELS, centre_mhz, taken_in_db
from secondfix.radio.crossing import Floats
from secondfix.radio.ieee802154 import channel_mhz
from secondfix.radio.packets.interference import Interference
from secondfix.radio.stations import Station
from secondfix.terms import Protocol

READINGS = (0, 1, 2)  # most favourable, assumed, least favourable
ASSUMED = 1


@dataclass(frozen=True, slots=True, eq=False)
class Disturbing:
    """Those heard as they reach the stations of one network, in three readings.

    ``level_dbm`` (3, stations, sources): the whole power of each at the antenna, minus infinity where it
    does not stand for the station; ``duty`` (3, sources); ``share_db`` (3, channels, sources): what a
    receiver takes in of it on each channel 11 to 26.
    """

    level_dbm: Floats
    duty: Floats
    share_db: Floats

    def on(self, channel: int, reading: int) -> Interference:
        """The interference on one channel in one reading."""
        share = self.share_db[reading, MESH_CHANNELS.index(channel)]
        return Interference(self.level_dbm[reading] + share, self.duty[reading])


def disturbing(
    house: House, assumptions: Assumptions, heard: Sequence[Transmitter], stations: Sequence[Station]
) -> Disturbing:
    """Carry a survey to stations: levels of the nearest place surveyed, less what surrounds each device.

    Readings and spans as the assumptions of the air have them. Source: see `carried` and `taken_in_db`.
    """
    there = carried(house, heard, stations)
    return Disturbing(
        _levels_dbm(assumptions, heard, stations, there),
        _duties(assumptions, heard),
        _shares_db(assumptions, heard),
    )


def _levels_dbm(
    assumptions: Assumptions, heard: Sequence[Transmitter], stations: Sequence[Station], there: Carried
) -> Floats:
    level = np.array([one.level_dbm for one in heard], np.float64)
    around = np.array([s.loss_db for s in stations], np.float64).reshape(-1, 3)
    out = np.empty((3, len(stations), len(heard)))
    for reading, shift in zip(READINGS, assumptions.span("air_heard_db"), strict=True):
        at = level + np.where(there.own, 0.0, float(shift)) - around[:, reading, None]
        out[reading] = np.where(there.reaches, at, -np.inf)
    return out


def _duties(assumptions: Assumptions, heard: Sequence[Transmitter]) -> Floats:
    stood_for = [pct / 100 for pct in assumptions.span("air_duty_pct")]
    rows = [
        stood_for if one.duty_permille is None else [one.duty_permille / 1000] * len(READINGS)
        for one in heard
    ]
    return np.array(rows, np.float64).reshape(-1, 3).T


def _shares_db(assumptions: Assumptions, heard: Sequence[Transmitter]) -> Floats:
    adjacent, alternate = assumptions.span("air_adjacent_db"), assumptions.span("air_alternate_db")
    out = np.empty((3, len(MESH_CHANNELS), len(heard)))
    for reading in READINGS:
        for c, channel in enumerate(MESH_CHANNELS):
            for n, one in enumerate(heard):
                out[reading, c, n] = taken_in_db(
                    offset_mhz=channel_mhz(channel) - centre_mhz(one),
                    width_mhz=one.width_mhz,
                    adjacent_db=float(adjacent[2 - reading]),
                    alternate_db=float(alternate[2 - reading]),
                )
    return out


def interference_of(
    house: House, assumptions: Assumptions, heard: Sequence[Transmitter]
) -> Callable[[str, Sequence[Station]], Interference | None]:
    """Say, for `foresee`, what those heard send into the channel a network is on, at the assumed reading.

    None for a network whose channel is not stated, or has none to choose, and where nobody was heard.
    """

    def of(network_id: str, stations: Sequence[Station]) -> Interference | None:
        network = house.networks[network_id]
        if not heard or network.channel is None or network.protocol is Protocol.ZWAVE:
            return None
        return disturbing(house, assumptions, heard, stations).on(network.channel, ASSUMED)

    return of
