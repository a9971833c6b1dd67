"""Radio: is it likely to carry every device to its controller, and on whom does each hang?"""

from secondfix.radio.answers import Chances, DeviceReach, Link, Reach, Word
from secondfix.radio.as_json import reach_as_json
from secondfix.radio.margins import margins_after_spread
from secondfix.radio.network import MOST_HOPS
from secondfix.radio.paths import Paths, find_paths
from secondfix.radio.question import reach
from secondfix.radio.rules import RULES
from secondfix.radio.sending import sending
from secondfix.radio.stations import link_look

__all__ = [
    "MOST_HOPS",
    "RULES",
    "Chances",
    "DeviceReach",
    "Link",
    "Paths",
    "Reach",
    "Word",
    "find_paths",
    "link_look",
    "margins_after_spread",
    "reach",
    "reach_as_json",
    "sending",
]
