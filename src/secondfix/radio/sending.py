"""How long one frame takes over one link, for whoever adds up commands."""

from collections.abc import Callable

from secondfix.radio import g9959, ieee802154
from secondfix.radio.g9959 import PLANS, Rate
from secondfix.terms import Protocol, RadioRegion

Three = tuple[float, float, float]

# Around what a frame carries: control 2, sequence 1, PAN 2, addresses 2 + 2, check 2 (IEEE 802.15.4-2006
# 7.2, from memory); Thread secures this layer too: 6 of header and a code of 4 (from memory).
_MAC_OCTETS = {Protocol.ZIGBEE: 11, Protocol.MATTER_THREAD: 21}
_G9959_TURNAROUND_MS = 1.0  # at most, from memory


def sending(region: RadioRegion | None) -> Callable[[Protocol, int, bool], Three]:
    """Give the function of protocol, octets carried and acknowledged: (low, value, high) in ms.

    Octets are what the MAC frame carries, within what one frame can (ValueError). On a quiet channel, first
    try. Zigbee and Thread: mean back-off, IEEE 802.15.4-2006 as `ieee802154` says; a broadcast waits for no
    acknowledgement. Z-Wave: ITU-T G.9959 as `g9959` says, 100 kbit/s, at the high end 40 kbit/s where the
    region may have it. Leaves out retries, a busy channel, the wake-up of sleepers.
    """

    def one_link(protocol: Protocol, octets: int, acknowledged: bool) -> Three:
        if protocol is Protocol.ZWAVE:
            return _g9959_ms(region, octets, acknowledged)
        mean = _ieee802154_ms(octets + _MAC_OCTETS[protocol], acknowledged)
        return mean, mean, mean

    return one_link


def _ieee802154_ms(psdu_octets: int, acknowledged: bool) -> float:
    mean_us = ieee802154.unicast_us(psdu_octets=psdu_octets).mean_us
    if not acknowledged:
        mean_us -= ieee802154.TURNAROUND_US + ieee802154.airtime_us(psdu_octets=ieee802154.ACK_OCTETS)
    return mean_us / 1000


def _g9959_ms(region: RadioRegion | None, octets: int, acknowledged: bool) -> Three:
    def at(rate: Rate, three_channels: bool) -> float:
        def frame_ms(payload: int) -> float:
            frame = g9959.mpdu_octets(rate=rate, payload_octets=payload, three_channels=three_channels)
            return g9959.airtime_ms(rate=rate, frame_octets=frame, three_channels=three_channels)

        return frame_ms(octets) + (_G9959_TURNAROUND_MS + frame_ms(0) if acknowledged else 0.0)

    if region is None:
        return at(Rate.R3, True), at(Rate.R3, False), at(Rate.R2, False)
    if PLANS[region].slow_mhz is None:
        return at(Rate.R3, True), at(Rate.R3, True), at(Rate.R3, True)
    return at(Rate.R3, False), at(Rate.R3, False), at(Rate.R2, False)
