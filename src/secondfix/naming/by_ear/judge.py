"""The trial rule: do two phrases sound alike, can they be misheard, or are they apart?"""

from dataclasses import dataclass
from enum import StrEnum
from math import ceil

from secondfix.assumptions import Assumptions
from secondfix.naming.by_ear.dictionary import pronounced
from secondfix.naming.by_ear.distance import Said, differing, said, same_rhythm, weighted
from secondfix.naming.by_ear.phones import WHOLE

ALIKE_PCT, NEAR_PCT, FINAL_PCT = "by_ear_alike_pct", "by_ear_near_pct", "by_ear_final_pct"

# Phones per letter of a word that the dictionary lacks: 99.9 % of the whole dictionary's 117,157 words
# of three letters or more with a vowel letter lie between (computed).
_FEWEST, _MOST = 0.4, 1.5


class Verdict(StrEnum):
    """What the trial rule calls reject, warn and accept."""

    ALIKE = "alike"
    NEAR = "near"
    APART = "apart"


@dataclass(frozen=True, slots=True)
class Limits:
    """The limits of the rule, in percent of the longer phrase's phones; a final d, t, n in thousandths."""

    alike_pct: int
    near_pct: int
    final_permille: int


@dataclass(frozen=True, slots=True)
class Ends:
    """The limits at both ends of their ranges: ``strict`` finds the fewest pairs, ``lax`` the most."""

    strict: Limits
    lax: Limits


def ends(assumptions: Assumptions) -> Ends:
    """Sound, since a pair found at some limits is found at every laxer one."""
    alike, near, final = (assumptions.span(name) for name in (ALIKE_PCT, NEAR_PCT, FINAL_PCT))
    return Ends(Limits(alike[0], near[0], 10 * final[2]), Limits(alike[2], near[2], 10 * final[0]))


def settled(assumptions: Assumptions) -> Limits:
    """The limits at the assumptions' own values."""
    return Limits(
        assumptions.value(ALIKE_PCT), assumptions.value(NEAR_PCT), 10 * assumptions.value(FINAL_PCT)
    )


def reach(longest: int, share_pct: int) -> int:
    """Thousandths of a phone that lie within a share of the ``longest`` phrase's phones: 1000 at least."""
    return max(WHOLE, longest * WHOLE * share_pct // 100)


def judged(a: Said, b: Said, limits: Limits) -> Verdict:
    """Alike: at most one phone differs, or a share of at most ``alike_pct``; near: at most ``near_pct``, or
    the same rhythm. All distances weighted. A trial rule, fit on a list of check pairs, not validated.
    """
    longest = max(len(a.phones), len(b.phones))
    distance = weighted(a, b, final_permille=limits.final_permille)
    if distance <= reach(longest, limits.alike_pct):
        return Verdict.ALIKE
    return Verdict.NEAR if distance <= reach(longest, limits.near_pct) or same_rhythm(a, b) else Verdict.APART


def phrase(words: tuple[str, ...]) -> Said | None:
    """The phrase as said; None where a word of it is not known."""
    spoken = [pronounced(w) for w in words]
    known = [s for s in spoken if s is not None]
    return said(known) if len(known) == len(spoken) else None


def may_be_near(a: tuple[str, ...], b: tuple[str, ...], limits: Limits) -> bool:
    """Whether some way of saying the words that the dictionary lacks would bring the phrases near.

    By the number of phones and the rhythm alone: generous, so that False is sure for ordinary words.
    """
    one, other = _Open.of(a), _Open.of(b)
    shorter, longer = sorted((one, other), key=lambda o: o.most)
    gap = max(0, longer.fewest - shorter.most)
    cheap = min(gap, sum(longer.known.final) + longer.words)
    distance = WHOLE * (gap - cheap) + limits.final_permille * cheap
    longest = max(longer.fewest, shorter.most)
    near = reach(longest, max(limits.near_pct, limits.alike_pct))
    return distance <= near or one.may_have_the_rhythm_of(other)


@dataclass(frozen=True, slots=True)
class _Open:
    """A phrase of which only the words in ``known`` are known, ``letters`` of ``words`` others being open."""

    known: Said
    words: int
    letters: int

    @classmethod
    def of(cls, words: tuple[str, ...]) -> "_Open":
        spoken = {w: pronounced(w) for w in words}
        unknown = [w for w in words if spoken[w] is None]
        return cls(said(s for w in words if (s := spoken[w])), len(unknown), sum(map(len, unknown)))

    @property
    def fewest(self) -> int:
        return len(self.known.phones) + int(_FEWEST * self.letters)

    @property
    def most(self) -> int:
        return len(self.known.phones) + ceil(_MOST * self.letters)

    def may_have_the_rhythm_of(self, other: "_Open") -> bool:
        """As many syllables, an unknown word having from one to as many as it has letters; and the known
        stressed vowels of one found in order in those of the other.
        """
        if self.words and other.words:
            return True
        part, whole = (self, other.known) if self.words else (other, self.known)
        open_syllables = whole.syllables - part.known.syllables
        left = iter(whole.stressed)
        kept = all(vowel in left for vowel in part.known.stressed)
        return bool(whole.stressed) and part.words <= open_syllables <= part.letters and kept


def shares(a: Said, b: Said, limits: Limits) -> tuple[int, int, int]:
    """``(L, n, weighted)``: phones that differ, phones of the longer phrase, thousandths of a phone."""
    distance = weighted(a, b, final_permille=limits.final_permille)
    return differing(a, b), max(len(a.phones), len(b.phones)), distance
