"""Answers on paper and as pictures: plans, room elevations, findings, worksheets, the handover pack.

Rendering writes into a folder of its own for the time it takes; nothing else here touches a disk,
the fonts of the one type family apart.
"""

from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import elevations_svg, plan_svg
from secondfix.papers.findings_paper import findings_pdf
from secondfix.papers.pack import Key, key_ring_pdf, pack_pdf
from secondfix.papers.palette import DAY, NIGHT, Palette
from secondfix.papers.setting import Setting, SheetSize, TitleBlock
from secondfix.papers.swap import swap_pdf
from secondfix.papers.worksheets_paper import worksheets_pdf

__all__ = [
    "DAY",
    "NIGHT",
    "Key",
    "Palette",
    "Setting",
    "SheetSize",
    "TextFault",
    "TitleBlock",
    "elevations_svg",
    "findings_pdf",
    "key_ring_pdf",
    "pack_pdf",
    "plan_svg",
    "swap_pdf",
    "worksheets_pdf",
]
