"""From a name as it is written to the words that are said."""

import re
import unicodedata
from functools import lru_cache

from secondfix.naming.by_ear.dictionary import pronounced
from secondfix.naming.by_ear.numbers import read_number, read_ordinal

_WORDS = re.compile(r"([0-9]+)(st|nd|rd|th)?(?![a-z])|[0-9]+|[^\W\d_]+(?:['’][^\W\d_]+)*|&")
_LONGEST_SPELT = 4


@lru_cache(maxsize=8192)
def words_of(name: str) -> tuple[str, ...]:
    """The words of a name, in small letters without accents, numbers read out; signs are not said.

    A word of up to four consonants that the dictionary lacks can only be spelt: ``WC`` is 'w', 'c'.
    """
    bare = "".join(c for c in unicodedata.normalize("NFKD", name) if not unicodedata.combining(c))
    return tuple(word for found in _WORDS.finditer(bare.casefold()) for word in _read(found))


def _read(found: re.Match[str]) -> tuple[str, ...]:
    text = found[0].replace("’", "'")
    if text == "&":
        return ("and",)
    if text[0].isdecimal():
        return read_ordinal(found[1]) if found[2] else read_number(text)
    if _is_spelt(text):
        return tuple(text)
    return (text,)


def _is_spelt(text: str) -> bool:
    short = len(text) <= _LONGEST_SPELT and text.isascii() and text.isalpha()
    return short and not set("aeiouy") & set(text) and pronounced(text) is None


def distinguishing(a: tuple[str, ...], b: tuple[str, ...]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Both without the words that they share, wherever these stand; the order of the rest is kept."""
    return _without(a, b), _without(b, a)


def _without(words: tuple[str, ...], others: tuple[str, ...]) -> tuple[str, ...]:
    left = list(others)
    kept = []
    for word in words:
        if word in left:
            left.remove(word)
        else:
            kept.append(word)
    return tuple(kept)
