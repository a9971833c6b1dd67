"""Selection: which models fit each place, which rule refuses each other one, and what would help."""

from secondfix.selection.as_json import choice_as_json
from secondfix.selection.choice import Doubt, Fit, Help, PlaceChoice, Refusal, Spot, WantedGang
from secondfix.selection.selecting import select
from secondfix.selection.suits import RULES, printed_for

__all__ = [
    "RULES",
    "Doubt",
    "Fit",
    "Help",
    "PlaceChoice",
    "Refusal",
    "Spot",
    "WantedGang",
    "choice_as_json",
    "printed_for",
    "select",
]
