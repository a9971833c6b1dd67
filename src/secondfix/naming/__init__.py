"""Names: what every entry in the controller is called, by the house's policy, and what is wrong with it.

A name is only a name: a device is known on its network by its address and endpoint.
"""

from secondfix.naming.as_json import names_as_json
from secondfix.naming.by_ear import sound_not_asked
from secondfix.naming.check import RULES, check
from secondfix.naming.entries import Entry, EntryKind, Names, names
from secondfix.naming.folding import folded
from secondfix.naming.named import place_of
from secondfix.naming.shortening import shortened

__all__ = [
    "RULES",
    "Entry",
    "EntryKind",
    "Names",
    "check",
    "folded",
    "names",
    "names_as_json",
    "place_of",
    "shortened",
    "sound_not_asked",
]
