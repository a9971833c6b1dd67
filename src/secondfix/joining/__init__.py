"""Joining: the order, the worksheets and their cautions, what goes wrong, and the codes on labels."""

from secondfix.joining.cautions import GENERAL, ISOLATION, Caution, cautions_for
from secondfix.joining.check import RULES, check
from secondfix.joining.links import CONTROLLER, Links, NetworkLinks, links_of
from secondfix.joining.order import walk
from secondfix.joining.steps import Mark, StepKind, Walk, WalkStage, WalkStep, walk_as_json
from secondfix.joining.when_nothing import WHEN_NOTHING, Try
from secondfix.joining.worksheet import CodeLine, EntryRow, FunctionTestRow, Worksheet
from secondfix.joining.worksheets import worksheets

__all__ = [
    "CONTROLLER",
    "GENERAL",
    "ISOLATION",
    "RULES",
    "WHEN_NOTHING",
    "Caution",
    "CodeLine",
    "EntryRow",
    "FunctionTestRow",
    "Links",
    "Mark",
    "NetworkLinks",
    "StepKind",
    "Try",
    "Walk",
    "WalkStage",
    "WalkStep",
    "Worksheet",
    "cautions_for",
    "check",
    "links_of",
    "walk",
    "walk_as_json",
    "worksheets",
]
