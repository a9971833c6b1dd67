"""The sheet of cautions that leads every paper which leads to hands in a wall box."""

from secondfix.joining import GENERAL, ISOLATION
from secondfix.papers.blocks import Sheet, bullets, cautions, heading, para, steps


def cautions_sheet(number: str) -> Sheet:
    """What holds for every job: before hands go into a wall box, and what to mind."""
    sources = dict.fromkeys(s for c in (*ISOLATION, *GENERAL) for s in c.source.split("; "))
    blocks = [
        cautions(ISOLATION[0].words, []),
        heading("Before hands go into a wall box"),
        steps([c.words for c in ISOLATION[1:]]),
        heading("To mind"),
        bullets([c.words for c in GENERAL]),
        para(f"Sources: {'; '.join(sources)}.", style="small"),
    ]
    return Sheet(number, "Cautions", "", blocks)
