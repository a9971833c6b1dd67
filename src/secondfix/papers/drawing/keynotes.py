"""Findings as numbered notes of a drawing: the mark at the plate and the words beneath.

Danger a filled triangle, fault a filled diamond, advice an open circle, cannot tell a boxed
question mark; each with its word. What passes gets no mark.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import House
from secondfix.papers.drawing.canvas import Canvas, Xy, text_width, wrapped
from secondfix.papers.palette import DAY, LABEL, TEXT
from secondfix.papers.places import id_words
from secondfix.papers.snags import snags
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
    """A finding and its number, the same on list, plan and elevation."""

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


def keynotes(findings: Iterable[Finding]) -> list[Keynote]:
    """Everything that is not a pass, numbered as in the snag list."""
    return [Keynote(s.number, f) for s in snags(findings) for f in s.findings]


def keynotes_for(house: House, notes: Iterable[Keynote], room_id: str) -> list[Keynote]:
    """The notes of a room's sheet, worst first; many that share a number stand once for each place."""
    return [n for n in notes if room_of(house, n.finding) == room_id]


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


def draw_mark(canvas: Canvas, at: Xy, shape: str, number: int) -> None:
    """The mark of one note, centred."""
    x, y = at
    p = canvas.palette
    words = str(number)
    if shape == "danger":
        canvas.polygon([(x, y - 11), (x + 12, y + 9), (x - 12, y + 9)], weight=0, fill=p.accent)
        canvas.text((x, y + 7), words, size=LABEL, colour=p.paper, strong=True, anchor="middle")
    elif shape == "fault":
        canvas.polygon([(x, y - 11), (x + 11, y), (x, y + 11), (x - 11, y)], weight=0, fill=p.accent)
        canvas.text((x, y + 3.5), words, size=LABEL, colour=p.paper, strong=True, anchor="middle")
    elif shape == "advice":
        canvas.circle((x, y), 9, weight=1.2, fill=p.paper)
        canvas.text((x, y + 3.5), words, size=LABEL, anchor="middle")
    else:
        words = f"? {number}"
        half = max(text_width(words, LABEL, strong=True) / 2 + 3.5, 10)
        canvas.path(
            f"M{x - half:.2f} {y - 8:.2f}h{2 * half:.2f}v16h{-2 * half:.2f}z", weight=1.2, fill=p.paper
        )
        canvas.text((x, y + 3.7), words, size=LABEL, strong=True, anchor="middle")


@dataclass(frozen=True, slots=True)
class NoteWords:
    """What is printed for one number on one sheet; many like findings of it are said once, places listed."""

    shape: str
    number: int
    head: str
    says: str
    remedy: str


def note_words(house: House, notes: Sequence[Keynote]) -> list[NoteWords]:
    """The words beneath a drawing, one for each number on it."""
    grouped: dict[int, list[Keynote]] = {}
    for note in notes:
        grouped.setdefault(note.number, []).append(note)
    out = []
    for number, same in grouped.items():
        first = same[0].finding
        places = ", ".join(dict.fromkeys(id_words(house, n.finding.place) for n in same))
        says = first.says if len(same) == 1 else f"{len(same)} like this: {first.says}"
        head = f"{SHAPE_WORDS[same[0].shape]}, {places}"
        out.append(NoteWords(same[0].shape, number, head, says, sentence(first.remedy)))
    return out


def notes_height(notes: Sequence[NoteWords], *, width: float, columns: int = 3) -> float:
    """How much the words of the notes need beneath a drawing, or beside it."""
    if not notes:
        return 0.0
    return draw_notes(Canvas(DAY), notes, top=0.0, left=0.0, width=width, columns=columns)


def draw_notes(
    canvas: Canvas,
    notes: Sequence[NoteWords],
    *,
    top: float,
    left: float,
    width: float,
    columns: int = 3,
) -> float:
    """The words of the notes in columns; returns how far down they reach."""
    gap, indent = 28.0, 30.0
    column = (width - (columns - 1) * gap) / columns
    depth = [top] * columns
    for note in notes:
        i = depth.index(min(depth))
        x, y = left + i * (column + gap), depth[i] + 14
        draw_mark(canvas, (x + 12, y - 4), note.shape, note.number)
        for line in wrapped(note.head, width=column - indent, strong=True):
            canvas.text((x + indent, y), line, strong=True)
            y += 16
        for words, colour in ((note.says, ""), (note.remedy, canvas.palette.soft)):
            for line in wrapped(words, width=column - indent) if words else []:
                canvas.text((x + indent, y), line, size=TEXT, colour=colour)
                y += 16
        depth[i] = y + 6
    return max(depth)
