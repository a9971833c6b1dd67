"""What others send into a receiver's channel."""

from dataclasses import dataclass

from secondfix.radio.crossing import Floats


@dataclass(frozen=True, slots=True, eq=False)
class Interference:
    """Sources heard at each station of a network, in the order of its stations.

    ``level_dbm`` (stations, sources): power within the receiver's own channel while the source sends;
    minus infinity where none arrives. ``duty`` (sources): share of the time that it sends, 0 to 1.
    """

    level_dbm: Floats
    duty: Floats
