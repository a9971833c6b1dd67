"""All checks of names."""

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule
from secondfix.naming import characters, explained, length, unique, whole_device
from secondfix.naming.named import Called

_CHECKS = (unique, characters, length, whole_device, explained)
RULES: tuple[Rule, ...] = tuple(module.RULE for module in _CHECKS)


def check(
    schedule: Schedule,
    assumptions: Assumptions,  # noqa: ARG001 - the same door as every check; no name leans on an assumption
) -> list[Finding]:
    """Every answer about the names of a house, in no promised order."""
    called = Called(schedule)
    return [finding for module in _CHECKS for finding in module.check(called)]
