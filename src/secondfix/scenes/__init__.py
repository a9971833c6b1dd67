"""Scenes: what each will really switch, load by load, and what is wrong with it."""

from secondfix.scenes.as_json import scenes_as_json
from secondfix.scenes.check import RULES, check
from secondfix.scenes.crossing import Crossing, CrossingKind, Ledger, Planned, Reason, Resolution
from secondfix.scenes.resolving import resolve
from secondfix.scenes.table import Cell, SceneSchedule, scene_schedule

__all__ = [
    "RULES",
    "Cell",
    "Crossing",
    "CrossingKind",
    "Ledger",
    "Planned",
    "Reason",
    "Resolution",
    "SceneSchedule",
    "check",
    "resolve",
    "scene_schedule",
    "scenes_as_json",
]
