"""How far apart two phrases are by ear: phones that differ, plain and weighted, and the rhythm."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.naming.by_ear.phones import COST, EASILY_LOST, VOWELS, WHOLE


@dataclass(frozen=True, slots=True)
class Said:
    """A phrase as it is said: ``phones`` without stress; ``final`` is True for a d, t or n that ends a word.

    ``stressed`` holds the vowels under primary stress in order, ``syllables`` counts the vowels.
    """

    phones: tuple[str, ...]
    final: tuple[bool, ...]
    stressed: tuple[str, ...]
    syllables: int


def said(words: Iterable[tuple[str, ...]]) -> Said:
    """A phrase of words, each a row of phones whose vowels end in a figure of stress (1 is primary)."""
    phones: list[str] = []
    final: list[bool] = []
    stressed: list[str] = []
    for word in words:
        plain = [p.rstrip("012") for p in word]
        phones += plain
        final += [n == len(plain) - 1 and p in EASILY_LOST for n, p in enumerate(plain)]
        stressed += [p[:-1] for p in word if p.endswith("1")]
    syllables = sum(p in VOWELS for p in phones)
    return Said(tuple(phones), tuple(final), tuple(stressed), syllables)


def differing(a: Said, b: Said) -> int:
    """Phones to change, add or leave out to make one phrase the other: the edit distance L. A metric."""
    row = list(range(len(b.phones) + 1))
    for i, p in enumerate(a.phones, 1):
        corner, row[0] = row[0], i
        for j, q in enumerate(b.phones, 1):
            corner, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, corner + (p != q))
    return row[-1]


def weighted(a: Said, b: Said, *, final_permille: int) -> int:
    """The edit distance in thousandths of a phone, what is easily misheard counting less. At most 1000 L.

    Substitutions cost what ``phones.COST`` says, a final d, t or n lost ``final_permille`` (0 to 1000).
    Symmetric, 0 for the same phones; no metric, since what an end costs hangs on where the word ends.
    """
    lose_b = [final_permille if end else WHOLE for end in b.final]
    row = [0]
    for loss in lose_b:
        row.append(row[-1] + loss)
    for p, end in zip(a.phones, a.final, strict=True):
        lose, costs = (final_permille if end else WHOLE), COST[p]
        corner, left = row[0], row[0] + lose
        row[0] = left
        for j, (q, loss) in enumerate(zip(b.phones, lose_b, strict=True), 1):
            left = min(row[j] + lose, left + loss, corner + costs[q])
            corner, row[j] = row[j], left
    return row[-1]


def same_rhythm(a: Said, b: Said) -> bool:
    """As many syllables, and the same vowels under primary stress in the same order (at least one)."""
    return bool(a.stressed) and a.syllables == b.syllables and a.stressed == b.stressed
