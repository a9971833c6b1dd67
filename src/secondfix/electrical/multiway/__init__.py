"""Lights worked from several places: which arrangement it is, what it becomes, what is wrong with it."""

from secondfix.electrical.multiway.as_found import LAMP, as_found
from secondfix.electrical.multiway.conductors import Role, Wish
from secondfix.electrical.multiway.conversion import Change, Conversion, convert
from secondfix.electrical.multiway.drawn import Drawn, as_svg, drawn
from secondfix.electrical.multiway.graph import Wiring
from secondfix.electrical.multiway.judging import DANGERS, Judgement, Trouble, judge
from secondfix.electrical.multiway.registry import REGISTRY, RULES, check
from secondfix.electrical.multiway.telling import (
    END_BOX,
    LIVE_TEST,
    QUESTIONS,
    Question,
    Told,
    Untold,
    tell,
)
from secondfix.electrical.multiway.words import ARRANGEMENTS, BETWEEN

__all__ = [
    "ARRANGEMENTS",
    "BETWEEN",
    "DANGERS",
    "END_BOX",
    "LAMP",
    "LIVE_TEST",
    "QUESTIONS",
    "REGISTRY",
    "RULES",
    "Change",
    "Conversion",
    "Drawn",
    "Judgement",
    "Question",
    "Role",
    "Told",
    "Trouble",
    "Untold",
    "Wiring",
    "Wish",
    "as_found",
    "as_svg",
    "check",
    "convert",
    "drawn",
    "judge",
    "tell",
]
