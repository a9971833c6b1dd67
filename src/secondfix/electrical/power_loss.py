"""After a power loss: what must not start by itself, and what must not stay off."""

from collections.abc import Iterator

from secondfix.electrical.case import Case, Contact
from secondfix.electrical.permanent_supply import KEPT, VITAL
from secondfix.electrical.returning import state_look, states_of, words_of
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import purpose_look
from secondfix.terms import POWER_LOSS_LABELS, PURPOSES, PowerLossState, Purpose

RULE = Rule(
    "power_loss",
    "When power returns, does nothing dangerous start and nothing vital stay off?",
    "common practice, no source",
)
# 'As it was' may be on.
_MUST_RETURN_OFF = {
    Purpose.HEATER_PORTABLE: Severity.DANGER,
    Purpose.HEATER_RADIANT: Severity.DANGER,
    Purpose.HEATER_FIXED: Severity.DANGER,
    Purpose.WATER_HEATER: Severity.DANGER,
    Purpose.COOKING: Severity.DANGER,
    Purpose.SAUNA: Severity.DANGER,
    Purpose.GATE: Severity.DANGER,
    Purpose.COVERING: Severity.FAULT,
}
_ON = frozenset({PowerLossState.ON, PowerLossState.LAST})


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact whose load's purpose gives the returning state a weight, or is not known."""
    for contact in case.contacts:
        purpose = contact.load.purpose
        if purpose is None:
            says = (
                f"What {contact.load_words} is for is not known: perhaps something never to start by itself."
            )
            looks = [purpose_look(contact.load_id, contact.load_words)]
            yield cannot_tell(
                RULE, Severity.DANGER, contact.place, says, looks=looks, value=words_of(states_of(contact))
            )
        elif purpose in _MUST_RETURN_OFF:
            yield _answer(contact, purpose, _ON, _MUST_RETURN_OFF[purpose])
        elif purpose in VITAL | KEPT:
            yield _answer(contact, purpose, frozenset({PowerLossState.OFF}), Severity.FAULT)


def _answer(
    contact: Contact, purpose: Purpose, wrong: frozenset[PowerLossState], severity: Severity
) -> Finding:
    states = states_of(contact)
    value, also = words_of(states), (contact.device_id, contact.load_id)
    off = PowerLossState.OFF in wrong
    limit = "must not return off" if off else POWER_LOSS_LABELS[PowerLossState.OFF]
    if states and not wrong.intersection(states):
        return passes(RULE, contact.place, value=value, limit=limit, also=also)
    if not states or not wrong.issuperset(states):
        says = f"What the contact of {contact.load_words} does when power returns is not known."
        looks = [state_look(contact)]
        return cannot_tell(
            RULE, severity, contact.place, says, looks=looks, value=value, limit=limit, also=also
        )
    does = "stays off" if off else "may start by itself"
    policy = PURPOSES[purpose]
    return fails(
        RULE,
        severity,
        contact.place,
        f"{contact.load_words}, {policy.label}, {does} when power returns: {policy.hazard}.",
        value=value,
        limit=limit,
        remedy="Feed it straight from its circuit, or take a device that returns on."
        if off
        else "Set the device to return off, or take one that does.",
        also=also,
    )
