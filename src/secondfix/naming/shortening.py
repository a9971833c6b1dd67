"""A shorter form of a name that stays within a limit of bytes and is nobody else's."""

import unicodedata
from collections.abc import Container
from itertools import count

from secondfix.naming.folding import composed, folded


def byte_length(name: str) -> int:
    """Bytes of the name in UTF-8, the coding that the three protocols store (from memory)."""
    return len(name.encode())


def shortened(name: str, *, limit_bytes: int, taken: Container[str]) -> str:
    """A form of ``name`` of at most ``limit_bytes`` bytes (8 to 64) whose folded form is not ``taken``.

    Words that stand twice are dropped, then the longest word loses its last letter again and again;
    a number at the end tells it from names already taken. Our own method; a person may know better.
    """
    if not 8 <= limit_bytes <= 64:
        raise ValueError("a limit of 8 to 64 bytes")
    words = list({folded(w): w for w in reversed(composed(name).split())}.values())[::-1]
    short = _fitted(words, limit_bytes)
    for number in count(2):
        if folded(short) not in taken:
            return short
        end = str(number)
        short = f"{_fitted(words, limit_bytes - len(end) - 1)} {end}".strip()
    raise AssertionError("the numbers do not end")


def _fitted(words: list[str], limit_bytes: int) -> str:
    kept = list(words)
    while byte_length(" ".join(kept)) > limit_bytes:
        longest = max(range(len(kept)), key=lambda i: (byte_length(kept[i]), i))
        kept[longest] = _less(kept[longest])
        kept = [word for word in kept if word]
    return " ".join(kept)


def _less(word: str) -> str:
    """Without its last letter, marks and joiners included: a mark never loses its letter."""
    while word and (unicodedata.combining(word[-1]) or unicodedata.category(word[-1]) in {"Mn", "Me", "Cf"}):
        word = word[:-1]
    return word[:-1].rstrip("\u200c\u200d")
