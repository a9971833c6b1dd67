"""Findings on a plan: the snag list's numbered shapes beside what they speak of."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.house import House
from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.drawing.keynotes import (
    MARK_HEIGHT,
    MARK_WIDTH,
    Keynote,
    draw_mark,
    room_of,
    spot_of,
)
from secondfix.papers.drawing.labels import Taken, draw_leader, free_spot

_ABREAST = 3
_PITCH = MARK_HEIGHT + 2


@dataclass(frozen=True, slots=True)
class Anchor:
    """What marks belong to: where it stands on the sheet, which way its room lies, the room's outline."""

    at: Xy
    toward: Xy
    room: tuple[Xy, ...]


def marks_by_place(house: House, notes: Iterable[Keynote]) -> dict[str, list[Keynote]]:
    """Each number once under the box or place it speaks of, else under its room."""
    out: dict[str, dict[int, Keynote]] = {}
    for note in notes:
        where = spot_of(house, note.finding) or room_of(house, note.finding)
        if where:
            out.setdefault(where, {})[note.number] = note
    return {where: list(own.values()) for where, own in out.items()}


def draw_marks(
    canvas: Canvas,
    taken: Taken,
    swept: Taken,
    marks: dict[str, list[Keynote]],
    anchors: dict[str, Anchor],
) -> dict[str, list[Keynote]]:
    """The marks of every anchor at the nearest free spot; returns those for which there is none."""
    lost = {}
    for where, anchor in anchors.items():
        own = marks.get(where, [])
        if own and not _drawn(canvas, taken, swept, own, anchor):
            lost[where] = own
    return lost


def _drawn(canvas: Canvas, taken: Taken, swept: Taken, own: Sequence[Keynote], anchor: Anchor) -> bool:
    """Side by side where there is room, else one beneath the other."""
    for abreast in dict.fromkeys((min(len(own), _ABREAST), 1)):
        size = (MARK_WIDTH * abreast, _PITCH * -(-len(own) // abreast))
        spot = free_spot(anchor.at, size, taken, swept, toward=anchor.toward, room=anchor.room)
        if spot:
            taken.take(spot)
            draw_leader(canvas, anchor.at, spot)
            for n, note in enumerate(own):
                row, column = divmod(n, abreast)
                at = (spot.left + MARK_WIDTH * (column + 0.5), spot.top + _PITCH * (row + 0.5))
                draw_mark(canvas, at, note.shape, note.number)
            return True
    return False
