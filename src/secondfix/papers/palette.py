"""Ink on paper, by day and by night. No colour but the accent carries meaning, and never alone.

Printed papers are day ink on whatever paper the printer holds.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Palette:
    """Colours of a sheet: ``line`` and ``hair`` are for lines, never for text."""

    paper: str
    panel: str
    ink: str
    soft: str
    line: str
    hair: str
    accent: str


DAY = Palette("#FBFAF5", "#F1EFE6", "#1B2430", "#4A5563", "#8A919B", "#D5D2C6", "#9A3F16")
PRINT = Palette("#FFFFFF", "#F1EFE6", "#1B2430", "#4A5563", "#8A919B", "#D5D2C6", "#9A3F16")
NIGHT = Palette("#12171E", "#1B222B", "#E9E5DB", "#A9B0BA", "#6B7480", "#2C353F", "#F2A36B")

# Line weights of drawings, in user units (one is 1/96 inch on paper).
FLOOR, PLATE, WALL, FITTING, LEADER = 2.0, 1.4, 1.2, 0.8, 0.6
# Text sizes of drawings, in user units: 12 is 9 pt, 10.5 is 7.9 pt on paper.
TEXT, LABEL = 12.0, 10.5
