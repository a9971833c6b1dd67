"""Pictures of radio: each network on each storey as SVG, and what to do first where none can be drawn."""

from collections.abc import Iterator

from secondfix import radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.house import House, schedule
from secondfix.papers import RadioShown, radio_svg, what_first


def radio_pictures(
    house: House,
    answer: radio.Reach,
    *,
    assumptions: Assumptions,
    learned: radio.Learned | None = None,
    numbers: bool = False,
) -> Iterator[tuple[str, bytes]]:
    """Names of files and pictures, one at a time: ``radio-N1-G.svg`` is network N1 on storey G.

    Storeys of which nothing is drawn have none. ``numbers``: with lines of equal margin.
    """
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    for network in answer.networks:
        for storey in house.storeys:
            covered = radio.cover(rows, settled, answer, network, storey, learned=learned)
            if covered.inside.any():
                shown = RadioShown(answer, network, covered, numbers=numbers)
                yield f"radio-{network}-{storey}.svg", radio_svg(rows, storey, shown).encode()


def lacking_for_pictures(house: House, answer: radio.Reach) -> tuple[str, ...]:
    """What to do first, a sentence each, before the networks can be drawn that cannot be now."""
    rows = schedule(house, house.models)
    lost = (key for key in house.networks if key not in answer.networks)
    return tuple(line for key in lost for line in what_first(rows, key))
