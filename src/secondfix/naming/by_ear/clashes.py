"""Which names of a house sound alike, judged on the words that tell them apart."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import combinations

from secondfix.naming.by_ear.dictionary import pronounced
from secondfix.naming.by_ear.distance import Said
from secondfix.naming.by_ear.judge import Ends, Verdict, judged, may_be_near, phrase
from secondfix.naming.by_ear.many import Laid
from secondfix.naming.by_ear.spoken import Kind, Spoken
from secondfix.naming.by_ear.words import distinguishing
from secondfix.naming.folding import folded

Words = tuple[str, ...]
Pair = tuple[Spoken, Spoken]


@dataclass(frozen=True, slots=True)
class Heard:
    """One pair of phrases at both ends of the limits."""

    strict: Verdict
    lax: Verdict


@dataclass(slots=True)
class Clash:
    """Names that the same words tell apart: ``pairs`` of them, the first in the document's order first."""

    words: tuple[Words, Words]
    heard: Heard
    pairs: list[Pair] = field(default_factory=list)


@dataclass(slots=True)
class Unknown:
    """A word that the dictionary lacks: the names that hold it, and those it could bring them near."""

    held_by: dict[Spoken, None] = field(default_factory=dict)
    beside: dict[Spoken, None] = field(default_factory=dict)


@dataclass(slots=True)
class Clashes:
    """What stands out: clashes, and words that the dictionary lacks where they could change an answer."""

    clashes: list[Clash]
    unknown: dict[str, Unknown]


class Ear:
    """Judges pairs of names; what it has judged once it remembers."""

    def __init__(self, at: Ends) -> None:
        self.at = at
        self._heard: dict[tuple[Words, Words], Heard | None] = {}
        self._phrases: dict[Words, Said | None] = {}
        self._laid = Laid(at.lax)

    def compare(self, pairs: Sequence[Pair]) -> list[tuple[tuple[Words, Words], Heard | None]]:
        """Of each pair the words that tell the names apart, and the answer; None where a word is not known.

        Names of the same words, in whatever order, are alike.
        """
        keys = [_told_apart_by(a.words, b.words) for a, b in pairs]
        self._hear([key for key in dict.fromkeys(keys) if key not in self._heard])
        return [(key, self._heard[key]) for key in keys]

    def _hear(self, keys: Sequence[tuple[Words, Words]]) -> None:
        for words in dict.fromkeys(words for key in keys for words in key):
            if words not in self._phrases:
                self._phrases[words] = phrase(words)
        known = {w: said for key in keys for w in key if (said := self._phrases[w])}
        told = [key for key in keys if key[0] in known and key[1] in known]
        self._heard |= dict.fromkeys(keys)
        self._heard |= dict.fromkeys(told, Heard(Verdict.APART, Verdict.APART))
        self._laid.lay_out(known.items())
        for a, b in self._laid.within_reach(told):
            lax, strict = (judged(known[a], known[b], limits) for limits in (self.at.lax, self.at.strict))
            self._heard[a, b] = Heard(strict, lax)


def _told_apart_by(a: Words, b: Words) -> tuple[Words, Words]:
    """The distinguishing words of both, the lesser first; all words where the two hold the same."""
    pair = (a, b) if set(a).isdisjoint(b) else distinguishing(a, b)
    if not any(pair):
        pair = (tuple(sorted(a)),) * 2
    return pair if pair[0] <= pair[1] else (pair[1], pair[0])


def find_clashes(names: Sequence[Spoken], ear: Ear) -> Clashes:
    """Every pair of names that are heard beside each other; which read alike, names.unique tells."""
    clashes: dict[tuple[Words, Words], Clash] = {}
    unknown: dict[str, Unknown] = {}
    read = [(n, folded(n.name)) for n in names if n.words]
    beside = ([r for r in read if r[0].kind is Kind.ROOM], [r for r in read if r[0].kind is not Kind.ROOM])
    pairs = [
        (a, b) for heard in beside for (a, a_read), (b, b_read) in combinations(heard, 2) if a_read != b_read
    ]
    for pair, (words, heard) in zip(pairs, ear.compare(pairs), strict=True):
        if heard is None:
            _open(unknown, words, pair, ear)
        elif heard.lax is not Verdict.APART:
            clashes.setdefault(words, Clash(words, heard)).pairs.append(pair)
    return Clashes(list(clashes.values()), unknown)


def _open(unknown: dict[str, Unknown], words: tuple[Words, Words], names: Pair, ear: Ear) -> None:
    if not may_be_near(*words, ear.at.lax):
        return
    for word in (w for side in words for w in side if pronounced(w) is None):
        of_word = unknown.setdefault(word, Unknown())
        for name in names:
            (of_word.held_by if word in name.words else of_word.beside)[name] = None
