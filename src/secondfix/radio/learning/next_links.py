"""Which link to measure next: the one whose level tells most of who is reached."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Floats

LEAST_WORTH = 1e-6


@dataclass(frozen=True, slots=True)
class NextLink:
    """A link to measure: ``settles`` is how many devices' worth of doubt it is expected to take away.

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
    that link's part. Source: ours (the linear part of the expected fall in variance). Leaves out: that a
    reading may be worth more than its straight line.
    """
    found = [link for key, one in worths.items() for link in _of_network(key, one, most)]
    return tuple(sorted(found, key=lambda link: -link.settles)[:most])


def _of_network(key: str, worths: Worths, most: int) -> list[NextLink]:
    level, reached = worths.level.copy(), worths.reached.copy()
    if not level.size:
        return []
    draws = level.shape[1]
    found: list[NextLink] = []
    for _ in range(min(most, len(level))):
        spread2 = (level**2).mean(axis=1) + worths.reading_db**2
        along = reached @ level.T / draws  # (devices, links)
        luck = (reached**2).mean(axis=1).sum() / draws
        taken = (along**2).sum(axis=0) / spread2 - luck * (spread2 - worths.reading_db**2) / spread2
        best = int(np.argmax(taken))
        if taken[best] <= LEAST_WORTH:
            break
        found.append(NextLink(key, *worths.ends[best], float(4 * taken[best])))
        gain = level @ level[best] / draws / spread2[best]
        reached -= np.outer(along[:, best] / spread2[best], level[best])
        level -= np.outer(gain, level[best])
    return found
