"""Select: for every place, which models fit, which rule refuses each other one, and what would help."""

from collections.abc import Collection, Mapping

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.house import House
from secondfix.selection.choice import PlaceChoice, Spot
from secondfix.selection.ground import Ground
from secondfix.selection.helping import helps
from secondfix.selection.judging import judged
from secondfix.selection.spots import spots
from secondfix.terms import Protocol


def select(
    house: House,
    models: Mapping[str, Model],
    assumptions: Assumptions,
    *,
    places: Collection[str] | None = None,
    protocol: Protocol | None = None,
) -> tuple[PlaceChoice, ...]:
    """One answer for each switch-to-be and each light point, in the document's order.

    ``models`` are those to choose from; ``places`` ids of boxes and places (None: all; ids that do not exist
    give no answer); ``protocol`` the only one wanted (None: the device's network decides, else the house's
    networks). The rules are the electrical ones, asked with the model in place, and ``RULES`` of here.
    Pure; linear in places times models. Leaves out what no rule at the place tells: radio, price, and rules
    that sum over a whole circuit, which `check` asks once the choice is made.
    """
    ground = Ground(house, models, assumptions)
    wanted = None if places is None else frozenset(places)
    return tuple(_choice(ground, spot) for spot in spots(ground, wanted, protocol))


def _choice(ground: Ground, spot: Spot) -> PlaceChoice:
    fits, doubts, refused, leans_on = judged(ground, spot)
    helping = () if fits else helps(ground, spot, refused)
    return PlaceChoice(spot, fits, doubts, refused, helping, leans_on)
