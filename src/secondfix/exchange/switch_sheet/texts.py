"""A value and its text: how it is known stands behind a surveyed one in brackets."""

import re
from typing import Any

from secondfix.exchange.switch_sheet.cells import Cell, Unreadable
from secondfix.house import Fact, House
from secondfix.terms import KNOWN_LABELS, Known

_SAID = re.compile(rf"^(.*\S)\s*\(({'|'.join(KNOWN_LABELS.values())})\)$", re.IGNORECASE | re.DOTALL)
_BY_WORD = {label: known for known, label in KNOWN_LABELS.items()}
LONGEST_TEXT = 500


def text_of(cell: Cell, value: Any, house: House) -> str:
    """``35 (measured)`` for a fact, ``35`` for a plain value, empty for what is not stated."""
    if value is None or value == "":
        return ""
    if isinstance(value, Fact):
        return f"{cell.shown(value.value, house)} ({KNOWN_LABELS[value.known]})"
    return cell.shown(value, house)


def value_of(cell: Cell, text: str, house: House, *, fact: bool, known: Known) -> Any | Unreadable:
    """The plain value of a text that is not empty; ``known`` is how a fact without a word for it is known."""
    if not fact:
        return cell.read(text, house)
    said = _SAID.match(text)
    how = _BY_WORD[said[2].casefold()] if said else known
    value = cell.read(said[1] if said else text, house)
    return value if isinstance(value, Unreadable) else {"value": value, "known": how.value}
