"""Joining: the order, the worksheets and their cautions, what goes wrong, and the codes on labels."""

from secondfix.joining.cautions import cautions_for
from secondfix.joining.check import RULES, check
from secondfix.joining.codes import Agreement, CodeReading, Kind, agree, read_code, shown
from secondfix.joining.distance import LEANS_ON as WAY_LEANS_ON
from secondfix.joining.entry_rows import function_test_rows
from secondfix.joining.links import CONTROLLER, Links, NetworkLinks, links_of
from secondfix.joining.order import walk
from secondfix.joining.sheets import worksheets
from secondfix.joining.steps import Mark, StepKind, Walk, WalkStage, WalkStep, stage_words, walk_as_json
from secondfix.joining.usual_cautions import GENERAL, ISOLATION, Caution, before_boxes, to_mind
from secondfix.joining.when_nothing import WHEN_NOTHING, Try
from secondfix.joining.worksheet import CodeLine, EntryRow, FunctionTestRow, Worksheet

CODE_KINDS: tuple[str, ...] = tuple(kind.value for kind in Kind if kind is not Kind.NOT_RECOGNISED)

__all__ = [
    "CODE_KINDS",
    "CONTROLLER",
    "GENERAL",
    "ISOLATION",
    "RULES",
    "WAY_LEANS_ON",
    "WHEN_NOTHING",
    "Agreement",
    "Caution",
    "CodeLine",
    "CodeReading",
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
    "agree",
    "before_boxes",
    "cautions_for",
    "check",
    "function_test_rows",
    "links_of",
    "read_code",
    "shown",
    "stage_words",
    "to_mind",
    "walk",
    "walk_as_json",
    "worksheets",
]
