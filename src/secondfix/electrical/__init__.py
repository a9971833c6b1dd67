"""The electrical checks: does each switch fit its box, its circuit and what it feeds."""

from secondfix.electrical.demand import Current, current_of
from secondfix.electrical.registry import RULES, check

__all__ = ["RULES", "Current", "check", "current_of"]
