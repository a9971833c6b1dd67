"""Mixed loads: iron-core transformers and capacitive gear do not share a dimmer."""

from collections.abc import Iterator

from secondfix.catalogue import Output
from secondfix.electrical.case import Case, Contact
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled
from secondfix.terms import KIND_LABELS, Kind

RULE = Rule(
    "mixed_loads",
    "Do inductive and capacitive loads keep off one dimmer?",
    "common practice, no source: one wants the leading edge, the other the trailing",
)
_CAPACITIVE = frozenset(
    {Kind.ELECTRONIC_TRANSFORMER, Kind.LED_LAMP, Kind.LED_DRIVER, Kind.FLUORESCENT_ELECTRONIC}
)
_INDUCTIVE = frozenset({Kind.IRON_TRANSFORMER, Kind.FLUORESCENT_IRON, Kind.MOTOR})
_ASKED = {Kind.IRON_TRANSFORMER: _CAPACITIVE, Kind.ELECTRONIC_TRANSFORMER: _INDUCTIVE}
_LIMIT = "inductive or capacitive, not both"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact of a dimmer with a transformer behind it."""
    for contact in case.contacts:
        kind = settled(contact.load.kind)
        if contact.model.output is Output.DIMMER and kind in _ASKED:
            yield _answer(contact, kind, _ASKED[kind])


def _answer(contact: Contact, kind: Kind, unfit: frozenset[Kind]) -> Finding:
    others, also = settled(contact.load.also_kinds), (contact.device_id, contact.load_id)
    if others is None:
        look = Look(contact.load_id, "also_kinds", f"see what else hangs on the wire of {contact.load_words}")
        says = f"What hangs on the wire of {contact.load_words} beside the transformers is not known."
        return cannot_tell(RULE, Severity.FAULT, contact.place, says, looks=[look], limit=_LIMIT, also=also)
    value = " and ".join(dict.fromkeys(KIND_LABELS[k] for k in (kind, *others)))
    if not unfit.intersection(others):
        return passes(RULE, contact.place, value=value, limit=_LIMIT, also=also)
    return fails(
        RULE,
        Severity.FAULT,
        contact.place,
        f"{contact.load_words} has inductive and capacitive gear on one dimmer: neither edge suits both.",
        value=value,
        limit=_LIMIT,
        remedy="Make the transformers of one kind, give each kind its own dimmer, or switch them by a relay.",
        also=also,
    )
