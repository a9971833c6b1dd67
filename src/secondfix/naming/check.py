"""All checks of names."""

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule
from secondfix.naming import by_ear, characters, explained, length, unique, whole_device
from secondfix.naming.named import Called

_CHECKS = (unique, characters, length, whole_device, explained)
RULES: tuple[Rule, ...] = (*(module.RULE for module in _CHECKS), *by_ear.RULES)


def check(schedule: Schedule, assumptions: Assumptions) -> list[Finding]:
    """Every answer about the names of a house, in no promised order."""
    called = Called(schedule)
    read = (finding for module in _CHECKS for finding in module.check(called))
    return [*read, *by_ear.check(called, assumptions)]
