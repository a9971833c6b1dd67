"""How a surveyed value is known."""

from enum import StrEnum


class Known(StrEnum):
    """Strongest first. ``assumed`` settles nothing: a check treats it as unknown."""

    MEASURED = "measured"
    SEEN_OPEN = "seen_open"
    TOLD = "told"
    ASSUMED = "assumed"


KNOWN_LABELS: dict[Known, str] = {
    Known.MEASURED: "measured",
    Known.SEEN_OPEN: "seen open",
    Known.TOLD: "told",
    Known.ASSUMED: "assumed",
}
