"""Breaker at switching on: the peak of what one gang starts against the breaker's instantaneous trip."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import count_look
from secondfix.electrical.figures import amperes
from secondfix.electrical.supply import circuit_of
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled

_FACTOR = "breaker_pulse_factor_pct"
RULE = Rule(
    "breaker_inrush",
    "Does what a gang starts at once leave the breaker closed?",
    "N = floor(k · n · In / Ipk), BEAMA guide 2021 (secondary); bands of curves B, C, D: IEC 60898-1 (from "
    "memory)",
    (_FACTOR,),
)
Curve = Literal["B", "C", "D"]
# Instantaneous tripping as multiples of In: held below the first, tripped above the second.
_BANDS: dict[Curve, tuple[int, int]] = {"B": (3, 5), "C": (5, 10), "D": (10, 20)}


@dataclass(frozen=True, slots=True)
class _Breaker:
    """The breaker of one circuit."""

    circuit_id: str
    rated_a: int
    curve: Curve


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact whose load prints a peak, where breaker and curve of its circuit are known."""
    for contact in case.contacts:
        peak, circuit_id = settled(contact.load.inrush_peak_ma), circuit_of(case, contact)
        if peak is None or circuit_id is None:
            continue
        circuit = case.house.circuits[circuit_id]
        rated_a, curve = settled(circuit.breaker_a), settled(circuit.curve)
        if rated_a is not None and curve is not None:
            yield _answer(case, contact, peak, _Breaker(circuit_id, rated_a, curve))


def held_ma(breaker_a: int, curve: Curve, *, factor_pct: int) -> int:
    """The peak that leaves the breaker closed: k · n · In at the lower end of its band."""
    return breaker_a * _BANDS[curve][0] * factor_pct * 10


def count_held(breaker_a: int, curve: Curve, *, peak_ma: int, factor_pct: int) -> int:
    """N = floor(k · n · In / Ipk): how many of one peak the breaker bears."""
    return held_ma(breaker_a, curve, factor_pct=factor_pct) // peak_ma


def _answer(case: Case, contact: Contact, one_ma: int, breaker: _Breaker) -> Finding:
    assumed, count = case.assumptions[_FACTOR], settled(contact.load.count)
    surely = count_held(breaker.rated_a, breaker.curve, peak_ma=one_ma, factor_pct=assumed.low)
    trips_ma = breaker.rated_a * _BANDS[breaker.curve][1] * assumed.high * 10
    low = one_ma * (count or 1)
    value = f"{'' if count else 'at least '}{amperes(low)}"
    called = f"{breaker.curve}{breaker.rated_a}"
    limit = f"{called} bears {surely} of them at once, whatever the pulse"
    also = (contact.device_id, contact.load_id, breaker.circuit_id)
    if count is not None and count <= surely:
        return passes(RULE, contact.place, value=value, limit=limit, also=also)
    if low > trips_ma:
        return fails(
            RULE,
            Severity.ADVICE,
            contact.place,
            f"{contact.load_words} may open the breaker when all of it starts at once.",
            value=value,
            limit=limit,
            remedy="Divide the load between gangs, limit the inrush, or ask for a breaker of another curve.",
            also=also,
        )
    looks = []
    if count is None:
        looks.append(count_look(contact.load_id, contact.load_words))
    else:
        words = f"find in the breaker's pulse curve how many of {contact.load_words} {called} bears"
        looks.append(Look(breaker.circuit_id, "pulse_curve", words))
    says = f"Whether the breaker bears {contact.load_words} at switching on is not known."
    return cannot_tell(
        RULE, Severity.ADVICE, contact.place, says, looks=looks, value=value, limit=limit, also=also
    )
