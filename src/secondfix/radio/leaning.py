"""Which assumptions entered an answer: those of the stations and surfaces on its routes, and no others."""

from collections.abc import Iterable, Sequence
from functools import reduce
from operator import or_

import numpy as np

from secondfix.assumptions import OF_LINKS, OF_MEASURED_LINKS
from secondfix.radio.answers import Word
from secondfix.radio.links import Links
from secondfix.radio.paths import Paths

_BIT = {name: 1 << n for n, name in enumerate((*OF_LINKS, *OF_MEASURED_LINKS))}
_ALWAYS = _BIT["radio_spread_db"] | _BIT["radio_fading_db"] | _BIT["radio_longest_link_m"]
_LIKELY, _UNLIKELY = _BIT["radio_likely_pct"], _BIT["radio_unlikely_pct"]
_LEARNED = sum(_BIT[name] for name in OF_MEASURED_LINKS)
_OF_WORD = {Word.LIKELY: _LIKELY, Word.UNLIKELY: _UNLIKELY}


def passed_by(paths: Paths) -> int:
    """What any path of a house leans on, as bits."""
    crossed = np.zeros(len(paths.surfaces), np.bool_)
    crossed[paths.crossed] = True
    names = {surface.assumptions for surface, at in zip(paths.surfaces, crossed, strict=True) if at}
    return reduce(or_, map(_bits, names), 0)


class Leaning:
    """The assumptions of one network's answers; sets of names are bits here, in the order of ``OF_LINKS``.

    Where its links were ``learned`` from measured ones, every answer leans on what the learning began with.
    """

    def __init__(self, links: Links, paths: Paths, passed: int, *, learned: bool = False) -> None:
        self._always = _ALWAYS | (_LEARNED if learned else 0)
        self._stations = [_bits(s.assumptions) for s in links.stations]
        self._pair: list[int] = links.pair.tolist()
        self._paths = paths
        self._between: dict[int, int] = {}
        self._whole = reduce(or_, self._stations, passed)
        self._names: dict[int, tuple[str, ...]] = {}

    def of_routes(self, word: Word, routes: Iterable[tuple[Sequence[int], Iterable[int]]]) -> tuple[str, ...]:
        """For an answer that hangs on these routes, each the stations and the links between them."""
        bits = self._always | _OF_WORD.get(word, _LIKELY | _UNLIKELY)
        for stations, links in routes:
            for station in stations:
                bits |= self._stations[station]
            for link in links:
                bits |= self._of_link(link)
        return self._named(bits)

    def _of_link(self, link: int) -> int:
        pair = self._pair[link]
        if pair not in self._between:
            self._between[pair] = reduce(or_, (_bits(s.assumptions) for s in self._paths.through(pair)), 0)
        return self._between[pair]

    def of_network(self, word: Word) -> tuple[str, ...]:
        """For an answer that hangs on there being no other route: all stations, all that any path passes."""
        return self._named(self._always | self._whole | _OF_WORD.get(word, _LIKELY | _UNLIKELY))

    def _named(self, bits: int) -> tuple[str, ...]:
        if bits not in self._names:
            self._names[bits] = tuple(name for name, bit in _BIT.items() if bits & bit)
        return self._names[bits]


def _bits(names: Iterable[str]) -> int:
    return sum(_BIT[name] for name in set(names))
