"""Lights worked from several places: which arrangement it is, what it becomes, what is wrong with it."""

from secondfix.electrical.multiway.as_found import LAMP, as_found
from secondfix.electrical.multiway.conductors import Role, Wish
from secondfix.electrical.multiway.conversion import Change, Conversion, convert
from secondfix.electrical.multiway.drawn import Drawn, DrawnCore, DrawnPoint, drawn
from secondfix.electrical.multiway.graph import Wiring
from secondfix.electrical.multiway.judging import DANGERS, Judgement, Trouble, judge
from secondfix.electrical.multiway.light import Light, Way, lights, patterns
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
from secondfix.electrical.multiway.words import ARRANGEMENTS, BETWEEN, point_words, spoken

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
    "DrawnCore",
    "DrawnPoint",
    "Judgement",
    "Light",
    "Question",
    "Role",
    "Told",
    "Trouble",
    "Untold",
    "Way",
    "Wiring",
    "Wish",
    "as_found",
    "check",
    "convert",
    "drawn",
    "judge",
    "lights",
    "patterns",
    "point_words",
    "spoken",
    "tell",
]
