"""IEEE 802.15.4 at 2.4 GHz (O-QPSK): channels, errors and time in the air. Zigbee and Thread use it.

Figures come from IEEE 802.15.4-2006 through secondary sources (an open network simulator that cites
the clauses); the standard itself was not at hand.
"""

import math
from dataclasses import dataclass

OCTET_US = 32
SYMBOL_US = 16
BACKOFF_US = 20 * SYMBOL_US  # aUnitBackoffPeriod
CCA_US = 8 * SYMBOL_US
TURNAROUND_US = 12 * SYMBOL_US
ACK_WAIT_US = 54 * SYMBOL_US
HEADER_OCTETS = 6  # preamble 4, start of frame 1, length 1
ACK_OCTETS = 5
LONGEST_PSDU_OCTETS = 127
LEAST_BACKOFF_EXPONENT = 3  # macMinBE
MOST_BACKOFF_EXPONENT = 5  # macMaxBE
BACKOFFS_BEFORE_FAILURE = 5  # the first and macMaxCSMABackoffs = 4 more
NOISE_BANDWIDTH_HZ = 2e6
REQUIRED_SENSITIVITY_DBM = -85.0  # at 1 % packet errors, 20 octets: IEEE 802.15.4-2006 6.1.7


@dataclass(frozen=True, slots=True)
class Span:
    """Least, mean and greatest time in microseconds."""

    least_us: float
    mean_us: float
    most_us: float


def channel_mhz(channel: int) -> int:
    """Give the centre of channel 11 to 26, 2405 + 5(k − 11) MHz. ValueError outside.

    Source: IEEE 802.15.4-2006 6.1.2 (from memory), the formula secondary.
    """
    if not 11 <= channel <= 26:
        raise ValueError(f"a channel at 2.4 GHz is 11 to 26, not {channel}")
    return 2405 + 5 * (channel - 11)


def bit_error_rate(*, sinr_db: float) -> float:
    """Give the chance that one bit is wrong at a signal to noise and interference ratio in dB.

    Equation: (8/15)(1/16) Σ_{k=2..16} (−1)^k C(16,k) exp(20·SINR(1/k − 1)), SINR as a ratio. Range: any;
    above about 12 dB the result is 0 to all purposes. Source: IEEE 802.15.4-2006 E.4.1.7 (secondary).
    Leaves out: fading during the packet, the receiver's own losses (they belong in its sensitivity).
    """
    ratio = 10 ** (sinr_db / 10)
    terms = ((-1) ** k * math.comb(16, k) * math.exp(20 * ratio * (1 / k - 1)) for k in range(2, 17))
    return min(max(math.fsum(terms) * 8 / 15 / 16, 0.0), 0.5)


def packet_error_rate(*, sinr_db: float, octets: int) -> float:
    """Give the chance that a packet of 1 to 127 octets has an error, 1 − (1 − Pb)^{8L}.

    ValueError for other lengths. Source and omissions as `bit_error_rate`; the 6 octets ahead of the
    PSDU are not counted (they move the curve by less than 0.02 dB, computed).
    """
    if not 1 <= octets <= LONGEST_PSDU_OCTETS:
        raise ValueError(f"a packet has 1 to {LONGEST_PSDU_OCTETS} octets, not {octets}")
    return -math.expm1(8 * octets * math.log1p(-bit_error_rate(sinr_db=sinr_db)))


def noise_floor_dbm(*, noise_figure_db: float) -> float:
    """Give kTB over 2 MHz at 290 K plus the receiver's noise figure, in dBm (textbook; figures computed)."""
    return 10 * math.log10(1.380_649e-23 * 290 * NOISE_BANDWIDTH_HZ * 1000) + noise_figure_db


def airtime_us(*, psdu_octets: int) -> int:
    """Give the time in the air of one packet, (6 + PSDU) × 32 µs. ValueError beyond 127 octets.

    Source: IEEE 802.15.4-2006 6.3, Tables 19 and 20 (secondary).
    """
    if not 0 <= psdu_octets <= LONGEST_PSDU_OCTETS:
        raise ValueError(f"a packet has at most {LONGEST_PSDU_OCTETS} octets, not {psdu_octets}")
    return (HEADER_OCTETS + psdu_octets) * OCTET_US


def unicast_us(*, psdu_octets: int) -> Span:
    """Give the time of one packet with its acknowledgement, first try on a quiet channel.

    Equation: backoff (0 to 7 periods of 320 µs) + clear channel assessment 128 + turnaround 192 +
    airtime + turnaround 192 + acknowledgement 352. Source: IEEE 802.15.4-2006 7.5.1.4 defaults
    (secondary). Leaves out: spacing between packets, the receiver's own delay.
    """
    fixed = CCA_US + 2 * TURNAROUND_US + airtime_us(psdu_octets=psdu_octets)
    fixed += airtime_us(psdu_octets=ACK_OCTETS)
    most = ((1 << LEAST_BACKOFF_EXPONENT) - 1) * BACKOFF_US
    return Span(fixed, fixed + most / 2, fixed + most)


def channel_never_clear_us() -> Span:
    """Give the time until a sender gives up because the channel was busy each time it listened.

    Five backoffs with exponents 3, 4, 5, 5, 5. Source as `unicast_us`.
    """
    exponents = (
        min(LEAST_BACKOFF_EXPONENT + tries, MOST_BACKOFF_EXPONENT) for tries in range(BACKOFFS_BEFORE_FAILURE)
    )
    waited = sum((1 << exponent) - 1 for exponent in exponents) * BACKOFF_US
    listened = BACKOFFS_BEFORE_FAILURE * CCA_US
    return Span(listened, listened + waited / 2, listened + waited)


def never_acknowledged_us(*, psdu_octets: int, tries: int = 4) -> float:
    """Give the mean time spent on a packet that no one acknowledges (4 tries: macMaxFrameRetries 3).

    Source as `unicast_us`; each try waits 54 symbols for the acknowledgement.
    """
    backoff = ((1 << LEAST_BACKOFF_EXPONENT) - 1) * BACKOFF_US / 2
    sent = CCA_US + TURNAROUND_US + airtime_us(psdu_octets=psdu_octets)
    return tries * (backoff + sent + ACK_WAIT_US)
