"""The snag list (NFPA 70 houses: punch list): everything open, numbered for the whole pack."""

from collections.abc import Sequence

from secondfix.findings import Finding, Outcome
from secondfix.house import House, Schedule, is_nec
from secondfix.papers.blocks import Block, Cell, Sheet, column, para, soft, table
from secondfix.papers.drawing import SHAPE_WORDS, shape_of
from secondfix.papers.places import id_words, thing_words
from secondfix.papers.snags import Snag, snags
from secondfix.papers.words import sentence


def snag_sheet(schedule: Schedule, answers: Sequence[Finding], number: str) -> Sheet:
    """What is open, worst first, one row for each number."""
    told = snags(answers)
    rows = [_snag_row(schedule.house, s) for s in told]
    columns = [
        column("No.", mm=33),
        column("Place", fr=1.4),
        column("What was found", fr=3),
        column("Remedy", fr=2.6),
        column("Rule", mm=30),
    ]
    title = "Punch list" if is_nec(schedule.house) else "Snag list"
    passed = sum(f.outcome is Outcome.PASSES for f in answers)
    says = (
        f"What is open at this issue; plans and elevations carry the same numbers. Answers of 'no fault "
        f"found': {passed}."
    )
    blocks: list[Block] = [table(columns, rows)] if rows else [para("No fault found.", style="strong")]
    return Sheet(number, title, says, blocks)


def _snag_row(house: House, snag: Snag) -> list[Cell]:
    """One finding; or many like ones in one row, their places listed, the words those of the first."""
    first, shape = snag.findings[0], shape_of(snag.findings[0])
    mark: Cell = {"words": SHAPE_WORDS[shape], "style": "strong", "shape": shape, "number": str(snag.number)}
    if len(snag.findings) == 1:
        where, says = thing_words(house, first.place), first.says
    else:
        where = ", ".join(dict.fromkeys(id_words(house, f.place) for f in snag.findings))
        says = f"{len(snag.findings)} like this, of which the first: {first.says}"
    return [mark, where, says, sentence(first.remedy), soft(first.rule)]
