"""Every electrical rule, in the order of the printed list. A new rule is a module and a line here."""

from collections.abc import Callable, Iterator

from secondfix.assumptions import Assumptions
from secondfix.electrical import (
    bath_zone,
    board_label,
    borrowed_neutral,
    box_asked,
    box_fill,
    breaker_inrush,
    circuit_load,
    contact,
    depth,
    dimmed_socket,
    dimming,
    duty,
    earth_as_neutral,
    ganged_dimmers,
    glow,
    hazard,
    inrush,
    least_load,
    metal_earthed,
    mixed_loads,
    module_total,
    multiway,
    nec_motor,
    nec_no_neutral,
    neutral,
    neutral_circuit,
    neutral_through,
    permanent_supply,
    power_loss,
    power_loss_wanted,
    reversing,
    shared_neutral,
    transformer,
    two_supplies,
)
from secondfix.electrical.case import Case, case_of
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule

Answers = Callable[[Case], Iterator[Finding]]

_REGISTRY: tuple[tuple[Rule, Answers], ...] = (
    (duty.RULE, duty.answers),
    (board_label.RULE, board_label.answers),
    (two_supplies.RULE, two_supplies.answers),
    (earth_as_neutral.RULE, earth_as_neutral.answers),
    (metal_earthed.RULE, metal_earthed.answers),
    (bath_zone.RULE, bath_zone.answers),
    (neutral.RULE, neutral.answers),
    (neutral_circuit.RULE, neutral_circuit.answers),
    (borrowed_neutral.RULE, borrowed_neutral.answers),
    (shared_neutral.RULE, shared_neutral.answers),
    (neutral_through.RULE, neutral_through.answers),
    (contact.RULE, contact.answers),
    (module_total.RULE, module_total.answers),
    (circuit_load.RULE, circuit_load.answers),
    (inrush.RULE, inrush.answers),
    (breaker_inrush.RULE, breaker_inrush.answers),
    (least_load.RULE, least_load.answers),
    (glow.RULE, glow.answers),
    (dimming.RULE, dimming.answers),
    (dimmed_socket.RULE, dimmed_socket.answers),
    (mixed_loads.RULE, mixed_loads.answers),
    (transformer.RULE, transformer.answers),
    (ganged_dimmers.RULE, ganged_dimmers.answers),
    (nec_motor.RULE, nec_motor.answers),
    (reversing.RULE, reversing.answers),
    (nec_no_neutral.RULE, nec_no_neutral.answers),
    (depth.RULE, depth.answers),
    (box_fill.RULE, box_fill.answers),
    (box_asked.RULE, box_asked.answers),
    (permanent_supply.RULE, permanent_supply.answers),
    (hazard.RULE, hazard.answers),
    (power_loss.RULE, power_loss.answers),
    (power_loss_wanted.RULE, power_loss_wanted.answers),
    *multiway.REGISTRY,
)

RULES: tuple[Rule, ...] = tuple(rule for rule, _ in _REGISTRY)


def check(schedule: Schedule, assumptions: Assumptions) -> list[Finding]:
    """Every answer of every electrical rule, passes included: one per rule and place where it applies.

    A place is a gang (``B07.2``), a wall box (depth, earth), a device (module total, neutral), or
    ``<device>.<output>`` for what a device outside the boxes feeds. Pure; time linear in the gangs.
    """
    case = case_of(schedule, assumptions)
    return [finding for _, answers in _REGISTRY for finding in answers(case)]
