"""Select: which models fit each place, which rule refuses each other one, what would help."""

from collections.abc import Collection, Mapping

from secondfix import selection
from secondfix.actions.leaned import leaned_as_json
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumption, Assumptions
from secondfix.catalogue import Model
from secondfix.house import House
from secondfix.selection import PlaceChoice
from secondfix.terms import Protocol


def select(
    house: House,
    *,
    models: Mapping[str, Model],
    assumptions: Assumptions,
    places: Collection[str] | None = None,
    protocol: Protocol | None = None,
) -> tuple[PlaceChoice, ...]:
    """Ask for every place (or those in ``places``) among the models at hand."""
    settled = settled_assumptions(house, assumptions)
    return selection.select(house, models, settled, places=places, protocol=protocol)


def leaning(
    house: House, choices: tuple[PlaceChoice, ...], *, assumptions: Assumptions
) -> tuple[Assumption, ...]:
    """What the verdicts lean on, as settled for the house, by name."""
    settled = settled_assumptions(house, assumptions)
    return tuple(settled[name] for name in sorted({name for c in choices for name in c.leans_on}))


def selected_as_json(
    choices: tuple[PlaceChoice, ...], leaned: tuple[Assumption, ...] = ()
) -> dict[str, object]:
    """``places``, one object for each answer, and ``assumptions`` (docs/json.md)."""
    return {"places": [selection.choice_as_json(c) for c in choices], **leaned_as_json(leaned)}


def exit_code(choices: tuple[PlaceChoice, ...]) -> int:
    """1 a place that no model fits, else 3 one where it cannot be told, else 0.

    A light point whose loads a gang feeds already is another way to do it: nothing is lacking without one.
    """
    without = [c for c in choices if not c.fits and not c.spot.instead_of]
    if any(not c.doubts for c in without):
        return 1
    return 3 if without else 0
