"""Findings as numbered notes of a drawing: the mark at the plate and the words beneath.

Danger a filled triangle, fault a filled diamond, advice an open circle, cannot tell a boxed
question mark; each with its word. What passes gets no mark.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding, Outcome, Severity, in_order
from secondfix.house import House
from secondfix.papers.drawing.canvas import Canvas, Xy, text_width, wrapped
from secondfix.papers.palette import DAY, LABEL, TEXT
from secondfix.papers.words import sentence

SHAPE_WORDS = {
    "danger": "Danger",
    "fault": "Fault",
    "advice": "Advice",
    "cannot_tell": "Cannot tell",
    "passes": "No fault found",
}
MARK_WIDTH, MARK_HEIGHT = 26.0, 20.0


@dataclass(frozen=True, slots=True)
class Keynote:
    """A finding and its number on the sheet."""

    number: int
    finding: Finding

    @property
    def shape(self) -> str:
        """Which shape of the legend it wears."""
        return shape_of(self.finding)


def shape_of(finding: Finding) -> str:
    """The legend's key: a severity, ``cannot_tell``, or ``passes``."""
    if finding.outcome is Outcome.FAILS:
        return (finding.severity or Severity.FAULT).value
    return finding.outcome.value


def keynotes_for(house: House, findings: Iterable[Finding], room_id: str) -> list[Keynote]:
    """The notes of a room's sheet: everything found there that is not a pass, worst first."""
    own = [f for f in in_order(findings) if f.outcome is not Outcome.PASSES and room_of(house, f) == room_id]
    return [Keynote(n, f) for n, f in enumerate(own, 1)]


def spot_of(house: House, finding: Finding) -> str | None:
    """The box or place that a finding points at, through its place or the ids beside it."""
    for name in (finding.place, *finding.also):
        head = name.split(".")[0]
        if head in house.boxes or head in house.places:
            return head
        device = house.devices.get(head)
        if device and (device.box or device.place):
            return device.box or device.place
    return None


def room_of(house: House, finding: Finding) -> str | None:
    """The room on whose sheet a finding is noted, None where it speaks of the whole house."""
    if finding.place in house.rooms:
        return finding.place
    spot = spot_of(house, finding)
    if spot is None:
        return house.loads[finding.place].room if finding.place in house.loads else None
    return house.boxes[spot].room if spot in house.boxes else house.places[spot].room


def draw_mark(canvas: Canvas, at: Xy, note: Keynote) -> None:
    """The mark of one note, centred."""
    x, y = at
    p = canvas.palette
    number, shape = str(note.number), note.shape
    if shape == "danger":
        canvas.polygon([(x, y - 11), (x + 12, y + 9), (x - 12, y + 9)], weight=0, fill=p.accent)
        canvas.text((x, y + 7), number, size=LABEL, colour=p.paper, strong=True, anchor="middle")
    elif shape == "fault":
        canvas.polygon([(x, y - 11), (x + 11, y), (x, y + 11), (x - 11, y)], weight=0, fill=p.accent)
        canvas.text((x, y + 3.5), number, size=LABEL, colour=p.paper, strong=True, anchor="middle")
    elif shape == "advice":
        canvas.circle((x, y), 9, weight=1.2, fill=p.paper)
        canvas.text((x, y + 3.5), number, size=LABEL, anchor="middle")
    else:
        words = f"? {number}"
        half = max(text_width(words, LABEL, strong=True) / 2 + 3.5, 10)
        canvas.path(
            f"M{x - half:.2f} {y - 8:.2f}h{2 * half:.2f}v16h{-2 * half:.2f}z", weight=1.2, fill=p.paper
        )
        canvas.text((x, y + 3.7), words, size=LABEL, strong=True, anchor="middle")


def notes_height(notes: Sequence[Keynote], *, width: float) -> float:
    """How much the words of the notes need beneath a drawing."""
    return draw_notes(Canvas(DAY), notes, top=0.0, left=0.0, width=width) if notes else 0.0


def draw_notes(canvas: Canvas, notes: Sequence[Keynote], *, top: float, left: float, width: float) -> float:
    """The words of the notes in three columns; returns how far down they reach."""
    gap, indent = 28.0, 30.0
    column = (width - 2 * gap) / 3
    depth = [top] * 3
    for note in notes:
        i = depth.index(min(depth))
        x, y = left + i * (column + gap), depth[i] + 14
        draw_mark(canvas, (x + 12, y - 4), note)
        f = note.finding
        head = wrapped(f"{SHAPE_WORDS[note.shape]}, {f.place}", width=column - indent, strong=True)
        for line in head:
            canvas.text((x + indent, y), line, strong=True)
            y += 16
        for words, colour in ((f.says, ""), (sentence(f.remedy), canvas.palette.soft)):
            for line in wrapped(words, width=column - indent) if words else []:
                canvas.text((x + indent, y), line, size=TEXT, colour=colour)
                y += 16
        depth[i] = y + 6
    return max(depth)
