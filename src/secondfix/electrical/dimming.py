"""Dimming: a dimmer or fan control against the kind of load behind it."""

from collections.abc import Iterator

from secondfix.catalogue import Edge, Output
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import kind_look
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import dimmable_look, settled
from secondfix.terms import KIND_LABELS, RATING_OF_KIND, Kind, RatingKind

RULE = Rule(
    "dimming",
    "May this kind of load be dimmed, and in this way?",
    "NEC 404.14 (secondary): only what the dimmer is listed for; leading and trailing edge by kind of load: "
    "LRC dimmer guide (secondary), common practice, no source",
)
_AS_THEY_ARE = {Kind.RESISTIVE, Kind.TUNGSTEN}
_ONLY_IF_LISTED = {Kind.LED_LAMP, Kind.LED_DRIVER}
_NEVER = {Kind.MOTOR, Kind.FLUORESCENT_IRON}
_WANTS = {Kind.IRON_TRANSFORMER: Edge.LEADING, Kind.ELECTRONIC_TRANSFORMER: Edge.TRAILING}
_WHY = {
    Kind.IRON_TRANSFORMER: "a trailing edge cuts its current and throws back a high voltage",
    Kind.ELECTRONIC_TRANSFORMER: "a leading edge drives a surge into its capacitor in every half wave",
}
_SWITCH = "Let a relay switch it, or take a dimmer that is listed for this kind."


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact of a dimmer or fan control that has a load."""
    for contact in case.contacts:
        if contact.model.output in {Output.DIMMER, Output.FAN_CONTROL}:
            yield _answer(contact)


def _answer(contact: Contact) -> Finding:
    kind = settled(contact.load.kind)
    if kind is None:
        says = f"What kind of load {contact.load_words} is, is not known: perhaps one never to be dimmed."
        return _cannot(contact, says, [kind_look(contact.load_id, contact.load_words)])
    if contact.model.output is Output.FAN_CONTROL:
        if kind is Kind.MOTOR:
            return _passes(contact, kind)
        return _fails(contact, kind, "is behind a fan control, which is made for motors")
    if kind in _AS_THEY_ARE:
        return _passes(contact, kind)
    if kind in _WANTS:
        return _edge(contact, kind, _WANTS[kind])
    if kind in _NEVER:
        # A maker who prints a rating for motors has listed the dimmer for them.
        listed = kind is Kind.MOTOR and contact.model.rating_for(RatingKind.MOTOR) is not None
        return _passes(contact, kind) if listed else _fails(contact, kind, "is not made to be dimmed")
    dimmable = settled(contact.load.dimmable)
    if dimmable is None:
        look = dimmable_look(contact.load_id, contact.load_words)
        return _cannot(contact, f"Whether {contact.load_words} may be dimmed is not known.", [look])
    if not dimmable:
        return _fails(contact, kind, "is not made to be dimmed")
    return _listed(contact, kind) if kind in _ONLY_IF_LISTED else _passes(contact, kind)


def _listed(contact: Contact, kind: Kind) -> Finding:
    """A leading edge suits LED only where the dimmer is listed for it: a rating printed for them says so."""
    if contact.model.edge is not Edge.LEADING or contact.model.rating_for(RATING_OF_KIND[kind]) is not None:
        return _passes(contact, kind)
    look = sheet_look(contact.model, "ratings", "whether it is listed for such lamps, and for how many watts")
    words = f"{contact.load_words}, {KIND_LABELS[kind]}"
    says = f"Whether the leading-edge dimmer is listed for {words}, is not stated."
    return _cannot(contact, says, [look])


def _edge(contact: Contact, kind: Kind, wanted: Edge) -> Finding:
    """A rating that the maker prints for the kind of transformer rules; else the edge."""
    edge = contact.model.edge
    if contact.model.rating_for(RATING_OF_KIND[kind]) is not None or edge in {wanted, Edge.BOTH}:
        return _passes(contact, kind)
    if edge is None:
        look = sheet_look(contact.model, "edge", "which edge it cuts, and for which transformers it is made")
        says = f"Whether the dimmer suits {contact.load_words}, {KIND_LABELS[kind]}, is not stated."
        return _cannot(contact, says, [look])
    return _fails(contact, kind, f"is behind a {edge.value}-edge dimmer: {_WHY[kind]}")


def _passes(contact: Contact, kind: Kind) -> Finding:
    return passes(RULE, contact.place, value=KIND_LABELS[kind], limit=_limit(contact), also=_also(contact))


def _fails(contact: Contact, kind: Kind, says: str) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        contact.place,
        f"{contact.load_words}, {KIND_LABELS[kind]}, {says}.",
        value=KIND_LABELS[kind],
        limit=_limit(contact),
        remedy=_SWITCH,
        also=_also(contact),
    )


def _cannot(contact: Contact, says: str, looks: list[Look]) -> Finding:
    return cannot_tell(
        RULE, Severity.FAULT, contact.place, says, looks=looks, limit=_limit(contact), also=_also(contact)
    )


def _limit(contact: Contact) -> str:
    if contact.model.output is Output.FAN_CONTROL:
        return "a motor behind a fan control"
    edge = contact.model.edge
    return "a kind that the dimmer is made for" + (f" ({edge.value} edge)" if edge else "")


def _also(contact: Contact) -> tuple[str, str]:
    return contact.device_id, contact.load_id
