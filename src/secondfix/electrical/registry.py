"""Every electrical rule, in the order of the printed list. A new rule is a module and a line here."""

from collections.abc import Callable, Iterator

from secondfix.assumptions import Assumptions
from secondfix.electrical import (
    board_label,
    borrowed_neutral,
    contact,
    depth,
    duty,
    earth_as_neutral,
    hazard,
    inrush,
    least_load,
    module_total,
    neutral,
    neutral_circuit,
    permanent_supply,
    power_loss,
    power_loss_wanted,
)
from secondfix.electrical.case import Case, case_of
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule

Answers = Callable[[Case], Iterator[Finding]]

_REGISTRY: tuple[tuple[Rule, Answers], ...] = (
    (duty.RULE, duty.answers),
    (board_label.RULE, board_label.answers),
    (earth_as_neutral.RULE, earth_as_neutral.answers),
    (neutral.RULE, neutral.answers),
    (neutral_circuit.RULE, neutral_circuit.answers),
    (borrowed_neutral.RULE, borrowed_neutral.answers),
    (contact.RULE, contact.answers),
    (module_total.RULE, module_total.answers),
    (inrush.RULE, inrush.answers),
    (least_load.RULE, least_load.answers),
    (depth.RULE, depth.answers),
    (permanent_supply.RULE, permanent_supply.answers),
    (hazard.RULE, hazard.answers),
    (power_loss.RULE, power_loss.answers),
    (power_loss_wanted.RULE, power_loss_wanted.answers),
)

RULES: tuple[Rule, ...] = tuple(rule for rule, _ in _REGISTRY)


def check(schedule: Schedule, assumptions: Assumptions) -> list[Finding]:
    """Every answer of every electrical rule, passes included: one per rule and place where it applies.

    A place is a gang (``B07.2``), a wall box (depth, earth), a device (module total, neutral), or
    ``<device>.<output>`` for what a device outside the boxes feeds. Pure; time linear in the gangs.
    """
    case = case_of(schedule, assumptions)
    return [finding for _, answers in _REGISTRY for finding in answers(case)]
