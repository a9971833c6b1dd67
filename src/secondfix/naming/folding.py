"""When two names read alike, and which characters no name may hold (Unicode Standard, general categories)."""

import unicodedata

_JOINERS = {"\u200c", "\u200d"}  # some scripts cannot be written without them
_UNPRINTED = {"Cc", "Cf", "Cs", "Zl", "Zp"}


def composed(name: str) -> str:
    """The name in Unicode Normalization Form C (UAX #15), spaces folded, characters without ink left out.

    So what is printed never moves a cursor or turns the direction of a line.
    """
    printed = name.isprintable()  # the common case, and much the faster
    inked = name if printed else "".join(c for c in name if c.isspace() or not unprinted(c))
    return " ".join(unicodedata.normalize("NFC", inked).split())


def folded(name: str) -> str:
    """Equal for names that a reader takes for the same.

    Case folded, spaces folded, Normalization Form C, characters without ink left out. Leaves out
    look-alike letters of different alphabets and sound-alikes.
    """
    printed = name.isprintable()
    inked = name if printed else "".join(c for c in name if unicodedata.category(c) != "Cf")
    return composed(unicodedata.normalize("NFC", inked).casefold())


def unprinted(name: str) -> tuple[str, ...]:
    """Control characters, direction overrides and other characters without ink, as ``U+202E``.

    The two joiners U+200C and U+200D are let pass.
    """
    if name.isprintable():
        return ()
    found = (c for c in name if unicodedata.category(c) in _UNPRINTED and c not in _JOINERS)
    return tuple(f"U+{ord(c):04X}" for c in dict.fromkeys(found))
