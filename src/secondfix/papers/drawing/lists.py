"""What every button does, listed beneath its plate and tied to it by a dotted line."""

from collections.abc import Sequence
from dataclasses import dataclass

from secondfix.house import Schedule
from secondfix.papers.drawing.canvas import Canvas, Rect, text_width, wrapped
from secondfix.papers.drawing.plates import Plate
from secondfix.papers.duties import button_lines
from secondfix.papers.palette import LEADER, TEXT

LINE, LIST_WIDTH, NUMBER_WIDTH = 15.0, 150.0, 16.0


@dataclass(frozen=True, slots=True)
class ButtonList:
    """One list: lines as (number or nothing, words), set at ``at``."""

    head: str
    lines: tuple[tuple[str, str], ...]
    at: Rect


def button_lists(schedule: Schedule, plates: Sequence[Plate], *, top: float) -> list[ButtonList]:
    """One list per plate, none over another and no dotted line through words.

    From right to left, each as high as it can stand: a list that would run into its right neighbour
    goes beneath it, so its line passes to the left of what stands above.
    """
    done: list[ButtonList] = []
    for plate in sorted(plates, key=lambda p: (-p.body.left, p.y)):
        lines = _lines(schedule, plate)
        wide = max([NUMBER_WIDTH + text_width(w) for _, w in lines] + [text_width(plate.id, strong=True)])
        high = LINE * (len(lines) + 1)
        left = plate.body.left
        heights = sorted([top, *(d.at.bottom + 8 for d in done)])
        at = next(r for y in heights if not _blocked(r := Rect(left, y, left + wide, y + high), done, top))
        done.append(ButtonList(plate.id, tuple(lines), at))
    return done


def _blocked(at: Rect, done: Sequence[ButtonList], top: float) -> bool:
    leader = Rect(at.left, top, at.left + 8, at.top)
    for other in done:
        theirs = Rect(other.at.left, top, other.at.left + 8, other.at.top)
        if at.meets(other.at, 6) or leader.meets(other.at) or at.meets(theirs, 2):
            return True
    return False


def _lines(schedule: Schedule, plate: Plate) -> list[tuple[str, str]]:
    out: list[tuple[str, str]] = []
    for row in plate.rows:
        number = row.gang_no
        for words in button_lines(schedule, row):
            for line in wrapped(words, width=LIST_WIDTH):
                out.append((number, line))
                number = ""
    return out or [("", "no gang")]


def draw_lists(canvas: Canvas, lists: Sequence[ButtonList], plates: Sequence[Plate]) -> None:
    """The dotted lines first: plates are drawn over them."""
    bottoms = {p.id: p.body.bottom for p in plates}
    p = canvas.palette
    for item in lists:
        x = item.at.left + 4
        canvas.line(
            (x, bottoms[item.head]), (x, item.at.top + 1), weight=LEADER, colour=p.line, dash="1.5 2.5"
        )
        y = item.at.top + LINE - 2
        canvas.text((item.at.left, y), item.head, strong=True)
        for number, words in item.lines:
            y += LINE
            if number:
                canvas.text((item.at.left, y), number, colour=p.soft, size=TEXT)
            canvas.text((item.at.left + NUMBER_WIDTH, y), words)
