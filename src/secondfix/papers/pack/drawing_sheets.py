"""The pack's drawings: a plan for each storey, elevations for each room with a wall box or a finding."""

from collections.abc import Sequence

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule, is_nec
from secondfix.papers.blocks import Block, Sheet, flanked, notes, picture
from secondfix.papers.drawing import (
    Drawing,
    Keynote,
    NoteWords,
    draw_elevations,
    draw_plan,
    keynotes_for,
    note_words,
    notes_height,
)
from secondfix.papers.leaned import leaned_height_mm, leaning, names_of
from secondfix.papers.palette import PRINT
from secondfix.papers.setting import PX_PER_MM

_HEAD_MM = 19.0  # what title and remarks of a drawing sheet take
_LEAST_SHARE = 0.5  # of a sheet's height, that a drawing keeps above its notes
_SIDE_SHARE = 0.3  # of a sheet's width, that notes take at the right of a drawing


def plan_sheets(schedule: Schedule, marks: Sequence[Keynote], *, wide: float, high: float) -> list[Sheet]:
    """A sheet for every storey; ``wide`` and ``high`` are the sheet's, in units of 1/96 inch."""
    out = []
    for n, (storey_id, storey) in enumerate(schedule.house.storeys.items(), 1):
        drawn = draw_plan(
            schedule,
            storey_id,
            marks,
            palette=PRINT,
            width=wide,
            height=high - _HEAD_MM * PX_PER_MM,
            words=False,
        )
        title = f"{storey.name}, plan"
        blocks = [picture("plan", title, width=drawn.width, height=drawn.height)]
        out.append(Sheet(f"S2/{n:02d}", title, " ".join(drawn.remarks), blocks, {"plan": drawn.svg}))
    return out


def elevation_sheets(
    schedule: Schedule, marks: Sequence[Keynote], assumptions: Assumptions, *, wide: float, high: float
) -> list[Sheet]:
    """A sheet for every room that has boxes or findings."""
    house = schedule.house
    with_boxes = {b.room for b in house.boxes.values()}
    out: list[Sheet] = []
    for room_id, room in house.rooms.items():
        own = keynotes_for(house, marks, room_id)
        if room_id in with_boxes or own:
            number, title = f"S3/{len(out) + 1:02d}", elevations_title(room.name)
            names, nec = names_of(note.finding for note in own), is_nec(house)
            taken = leaned_height_mm(assumptions, names, nec=nec, width_mm=wide / PX_PER_MM) * PX_PER_MM
            drawn = _elevation_sheet(schedule, room_id, own, number, title, size=(wide, high - taken))
            out.append(leaning(drawn, assumptions, names, nec=nec))
    return out


def _elevation_sheet(
    schedule: Schedule,
    room_id: str,
    own: Sequence[Keynote],
    number: str,
    title: str,
    *,
    size: tuple[float, float],
) -> Sheet:
    """Notes beneath the drawing, or at its right where that lets the walls be larger."""
    wide, whole = size[0], size[1] - _HEAD_MM * PX_PER_MM
    words = note_words(schedule.house, own)

    def drawn(width: float, height: float) -> Drawing:
        return draw_elevations(schedule, room_id, own, palette=PRINT, width=width, words=False, height=height)

    left = whole - notes_height(words, width=wide)
    # Notes that would press the drawing small go to a page after it.
    best = drawn(wide, left if left > _LEAST_SHARE * whole else whole)
    notes_wide = _SIDE_SHARE * wide
    flank = False
    if own and notes_height(words, width=notes_wide - 14, columns=1) < whole:
        beside = drawn(wide - notes_wide, whole)
        flank = beside.height <= whole and (beside.scale or 0) < (best.scale or 0)
        best = beside if flank else best
    shown = picture("walls", title, width=best.width, height=best.height)
    told = [_note(w) for w in words]
    blocks = [flanked(shown, notes(told, columns=1), share=_SIDE_SHARE)] if flank else [shown, notes(told)]
    return Sheet(number, title, " ".join(best.remarks), blocks, {"walls": best.svg})


def elevations_title(room: str) -> str:
    """What a room's sheet is called."""
    return f"{room}, elevations"


def _note(words: NoteWords) -> Block:
    says = {"says": words.says, "soft": words.remedy}
    return {"shape": words.shape, "number": str(words.number), "head": words.head, **says}
