"""Which link to measure next: the one whose level tells most of who is reached."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats
from secondfix.radio.engine.drawing import WORD, Ends, Words
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.engine.searching import ROOT, reached, steps_of
from secondfix.radio.links import Links

LEAST_WORTH = 0.01  # of a device
LEAST_SHARE = 0.3  # a link that less often works is not worth the walk
DRAWS = 1024
MOST_LINKS = 400  # those of which it is the least certain whether they work


@dataclass(frozen=True, slots=True)
class NextLink:
    """A link to measure, its ends as a journal names them: devices, and the place of a controller.

    ``settles`` is how many devices' worth of doubt it is expected to take away.

    A device of which it is an even chance whether it is reached is one device's worth.
    """

    network: str
    a: str
    b: str
    settles: float


@dataclass(frozen=True, slots=True, eq=False)
class Worths:
    """Ways that a network may be, drawn together: levels of links worth measuring, and who is reached.

    ``level`` (links, draws) in dB about its mean, ``reached`` (devices, draws) about its mean,
    ``reading_db`` the spread of one reading about the level; ``ends`` are the ids of each link's ends.
    """

    ends: tuple[tuple[str, str], ...]
    level: Floats
    reached: Floats
    reading_db: float


def next_links(worths: Mapping[str, Worths], *, most: int) -> tuple[NextLink, ...]:
    """Pick at most ``most`` links over all networks, each after those before it are taken as known.

    Meaning: the variance of 'is reached' that a straight line over the link's level takes away, summed
    over the devices, less what as many draws would show by luck alone; then level and reached are told
    that link's part. Where nobody is in doubt, or no more, the link that tells most of all levels follows
    (``settles`` 0). Source: ours (the linear part of the expected fall in variance). Leaves out: that a
    reading may be worth more than its straight line.
    """
    found = [link for key, one in worths.items() for link in _of_network(key, one, most)]
    return tuple(sorted(found, key=lambda link: -link.settles)[:most])


def _of_network(key: str, worths: Worths, most: int) -> list[NextLink]:
    level, reached_ = worths.level.copy(), worths.reached.copy()
    draws, noise2 = level.shape[1], worths.reading_db**2
    found: list[NextLink] = []
    taken = np.zeros(len(level), np.bool_)
    for _ in range(min(most, len(level))):
        own2 = (level**2).mean(axis=1)
        spread2 = own2 + noise2
        along = reached_ @ level.T / draws  # (devices, links)
        luck = (reached_**2).mean(axis=1).sum() / draws
        worth = np.where(taken, 0.0, (along**2).sum(axis=0) / spread2 - luck * own2 / spread2)
        best = int(np.argmax(worth))
        settles = float(4 * worth[best])
        if settles < LEAST_WORTH:
            settles = 0.0
            tells = ((level @ level.T / draws) ** 2).sum(axis=0) / spread2
            best = int(np.argmax(np.where(taken, 0.0, tells)))
        taken[best] = True
        found.append(NextLink(key, *worths.ends[best], settles))
        gain = level @ level[best] / draws / spread2[best]
        reached_ -= np.outer(along[:, best] / spread2[best], level[best])
        level -= np.outer(gain, level[best])
    return found


@dataclass(frozen=True, slots=True, eq=False)
class Drawing:
    """What draws of one network start from: its ways, and the loss of each link (row) in each way (column).

    ``open`` tells which links may still be measured; ``most_links`` is the protocol's limit of a route.
    """

    links: Links
    ways: Sequence[Sampled]
    loss_db: Floats
    open: Bools
    reading_db: float
    most_links: int
    seed: int


def worths_of(d: Drawing) -> Worths:
    """Draw a network some 1024 times over the ways it may be: levels of links, and whom it reaches.

    Of the links that may still be measured and likely would be heard, the 400 whose working is least certain
    are asked.
    """
    each = max(DRAWS // max(len(d.ways), 1), 1)
    works = np.concatenate([level > 0 for level, _ in _drawn(d, each)], axis=1)
    share = works.mean(axis=1)
    asked = np.flatnonzero(d.open & (share >= LEAST_SHARE))
    asked = np.sort(asked[np.argsort(np.abs(share[asked] - 0.5), kind="stable")[:MOST_LINKS]])
    level = np.concatenate([level[asked] for _, level in _drawn(d, each)], axis=1)
    there = _there(d, works)
    a, b = d.links.a[asked].tolist(), d.links.b[asked].tolist()
    return Worths(
        tuple((named(d.links, n), named(d.links, m)) for n, m in zip(a, b, strict=True)),
        level - level.mean(axis=1, keepdims=True),
        there - there.mean(axis=1, keepdims=True),
        d.reading_db,
    )


def _drawn(d: Drawing, each: int) -> Iterator[tuple[Floats, Floats]]:
    """For each way: margins and levels of all links in so many draws, the same whenever it is asked."""
    draw = np.random.default_rng([d.seed, 4])
    for k, way in enumerate(d.ways):
        around = way.around_db[:, None] * draw.standard_normal((len(way.around_db), each))
        more = way.own_db[:, None] * draw.standard_normal((len(way.own_db), each))
        more += around[d.links.a] + around[d.links.b]
        yield way.margin_db[:, None] + more, more - d.loss_db[:, k, None]


def _there(d: Drawing, works: Bools) -> Floats:
    """1 for each device (row) that is reached in a draw (column), else 0."""
    draws = works.shape[1]
    padded = np.zeros((len(works), -(-draws // WORD) * WORD), np.bool_)
    padded[:, :draws] = works
    bits: Words = np.packbits(padded, axis=1, bitorder="little").view(np.uint64)
    forwards = np.array([s.may_repeat(1) for s in d.links.stations], np.bool_)
    steps = steps_of(Ends(len(d.links.stations), d.links.a, d.links.b), forwards)
    found = reached(steps, bits, most_links=d.most_links)
    out: Floats = np.unpackbits(found.view(np.uint8), axis=1, bitorder="little").astype(np.float64)
    return out[1:, :draws]


def named(links: Links, station: int) -> str:
    """A station as a journal names the end of a link: a device, or the place of the controller."""
    one = links.stations[station]
    return one.place if station == ROOT else one.id
