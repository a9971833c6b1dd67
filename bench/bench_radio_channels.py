"""Frames lost on every channel at 2.4 GHz, beside the same worked device by device and source by source."""

from __future__ import annotations

import math
import time
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from bench.figures import Pair, figure
from bench.manor import manor_rows
from secondfix.assumptions import default_assumptions
from secondfix.radio import Reach, Sends, Transmitter, channels_of, reach
from secondfix.radio.channels.disturbing import Disturbing, disturbing
from secondfix.radio.channels.overlap import MESH_CHANNELS
from secondfix.radio.ieee802154 import packet_error_rate
from secondfix.radio.links import Links
from secondfix.radio.packets.delivery import raised_db

NETWORK = "N1"
SAMPLED = 3  # devices of the baseline; its time is told for all
AT_SENSITIVITY_DB = 0.4035
HEARD = tuple(Transmitter(Sends.WIFI, 1 + 5 * n % 13, 20, -46 - 3 * n, 30 + 37 * n % 300) for n in range(8))
SHADOWS = [k / 4 for k in range(-16, 17)]  # spreads
WEIGHTS = [math.exp(-z * z / 2) for z in SHADOWS]


@dataclass(frozen=True)
class OneByOne:
    """The same by plain loops and the curve itself, at the assumed reading."""

    links: Links
    of: Disturbing
    spread_db: float

    def lost(self, way: Sequence[int]) -> list[float]:
        """The share lost on each channel along a route, from the device to the controller."""
        return [self._on(channel, way) for channel in MESH_CHANNELS]

    def _on(self, channel: int, way: Sequence[int]) -> float:
        among = self.of.on(channel, 1)
        raised = raised_db(among, np.array([s.sensitivity_dbm[1] for s in self.links.stations])).tolist()
        out = in_ = 1.0
        for below, above in pairwise(way):
            down, up = self._margins_db(above, below)
            out *= self._once(down, up, raised[below], raised[above], among.duty.tolist())
            in_ *= self._once(up, down, raised[above], raised[below], among.duty.tolist())
        return 1 - (out + in_) / 2

    def _margins_db(self, above: int, below: int) -> tuple[float, float]:
        ends = list(zip(self.links.a.tolist(), self.links.b.tolist(), strict=True))
        n = next(k for k, pair in enumerate(ends) if set(pair) == {above, below})
        both = float(self.links.margin_ab_db[n]), float(self.links.margin_ba_db[n])
        return both if ends[n][0] == above else both[::-1]

    def _once(
        self, there: float, here: float, at: Sequence[float], back: Sequence[float], duty: Sequence[float]
    ) -> float:
        total = 0.0
        for z, weight in zip(SHADOWS, WEIGHTS, strict=True):
            shadow = self.spread_db * z
            frame = through(there + shadow, at, duty, octets=20)
            total += weight * frame * through(here + shadow, back, duty, octets=5)
        return total / sum(WEIGHTS)


def through(above_db: float, raised: Sequence[float], duty: Sequence[float], *, octets: int) -> float:
    quiet = 1 - packet_error_rate(sinr_db=above_db + AT_SENSITIVITY_DB, octets=octets)
    out = quiet
    for db, share in zip(raised, duty, strict=True):
        if quiet > 0:
            met = 1 - packet_error_rate(sinr_db=above_db + AT_SENSITIVITY_DB - db, octets=octets)
            out *= (1 - share) + share * met / quiet
    return min(out, quiet)


def routes(answer: Reach, devices: Sequence[str]) -> list[list[int]]:
    number = {s.id: n for n, s in enumerate(answer.networks[NETWORK].stations)}
    by_id = {d.id: d for d in answer.devices}
    return [[number[d], *(number[r] for r in by_id[d].route), 0] for d in devices]


@figure(
    "frames lost on 16 channels in three readings, 150 places, eight transmitters heard, against loops over"
    f" devices, channels and sources at one reading ({SAMPLED} devices timed, told for all)",
    unit="s",
)
def _channels() -> Pair:
    rows, defaults = manor_rows(150, 2), default_assumptions()
    answer = reach(rows, defaults)
    began = time.perf_counter()
    found = channels_of(rows, defaults, answer, HEARD).networks[NETWORK]
    taken = time.perf_counter() - began
    devices = list(found.channels[0].devices)
    sampled = devices[:: len(devices) // SAMPLED][:SAMPLED]
    began = time.perf_counter()
    links = answer.networks[NETWORK]
    loops_over = OneByOne(links, disturbing(rows.house, defaults, HEARD, links.stations), answer.spread_db)
    plain = [loops_over.lost(way) for way in routes(answer, sampled)]
    loops = (time.perf_counter() - began) * len(devices) / len(sampled)
    ours = [[c.devices[d].assumed for c in found.channels] for d in sampled]
    if not np.allclose(plain, ours, atol=5e-3):
        raise RuntimeError("the two ways of counting lost frames differ")
    return taken, loops
