"""Plans, radio on them, and room elevations as SVG."""

from secondfix.papers.drawing.canvas import wrapped
from secondfix.papers.drawing.conductors import ConductorPicture, conductor_pictures
from secondfix.papers.drawing.elevation import Drawing, draw_elevations, elevations_svg
from secondfix.papers.drawing.keynotes import (
    SHAPE_WORDS,
    Keynote,
    NoteWords,
    keynotes,
    keynotes_for,
    note_words,
    notes_height,
    shape_of,
)
from secondfix.papers.drawing.plan import draw_plan, plan_svg
from secondfix.papers.drawing.plan_on_screen import PlanOnScreen, plan_on_screen
from secondfix.papers.drawing.radio_on_screen import radio_plan_on_screen
from secondfix.papers.drawing.radio_plan import RadioShown, draw_radio, radio_svg, what_first

__all__ = [
    "SHAPE_WORDS",
    "ConductorPicture",
    "Drawing",
    "Keynote",
    "NoteWords",
    "PlanOnScreen",
    "RadioShown",
    "conductor_pictures",
    "draw_elevations",
    "draw_plan",
    "draw_radio",
    "elevations_svg",
    "keynotes",
    "keynotes_for",
    "note_words",
    "notes_height",
    "plan_on_screen",
    "plan_svg",
    "radio_plan_on_screen",
    "radio_svg",
    "shape_of",
    "what_first",
    "wrapped",
]
