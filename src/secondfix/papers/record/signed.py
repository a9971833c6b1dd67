"""Signatures that the journal holds, and lines for those who sign on paper."""

from secondfix.journal import Entry
from secondfix.papers.blocks import Block, Cell, Sheet, column, heading, para, soft, strong, table, write_on
from secondfix.papers.record.record import Record
from secondfix.papers.record.saying import clock_words, subject, subject_words


def signatures_sheet(record: Record, number: str) -> Sheet:
    """Who put their name to what, and when by their own clock."""
    folded = record.built.folded
    signed = [e for e in folded.counted.values() if e.kind == "signed"]
    rows: list[list[Cell]] = [_row(record, e) for e in signed]
    heads = [
        column("Name", fr=1.2),
        column("What was signed", fr=2),
        column("Of", fr=1.2),
        column("Written by", fr=1),
        column("When, by own clock", mm=43),
    ]
    blocks: list[Block] = [table(heads, rows) if rows else para("Nobody has signed in the journal.")]
    blocks += [
        heading("On paper"),
        *[write_on(["Name", "For", "Date", "Signature"]) for _ in range(2)],
    ]
    says = (
        "A name in the journal is what its writer typed: it proves who wrote it no more than any other line."
    )
    return Sheet(number, "Signatures", says, blocks)


def _row(record: Record, e: Entry) -> list[Cell]:
    plain = e.model_dump(mode="json")
    gone = " (withdrawn)" if e.id in record.built.folded.withdrawn else ""
    of = subject_words(record.house, subject(e))
    return [strong(plain["name"]), f"{plain['paper']}{gone}", of, soft(e.writer), clock_words(e.at)]
