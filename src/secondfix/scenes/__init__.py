"""Scenes: what each will really switch, load by load, and what is wrong with it."""

from secondfix.scenes.air import Air
from secondfix.scenes.as_json import coming_as_json, scenes_as_json
from secondfix.scenes.check import RULES, check
from secondfix.scenes.crossing import Crossing, CrossingKind, Ledger, Planned, Reason, Resolution
from secondfix.scenes.next_starts import FIRST_DAY, LAST_DAY, Coming, coming
from secondfix.scenes.resolving import resolve
from secondfix.scenes.span import Span
from secondfix.scenes.sun import SunState, SunTimes, sun_times
from secondfix.scenes.table import Cell, SceneSchedule, by_room, cell_of, scene_schedule
from secondfix.scenes.timing import Group, NetworkTime, SceneTime, scene_times
from secondfix.scenes.wording import time_words

__all__ = [
    "FIRST_DAY",
    "LAST_DAY",
    "RULES",
    "Air",
    "Cell",
    "Coming",
    "Crossing",
    "CrossingKind",
    "Group",
    "Ledger",
    "NetworkTime",
    "Planned",
    "Reason",
    "Resolution",
    "SceneSchedule",
    "SceneTime",
    "Span",
    "SunState",
    "SunTimes",
    "by_room",
    "cell_of",
    "check",
    "coming",
    "coming_as_json",
    "resolve",
    "scene_schedule",
    "scene_times",
    "scenes_as_json",
    "sun_times",
    "time_words",
]
