"""The sheet of cautions that leads every paper which leads to hands in a wall box."""

from secondfix.house import House
from secondfix.joining import before_boxes, to_mind
from secondfix.papers.blocks import Sheet, bullets, cautions, heading, para, steps


def cautions_sheet(house: House, number: str) -> Sheet:
    """What holds for every job: before hands go into a wall box, and what to mind."""
    first, mind = before_boxes(house), to_mind(house)
    sources = dict.fromkeys(s for c in (*first, *mind) for s in c.source.split("; "))
    blocks = [
        cautions(first[0].words, []),
        heading("Before hands go into a wall box"),
        steps([c.words for c in first[1:]], large=True),
        heading("To mind"),
        bullets([c.words for c in mind], large=True),
        para(f"Sources: {'; '.join(sources)}.", style="small"),
    ]
    return Sheet(number, "Cautions", "", blocks)
