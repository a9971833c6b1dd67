"""Foresee: who is reached in draws, and who falls when something goes, trips or moves."""

from collections.abc import Callable, Sequence

from secondfix import radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.house import House, schedule


def foresee(
    house: House,
    *,
    assumptions: Assumptions,
    measured: Sequence[radio.Measured] = (),
    heard: radio.Heard | None = None,
    draws: int = radio.DRAWS,
    seed: int = 1,
    moves: Sequence[str] | None = None,
    progress: Callable[[str], None] = lambda _: None,
) -> radio.Foreseen:
    """Every network of the house drawn, whole and in each case; see `radio.foresee`.

    ``measured`` and ``heard`` are what the journal tells of links and of others on the air.
    """
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    answer = radio.reach(rows, settled)
    return radio.foresee(
        rows,
        settled,
        answer,
        measured=measured,
        heard=heard,
        draws=draws,
        seed=seed,
        moves=moves,
        progress=progress,
    )
