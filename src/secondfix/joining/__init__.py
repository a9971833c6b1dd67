"""Joining: the order, the worksheets and their cautions, what goes wrong, and the codes on labels."""

from secondfix.joining.links import CONTROLLER, Links, NetworkLinks
from secondfix.joining.order import walk
from secondfix.joining.steps import Mark, StepKind, Walk, WalkStage, WalkStep, walk_as_json

__all__ = [
    "CONTROLLER",
    "Links",
    "Mark",
    "NetworkLinks",
    "StepKind",
    "Walk",
    "WalkStage",
    "WalkStep",
    "walk",
    "walk_as_json",
]
