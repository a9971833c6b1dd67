"""Circuit load: the currents of all that hangs on a circuit against its breaker."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from secondfix.assumptions import POWER_FACTORS, Assumptions
from secondfix.electrical.case import Case, case_of
from secondfix.electrical.figures import amperes_between
from secondfix.electrical.printed import VOLTAGE_LOOK
from secondfix.electrical.supply import RULES_LOOK, loads_by_circuit
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Duty, Load, Row, Schedule, circuit_look, duty_look, line_look, load_words, settled
from secondfix.terms import WiringRules

RULE = Rule(
    "circuit_load",
    "Does all that hangs on a circuit stay within its breaker?",
    "NEC 210.19(A)(1), 210.20(A) (secondary): 125 % of what runs three hours or more; elsewhere common "
    "practice, no source: ΣI within the breaker's rated current",
    may_lean_on=POWER_FACTORS,
)
_REMEDY = "Move a load to another circuit, or have the circuit divided."
_CONTINUOUS = Fraction(5, 4)
_MOST_LOOKS = 3  # unexplained gangs, or loads of unknown circuit, that one answer names


@dataclass(slots=True)
class _Sum:
    """What the loads of the book ask of one circuit; ``high_ma`` None where nothing bounds it."""

    low_ma: Fraction = Fraction(0)
    high_ma: Fraction | None = Fraction(0)
    looks: tuple[Look, ...] = ()
    narrower: tuple[Look, ...] = ()
    assumptions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class CircuitSum:
    """What is known to hang on one circuit, as the rule counts it; ``high_ma`` None where nothing bounds it.

    ``value`` and ``limit`` are the words of the finding.
    """

    load_ids: tuple[str, ...]
    low_ma: Fraction
    high_ma: Fraction | None
    value: str
    limit: str
    assumptions: tuple[str, ...]


def circuit_sums(schedule: Schedule, assumptions: Assumptions) -> dict[str, CircuitSum]:
    """The sum of every circuit of the house by its id; empty where the mains voltage is not known."""
    case = case_of(schedule, assumptions)
    by_circuit = loads_by_circuit(case)
    astray = _astray(case, by_circuit.get(None, []))
    if case.house.mains_voltage_v is None:
        return {}
    out = {}
    for circuit_id in case.house.circuits:
        load_ids = by_circuit.get(circuit_id, [])
        may_hang = (*astray.get(circuit_id, ()), *astray.get(None, ()))
        book = _book(case, load_ids, case.house.mains_voltage_v)
        out[circuit_id] = _sum_of(case, circuit_id, load_ids, book, open_end=bool(may_hang))
    return out


def answers(case: Case) -> Iterator[Finding]:
    """One answer per circuit that feeds a load of the book, or may, where there is something to say.

    Where nobody has stated what else hangs on the circuit the sum is a lower bound: it can only fail.
    """
    by_circuit = loads_by_circuit(case)
    astray = _astray(case, by_circuit.get(None, []))
    for circuit_id in case.house.circuits:
        load_ids = by_circuit.get(circuit_id, [])
        may_hang = (*astray.get(circuit_id, ()), *astray.get(None, ()))
        if load_ids or may_hang:
            yield from _answer(case, circuit_id, load_ids, may_hang)


def _answer(case: Case, circuit_id: str, load_ids: list[str], astray: tuple[Look, ...]) -> Iterator[Finding]:
    circuit, voltage = case.house.circuits[circuit_id], case.house.mains_voltage_v
    breaker, other = settled(circuit.breaker_a), settled(circuit.other_load_ma)
    if voltage is None:
        if other is not None:
            says = "Without the mains voltage no current can be worked out."
            yield cannot_tell(RULE, Severity.FAULT, circuit_id, says, looks=[VOLTAGE_LOOK], also=load_ids)
        return
    book = _book(case, load_ids, voltage)
    total = _sum_of(case, circuit_id, load_ids, book, open_end=bool(astray))
    low, high, value, limit = total.low_ma, total.high_ma, total.value, total.limit
    names = total.assumptions
    if breaker is not None and low > 1000 * breaker:
        yield fails(
            RULE,
            Severity.FAULT,
            circuit_id,
            f"What hangs on {circuit.name} ({circuit_id}) is more than its breaker of {breaker} A is for.",
            value=value,
            limit=limit,
            remedy=_REMEDY,
            also=load_ids,
            assumptions=names,
        )
    elif breaker is not None and high is not None and high <= 1000 * breaker:
        yield passes(RULE, circuit_id, value=value, limit=limit, also=load_ids, assumptions=names)
    elif other is not None:
        looks = [*book.looks, *astray]
        if breaker is None:
            looks.append(Look(circuit_id, "breaker_a", f"read the breaker of {circuit.name} at the board"))
        says = (
            f"Whether all that hangs on {circuit.name} ({circuit_id}) stays within its breaker is not known."
        )
        yield cannot_tell(
            RULE,
            Severity.FAULT,
            circuit_id,
            says,
            looks=looks or book.narrower,
            value=value,
            limit=limit,
            also=load_ids,
            assumptions=names,
        )


def _sum_of(case: Case, circuit_id: str, load_ids: list[str], book: _Sum, *, open_end: bool) -> CircuitSum:
    """The loads of the book and what else is stated; without an upper end where something may be missing."""
    circuit = case.house.circuits[circuit_id]
    breaker, other = settled(circuit.breaker_a), settled(circuit.other_load_ma)
    low = book.low_ma + (other or 0)
    no_end = open_end or other is None or book.high_ma is None
    high = None if no_end else (book.high_ma or 0) + Fraction(other or 0)
    limit = f"breaker of {breaker} A" if breaker else "its breaker, not known"
    return CircuitSum(tuple(load_ids), low, high, amperes_between(low, high), limit, book.assumptions)


def _book(case: Case, load_ids: list[str], voltage: int) -> _Sum:
    total = _Sum()
    looks: list[Look] = []
    narrower: list[Look] = []
    names: dict[str, None] = {}
    for load_id in load_ids:
        load, words = case.house.loads[load_id], load_words(case.house, load_id)
        current = case.current(load_id, mains_voltage_v=voltage)
        least, most, unsaid = _factors(case.house.wiring_rules, load_id, load, words)
        total.low_ma += least * current.low_ma
        if total.high_ma is not None:
            total.high_ma = None if current.high_ma is None else total.high_ma + most * current.high_ma
        looks += current.looks
        narrower += [*unsaid, *current.narrower]
        names |= dict.fromkeys(current.assumptions)
    total.looks, total.narrower, total.assumptions = (
        tuple(looks),
        tuple(dict.fromkeys(narrower)),
        tuple(names),
    )
    return total


def _factors(
    rules: WiringRules | None, load_id: str, load: Load, words: str
) -> tuple[Fraction, Fraction, tuple[Look, ...]]:
    """By how much, at least and at most, a load counts; and what would tell."""
    one, continuous = Fraction(1), settled(load.continuous)
    if rules is WiringRules.IEC or continuous is False:
        return one, one, ()
    if rules is None:
        return one, _CONTINUOUS, (RULES_LOOK,)
    if continuous:
        return _CONTINUOUS, _CONTINUOUS, ()
    ask = Look(load_id, "continuous", f"ask whether {words} is on for three hours or more at a time")
    return one, _CONTINUOUS, (ask,)


def _astray(case: Case, load_ids: list[str]) -> dict[str | None, tuple[Look, ...]]:
    """Looks for loads and unexplained gangs of each circuit; under None those that may hang on any."""
    looks: dict[str | None, list[Look]] = {}
    for load_id in load_ids:
        by = case.schedule.fed_by[load_id]
        row = by if isinstance(by, Row) else by.row
        if row is not None:
            look = line_look(row.box_id, row.gang_no)
        else:
            look = circuit_look(case.house.devices[by.device_id or ""].place or "")
        looks.setdefault(None, []).append(look)
    for row in case.schedule.rows.values():
        if row.gang.duty is Duty.NOT_KNOWN:
            looks.setdefault(settled(row.gang.line), []).append(duty_look(row))
    return {circuit: tuple(found[:_MOST_LOOKS]) for circuit, found in looks.items()}
