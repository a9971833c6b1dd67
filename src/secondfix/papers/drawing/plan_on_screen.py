"""The plan of a storey for a screen: the picture with ways in it, remarks and notes as words beside it."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from secondfix.findings import Finding
from secondfix.house import Schedule
from secondfix.papers.drawing.keynotes import NoteWords, keynotes, note_words
from secondfix.papers.drawing.plan import POSITION_NOT_KNOWN, draw_plan, marks_of_storey
from secondfix.papers.palette import Palette


@dataclass(frozen=True, slots=True)
class PlanOnScreen:
    """The picture, what it could not hold or does not show, and the words of its numbered marks."""

    svg: str
    remarks: tuple[str, ...]
    notes: tuple[NoteWords, ...]


def plan_on_screen(
    schedule: Schedule,
    storey_id: str,
    findings: Iterable[Finding],
    *,
    palette: Palette,
    ways: Mapping[str, str],
    width: float = 1016.0,
    height: float = 640.0,
) -> PlanOnScreen:
    """As ``plan_svg``, with the words apart; the page itself lists what has no position.

    KeyError for a storey that is not in the house.
    """
    notes = keynotes(findings)
    drawn = draw_plan(
        schedule, storey_id, notes, palette=palette, width=width, height=height, words=False, ways=ways
    )
    own = {n.number: n for marks in marks_of_storey(schedule, storey_id, notes).values() for n in marks}
    alike = [n for n in notes if n.number in own]
    remarks = tuple(line for line in drawn.remarks if not line.startswith(POSITION_NOT_KNOWN))
    return PlanOnScreen(drawn.svg, remarks, tuple(note_words(schedule.house, alike)))
