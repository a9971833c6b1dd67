"""Permanent supply: a load that must keep its supply does not hang behind a contact."""

from collections.abc import Iterator

from secondfix.electrical.case import Case, Contact
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import purpose_look, settled
from secondfix.terms import PURPOSES, Purpose

RULE = Rule(
    "permanent_supply",
    "Does no load that needs its supply at all times hang behind a contact?",
    "common practice, no source",
)
# Loss of supply is itself the hazard: no survey makes a contact in front of these right.
VITAL = frozenset({Purpose.EMERGENCY_LIGHT, Purpose.ALARM, Purpose.MEDICAL, Purpose.LIFT})
# Loss of supply does harm, unless the survey says that this one may be switched.
KEPT = frozenset({Purpose.REFRIGERATION, Purpose.NETWORK_EQUIPMENT, Purpose.ANIMAL_CARE})


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact where the survey speaks, or where the purpose makes the question plausible."""
    for contact in case.contacts:
        purpose, needs = contact.load.purpose, settled(contact.load.permanent_supply)
        if needs or purpose in VITAL or (purpose in KEPT and needs is None):
            yield _danger(contact)
        elif purpose is None or (purpose is Purpose.EXTRACT_FAN and needs is None):
            yield _ask(contact, purpose, needs)
        elif needs is False:
            yield passes(RULE, contact.place, value="may be switched", also=_also(contact))


def _also(contact: Contact) -> tuple[str, ...]:
    return contact.device_id, contact.load_id


def _danger(contact: Contact) -> Finding:
    purpose = contact.load.purpose
    hazard = PURPOSES[purpose].hazard if purpose else ""
    return fails(
        RULE,
        Severity.DANGER if purpose in VITAL else Severity.FAULT,
        contact.place,
        f"{contact.load_words} needs its supply at all times and hangs behind a contact"
        f"{f': {hazard}' if hazard else ''}.",
        value="supply through a contact",
        limit="supply at all times",
        remedy="Feed it straight from its circuit; switch it, if at all, by a control input of its own.",
        also=_also(contact),
    )


def _ask(contact: Contact, purpose: Purpose | None, needs: bool | None) -> Finding:
    looks = []
    if purpose is None:
        looks.append(purpose_look(contact.load_id, contact.load_words))
    if needs is None:
        words = f"see whether {contact.load_words} runs on, or needs its supply at all times"
        looks.append(Look(contact.load_id, "permanent_supply", words))
    says = f"Whether {contact.load_words} needs its supply at all times is not known."
    return cannot_tell(
        RULE,
        Severity.FAULT if purpose else Severity.DANGER,
        contact.place,
        says,
        looks=looks,
        limit="supply at all times where it is needed",
        also=_also(contact),
    )
