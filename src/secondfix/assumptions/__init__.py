"""What no standard and no survey says: factors and defaults, each with a range and a source."""

from secondfix.assumptions.air import OF_AIR
from secondfix.assumptions.assumption import Assumption, Assumptions, Override, over_range
from secondfix.assumptions.defaults import DEFAULTS, default_assumptions
from secondfix.assumptions.electrical import POWER_FACTORS
from secondfix.assumptions.measured_links import OF_MEASURED_LINKS
from secondfix.assumptions.radio import OF_LINKS

__all__ = [
    "DEFAULTS",
    "OF_AIR",
    "OF_LINKS",
    "OF_MEASURED_LINKS",
    "POWER_FACTORS",
    "Assumption",
    "Assumptions",
    "Override",
    "default_assumptions",
    "over_range",
]
