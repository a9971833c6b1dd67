"""The assumptions that an answer uses: defaults, over them the firm's, over those the house's."""

from secondfix.assumptions import Assumptions, Override
from secondfix.house import House


def settled_assumptions(house: House, firm: Assumptions) -> Assumptions:
    """The resolved set for a house that ``read_house`` accepted (so its choices name what exists)."""
    choices = {n: Override(c.value, c.low, c.high, c.source) for n, c in house.assumptions.items()}
    return firm.overridden(choices, set_by="house")
