"""Least load: dimmers and switches without neutral need a load of some size to work."""

from collections.abc import Iterator

from secondfix.catalogue import NeutralNeed, Output
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import power_of
from secondfix.electrical.figures import watts
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, settled

RULE = Rule(
    "least_load",
    "Is the load large enough for the device?",
    "LRC dimmer guide (secondary): check the least load as well as the greatest",
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact with a printed least load, or where one must exist.

    It must for a dimmer, and for a switch that may feed itself through its load.
    """
    for contact in case.contacts:
        if contact.model.least_load_mw is not None or _matters(contact):
            yield _answer(contact)


def _matters(contact: Contact) -> bool:
    need = contact.model.neutral
    if contact.model.output is Output.DIMMER:
        return True
    if need is NeutralNeed.NEEDED:
        return False
    neutral = settled(contact.row.mount.neutral) if contact.row else None
    return need is not NeutralNeed.EITHER or neutral in {None, ABSENT, EARTH}


def _answer(contact: Contact) -> Finding:
    power, least = power_of(contact.load_id, contact.load, contact.load_words), contact.model.least_load_mw
    value = f"{'at least ' if power.high_mw is None else ''}{watts(power.low_mw)}"
    also = (contact.device_id, contact.load_id)
    if least is None:
        look = sheet_look(contact.model, "least_load_mw", "the least load it works with")
        says = "The data sheet states no least load."
        looks = [look, *power.looks]
        return cannot_tell(RULE, Severity.FAULT, contact.place, says, looks=looks, value=value, also=also)
    limit = f"at least {watts(least)}"
    if power.low_mw >= least:
        return passes(RULE, contact.place, value=value, limit=limit, also=also)
    if power.high_mw is None:
        says = f"Whether {contact.load_words} is large enough is not known."
        return cannot_tell(
            RULE, Severity.FAULT, contact.place, says, looks=power.looks, value=value, limit=limit, also=also
        )
    return fails(
        RULE,
        Severity.FAULT,
        contact.place,
        f"{contact.load_words} is below the least load: it may flicker, glow, or drop off the network.",
        value=value,
        limit=limit,
        remedy="Take a device with neutral or a lower least load, fit the maker's listed bypass at the "
        "luminaire, or other lamps.",
        also=also,
    )
