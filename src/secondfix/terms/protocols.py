"""Radio protocols and their own words (Zigbee, Z-Wave, Matter specifications)."""

from dataclasses import dataclass
from enum import StrEnum


class Protocol(StrEnum):
    """The three that this book joins."""

    ZIGBEE = "zigbee"
    ZWAVE = "zwave"
    MATTER_THREAD = "matter_thread"


@dataclass(frozen=True, slots=True)
class ProtocolWords:
    """What worksheets print: the standard's own verb for each act.

    ``whole_entry`` is the number of the endpoint that stands for the whole device
    (Z-Wave root device 0), or None where the standard has no such switch entry.
    """

    label: str
    join: str
    joined: str
    remove: str
    controller: str
    window: str
    whole_entry: int | None


PROTOCOLS: dict[Protocol, ProtocolWords] = {
    Protocol.ZIGBEE: ProtocolWords(
        "Zigbee", "join", "joined", "leave", "coordinator", "open the network for joining", None
    ),
    Protocol.ZWAVE: ProtocolWords(
        "Z-Wave", "include", "included", "exclude", "controller", "start inclusion", 0
    ),
    Protocol.MATTER_THREAD: ProtocolWords(
        "Matter over Thread",
        "commission",
        "commissioned",
        "remove from the fabric",
        "controller",
        "start commissioning",
        None,
    ),
}
