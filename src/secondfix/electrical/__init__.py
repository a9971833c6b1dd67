"""The electrical checks: does each switch fit its box, its circuit and what it feeds."""

from secondfix.electrical.registry import RULES, check

__all__ = ["RULES", "check"]
