"""Texts of the sheets as markup."""

from html import escape

from secondfix.terms import KNOWN_LABELS

_KNOWN = {f"{label})" for label in KNOWN_LABELS.values()}


def softened(text: str) -> str:
    """How a value is known in a smaller hand behind it; the text is the same, every sign of it escaped."""
    head, bracket, known = text.rpartition(" (")
    if bracket and known in _KNOWN:
        return f"{escape(head)}<small> ({known}</small>"
    return escape(text)
