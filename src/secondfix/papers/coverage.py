"""No character is lost on paper: what the fonts cannot draw is told before anything is set."""

import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from secondfix.papers.font import covered


@dataclass(frozen=True, slots=True)
class TextFault:
    """A text of the house that the paper's fonts cannot show, and the characters at fault."""

    text: str
    characters: str

    def __str__(self) -> str:
        names = ", ".join(
            f"U+{ord(c):04X} {unicodedata.name(c, 'a control character')}" for c in self.characters
        )
        shown = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in self.text)
        return (
            f"'{shown}' holds what the paper's fonts cannot draw: {names}; "
            "change the text or name a folder with a font that has it"
        )


def plain_text(value: Any) -> Any:
    """The same tree with composed characters (NFC) and every run of white space made one space."""
    if isinstance(value, str):
        return " ".join(unicodedata.normalize("NFC", value).split())
    if isinstance(value, dict):
        return {key: plain_text(item) for key, item in value.items()}
    if isinstance(value, list | tuple):
        return [plain_text(item) for item in value]
    return value


def text_faults(value: Any, *, extra_fonts: tuple[Path, ...] = ()) -> list[TextFault]:
    """Every text in a tree of plain values with a character that no font at hand draws.

    Typst itself leaves an empty box and says nothing. A character of the categories *control* and
    *format* (a bidirectional override, a joiner) is refused too: it changes what is read, unseen.
    """
    drawn = covered(extra_fonts)
    faults = {}
    for text in _texts(value):
        lost = [c for c in text if ord(c) not in drawn or unicodedata.category(c) in {"Cc", "Cf"}]
        if lost:
            faults[text] = TextFault(text, "".join(dict.fromkeys(lost)))
    return list(faults.values())


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for item in value.values():
            yield from _texts(item)
    elif isinstance(value, list | tuple):
        for item in value:
            yield from _texts(item)
