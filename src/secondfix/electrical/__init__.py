"""The electrical checks: does each switch fit its box, its circuit and what it feeds."""

from secondfix.electrical.circuit_load import CircuitSum, circuit_sums
from secondfix.electrical.demand import Current, current_of
from secondfix.electrical.figures import amperes_between
from secondfix.electrical.multiway import (
    ARRANGEMENTS,
    BETWEEN,
    END_BOX,
    LIVE_TEST,
    QUESTIONS,
    Conversion,
    Drawn,
    DrawnCore,
    DrawnPoint,
    Light,
    Role,
    Way,
    Wish,
    convert,
    drawn,
    lights,
    patterns,
    point_words,
    spoken,
)
from secondfix.electrical.registry import RULES, check

__all__ = [
    "ARRANGEMENTS",
    "BETWEEN",
    "END_BOX",
    "LIVE_TEST",
    "QUESTIONS",
    "RULES",
    "CircuitSum",
    "Conversion",
    "Current",
    "Drawn",
    "DrawnCore",
    "DrawnPoint",
    "Light",
    "Role",
    "Way",
    "Wish",
    "amperes_between",
    "check",
    "circuit_sums",
    "convert",
    "current_of",
    "drawn",
    "lights",
    "patterns",
    "point_words",
    "spoken",
]
