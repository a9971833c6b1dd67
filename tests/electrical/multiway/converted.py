"""Wirings of a light after its conversion: every assignment of roles to the cores, as graphs."""

from collections.abc import Iterator
from itertools import combinations_with_replacement, product

from secondfix.electrical.multiway import LAMP, Role, Wish
from secondfix.electrical.multiway.conductors import Chain
from secondfix.electrical.multiway.graph import Module, Push, Source, Tie, Wiring

ROLES = (Role.CAPPED, Role.LINE, Role.NEUTRAL, Role.SIGNAL, Role.SWITCHED)


def wirings(
    chain: Chain, wish: Wish, *, foreign: bool = False, wanted_only: bool = False
) -> Iterator[Wiring]:
    """Each way to use the cores; which of two cores in a run takes which role makes no difference.

    ``foreign``: the pushes have line of another circuit, as it was found in their boxes. ``wanted_only``:
    no core becomes a signal that nobody gives, or a neutral that nobody takes.
    """
    useless = set() if wish.inputs else {Role.SIGNAL}
    useless |= set() if wish.needs_neutral else {Role.NEUTRAL}
    roles = [r for r in ROLES if not (wanted_only and r in useless)]
    per_run = [combinations_with_replacement(roles, len(run.cores)) for run in chain.runs]
    for taken in product(*per_run):
        yield wiring(chain, wish, taken, foreign=foreign)


def wiring(chain: Chain, wish: Wish, taken: tuple[tuple[Role, ...], ...], *, foreign: bool = False) -> Wiring:
    """The graph of one assignment: in each point, cores of one role are joined."""
    ties: list[Tie] = [
        ((run.a, role.value), (run.b, role.value))
        for run, roles in zip(chain.runs, taken, strict=True)
        for role in roles
        if role is not Role.CAPPED
    ]
    line_at, neutral_at = wish.line_at | {chain.line_at}, wish.neutral_at | {LAMP}
    if not chain.runs:
        line_at = line_at | {wish.module}
        ties.append(((wish.module, Role.SWITCHED.value), (LAMP, Role.SWITCHED.value)))
    sources = [Source((p, Role.LINE.value), "C1", "line") for p in sorted(line_at)]
    sources += [Source((p, Role.NEUTRAL.value), "C1", "neutral") for p in sorted(neutral_at)]
    pushed = "line of C2" if foreign else Role.LINE.value
    if foreign:
        sources += [Source((p, pushed), "C2", "line") for p in sorted(wish.inputs)]
    module = Module(
        (wish.module, Role.LINE.value),
        (wish.module, Role.SWITCHED.value),
        (wish.module, Role.NEUTRAL.value) if wish.needs_neutral else None,
        ((wish.module, Role.SIGNAL.value),) if wish.inputs else (),
    )
    pushes = tuple(Push((p, pushed), (p, Role.SIGNAL.value)) for p in sorted(wish.inputs))
    lamp = ((LAMP, Role.SWITCHED.value), (LAMP, Role.NEUTRAL.value))
    return Wiring(tuple(sources), tuple(ties), lamp, modules=(module,), pushes=pushes)
