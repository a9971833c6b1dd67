"""What no standard and no survey says: factors and defaults, each with a range and a source."""

from secondfix.assumptions.assumption import Assumption, Assumptions, Override, over_range
from secondfix.assumptions.defaults import DEFAULTS, default_assumptions

__all__ = ["DEFAULTS", "Assumption", "Assumptions", "Override", "default_assumptions", "over_range"]
