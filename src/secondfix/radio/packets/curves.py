"""How often one frame comes through, by the margin above what the receiver needs: arrays of dB to chances."""

from math import comb
from typing import Literal

import numpy as np

from secondfix.radio.crossing import Floats
from secondfix.radio.g9959 import SENSITIVITY_DBM, Rate
from secondfix.terms import Protocol

Kind = Literal["command", "acknowledgement"]

# Octets that an error may spoil. IEEE 802.15.4: sensitivity is stated for 20 octets, an acknowledgement has
# 5 (secondary). G.9959: a MAC frame of 20, an acknowledgement without payload of 10 (computed).
_OCTETS: dict[tuple[bool, Kind], int] = {
    (False, "command"): 20, (False, "acknowledgement"): 5,
    (True, "command"): 20, (True, "acknowledgement"): 10,
}  # fmt: skip
_AT_SENSITIVITY = 0.01  # packet errors: IEEE 802.15.4-2006 6.1.7 (secondary); for G.9959 from memory
TRIES = {Protocol.ZWAVE: 3}  # aMacMaxFrameRetries 2, from memory
TRIES_802154 = 4  # macMaxFrameRetries 3, IEEE 802.15.4 (secondary)


def tries_of(protocol: Protocol) -> int:
    """How often a frame is sent in all before its sender gives up."""
    return TRIES.get(protocol, TRIES_802154)


def frame_success(above_db: Floats, *, protocol: Protocol, kind: Kind = "command") -> Floats:
    """Give the chance that one frame comes through ``above_db`` above the receiver's sensitivity, any shape.

    Equations: (1 − Pb)^{8L}; IEEE 802.15.4 at 2.4 GHz: Pb of E.4.1.7 (secondary), SINR 0.40 dB at the
    sensitivity (1 % of 20 octets lost, 6.1.7). G.9959: Pb = ½ exp(−Eb/2N0), non-coherent FSK (Proakis, from
    memory), 1 % of 20 octets lost at the sensitivity (from memory). Leaves out: fading within a frame,
    synchronisation.
    """
    narrow = protocol is Protocol.ZWAVE
    bits = 8 * _OCTETS[narrow, kind]
    ratio = 10 ** (np.clip(above_db, -60.0, 60.0) / 10)
    wrong = _fsk_wrong(ratio) if narrow else _oqpsk_wrong(ratio)
    out: Floats = np.exp(bits * np.log1p(-wrong))
    return out


def _fsk_wrong(ratio: Floats) -> Floats:
    # ½ exp(−Eb/2N0) = what spoils one in a hundred frames, at ratio 1
    least = -2 * np.log(2 * -np.expm1(np.log1p(-_AT_SENSITIVITY) / (8 * _OCTETS[True, "command"])))
    return np.asarray(0.5 * np.exp(-ratio * least / 2))


_SINR_AT_SENSITIVITY = 10 ** (0.4035 / 10)  # 1 % of 20 octets lost: computed from the curve itself


def _oqpsk_wrong(ratio: Floats) -> Floats:
    sinr = ratio * _SINR_AT_SENSITIVITY
    total = np.zeros_like(sinr)
    for k in range(2, 17):
        total += (-1) ** k * comb(16, k) * np.exp(20 * sinr * (1 / k - 1))
    return np.clip(total * 8 / 15 / 16, 0.0, 0.5)


def slower_gain_db(rate: Rate) -> float:
    """How many dB less a receiver needs at this rate of G.9959 than at R3 (sensitivities from memory)."""
    return SENSITIVITY_DBM[Rate.R3] - SENSITIVITY_DBM[rate]
