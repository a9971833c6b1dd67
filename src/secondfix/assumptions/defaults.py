"""The defaults in code. Each package reads its own by name; `secondfix assumptions` prints them all."""

from secondfix.assumptions import air, by_ear, electrical, joining, maintenance, measured_links, radio, scenes
from secondfix.assumptions.assumption import Assumption, Assumptions

DEFAULTS: tuple[Assumption, ...] = (
    *electrical.ASSUMPTIONS,
    *radio.ASSUMPTIONS,
    *measured_links.ASSUMPTIONS,
    *air.ASSUMPTIONS,
    *joining.ASSUMPTIONS,
    *by_ear.ASSUMPTIONS,
    *scenes.ASSUMPTIONS,
    *maintenance.ASSUMPTIONS,
)


def default_assumptions() -> Assumptions:
    """All defaults, keyed by name (ValueError if two share a name)."""
    items = {a.name: a for a in DEFAULTS}
    if len(items) != len(DEFAULTS):
        raise ValueError("two assumptions share a name")
    return Assumptions(items)
