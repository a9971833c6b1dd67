"""Motor on a snap switch, NEC: four fifths of the ampere rating."""

from collections.abc import Iterator

from secondfix.assumptions import POWER_FACTORS
from secondfix.catalogue import Output, Rating
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import kind_look
from secondfix.electrical.figures import amperes, amperes_between
from secondfix.electrical.printed import CARRIES, VOLTAGE_LOOK, carried, holds_at, rating_look
from secondfix.electrical.supply import may_be_nec, of_the_nec
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled
from secondfix.terms import Kind, RatingKind

RULE = Rule(
    "nec_motor",
    "Does the motor take no more than 80 % of the switch's ampere rating?",
    "NEC 404.14(A) (secondary); UL guide card for snap switches (secondary)",
    may_lean_on=(*POWER_FACTORS, CARRIES),
)
_SHARE_PCT = 80


def answers(case: Case) -> Iterator[Finding]:
    """In NEC houses, one answer per relay contact with a motor, or with a load that may be one."""
    if may_be_nec(case):
        yield from of_the_nec(case, RULE, _answers(case))


def _answers(case: Case) -> Iterator[Finding]:
    for contact in case.contacts:
        if contact.model.output is Output.RELAY and settled(contact.load.kind) in {None, Kind.MOTOR}:
            yield _asked(case, contact)


def _asked(case: Case, contact: Contact) -> Finding:
    voltage, rating = case.house.mains_voltage_v, contact.model.rating_for(RatingKind.RESISTIVE)
    held = voltage and rating and holds_at(rating, mains_voltage_v=voltage, assumptions=case.assumptions)
    looks = []
    if settled(contact.load.kind) is None:
        looks.append(kind_look(contact.load_id, contact.load_words))
    if voltage is None:
        looks.append(VOLTAGE_LOOK)
    elif not held:
        looks.append(rating_look(contact.model, RatingKind.RESISTIVE, mains_voltage_v=voltage))
    if looks or voltage is None or rating is None:
        says = f"Whether a motor may hang there as {contact.load_words}, and how large, is not known."
        also = (contact.device_id, contact.load_id)
        names = carried([rating], mains_voltage_v=voltage) if rating and voltage else ()
        return cannot_tell(
            RULE,
            Severity.DANGER,
            contact.place,
            says,
            looks=looks,
            limit=f"{_SHARE_PCT} % of the ampere rating",
            also=also,
            assumptions=names,
        )
    return _answer(case, contact, rating, voltage)


def _answer(case: Case, contact: Contact, rating: Rating, voltage: int) -> Finding:
    current = case.current(contact.load_id, mains_voltage_v=voltage)
    value = amperes_between(current.low_ma, current.high_ma)
    limit = f"{_SHARE_PCT} % of {amperes(rating.current_ma)}"
    also = (contact.device_id, contact.load_id)
    names = (*current.assumptions, *carried([rating], mains_voltage_v=voltage))
    if 100 * current.low_ma > _SHARE_PCT * rating.current_ma:
        return fails(
            RULE,
            Severity.DANGER,
            contact.place,
            f"{contact.load_words} takes more than {limit}, all that a snap switch may give a motor.",
            value=value,
            limit=limit,
            remedy="Take a switch of a larger rating, or let a motor-rated controller switch it.",
            also=also,
            assumptions=names,
        )
    if current.high_ma is not None and 100 * current.high_ma <= _SHARE_PCT * rating.current_ma:
        return passes(RULE, contact.place, value=value, limit=limit, also=also, assumptions=names)
    says = f"Whether {contact.load_words} stays within {limit} is not known."
    return cannot_tell(
        RULE,
        Severity.DANGER,
        contact.place,
        says,
        looks=current.looks or current.narrower,
        value=value,
        limit=limit,
        also=also,
        assumptions=names,
    )
