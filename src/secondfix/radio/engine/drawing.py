"""Random draws of links, 64 draws to a word, from a seed: every bit told by its own place in the sequence."""

# ruff: noqa: PLR0917 - the compiler takes arrays by place; the doors of this package take them by name

from dataclasses import dataclass
from functools import cache
from math import erfc, sqrt

import numpy as np
from numpy.typing import NDArray

from secondfix.radio.crossing import Floats, Ints
from secondfix.radio.engine.choosing import kernels
from secondfix.radio.engine.sampled import Sampled

Words = NDArray[np.uint64]
WORD = 64
PLANES = 16  # a chance is drawn to 1/65536
STEPS = 1024  # parts of one spread that a margin is told in
LIMIT = 6  # spreads: beyond it a link is certain, or none (1e-9)
UNITS = 128  # parts of a dB that margins and surroundings are told in
MOST = 1 << 15  # units: 256 dB is beyond doubt
LEAST_OWN_DB = 0.1
GOLDEN = np.uint64(0x9E3779B97F4A7C15)


@dataclass(frozen=True, slots=True, eq=False)
class Ends:
    """Links between stations ``a`` and ``b`` of ``count``; a draw holds for both directions."""

    count: int
    a: Ints
    b: Ints


def mixed(words: Words) -> Words:
    """Scatter numbers evenly over 64 bits (the finaliser of SplitMix64: Steele, Lea, Flood 2014)."""
    out = words.copy()
    for shift, factor in ((30, 0xBF58476D1CE4E5B9), (27, 0x94D049BB133111EB)):
        out ^= out >> np.uint64(shift)
        out *= np.uint64(factor)
    out ^= out >> np.uint64(31)
    return out


@cache
def chance_table() -> Ints:
    """Φ in parts of 65536 at every step from −6 to +6 spreads; 0 and 65536 only at the ends."""
    at = np.arange(-LIMIT * STEPS, LIMIT * STEPS + 1) / STEPS
    table = np.array([round(65536 * 0.5 * erfc(-z / sqrt(2))) for z in at], np.int64)
    table = np.clip(table, 1, 65535)
    table[0], table[-1] = 0, 65536
    return table


def draw_links(
    ends: Ends,
    *,
    margin_db: Floats,
    spread_db: float,
    shared: float,
    draws: int,
    seed: int,
    plain: bool = False,
) -> Words:
    """Draw which links work where all have one spread: see `draw_way`.

    Shadowing is normal with ``spread_db`` (above 0); the share ``shared`` (0 to below 1) of its variance
    comes in equal parts from the two devices and is the same for all links of a device in one draw, the
    rest is the link's own. Source: log-normal shadowing as in `chance`; that links of a device share part
    is ours (engineering judgement, not sourced). Raises ValueError outside the ranges.
    """
    way = alike(ends, margin_db=margin_db, spread_db=spread_db, shared=shared)
    return draw_way(ends, way, draws=draws, seed=seed, plain=plain)


def alike(ends: Ends, *, margin_db: Floats, spread_db: float, shared: float) -> Sampled:
    """The way that a network is where all links have one spread, ``shared`` of its variance in common."""
    if spread_db <= 0 or not 0 <= shared < 1:
        raise ValueError("a spread is above 0 dB and a shared part from 0 to below 1")
    own, around = spread_db * sqrt(1 - shared), spread_db * sqrt(shared / 2)
    return Sampled(margin_db, np.full(len(ends.a), own), np.full(ends.count, around))


