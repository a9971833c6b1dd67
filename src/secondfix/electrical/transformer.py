"""Transformer: its lamps are neither more than it bears nor fewer than it needs."""

from collections.abc import Iterator

from secondfix.catalogue import Output
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import power_look
from secondfix.electrical.figures import watts
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled
from secondfix.terms import Kind

_SHARE = "iron_transformer_least_pct"
_LEAST = "electronic_transformer_least_mw"
RULE = Rule(
    "transformer",
    "Is the transformer loaded enough, and not too much?",
    "common practice, no source: an iron core on a dimmer 80 % of its volt-amperes, an electronic one its "
    "printed least load",
    may_lean_on=(_SHARE, _LEAST),
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact with transformers behind it."""
    for contact in case.contacts:
        kind = settled(contact.load.kind)
        if kind is Kind.IRON_TRANSFORMER or kind is Kind.ELECTRONIC_TRANSFORMER:
            yield _answer(case, contact)


def _answer(case: Case, contact: Contact) -> Finding:
    load, also = contact.load, (contact.device_id, contact.load_id)
    power, rated = settled(load.power_mw), settled(load.transformer_va)
    least, names, narrower = _least(case, contact)
    value = watts(power) if power else "not known"
    most = f"at most {rated} VA" if rated else "at most its volt-amperes, not known"
    limit = most if least == (0, 0) else f"{most}, at least {_watts_between(least)}"
    if power is not None and rated is not None and power > 1000 * rated:
        return _fails(contact, "is more than its transformer bears", value, most, ())
    if power is not None and least is not None and power < least[0]:
        return _fails(contact, "is too little for its transformer", value, limit, names)
    looks = []
    if power is None:
        looks.append(power_look(contact.load_id, load, contact.load_words))
    if rated is None:
        words = f"read the volt-amperes on one transformer of {contact.load_words}"
        looks.append(Look(contact.load_id, "transformer_va", words))
    if not looks and least is not None and power is not None and power >= least[1]:
        return passes(RULE, contact.place, value=value, limit=limit, also=also, assumptions=names)
    says = f"Whether the transformer of {contact.load_words} is loaded as it should be is not known."
    return cannot_tell(
        RULE,
        Severity.FAULT,
        contact.place,
        says,
        looks=looks or [narrower],
        value=value,
        limit=limit,
        also=also,
        assumptions=names,
    )


def _least(case: Case, contact: Contact) -> tuple[tuple[int, int] | None, tuple[str, ...], Look]:
    """Least load in milliwatts between its bounds; None where it hangs on what is not known."""
    load, printed = contact.load, settled(contact.load.transformer_least_mw)
    words = f"read the least load on one transformer of {contact.load_words}"
    look = Look(contact.load_id, "transformer_least_mw", words)
    if printed is not None:
        return (printed, printed), (), look
    if settled(load.kind) is Kind.ELECTRONIC_TRANSFORMER:
        low, _, high = case.assumptions.span(_LEAST)
        return (low, high), (_LEAST,), look
    if contact.model.output is not Output.DIMMER:
        return (0, 0), (), look
    rated = settled(load.transformer_va)
    if rated is None:
        return None, (_SHARE,), look
    low, _, high = case.assumptions.span(_SHARE)
    return (10 * low * rated, 10 * high * rated), (_SHARE,), look


def _watts_between(least: tuple[int, int] | None) -> str:
    if least is None:
        return "a share of them"
    low, high = least
    return watts(low) if low == high else f"{watts(low)} to {watts(high)}"


def _fails(contact: Contact, says: str, value: str, limit: str, names: tuple[str, ...]) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        contact.place,
        f"The lamp on one transformer of {contact.load_words} {says}.",
        value=value,
        limit=limit,
        remedy="Match lamps and transformer, or change to LED lamps with a driver that may be dimmed.",
        also=(contact.device_id, contact.load_id),
        assumptions=names,
    )
