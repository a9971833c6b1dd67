"""A worksheet in parts, as the paper and the page lay it out."""

from collections.abc import Sequence

from secondfix.joining import ISOLATION, Worksheet
from secondfix.papers.words import sentence
from secondfix.terms import said

_CLOSED = "No wall box is opened for this device. If one must be: isolate, lock off, prove dead."


def caution_words(w: Worksheet, *, nec: bool) -> tuple[str, list[str]]:
    """What leads, and the rest: with mains in the box the isolation leads; without, what is left to mind."""
    items = [c.words for c in w.cautions]
    items += [sentence(m.value) for m in w.marks]
    if w.isolate:
        return w.isolate, [ISOLATION[0].words, *items]
    return said(_CLOSED, nec=nec), items


def removal_parts(sentences: Sequence[str]) -> list[tuple[str, list[str]]]:
    """Sentences that end in a colon, and the first, lead; with each the steps that follow it."""
    parts: list[tuple[str, list[str]]] = []
    for words in sentences:
        if not parts or words.endswith(":"):
            parts.append((words, []))
        else:
            parts[-1][1].append(words)
    return parts


def settings_of(w: Worksheet) -> list[str]:
    """What is set on it besides names and purposes: the state after a power loss, limits to its time on."""
    return [sentence(words) for words in (w.power_loss, *w.time_limits) if words]
