"""Answers on paper and as pictures: plans, room elevations, findings, worksheets, the handover pack.

Rendering writes into a folder of its own for the time it takes; nothing else here touches a disk,
the fonts of the one type family apart.
"""

from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import (
    SHAPE_WORDS,
    PlanOnScreen,
    RadioShown,
    elevations_svg,
    plan_on_screen,
    plan_svg,
    radio_plan_on_screen,
    radio_svg,
    shape_of,
    what_first,
)
from secondfix.papers.findings_paper import findings_pdf
from secondfix.papers.pack import Hanging, Key, key_ring_pdf, pack_file, pack_pdf
from secondfix.papers.pages import page_count, page_picture
from secondfix.papers.palette import DAY, NIGHT, Palette
from secondfix.papers.places import about_words, room_name, thing_words
from secondfix.papers.record import EntryLine, Record, entry_line, entry_lines, revision_words
from secondfix.papers.setting import Setting, SheetSize, TitleBlock
from secondfix.papers.swap import swap_pdf
from secondfix.papers.words import counted, sentence
from secondfix.papers.worksheet_parts import caution_words, removal_parts, settings_of
from secondfix.papers.worksheets_paper import worksheets_pdf

__all__ = [
    "DAY",
    "NIGHT",
    "SHAPE_WORDS",
    "EntryLine",
    "Hanging",
    "Key",
    "Palette",
    "PlanOnScreen",
    "RadioShown",
    "Record",
    "Setting",
    "SheetSize",
    "TextFault",
    "TitleBlock",
    "about_words",
    "caution_words",
    "counted",
    "elevations_svg",
    "entry_line",
    "entry_lines",
    "findings_pdf",
    "key_ring_pdf",
    "pack_file",
    "pack_pdf",
    "page_count",
    "page_picture",
    "plan_on_screen",
    "plan_svg",
    "radio_plan_on_screen",
    "radio_svg",
    "removal_parts",
    "revision_words",
    "room_name",
    "sentence",
    "settings_of",
    "shape_of",
    "swap_pdf",
    "thing_words",
    "what_first",
    "worksheets_pdf",
]
