"""What a paper is set on and signed with: sheet size, title block, fonts."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from pathlib import Path

from secondfix.house import House, is_nec


class SheetSize(StrEnum):
    """Paper sizes of ISO 216 and ANSI/ASME Y14.1 that printers hold."""

    A4 = "a4"
    LETTER = "us-letter"


PX_PER_MM = 96 / 25.4  # user units of the drawings, 1/96 inch each
_PORTRAIT_MM = {SheetSize.A4: (210.0, 297.0), SheetSize.LETTER: (215.9, 279.4)}

# The frame: room to file at the left (ISO 5457, from memory, asks for 20 mm; small sheets get 15 here).
FRAME_LEFT_MM, FRAME_MM, BLOCK_MM, INSET_MM = 15.0, 8.0, 13.0, 5.0


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """Fields of the title block after ISO 7200; house, sheet, number and page are added per sheet.

    ``date`` is printed and becomes the file's own date, so the same answers give the same bytes.
    """

    issue: str
    date: date
    drawn_by: str


@dataclass(frozen=True, slots=True)
class Setting:
    """How one paper is set. ``size`` None: Letter where the house follows NFPA 70, else A4.

    ``extra_fonts`` are folders of further TrueType or OpenType files for scripts that the own
    family lacks.
    """

    block: TitleBlock
    size: SheetSize | None = None
    extra_fonts: tuple[Path, ...] = ()

    def size_for(self, house: House) -> SheetSize:
        """The sheet size to use for this house."""
        return self.size or (SheetSize.LETTER if is_nec(house) else SheetSize.A4)


def body_mm(size: SheetSize, *, landscape: bool) -> tuple[float, float]:
    """Width and height inside frame and title block."""
    wide, high = _PORTRAIT_MM[size]
    if landscape:
        wide, high = high, wide
    return wide - FRAME_LEFT_MM - FRAME_MM - 2 * INSET_MM, high - 2 * FRAME_MM - BLOCK_MM - 2 * INSET_MM
