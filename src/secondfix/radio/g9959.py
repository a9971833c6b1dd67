"""ITU-T G.9959, which Z-Wave uses: rates, time in the air, frequencies by region.

Read in secondary sources only (open decoders, web texts); where a figure is from memory it says so.
"""

from dataclasses import dataclass
from enum import StrEnum

from secondfix.terms import RadioRegion

MOST_REPEATERS = 4  # so a route has at most five links: web texts (secondary) and from memory


class Rate(StrEnum):
    """The three rates: R1 9.6, R2 40, R3 100 kbit/s."""

    R1 = "R1"
    R2 = "R2"
    R3 = "R3"


@dataclass(frozen=True, slots=True)
class _Layout:
    bits_per_ms: float
    preamble_octets: int
    overhead_octets: int  # home 4, source 1, frame control 2, length 1, destination 1, check 1 or 2
    end_octets: int
    longest_payload_octets: int


_LAYOUTS = {
    Rate.R1: _Layout(9.6, 10, 10, 1, 54),
    Rate.R2: _Layout(40.0, 10, 10, 0, 54),
    Rate.R3: _Layout(100.0, 40, 11, 0, 158),
}
# Three channels, R3 only: a sequence number and a shorter preamble.
_THREE_CHANNELS = _Layout(100.0, 24, 12, 0, 158)

SENSITIVITY_DBM = {Rate.R1: -95.0, Rate.R2: -92.0, Rate.R3: -89.0}  # from memory, unverified


def _layout(rate: Rate, three_channels: bool) -> _Layout:
    if three_channels and rate is not Rate.R3:
        raise ValueError("the plan of three channels has rate R3 only")
    return _THREE_CHANNELS if three_channels else _LAYOUTS[rate]


def mpdu_octets(*, rate: Rate, payload_octets: int, three_channels: bool = False) -> int:
    """Give the octets of a whole MAC frame for a payload of 0 (an acknowledgement) to 54, at R3 158.

    ValueError outside. Source: ITU-T G.9959 frame layout as an open capture format shows it (secondary).
    Leaves out: the routing header of a frame that repeaters carry.
    """
    layout = _layout(rate, three_channels)
    if not 0 <= payload_octets <= layout.longest_payload_octets:
        raise ValueError(f"{rate} carries 0 to {layout.longest_payload_octets} octets, not {payload_octets}")
    return layout.overhead_octets + payload_octets


def airtime_ms(*, rate: Rate, frame_octets: int, three_channels: bool = False) -> float:
    """Give the time in the air of a MAC frame, in ms: (preamble + start 1 + frame + end) × 8 / rate.

    `frame_octets` as `mpdu_octets` gives them, at most 64 at R1 and R2 and 170 at R3. ValueError
    outside. Source: ITU-T G.9959 Table 7-10 for the preambles of R1 and R2 (secondary); R3 preamble and
    the end header of R1 from memory. Leaves out: acknowledgement, waiting for the channel.
    """
    layout = _layout(rate, three_channels)
    longest = 170 if rate is Rate.R3 else 64
    if not layout.overhead_octets <= frame_octets <= longest:
        raise ValueError(f"a frame at {rate} has {layout.overhead_octets} to {longest} octets")
    octets = layout.preamble_octets + 1 + frame_octets + layout.end_octets
    return octets * 8 / layout.bits_per_ms


@dataclass(frozen=True, slots=True)
class Plan:
    """Frequencies of one region in MHz: `fast` for R3, `slow` for R1 and R2 (None: no such rate there)."""

    fast_mhz: tuple[float, ...]
    slow_mhz: float | None
    source: str


_READ = "web texts (secondary)"
_PART = "R1 and R2 in web texts (secondary), R3 from memory"
_MEMORY = "from memory"

PLANS: dict[RadioRegion, Plan] = {
    RadioRegion.EU: Plan((869.85,), 868.40, _READ),
    RadioRegion.US: Plan((916.00,), 908.40, _PART),
    RadioRegion.ANZ: Plan((919.80,), 921.40, _READ),
    RadioRegion.CN: Plan((868.40,), 868.40, _READ),
    RadioRegion.HK: Plan((919.80,), 919.80, _READ),
    RadioRegion.IN: Plan((865.20,), 865.20, _PART),
    RadioRegion.IL: Plan((916.00,), 916.00, _MEMORY),
    RadioRegion.JP: Plan((922.50, 923.90, 926.30), None, _MEMORY),
    RadioRegion.KR: Plan((920.90, 921.70, 923.10), None, _MEMORY),
}
