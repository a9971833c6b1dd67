"""Who was heard on the air: transmitters of a channel survey."""

from dataclasses import dataclass
from enum import StrEnum


class Sends(StrEnum):
    """What kind of network a transmitter belongs to: wireless LAN, or a mesh of IEEE 802.15.4."""

    WIFI = "wifi"
    MESH = "mesh"


@dataclass(frozen=True, slots=True)
class Transmitter:
    """One transmitter at 2.4 GHz as a channel survey heard it.

    ``channel`` is its own numbering's: 1 to 14 (wifi), 11 to 26 (mesh). ``width_mhz``: 20 or 40 (OFDM), 22
    (DSSS); 2 (mesh). One 40 MHz wide names its ``second_channel`` too, four away. ``level_dbm`` is the whole
    power received while it sends; ``duty_permille`` the share of time that it sends, None where not known.
    ``place`` is where it was heard (a box or place), None: it stands for the whole house.
    """

    kind: Sends
    channel: int
    width_mhz: int
    level_dbm: int
    duty_permille: int | None = None
    place: str | None = None
    name: str = ""
    second_channel: int | None = None