def draw_way(ends: Ends, way: Sampled, *, draws: int, seed: int, plain: bool = False) -> Words:
    """Draw which links work: a row a link, a bit a draw (draw d is bit d % 64 of word d // 64).

    Meaning: a link works where its margin and what its two ends and itself add are above 0 together; all
    three are normal about 0 with the spreads of ``way``, and one number for both directions. What an end
    adds is the same for all its links in one draw. Chances are told to 1/65536, margins to 1/128 dB, a
    link's own spread is at least 0.1 dB. The same numbers with the kernel and without (``plain``). Raises
    ValueError for less than 1 draw. Source: log-normal shadowing as in `chance`; facts: both directions
    differ by about 1 dB rms (computed).
    """
    if draws < 1:
        raise ValueError("at least 1 draw")
    wide = -(-draws // WORD)
    own_db = np.maximum(way.own_db, LEAST_OWN_DB)
    table = chance_table()
    work = None if plain else kernels("drawing_kernel")
    bits = np.empty((len(ends.a), wide), np.uint64)
    start = np.uint64(mixed(np.array([seed], np.uint64))[0])
    if not way.around_db.any():
        far = LIMIT * STEPS
        steps = np.rint(np.clip(way.margin_db / own_db, -LIMIT, LIMIT) * STEPS).astype(np.int64)
        (work.alone if work else _alone)(table[steps + far], start, bits)
    else:
        margin = np.rint(np.clip(way.margin_db * UNITS, -MOST, MOST)).astype(np.int64)
        scale = np.rint(STEPS * 256 / UNITS / own_db).astype(np.int64)
        around = _around(way.around_db, wide * WORD, seed)
        (work.together if work else _together)(ends.a, ends.b, margin, scale, around, table, start, bits)
    if draws % WORD:
        bits[:, -1] &= np.uint64((1 << draws % WORD) - 1)
    return bits


def _around(spread_db: Floats, draws: int, seed: int) -> NDArray[np.int16]:
    """What each station's surroundings add in each draw, in units."""
    drawn = np.random.default_rng(seed).integers(0, 1 << 16, (len(spread_db), draws), np.uint16)
    if drawn.size < len(np.unique(spread_db)) << 16:  # few draws: their own values, not tables of all
        values = _quantiles().take(drawn)
        values *= (spread_db * UNITS)[:, None]
        return _in_units(values)
    out = np.zeros(drawn.shape, np.int16)
    each, which = np.unique(spread_db, return_inverse=True)
    for n, spread in enumerate(each.tolist()):
        rows = np.flatnonzero(which == n)
        out[rows] = _in_units(_quantiles() * (spread * UNITS))[drawn[rows]]
    return out


def _in_units(values: Floats) -> NDArray[np.int16]:
    np.rint(values, out=values)
    return np.clip(values, -MOST // 2, MOST // 2, out=values).astype(np.int16)


@cache
def _quantiles() -> Floats:
    """65536 equally likely values of a normal variable of spread 1."""
    at = np.arange(-LIMIT * STEPS, LIMIT * STEPS + 1) / STEPS
    below = np.array([0.5 * erfc(-z / sqrt(2)) for z in at])
    out: Floats = np.interp((np.arange(1 << 16) + 0.5) / (1 << 16), below, at)
    return out


def _alone(chances: Ints, start: np.uint64, bits: Words) -> None:
    """Compare random planes with the binary digits of each chance, the highest first."""
    counter = start + np.arange(bits.size, dtype=np.uint64).reshape(bits.shape) * np.uint64(PLANES) * GOLDEN
    bits[:] = np.where(chances >= 1 << PLANES, np.uint64(2**64 - 1), np.uint64(0))[:, None]
    open_ = np.full(bits.shape, 2**64 - 1, np.uint64)
    open_[(chances <= 0) | (chances >= 1 << PLANES)] = 0
    for plane in range(PLANES):
        digit = ((chances >> (PLANES - 1 - plane)) & 1).astype(np.bool_)[:, None]
        random = mixed(counter + np.array(plane, np.uint64)[None] * GOLDEN)
        bits |= np.where(digit, open_ & ~random, np.uint64(0))
        open_ &= np.where(digit, random, ~random)


def _together(
    a: Ints,
    b: Ints,
    margin: Ints,
    scale: Ints,
    around: NDArray[np.int16],
    table: Ints,
    start: np.uint64,
    bits: Words,
) -> None:
    """Each draw's own chance against its own 16 random bits, four to a random word."""
    far = LIMIT * STEPS
    wide = bits.shape[1]
    lanes = np.arange(4, dtype=np.uint64) * np.uint64(16)
    for link in range(len(a)):
        here = np.clip(margin[link] + around[a[link]].astype(np.int64) + around[b[link]], -MOST, MOST)
        at = np.clip((here * scale[link]) >> 8, -far, far) + far
        counter = start + np.arange(link * wide * 16, (link + 1) * wide * 16, dtype=np.uint64) * GOLDEN
        random = (mixed(counter)[:, None] >> lanes) & np.uint64(0xFFFF)
        works = random.astype(np.int64).ravel() < table[at]
        bits[link] = np.packbits(works, bitorder="little").view(np.uint64)
