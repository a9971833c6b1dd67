"""One network drawn: its links in so many draws, and who is reached in them, whole and in each case."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.radio.answers import Scale
from secondfix.radio.crossing import Bools, Floats, Ints
from secondfix.radio.engine.drawing import WORD, Ends, Words, alike, draw_way
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.engine.searching import ROOT, how_often, reached, steps_of
from secondfix.radio.foresight.staging import Staged
from secondfix.radio.links import Links

ASSUMED = 1  # the reading of links that cases are drawn at
ENDS_SHARE = 4  # the ends of all assumptions are drawn with a quarter of the draws each


@dataclass(frozen=True, slots=True, eq=False)
class Network:
    """The stage of one network, drawn ``draws`` times at the assumed reading or in the ways learned.

    ``forwards`` tells of each station whether it passes on, ``bits`` has a row a link.
    """

    staged: Staged
    forwards: Bools
    bits: Words
    draws: int

    def hits(self, *, gone: Ints | None = None, root: int = ROOT, helper: int | None = None) -> Ints:
        """In how many draws each station that stands is reached.

        ``gone`` stations have no power; ``root`` is the station that is the controller; ``helper`` one more
        station that repeats.
        """
        links, real = self.staged.links, self.staged.real
        there = np.zeros(len(links.stations), np.bool_)
        there[:real] = True
        there[ROOT] = False
        there[root] = True
        if helper is not None:
            there[helper] = True
        if gone is not None:
            there[gone] = False
        if not there[root]:
            return np.zeros(real, np.int64)
        rows = np.flatnonzero(there[links.a] & there[links.b])
        seat = np.zeros(len(there), np.int64)
        others = np.flatnonzero(there & (np.arange(len(there)) != root))
        seat[others] = np.arange(1, len(others) + 1)
        forwards = np.concatenate([[True], self.forwards[others]])
        ends = Ends(len(others) + 1, seat[links.a[rows]], seat[links.b[rows]])
        steps = steps_of(ends, forwards, rows)
        counted = how_often(reached(steps, self.bits, most_links=self.staged.most_links))
        out = np.zeros(len(there), np.int64)
        out[others] = counted[1:]
        return out[:real]


def forwards_of(links: Links, real: int, reading: int) -> Bools:
    """Who passes on in a reading; what is put somewhere in a case always does."""
    return np.array([s.may_repeat(reading) or n >= real for n, s in enumerate(links.stations)], np.bool_)


def draw_network(
    staged: Staged,
    scale: Scale,
    ways: Sequence[Sampled],
    *,
    gain_db: Floats,
    offset_db: tuple[float, float, float],
    shared: float,
    draws: int,
    seed: int,
) -> tuple[Network, Floats, Floats]:
    """Draw a network; the second and third are the least and greatest share of each station that stands.

    Without ``ways`` those are over the ends of every assumption together, of the spread and of
    ``offset_db`` (low, value, high: what the whole house loses more than computed); with them the 5 and
    95 % of what the ways say, less what their few draws add.
    """
    links, real = staged.links, staged.real
    ends = Ends(len(links.stations), links.a, links.b)
    forwards = forwards_of(links, real, ASSUMED)
    if ways:
        each = -(-draws // len(ways) // WORD) * WORD
        parts = [
            draw_way(ends, _with(way, gain_db), draws=each, seed=seed + 7919 * n)
            for n, way in enumerate(ways)
        ]
        network = Network(staged, forwards, np.concatenate(parts, axis=1), each * len(ways))
        shares = np.stack([Network(staged, forwards, bits, each).hits() / each for bits in parts])
        return network, *_nine_in_ten(shares, each)
    way = alike(
        ends,
        margin_db=links.margin_db[ASSUMED] + gain_db - offset_db[1],
        spread_db=scale.spread_db[1],
        shared=shared,
    )
    network = Network(staged, forwards, draw_way(ends, way, draws=draws, seed=seed), draws)
    share = network.hits() / draws
    low, high = share.copy(), share.copy()
    few = max(draws // ENDS_SHARE, 1)
    standing = Ends(real, links.a[: staged.base], links.b[: staged.base])
    for reading in (0, 2):
        steps = steps_of(standing, forwards_of(links, real, reading)[:real])
        margin = links.margin_db[reading, : staged.base] + gain_db[: staged.base] - offset_db[reading]
        for spread in (scale.spread_db[0], scale.spread_db[2]):
            end = alike(standing, margin_db=margin, spread_db=spread, shared=shared)
            bits = draw_way(standing, end, draws=few, seed=seed)
            there = how_often(reached(steps, bits, most_links=staged.most_links)) / few
            low, high = np.minimum(low, there), np.maximum(high, there)
    return network, low, high


def _with(way: Sampled, gain_db: Floats) -> Sampled:
    return Sampled(way.margin_db + gain_db, way.own_db, way.around_db)


def _nine_in_ten(shares: Floats, each: int) -> tuple[Floats, Floats]:
    """Of shares by way (row) and station, the 5 and 95 %, drawn in by what the draws themselves scatter."""
    middle = shares.mean(axis=0)
    luck = (shares * (1 - shares)).mean(axis=0) / max(each - 1, 1)
    seen = shares.var(axis=0)
    kept = np.sqrt(np.clip(np.divide(seen - luck, seen, out=np.zeros_like(seen), where=seen > 0), 0, 1))
    low, high = np.quantile(middle + (shares - middle) * kept, [0.05, 0.95], axis=0)
    return np.minimum(low, middle), np.maximum(high, middle)
