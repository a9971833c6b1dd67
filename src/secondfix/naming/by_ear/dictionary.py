"""How a word is said: from the dictionary, or by a rule that leaves no doubt; else it is not known."""

from functools import cache, lru_cache

from secondfix.naming.by_ear.pronunciations import TEXT

# Not in the dictionary and met in houses: our own transcriptions, in US English, from memory.
_OURS = {
    "annexe": "AE1 N EH2 K S",
    "bidet": "B IH0 D EY1",
    "cornice": "K AO1 R N AH0 S",
    "coving": "K OW1 V IH0 NG",
    "duvet": "D UW0 V EY1",
    "ensuite": "AA2 N S W IY1 T",
    "extractor": "IH0 K S T R AE1 K T ER0",
    "lodger": "L AA1 JH ER0",
    "maisonette": "M EY2 Z AH0 N EH1 T",
    "nought": "N AO1 T",
    "orangery": "AO1 R AH0 N JH ER0 IY0",
    "scullery": "S K AH1 L ER0 IY0",
    "settee": "S EH0 T IY1",
    "terrarium": "T ER0 EH1 R IY0 AH0 M",
    "uplight": "AH1 P L AY2 T",
    "verandah": "V ER0 AE1 N D AH0",
}
# Second halves of the names of rooms and fittings. The stress of such a compound is on its first half.
_SECOND = frozenset({
    "board", "box", "down", "fire", "floor", "hall", "house", "lamp", "light", "pit", "room", "shade",
    "side", "splash", "stair", "top", "way", "work", "yard",
})  # fmt: skip
_HISSING = frozenset({"S", "Z", "SH", "ZH", "CH", "JH"})
_VOICELESS = frozenset({"P", "T", "K", "F", "TH"})


@cache
def dictionary() -> dict[str, tuple[str, ...]]:
    """Word to phones; made at the first question, some milliseconds."""
    lines = (line.split() for line in TEXT.splitlines())
    ours = {word: tuple(phones.split()) for word, phones in _OURS.items()}
    return ours | {word: tuple(phones) for word, *phones in lines}


@lru_cache(maxsize=8192)
def pronounced(word: str) -> tuple[str, ...] | None:
    """The phones of a word in small letters, vowels with their stress; None where it is not known.

    Beyond the dictionary: 's and the plural, by the last sound (hissing, voiceless, other), and compounds
    of a known word of three letters or more with a common second half. US English, one way of saying each.
    """
    known = dictionary().get(word)
    return known or _with_ending(word) or _compound(word)


def _with_ending(word: str) -> tuple[str, ...] | None:
    for ending in ("'s", "s'", "es", "s"):
        base = word.removesuffix(ending)
        phones = (dictionary().get(base) or _compound(base)) if base != word else None
        if phones and (ending != "es" or phones[-1] in _HISSING):
            return (*phones, *_s_after(phones[-1]))
    return None


def _s_after(last: str) -> tuple[str, ...]:
    if last in _HISSING:
        return ("IH0", "Z")
    return ("S",) if last in _VOICELESS else ("Z",)


def _compound(word: str) -> tuple[str, ...] | None:
    for cut in range(3, len(word) - 2):
        first, second = dictionary().get(word[:cut]), word[cut:]
        if first and second in _SECOND:
            return (*first, *(p.replace("1", "2") for p in dictionary()[second]))
    return None
