"""Our own sentences in the words of a house that follows NFPA 70.

Only sentences of the code are given here, never a name that a user wrote: a room may be called anything.
"""

import re

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
_WORD = re.compile(rf"\b({'|'.join(sorted(map(re.escape, _ALL), key=len, reverse=True))})\b", re.IGNORECASE)
# Whole phrases that no name of a user's is likely to hold, for sentences in which names stand already.
_PHRASES: tuple[str, ...] = (
    "isolate, lock off, prove dead",
    "isolate, prove dead",
    "isolate and prove dead",
    "isolate both circuits",
    "lock off",
    "prove dead",
    "proved dead",
    "protective conductor",
)
_PHRASE = re.compile(rf"\b({'|'.join(map(re.escape, _PHRASES))})\b", re.IGNORECASE)


def said(words: str, *, nec: bool) -> str:
    """Words of our own as the house says them: ``isolate`` is ``de-energize`` where it follows NFPA 70."""
    return _WORD.sub(_instead, words) if nec else words


def said_around_names(words: str, *, nec: bool) -> str:
    """The same for a sentence in which names of a user's stand: whole phrases alone are replaced."""
    return _PHRASE.sub(lambda found: said(found[0], nec=nec), words) if nec else words


def _instead(found: re.Match[str]) -> str:
    word = found[0]
    new = _ALL[word.lower()]
    return new[0].upper() + new[1:] if word[0].isupper() else new
