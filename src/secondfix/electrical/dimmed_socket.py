"""Dimmed socket: nobody knows what will be plugged into a socket behind a dimmer."""

from collections.abc import Iterator

from secondfix.catalogue import Output
from secondfix.electrical.case import Case, Contact
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import purpose_look
from secondfix.terms import PURPOSES, Purpose

RULE = Rule(
    "dimmed_socket",
    "Is no socket, nor half of one, behind a dimmer?",
    "NEC 404.14 (secondary): a dimmer feeds what is permanently connected; elsewhere common practice, no "
    "source",
)
_SOCKETS = frozenset({Purpose.GENERAL_SOCKET, Purpose.ENTERTAINMENT})
_LIMIT = "permanently connected loads"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact of a dimmer or fan control that has a load."""
    for contact in case.contacts:
        if contact.model.output in {Output.DIMMER, Output.FAN_CONTROL}:
            yield _answer(case, contact)


def _answer(case: Case, contact: Contact) -> Finding:
    purpose, also = contact.load.purpose, (contact.device_id, contact.load_id)
    place = contact.load.place
    at_socket = place is not None and case.house.places[place].kind == "socket"
    value = "a socket" if at_socket else PURPOSES[purpose].label if purpose else "not known"
    if at_socket or purpose in _SOCKETS:
        return fails(
            RULE,
            Severity.FAULT,
            contact.place,
            f"{contact.load_words} is a socket behind a dimmer: what is plugged in may not bear it.",
            value=value,
            limit=_LIMIT,
            remedy="Let a relay switch the socket, or feed it unswitched; dim lamps that are wired in.",
            also=also,
        )
    looks = [purpose_look(contact.load_id, contact.load_words)] if purpose is None else []
    if place is None:
        words = f"see whether {contact.load_words} hangs at a light point or is plugged into a socket"
        looks.append(Look(contact.load_id, "place", words))
    if looks:
        says = f"Whether {contact.load_words} is plugged into a socket is not known."
        return cannot_tell(
            RULE, Severity.FAULT, contact.place, says, looks=looks, value=value, limit=_LIMIT, also=also
        )
    return passes(RULE, contact.place, value=value, limit=_LIMIT, also=also)
