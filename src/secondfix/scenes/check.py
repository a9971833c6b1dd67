"""All checks of scenes."""

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule
from secondfix.scenes import crossings, levels, selecting_nothing, starting, whole_entries
from secondfix.scenes.asked import Asked

_CHECKS = (crossings, whole_entries, levels, selecting_nothing, starting)
RULES: tuple[Rule, ...] = tuple(rule for module in _CHECKS for rule in module.RULES)


def check(
    schedule: Schedule,
    assumptions: Assumptions,  # noqa: ARG001 - the same door as every check; no scene leans on an assumption
) -> list[Finding]:
    """Every answer about the scenes of a house, in no promised order."""
    asked = Asked(schedule)
    return [finding for module in _CHECKS for finding in module.check(asked)]
