"""What feeds what, as function tests found it: pure, on channels and loads alone.

A channel is a gang (``B07.2``) or an output of a device outside the boxes (``D02.1``).
"""

from collections.abc import Collection, Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Wiring:
    """``feeds`` gives each channel that feeds a load that load; ``open`` are channels of unknown duty."""

    feeds: Mapping[str, str]
    open: frozenset[str]


def as_tested(wiring: Wiring, answered: Mapping[str, Collection[str]]) -> Wiring:
    """The wiring as far as tests tell it; asking again of the result changes nothing.

    A channel that alone works one load feeds it, and whatever was said to feed that load before is no
    longer known. Where several work one load, the one said to feed it keeps it. A channel that works
    several loads keeps its own if that answered. One that works nothing keeps what it is said to feed:
    a lamp may be out. A channel of unknown duty is taken to feed what it works where nothing else does.
    """
    single = {c: next(iter(loads)) for c, loads in answered.items() if len(loads) == 1}
    feeds = dict(wiring.feeds)
    claims = _by_load({c: load for c, load in single.items() if c in feeds})
    feeders = _by_load(feeds)
    for load, channels in claims.items():
        for channel in {*channels, *feeders.get(load, ())}:
            feeds.pop(channel, None)
    for channel, loads in answered.items():
        if len(loads) > 1 and feeds.get(channel) not in loads:
            feeds.pop(channel, None)
    for load, channels in claims.items():
        keeper = [c for c in channels if wiring.feeds[c] == load] or channels
        if len(keeper) == 1:
            feeds[keeper[0]] = load
    loose = wiring.open | (wiring.feeds.keys() - feeds.keys())
    fed = set(feeds.values())
    for load, channels in _by_load({c: load for c, load in single.items() if c in loose}).items():
        if len(channels) == 1 and load not in fed:
            feeds[channels[0]] = load
    return Wiring(feeds, loose - feeds.keys())


def _by_load(feeds: Mapping[str, str]) -> dict[str, list[str]]:
    by_load: dict[str, list[str]] = {}
    for channel in sorted(feeds):
        by_load.setdefault(feeds[channel], []).append(channel)
    return by_load
