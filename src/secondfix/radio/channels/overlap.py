"""How much of what others send a receiver at 2.4 GHz takes in, by the distance of the two centres."""

from functools import cache

import numpy as np

from secondfix.radio.channels.heard import Sends, Transmitter
from secondfix.radio.crossing import Floats
from secondfix.radio.ieee802154 import channel_mhz

MESH_CHANNELS = tuple(range(11, 27))
_HALF_MHZ = 1.0  # of a channel of IEEE 802.15.4: 99.5 % of its power lies in 2 MHz (secondary)
_ADJACENT_TO_MHZ = 7.5  # half way between the channels 5 and 10 MHz away: engineering judgement, not sourced
_STEP_MHZ = 0.02
_REACH_MHZ = 100.0

# Offset from the centre in MHz, dB below the flat part. OFDM 20 MHz, IEEE 802.11 (from memory); DSSS of
# 22 MHz, IEEE 802.11b (from memory); OFDM 40 MHz, IEEE 802.11n (from memory).
MASKS: dict[int, tuple[tuple[float, float], ...]] = {
    20: ((0, 0), (9, 0), (11, -20), (20, -28), (30, -40)),
    22: ((0, 0), (11, 0), (11.02, -30), (22, -30), (22.02, -50)),
    40: ((0, 0), (19, 0), (21, -20), (40, -28), (60, -45)),
    2: ((0, 0), (1, 0), (1.02, -200)),
}


def centre_mhz(one: Transmitter) -> float:
    """Give the middle of what a transmitter occupies, in MHz. ValueError for a channel that is none.

    Equations: IEEE 802.15.4 as `channel_mhz`; IEEE 802.11 2407 + 5n MHz, channel 14 at 2484 (from memory);
    40 MHz wide: half way between the two channels.
    """
    if one.kind is Sends.MESH:
        return float(channel_mhz(one.channel))
    both = (one.channel, one.channel if one.second_channel is None else one.second_channel)
    if not all(1 <= n <= 14 for n in both):
        raise ValueError(f"a wireless LAN at 2.4 GHz is on channel 1 to 14, not {both}")
    return sum(2484.0 if n == 14 else 2407.0 + 5 * n for n in both) / 2


@cache
def _spectrum(width_mhz: int) -> tuple[Floats, Floats]:
    """Offsets from the centre and the share of the power at each, 1 in all."""
    at = np.arange(-_REACH_MHZ, _REACH_MHZ, _STEP_MHZ) + _STEP_MHZ / 2
    mask = np.array(MASKS[width_mhz])
    power = 10 ** (np.interp(np.abs(at), mask[:, 0], mask[:, 1]) / 10)
    return at, power / power.sum()


@cache
def mask_share_db(*, offset_mhz: float, width_mhz: int) -> float:
    """Give the share of a transmitter's power that falls into a receiver's own 2 MHz, in dB below 0.

    Equation: ∫ over ±1 MHz about the offset, divided by ∫ over all, of the transmit mask (``MASKS``), so an
    upper bound. Range: offsets to 99 MHz, widths 2, 20, 22 and 40 MHz (KeyError for others). Source: IEEE
    802.11 masks (from memory). Leaves out: the receiver's own filter (`taken_in_db`).
    """
    at, power = _spectrum(width_mhz)
    return float(10 * np.log10(max(power[np.abs(at - offset_mhz) < _HALF_MHZ].sum(), 1e-30)))


@cache
def taken_in_db(*, offset_mhz: float, width_mhz: int, adjacent_db: float, alternate_db: float) -> float:
    """Give the share of a transmitter's power that disturbs a receiver as if it fell into its channel, in dB.

    Equation: as `mask_share_db`, and beside it what the receiver's filter lets through of the rest:
    ``adjacent_db`` less from 1 to 7.5 MHz off its centre, ``alternate_db`` less farther out. Source: IEEE
    802.15.4-2006 6.5.3.4 names the two (from memory); where one turns into the other is engineering
    judgement, not sourced. Leaves out: a receiver driven so hard that it hears nothing at all.
    """
    at, power = _spectrum(width_mhz)
    off = np.abs(at - offset_mhz)
    filtered = np.where(off < _ADJACENT_TO_MHZ, 10 ** (-adjacent_db / 10), 10 ** (-alternate_db / 10))
    return float(10 * np.log10(np.sum(power * np.where(off < _HALF_MHZ, 1.0, filtered))))


def is_clear(channel: int, one: Transmitter) -> bool:
    """Tell whether a channel of IEEE 802.15.4 lies outside what a transmitter occupies.

    From 12 MHz between centres for a wireless LAN (half of 22 MHz, and half of 2), 21 MHz where it is 40 MHz
    wide; from the next channel for a mesh. Source: geometry; it gives the channels that the coexistence annex
    of IEEE 802.15.4 recommends (from memory).
    """
    apart = abs(channel_mhz(channel) - centre_mhz(one))
    if one.kind is Sends.MESH:
        return apart > 0
    return apart >= max(one.width_mhz, 22) / 2 + _HALF_MHZ
