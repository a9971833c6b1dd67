"""Hazard: what a load is for decides what a contact that can be worked from afar may do to it."""

from collections.abc import Iterator

from secondfix.catalogue import Output, Stated
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import purpose_look, settled, thermostat_look
from secondfix.terms import PURPOSES, Purpose, RatingKind

RULE = Rule(
    "hazard",
    "May this load stand behind a contact that can be worked when nobody looks?",
    "common practice, no source; a scene engine is no protective measure: IEC 60730-1 Annex H, class A "
    "(secondary)",
)
_OFF_ONLY = frozenset({Purpose.HEATER_PORTABLE, Purpose.HEATER_RADIANT, Purpose.COOKING})
_TIMED = frozenset({Purpose.HEATER_FIXED, Purpose.WATER_HEATER})
_OWN_CONTROLLER = {
    Purpose.GATE: Severity.FAULT,
    Purpose.COVERING: Severity.ADVICE,
    Purpose.PUMP: Severity.ADVICE,
}


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact that has a load."""
    for contact in case.contacts:
        yield _answer(contact)


def _answer(contact: Contact) -> Finding:
    purpose = contact.load.purpose
    if purpose is None:
        says = f"What {contact.load_words} is for is not known: perhaps something never to run unattended."
        return _cannot(contact, says, [purpose_look(contact.load_id, contact.load_words)], "a known purpose")
    if purpose is Purpose.SAUNA:
        says = "is a sauna heater: a plain contact takes away the readying by hand before each remote start"
        return _fails(
            contact, Severity.DANGER, says, "never behind a plain contact", "Leave it to its own controller."
        )
    if purpose in _OFF_ONLY:
        policy = PURPOSES[purpose]
        says = f"is for {policy.label} ({policy.hazard}): it may be switched off from afar, never on"
        remedy = "Let no scene, timer or person elsewhere switch it on; let the contact return off."
        return _fails(contact, Severity.ADVICE, says, "off only", remedy)
    made_for_it = purpose is Purpose.COVERING and contact.model.output is Output.SHUTTER
    if purpose in _OWN_CONTROLLER and not made_for_it:
        says = f"({PURPOSES[purpose].label}: {PURPOSES[purpose].hazard}) is behind a plain contact"
        remedy = "Leave the motor to its own controller with its own stop; send that a command instead."
        return _fails(contact, _OWN_CONTROLLER[purpose], says, "its own controller only", remedy)
    if purpose in _TIMED:
        return _timed(contact, purpose)
    return _passes(contact, PURPOSES[purpose].label, "")


def _timed(contact: Contact, purpose: Purpose) -> Finding:
    """On with a time limit: own thermostat, stated fit, and a limit that the device itself keeps."""
    thermostat, load, model = settled(contact.load.own_thermostat), contact.load, contact.model
    at = contact.load_words
    limit = "own thermostat, printed resistive rating, time limit kept by the device"
    if thermostat is False:
        says = f"({PURPOSES[purpose].label}) has no thermostat of its own"
        remedy = "Do not switch it by this device; fit a thermostat or let its own controller switch it."
        return _fails(contact, Severity.DANGER, says, limit, remedy)
    looks: list[Look] = []
    if thermostat is None:
        looks.append(thermostat_look(contact.load_id, contact.load_words))
    if model.rating_for(RatingKind.RESISTIVE) is None:
        looks.append(sheet_look(model, "ratings.resistive", "its rating for resistive loads"))
    if looks:
        return _cannot(contact, f"Whether {at} may run unattended is not known.", looks, limit)
    if load.time_limit_s is None or model.own_time_limit is Stated.NO:
        says = f"({PURPOSES[purpose].label}) has a thermostat, but nothing that stays with it ends its run"
        remedy = "State the longest time on per command, and take a device that keeps the limit itself."
        return _fails(contact, Severity.FAULT, says, limit, remedy)
    if model.own_time_limit is Stated.NOT_STATED:
        look = sheet_look(model, "own_time_limit", "whether it keeps a time limit itself")
        says = "Whether the device keeps the time limit without its controller is not stated."
        return _cannot(contact, says, [look], limit)
    value = f"own thermostat, at most {load.time_limit_s} s on"
    return _passes(contact, value, limit)


def _passes(contact: Contact, value: str, limit: str) -> Finding:
    return passes(RULE, contact.place, value=value, limit=limit, also=(contact.device_id, contact.load_id))


def _fails(contact: Contact, severity: Severity, says: str, limit: str, remedy: str) -> Finding:
    purpose = contact.load.purpose
    assert purpose is not None
    return fails(
        RULE,
        severity,
        contact.place,
        f"{contact.load_words} {says}.",
        value=PURPOSES[purpose].label,
        limit=limit,
        remedy=remedy,
        source=PURPOSES[purpose].source,
        also=(contact.device_id, contact.load_id),
    )


def _cannot(contact: Contact, says: str, looks: list[Look], limit: str) -> Finding:
    also = (contact.device_id, contact.load_id)
    return cannot_tell(RULE, Severity.DANGER, contact.place, says, looks=looks, limit=limit, also=also)
