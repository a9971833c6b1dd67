"""Our own sentences in the words of a house that follows NFPA 70.

Only sentences of the code are given here, never a name that a user wrote: a room may be called anything.
"""

import re
from collections.abc import Iterable

# What makes a circuit dead. NFPA 70E article 120 (secondary) calls the end of it an electrically safe work
# condition; lock, tag and test as 29 CFR 1910.333(b)(2) has them (secondary; the wording from memory).
_DEAD: dict[str, str] = {
    "lock off": "lock out and tag",
    "prove dead": "test for absence of voltage",
    "proved dead": "tested for absence of voltage",
    "isolate": "de-energize",
    "isolates": "de-energizes",
    "isolated": "de-energized",
    "isolation": "lockout",
    "isolations": "lockouts",
    "energise": "energize",
    "energises": "energizes",
    "energised": "energized",
    "live work": "energized work",
}
# Things that the trade calls otherwise there: NEC Article 100 (from memory); trade use.
_THINGS: dict[str, str] = {
    "distribution board": "panelboard",
    "board": "panelboard",
    "protective conductor": "equipment grounding conductor",
    "earth": "ground",
    "socket": "receptacle",
    "sockets": "receptacles",
}
_ALL = {**_DEAD, **_THINGS}


def _pattern(words: Iterable[str]) -> re.Pattern[str]:
    longest_first = sorted(map(re.escape, words), key=len, reverse=True)
    return re.compile(rf"\b({'|'.join(longest_first)})\b", re.IGNORECASE)


_WORD = _pattern(_ALL)
# In sentences in which names stand already: only what nobody is likely to call a room or a load.
_RARE = {k: v for k, v in _ALL.items() if k in _DEAD and not k.startswith("isolation")}
_RARE["protective conductor"] = _ALL["protective conductor"]
_RARE_WORD = _pattern(_RARE)


def said(words: str, *, nec: bool) -> str:
    """Words of our own as the house says them: ``isolate`` is ``de-energize`` where it follows NFPA 70."""
    return _WORD.sub(_instead, words) if nec else words


def said_around_names(words: str, *, nec: bool) -> str:
    """The same for a sentence in which names of a user's stand: only words that are rare in names."""
    return _RARE_WORD.sub(_instead, words) if nec else words


def _instead(found: re.Match[str]) -> str:
    word = found[0]
    new = _ALL[word.lower()]
    return new[0].upper() + new[1:] if word[0].isupper() else new
