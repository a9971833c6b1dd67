"""One network drawn: its links in so many draws, and who is reached in them, whole and in each case."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.radio.answers import Scale
from secondfix.radio.crossing import Bools, Floats, Ints
from secondfix.radio.engine.chances import SURE
from secondfix.radio.engine.drawing import WORD, Ends, Words, alike, draw_way
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.engine.searching import ROOT, how_often, reached, steps_of
from secondfix.radio.foresight.staging import Staged
from secondfix.radio.links import Links

ASSUMED = 1  # the reading that says who passes on in the draws
ENDS_SHARE = 4  # the ends of all assumptions are drawn with a quarter of the draws each


@dataclass(frozen=True, slots=True, eq=False)
class Network:
    """The stage of one network, drawn in ``ways`` equally likely ways, ``draws`` in all.

    ``forwards`` tells of each station whether it passes on, ``bits`` has a row a link, way after way.
    """

    staged: Staged
    forwards: Bools
    bits: Words
    ways: int

    @property
    def draws(self) -> int:
        """How many draws in all."""
        return int(self.bits.shape[1]) * WORD

    def hits(self, *, gone: Ints | None = None, root: int = ROOT, helper: int | None = None) -> Ints:
        """In how many draws each station that stands is reached.

        ``gone`` stations have no power; ``root`` is the station that is the controller; ``helper`` one more
        station that repeats.
        """
        return how_often(self._reached(gone, root, helper))

    def scatter(self) -> Floats:
        """Half the interval (95 %) that so few ways and draws leave each station's share: from way to way."""
        by_way = self._reached(None, ROOT, None).reshape(self.staged.real, self.ways, -1)
        shares = np.bitwise_count(by_way).sum(axis=2) / (by_way.shape[2] * WORD)
        out: Floats = SURE * shares.std(axis=1) / np.sqrt(self.ways)
        return out

    def _reached(self, gone: Ints | None, root: int, helper: int | None) -> Words:
        links, real = self.staged.links, self.staged.real
        there = np.zeros(len(links.stations), np.bool_)
        there[1:real] = True
        there[root] = True
        if helper is not None:
            there[helper] = True
        if gone is not None:
            there[gone] = False
        out = np.zeros((len(there), self.bits.shape[1]), np.uint64)
        if there[root]:
            rows = np.flatnonzero(there[links.a] & there[links.b])
            others = np.flatnonzero(there & (np.arange(len(there)) != root))
            seat = np.zeros(len(there), np.int64)
            seat[others] = np.arange(1, len(others) + 1)
            forwards = np.concatenate([[True], self.forwards[others]])
            steps = steps_of(Ends(len(others) + 1, seat[links.a[rows]], seat[links.b[rows]]), forwards, rows)
            out[others] = reached(steps, self.bits, most_links=self.staged.most_links)[1:]
        return out[:real]


def forwards_of(links: Links, real: int, reading: int) -> Bools:
    """Who passes on in a reading; what is put somewhere in a case always does."""
    return np.array([s.may_repeat(reading) or n >= real for n, s in enumerate(links.stations)], np.bool_)


def whole_words(draws: int, ways: int) -> int:
    """Draws in each of so many ways, whole words of them, that make ``draws`` in all or a few more."""
    return -(-draws // ways // WORD) * WORD


def draw_network(
    staged: Staged, ways: Sequence[Sampled], *, gain_db: Floats, draws: int, seed: int
) -> Network:
    """Draw a network in each of its ways, ``draws`` in all or a few more, each way a whole number of words.

    ``gain_db`` is how far below its threshold each link still works.
    """
    links = staged.links
    ends = Ends(len(links.stations), links.a, links.b)
    each = whole_words(draws, len(ways))
    parts = [
        draw_way(
            ends,
            Sampled(way.margin_db + gain_db, way.own_db, way.around_db),
            draws=each,
            seed=seed + 7919 * n,
        )
        for n, way in enumerate(ways)
    ]
    return Network(staged, forwards_of(links, staged.real, ASSUMED), np.concatenate(parts, axis=1), len(ways))


def draw_ends(
    staged: Staged, scale: Scale, *, margin_db: Floats, shared: float, draws: int, seed: int
) -> tuple[Floats, Floats]:
    """Least and greatest share of each station that stands, over the ends of everything together.

    ``margin_db`` (3, links that stand): most favourable, assumed and least favourable reading. Each end is
    drawn with a quarter of the draws.
    """
    links, real = staged.links, staged.real
    standing = Ends(real, links.a[: staged.base], links.b[: staged.base])
    few = max(draws // ENDS_SHARE, 1)
    low, high = np.ones(real), np.zeros(real)
    for reading in (0, 2):
        steps = steps_of(standing, forwards_of(links, real, reading)[:real])
        for spread in (scale.spread_db[0], scale.spread_db[2]):
            end = alike(standing, margin_db=margin_db[reading], spread_db=spread, shared=shared)
            bits = draw_way(standing, end, draws=few, seed=seed)
            there = how_often(reached(steps, bits, most_links=staged.most_links)) / few
            low, high = np.minimum(low, there), np.maximum(high, there)
    return low, high
