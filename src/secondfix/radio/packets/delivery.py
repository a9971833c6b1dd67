"""One link both ways: a frame and its acknowledgement, within the tries of the protocol."""

from functools import cache

import numpy as np

from secondfix.radio.crossing import Floats
from secondfix.radio.ieee802154 import noise_floor_dbm
from secondfix.radio.packets.curves import Kind, frame_success, tries_of
from secondfix.radio.packets.interference import Interference
from secondfix.terms import Protocol

WORKS_FROM = 0.9  # a link works where nine in ten frames are delivered: engineering judgement, not sourced
_RISE_STEP_DB = 0.1
_RISE_DB = np.arange(-200, 80) * _RISE_STEP_DB  # a link rises from nothing to all within it
_STEPS_DB = np.arange(0.0, 12.5, 0.5)
_LOWEST_DB, _HIGHEST_DB = -60.0, 80.0

Noise = tuple[Floats, Floats]  # at the receiver: how much sources raise its floor, in dB, and their duties


def delivered(
    forth_db: Floats,
    back_db: Floats,
    *,
    protocol: Protocol,
    there: Noise | None = None,
    here: Noise | None = None,
) -> Floats:
    """Give the chance that a frame one way is acknowledged within the tries, margins in dB (any one shape).

    Equation: 1 − (1 − s(forth)·s_ack(back))^tries. ``there`` and ``here`` tell of sources at the receiver of
    the frame and of the acknowledgement: (how many dB they raise its floor, the links' shape and a column
    for each source; duties). A frame meets each source with its duty, sources and tries independent. Source:
    IEEE 802.15.4 and ITU-T G.9959 as `frame_success` and `tries_of` say. Leaves out: a channel too busy to
    send on, fading between two tries.
    """
    once = _through(forth_db, "command", there, protocol) * _through(
        back_db, "acknowledgement", here, protocol
    )
    return np.asarray(1 - (1 - once) ** tries_of(protocol))


def _through(above_db: Floats, kind: Kind, noise: Noise | None, protocol: Protocol) -> Floats:
    quiet = frame_success(above_db, protocol=protocol, kind=kind)
    if noise is None or not noise[1].size:
        return quiet
    raised_db, duty = noise
    out = quiet
    for n, share in enumerate(duty.tolist()):
        met = frame_success(above_db - raised_db[..., n], protocol=protocol, kind=kind)
        out = out * ((1 - share) + share * np.divide(met, quiet, out=np.ones_like(met), where=quiet > 0))
    return np.asarray(np.minimum(out, quiet))


def raised_db(interference: Interference, sensitivity_dbm: Floats) -> Floats:
    """How much each source raises each station's floor, in dB (stations, sources).

    10 log(1 + I/N); N is the floor at which the stated sensitivity is reached, 0.40 dB below it (IEEE
    802.15.4: 1 % of 20 octets lost, computed), never below kTB over 2 MHz. Source: noise powers add.
    """
    floor = np.maximum(sensitivity_dbm - 0.4035, noise_floor_dbm(noise_figure_db=0.0))
    ratio = 10 ** ((interference.level_dbm - floor[:, None]) / 10)
    return np.asarray(10 * np.log10(1 + ratio))


def link_chance(forth_db: Floats, back_db: Floats, *, spread_db: float, protocol: Protocol) -> Floats:
    """Give the chance that a frame over a link is acknowledged, over what is not known of the link.

    Meaning: `delivered`, its mean over log-normal shadowing of ``spread_db`` (above 0), the same both ways.
    Margins in dB (links,); chances 0 to 1. Numeric: its rise, in steps of 0.1 dB, times the chance that the
    shadowing leaves so much. Source: as `delivered` and `chance`. Leaves out: interference.
    """
    if spread_db <= 0:
        raise ValueError(f"a spread is above 0 dB, not {spread_db}")
    weaker = np.minimum(forth_db, back_db)
    out, before = np.zeros(weaker.shape), np.zeros(weaker.shape)
    for at in _RISE_DB.tolist():
        after = delivered(forth_db - weaker + at, back_db - weaker + at, protocol=protocol)
        out += (after - before) * _below((weaker - at + _RISE_STEP_DB / 2) / spread_db)
        before = after
    return out


def _below(z: Floats) -> Floats:
    from scipy.special import ndtr  # noqa: PLC0415 - loaded by those who ask

    return np.asarray(ndtr(z))


def works_at_db(
    forth_db: Floats,
    back_db: Floats,
    *,
    protocol: Protocol,
    at_a: Noise | None = None,
    at_b: Noise | None = None,
) -> Floats:
    """Give, for each link, the margin of its weaker direction from which nine in ten frames are delivered.

    In dB (links,), most often below 0: the tries make up for lost frames. Only the difference of the two
    directions counts; the frame goes the weaker way. ``at_a`` and ``at_b`` as in `delivered`, a row a link;
    60 dB or more: not at any level, for a source is on too much of the time. Exact to 0.01 dB.
    """
    apart = np.abs(forth_db - back_db)
    if at_a is None or at_b is None:
        return np.asarray(np.interp(apart, _STEPS_DB, _quiet_table(protocol)))
    # The frame goes from a to b where that is the weaker direction.
    weaker_forth = (forth_db <= back_db)[:, None]
    there = np.where(weaker_forth, at_b[0], at_a[0]), at_b[1]
    here = np.where(weaker_forth, at_a[0], at_b[0]), at_a[1]
    return _halved(apart, protocol, there, here)


@cache
def _quiet_table(protocol: Protocol) -> Floats:
    return _halved(_STEPS_DB, protocol, None, None)


def _halved(apart: Floats, protocol: Protocol, there: Noise | None, here: Noise | None) -> Floats:
    low, high = np.full(apart.shape, _LOWEST_DB), np.full(apart.shape, _HIGHEST_DB)
    for _ in range(14):
        middle = (low + high) / 2
        enough = delivered(middle, middle + apart, protocol=protocol, there=there, here=here) >= WORKS_FROM
        high, low = np.where(enough, middle, high), np.where(enough, low, middle)
    return high
