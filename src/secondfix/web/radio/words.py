"""How the sheets of radio call things, and how they say chances and levels."""

from collections.abc import Sequence

from secondfix.house import House
from secondfix.papers import about_words


def thing_called(house: House, thing: str) -> str:
    """The id with name and room: ``D31 Tern, Workshop``; the id alone for what has neither."""
    place, device = house.places.get(thing), house.devices.get(thing)
    name = place.name if place else device.name if device else None
    return f"{thing} {', '.join(w for w in (name, about_words(house, thing)) if w)}".strip()


def percent(chance: float) -> str:
    """A chance that never reads as certainty."""
    return "over 99 %" if chance > 0.99 else "under 1 %" if chance < 0.01 else f"{chance * 100:.0f} %"


def spanned(low: float, high: float) -> str:
    """A range of chances; one word where both ends read alike."""
    ends = percent(low), percent(high)
    return ends[0] if ends[0] == ends[1] else f"{ends[0]} to {ends[1]}"


def signed(value: float) -> str:
    """A number with its sign and one place: the true minus, and 0 without a sign."""
    return "0.0" if abs(value) < 0.05 else f"{value:+.1f}".replace("-", "\u2212")


def listed(words: Sequence[str]) -> str:
    """``a, b or c``."""
    return " or ".join((", ".join(words[:-1]), words[-1])) if len(words) > 1 else "".join(words)


def dbm(level: float) -> str:
    """A level with the true minus sign."""
    return f"{level:.0f}".replace("-", "\u2212") + " dBm"
