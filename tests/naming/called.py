"""A small whole house as a plain document, and what is asked of its names."""

from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.naming import Names, check, names
from tests.scenes.small import Plain, read, small


def house(**naming: Any) -> Plain:
    """The small house of the scene tests, with a naming policy."""
    plain = small()
    plain["naming"] = naming
    return plain


def named(plain: Plain) -> Names:
    return names(read(plain))


def spoken(plain: Plain, device: str) -> dict[int, str]:
    """Entry number to name, of one device."""
    return {e.number: e.name for e in named(plain).of_device[device]}


def asked(plain: Plain) -> list[Finding]:
    return check(read(plain), default_assumptions())


def told(plain: Plain, *, without: str = "names.length") -> list[tuple[str, str, str]]:
    """Rule, severity or 'cannot_tell', place: of everything that does not pass, lengths apart."""
    wrong = [f for f in asked(plain) if f.outcome is not Outcome.PASSES and f.rule != without]
    return [(f.rule, str(f.severity if f.outcome is Outcome.FAILS else f.outcome), f.place) for f in wrong]
