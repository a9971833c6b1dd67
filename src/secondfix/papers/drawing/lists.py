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
    """One list: lines as (number or nothing, words), set at ``at``; its dotted line comes down at ``x``."""

    head: str
    lines: tuple[tuple[str, str], ...]
    at: Rect
    x: float


def button_lists(
    schedule: Schedule, plates: Sequence[Plate], *, top: float, right: float
) -> list[ButtonList]:
    """One list per plate, none over another, none past ``right``, and no dotted line through words.

    From right to left, each as high as it can stand: a list that would run into its right neighbour
    goes beneath it, so its line passes to the left of what stands above.
    """
    done: list[ButtonList] = []
    for plate in sorted(plates, key=lambda p: (-p.body.left, p.y)):
        lines = tuple(_lines(schedule, plate))
        wide = max([NUMBER_WIDTH + text_width(w) for _, w in lines] + [text_width(plate.id, strong=True)])
        high = LINE * (len(lines) + 1)
        left = min(plate.body.left, right - wide)
        heights = sorted({top, *(d.at.bottom + 8 for d in done)})
        spots = [
            ButtonList(plate.id, lines, Rect(left, y, left + wide, y + high), x)
            for y in heights
            for x in _ways_down(plate, plates)
        ]
        # Beneath everything there is always room, if need be with a dotted line through words.
        done.append(next((s for s in spots if not _blocked(s, done, top)), spots[-1]))
    return done


def _ways_down(plate: Plate, plates: Sequence[Plate]) -> list[float]:
    """Where the dotted line may leave a plate, first where it passes behind no lower one."""
    body = plate.body
    ways = [body.left + 4, body.right - 4, body.left + 4 + (body.right - body.left - 8) / 2]
    under = [p.footprint for p in plates if p is not plate and p.body.bottom > body.bottom]
    return sorted(ways, key=lambda x: any(r.left - 2 < x < r.right + 2 for r in under))


def _blocked(item: ButtonList, done: Sequence[ButtonList], top: float) -> bool:
    leader = Rect(item.x - 4, top, item.x + 4, item.at.top)
    for other in done:
        theirs = Rect(other.x - 4, top, other.x + 4, other.at.top)
        if item.at.meets(other.at, 6) or leader.meets(other.at) or item.at.meets(theirs, 2):
            return True
        if abs(item.x - other.x) < 5:
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
        x = item.x
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
