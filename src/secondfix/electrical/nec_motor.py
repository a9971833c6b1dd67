"""Motor on a snap switch, NEC: four fifths of the ampere rating."""

from collections.abc import Iterator

from secondfix.assumptions import POWER_FACTORS
from secondfix.catalogue import Output, Rating
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.figures import amperes, amperes_between
from secondfix.electrical.printed import CARRIES, carried, holds_at
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
    """In NEC houses, one answer per relay contact with a motor and a rating for resistive loads."""
    voltage = case.house.mains_voltage_v
    if may_be_nec(case) and voltage is not None:
        yield from of_the_nec(case, RULE, _answers(case, voltage))


def _answers(case: Case, voltage: int) -> Iterator[Finding]:
    for contact in case.contacts:
        rating = contact.model.rating_for(RatingKind.RESISTIVE)
        motor = settled(contact.load.kind) is Kind.MOTOR and contact.model.output is Output.RELAY
        if motor and rating and holds_at(rating, mains_voltage_v=voltage, assumptions=case.assumptions):
            yield _answer(case, contact, rating, voltage)


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
