"""Reach: is radio likely to carry every device to its controller?"""

from secondfix import radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.findings import finding_as_json
from secondfix.house import House, schedule


def reach(house: House, *, assumptions: Assumptions) -> radio.Reach:
    """The answer for every device, with routes, links and findings."""
    return radio.reach(schedule(house, house.models), settled_assumptions(house, assumptions))


def reached_as_json(answer: radio.Reach, *, numbers: bool) -> dict[str, object]:
    """``devices``, ``links``, ``findings`` and the spread (docs/json.md)."""
    return {
        **radio.reach_as_json(answer, numbers=numbers),
        "findings": [finding_as_json(f) for f in answer.findings],
    }
