"""A shorter form of a name that stays within a limit of bytes and is nobody else's."""

import unicodedata
from collections.abc import Callable, Container

from secondfix.naming.folding import composed, folded


def byte_length(name: str) -> int:
    """Bytes of the name in UTF-8, the coding that the three protocols store (from memory)."""
    return len(name.encode())


def shortened(name: str, *, limit_bytes: int, taken: Container[str]) -> str:
    """A form of ``name`` of at most ``limit_bytes`` bytes (8 to 64) whose folded form is not ``taken``.

    Words that stand twice are dropped, then the longest word without a figure loses its last letter
    again and again, words with figures only when nothing else is left; a number at the end tells it
    from names already taken. Our own method; a person may know better.
    """
    if not 8 <= limit_bytes <= 64:
        raise ValueError("a limit of 8 to 64 bytes")
    words = list({folded(w): w for w in reversed(composed(name).split())}.values())[::-1]

    def numbered(number: int) -> str:
        end = str(number) if number > 1 else ""
        room = limit_bytes - len(end) - 1 if end else limit_bytes
        return f"{_fitted(words, room)} {end}".strip()

    return numbered(_free(lambda number: folded(numbered(number)) in taken))


def _free(taken: Callable[[int], bool]) -> int:
    """A number from 1 that is not taken, in few questions: numbers are mostly taken from 1 upwards."""
    last, free = 0, 1
    while taken(free):
        last, free = free, free * 2
    while free - last > 1:
        middle = (last + free) // 2
        last, free = (middle, free) if taken(middle) else (last, middle)
    return free


def _fitted(words: list[str], limit_bytes: int) -> str:
    kept = list(words)
    sizes = [byte_length(word) for word in kept]
    while kept and sum(sizes) + len(kept) - 1 > limit_bytes:
        letters = [i for i, word in enumerate(kept) if len(word) > 1 and not _has_figure(word)]
        longest = max(letters or range(len(kept)), key=lambda i: (sizes[i], i))
        kept[longest] = _less(kept[longest])
        sizes[longest] = byte_length(kept[longest])
        if not kept[longest]:
            del kept[longest], sizes[longest]
    return " ".join(kept)


def _has_figure(word: str) -> bool:
    return any(c.isdigit() for c in word)


def _less(word: str) -> str:
    """Without its last letter, marks and joiners included: a mark never loses its letter."""
    while word and (unicodedata.combining(word[-1]) or unicodedata.category(word[-1]) in {"Mn", "Me", "Cf"}):
        word = word[:-1]
    return word[:-1].rstrip("\u200c\u200d")
