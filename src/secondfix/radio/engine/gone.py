"""The same draws with each single repeater gone: who falls with whom."""

from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Ints
from secondfix.radio.engine.choosing import kernels
from secondfix.radio.engine.drawing import Words
from secondfix.radio.engine.searching import Steps, how_often, reached


@dataclass(frozen=True, slots=True, eq=False)
class Gone:
    """Draws counted: ``lost[r, v]`` in which v is reached, but not with repeater ``repeaters[r]`` gone.

    ``whole[v]``: draws in which v is reached; ``safe[v]``: in which it is whichever one is gone.
    """

    repeaters: Ints
    whole: Ints
    safe: Ints
    lost: Ints


def without_each(steps: Steps, links: Words, *, most_links: int, plain: bool = False) -> Gone:
    """Count what each repeater's going costs every other station, draw by draw, within ``most_links``.

    Exact for the draws given. The kernel keeps, for each station, the repeaters that all its routes of
    at most h links share, C_h(v) = C_{h−1}(v) ∩ ⋂ over live parents u of (C_{h−1}(u) ∪ {u}); the plain
    version takes each repeater away and searches again, so each is the other's proof. A station's own
    going is not counted against it. Leaves out: two failures at once. Source: ours.
    """
    repeaters = np.unique(steps.source[steps.source != 0])
    work = None if plain else kernels("gone_kernel")
    if work is None:
        return _again(steps, links, repeaters, most_links)
    seat = np.full(steps.count, -1, np.int64)
    seat[repeaters] = np.arange(len(repeaters))
    lost = np.zeros((len(repeaters), steps.count), np.int64)
    whole, safe = np.zeros(steps.count, np.int64), np.zeros(steps.count, np.int64)
    work.shared_by_all(steps.begin, steps.source, steps.link, seat, links, most_links, whole, safe, lost)
    return Gone(repeaters, whole, safe, lost)


def _again(steps: Steps, links: Words, repeaters: Ints, most_links: int) -> Gone:
    base = reached(steps, links, most_links=most_links, plain=True)
    base[0] = 0
    lost = np.zeros((len(repeaters), steps.count), np.int64)
    safe = base.copy()
    for seat, repeater in enumerate(repeaters.tolist()):
        kept = steps.source != repeater
        begin = np.concatenate([[0], np.cumsum(kept)])[steps.begin].astype(np.int64)
        left = Steps(begin, steps.source[kept], steps.link[kept])
        fallen = base & ~reached(left, links, most_links=most_links, plain=True)
        fallen[repeater] = 0
        lost[seat] = how_often(fallen)
        safe &= ~fallen
    return Gone(repeaters, how_often(base), how_often(safe), lost)
