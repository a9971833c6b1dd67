"""Crossed channels: which works whose load, and the fewest changes that put it right. Pure, on ids alone."""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Crossing:
    """Channels crossed in a ring: each works the load designed for the next, the last that of the first.

    ``exchanges`` are the pairs whose switched conductors change places, in this order; ``names`` what
    each channel works now, where names are to follow the wires instead.
    """

    channels: tuple[str, ...]
    exchanges: tuple[tuple[str, str], ...]
    names: tuple[tuple[str, str], ...]


def crossings(designed: Mapping[str, str], works: Mapping[str, str]) -> tuple[Crossing, ...]:
    """Every ring, longest id order within, begun at its least channel.

    ``designed`` and ``works`` give channels their one load; only channels in both take part. A ring of
    n channels takes n - 1 exchanges and no fewer (a permutation of n elements with c cycles is a
    product of n - c transpositions at least).
    """
    meant_for: dict[str, str] = {}
    for channel in sorted(designed):
        meant_for.setdefault(designed[channel], channel)
    follows = {c: meant_for[load] for c, load in works.items() if c in designed and load in meant_for}
    found: list[Crossing] = []
    done: set[str] = set()
    for start in sorted(follows):
        ring = _ring(start, follows, done)
        if len(ring) > 1:
            found.append(
                Crossing(
                    tuple(ring),
                    tuple((ring[0], other) for other in ring[1:]),
                    tuple((c, works[c]) for c in ring),
                )
            )
    return tuple(found)


def _ring(start: str, follows: Mapping[str, str], done: set[str]) -> list[str]:
    """The ring that ``start`` lies in, or nothing; every channel is walked once."""
    walked: dict[str, int] = {}
    here: str | None = start
    while here is not None and here not in done and here not in walked:
        walked[here] = len(walked)
        here = follows.get(here)
    done.update(walked)
    if here is None or here not in walked:
        return []
    ring = list(walked)[walked[here] :]
    least = ring.index(min(ring))
    return ring[least:] + ring[:least]
