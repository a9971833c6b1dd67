"""Reversing motor: its two directions must not be driven at once."""

from collections.abc import Iterator

from secondfix.catalogue import Stated
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import kind_look
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import model_look, settled
from secondfix.terms import Kind, Purpose

RULE = Rule(
    "reversing",
    "Can the two directions of a motor never be driven at once?",
    "common practice, no source: one interlocked output for both directions",
)
_MAY_REVERSE = frozenset({Purpose.COVERING, Purpose.GATE})
_LIMIT = "one interlocked output for both directions"
_REMEDY = "Take one device with an output for blinds, or whose two gangs can never both be on."


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact that drives a direction of a motor, or that may."""
    at = {contact.load_id: contact for contact in case.contacts}
    for contact in case.contacts:
        load = contact.load
        if load.other_direction is not None:
            yield _pair(case, contact, at.get(load.other_direction))
        elif _asked(contact):
            yield _alone(contact)


def _asked(contact: Contact) -> bool:
    """A motor that is said to reverse, or a covering or gate that may be one."""
    kind, reversing = settled(contact.load.kind), settled(contact.load.reversing)
    motor = kind is None or kind is Kind.MOTOR or reversing is False
    return bool(reversing) or (motor and contact.load.purpose in _MAY_REVERSE)


def _alone(contact: Contact) -> Finding:
    load, also = contact.load, (contact.device_id, contact.load_id)
    reversing = settled(load.reversing)
    if reversing is False:
        return passes(RULE, contact.place, value="turns one way", limit=_LIMIT, also=also)
    looks = []
    if settled(load.kind) is None and not reversing:
        looks.append(kind_look(contact.load_id, contact.load_words))
    if reversing is None:
        words = f"see whether the motor of {contact.load_words} turns both ways"
        looks.append(Look(contact.load_id, "reversing", words))
    words = f"find out what drives the motor of {contact.load_words} the other way"
    looks.append(Look(contact.load_id, "other_direction", words))
    says = f"What drives the motor of {contact.load_words} the other way is not known."
    return cannot_tell(RULE, Severity.DANGER, contact.place, says, looks=looks, limit=_LIMIT, also=also)


def _pair(case: Case, contact: Contact, other: Contact | None) -> Finding:
    model, other_id = contact.model, contact.load.other_direction or ""
    also = [contact.device_id, contact.load_id, other_id]
    if other is None:
        words = f"decide what drives {other_id}, the other direction of {contact.load_words}"
        says = f"What drives the motor of {contact.load_words} the other way is not decided."
        return _cannot(contact, says, _drive_look(case, other_id, words), also)
    if other.device_id != contact.device_id:
        return _danger(contact, "by two devices", [*also, other.device_id])
    numbers = sorted(_number(case, c) for c in (contact, other))
    if numbers[0] % 2 == 0 or numbers[1] != numbers[0] + 1:
        return _danger(contact, "by two gangs that are no pair", also)
    if model.interlocked is Stated.NO:
        return _danger(contact, "by two gangs that may both be on", also)
    if model.interlocked is Stated.YES:
        value = "gangs of one interlocked pair"
        return passes(RULE, contact.place, value=value, limit=_LIMIT, also=also)
    says = f"Whether {model.title} keeps its two gangs from both being on is not stated."
    look = sheet_look(model, "interlocked", "whether its two gangs can never both be on")
    return _cannot(contact, says, look, also)


def _number(case: Case, contact: Contact) -> int:
    channels = case.schedule.channels_of[contact.device_id]
    return next(c.number for c in channels if c.load_id == contact.load_id)


def _drive_look(case: Case, load_id: str, words: str) -> Look:
    by = case.schedule.fed_by.get(load_id)
    device_id = by.device_id if by is not None else None
    return model_look(device_id) if device_id else Look(load_id, "other_direction", words)


def _danger(contact: Contact, how: str, also: list[str]) -> Finding:
    return fails(
        RULE,
        Severity.DANGER,
        contact.place,
        f"The motor of {contact.load_words} is driven {how}: both directions can be on at once.",
        value=how,
        limit=_LIMIT,
        remedy=_REMEDY,
        also=also,
    )


def _cannot(contact: Contact, says: str, look: Look, also: list[str]) -> Finding:
    return cannot_tell(RULE, Severity.DANGER, contact.place, says, looks=[look], limit=_LIMIT, also=also)
