"""Shared neutral: breakers that open together, and a neutral that no device can break."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled

RULE = Rule(
    "shared_neutral",
    "Do the breakers of circuits that share a neutral open together?",
    "NEC 210.4(B) (from memory); elsewhere common practice, no source",
)
_LIMIT = "breakers that open together"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per circuit that is said to share its neutral. The clause is from memory: advice at most."""
    for circuit_id, circuit in case.house.circuits.items():
        shared = settled(circuit.shares_neutral_with)
        if shared:
            yield _answer(circuit_id, circuit.name, shared, settled(circuit.opens_together))


def _answer(circuit_id: str, name: str, shared: tuple[str, ...], together: bool | None) -> Finding:
    value = f"neutral shared with {', '.join(shared)}"
    if together:
        return passes(RULE, circuit_id, value=value, limit=_LIMIT, also=shared)
    if together is None:
        words = f"see at the board whether the breakers of {', '.join((circuit_id, *shared))} open together"
        looks = [Look(circuit_id, "opens_together", words)]
        says = f"Whether {name} ({circuit_id}) and what shares its neutral open together is not known."
        return cannot_tell(
            RULE, Severity.ADVICE, circuit_id, says, looks=looks, value=value, limit=_LIMIT, also=shared
        )
    return fails(
        RULE,
        Severity.ADVICE,
        circuit_id,
        f"{name} ({circuit_id}) shares its neutral with {', '.join(shared)}, and their breakers do not open "
        "together: with one open the neutral is still live.",
        value=value,
        limit=_LIMIT,
        remedy="Isolate all of them before work; have their breakers tied, or one of several poles fitted.",
        also=shared,
    )
