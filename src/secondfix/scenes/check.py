"""All checks of scenes."""

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Rule
from secondfix.house import Schedule
from secondfix.scenes import clashing, crossings, levels, selecting_nothing, slow, starting, whole_entries
from secondfix.scenes.air import Air
from secondfix.scenes.asked import Asked
from secondfix.scenes.crossing import Resolution

_CHECKS = (crossings, whole_entries, levels, selecting_nothing, starting, clashing, slow)
RULES: tuple[Rule, ...] = tuple(rule for module in _CHECKS for rule in module.RULES)


def check(
    schedule: Schedule,
    assumptions: Assumptions,
    air: Air,
    resolutions: tuple[Resolution, ...] | None = None,
) -> list[Finding]:
    """Every answer about the scenes of a house, in no promised order.

    ``resolutions`` where its scenes have been resolved already.
    """
    asked = Asked(schedule, assumptions, air, resolutions)
    return [finding for module in _CHECKS for finding in module.check(asked)]
