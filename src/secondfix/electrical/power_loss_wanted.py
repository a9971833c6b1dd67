"""After a power loss: the state that was asked for."""

from collections.abc import Iterator

from secondfix.electrical.case import Case, Contact
from secondfix.electrical.returning import state_look, states_of, words_of
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.terms import POWER_LOSS_LABELS, PowerLossState

RULE = Rule(
    "power_loss_wanted",
    "When power returns, does the load return as was asked for?",
    "common practice, no source: the data sheet states what can be set",
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact whose load states what is wanted."""
    for contact in case.contacts:
        if contact.load.after_power_loss is not None:
            yield _answer(contact, contact.load.after_power_loss)


def _answer(contact: Contact, wanted: PowerLossState) -> Finding:
    states = states_of(contact)
    value, limit, also = words_of(states), POWER_LOSS_LABELS[wanted], (contact.device_id, contact.load_id)
    if states == (wanted,):
        return passes(RULE, contact.place, value=value, limit=limit, also=also)
    if not states or wanted in states:
        says = f"What the contact of {contact.load_words} does when power returns is not known."
        looks = [state_look(contact)]
        return cannot_tell(
            RULE, Severity.FAULT, contact.place, says, looks=looks, value=value, limit=limit, also=also
        )
    return fails(
        RULE,
        Severity.FAULT,
        contact.place,
        f"{contact.load_words} does not return as was asked for.",
        value=value,
        limit=limit,
        remedy="Set the device to the state that is wanted, or take one that can be set so.",
        also=also,
    )
