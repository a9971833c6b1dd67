"""A measured link, and which of a network's links it speaks of."""

from dataclasses import dataclass

LEAST_FOR_NUMBERS = 5  # below five measured links only words and the spread are shown


@dataclass(frozen=True, slots=True)
class Measured:
    """What was sent by the thing at ``a`` and read at ``b``: ids of places, devices or a network.

    A network's id is its controller. ``rssi_dbm`` is the level that the receiver told; None where it
    listened and heard nothing.
    """

    a: str
    b: str
    rssi_dbm: float | None
