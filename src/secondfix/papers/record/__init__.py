"""What the journal brings to a pack: as-built, function tests, snags, history of places, signatures."""

from collections.abc import Sequence

from secondfix.findings import Finding
from secondfix.papers.blocks import Sheet, column, heading, ident, para, table
from secondfix.papers.record.differs import differences_sheet
from secondfix.papers.record.history import EntryLine, entry_line, entry_lines, history_sheet
from secondfix.papers.record.record import Record, revision_words
from secondfix.papers.record.signed import signatures_sheet
from secondfix.papers.record.snags import site_snags_sheet
from secondfix.papers.record.tested import as_designed, record_sheet, tally

__all__ = [
    "EntryLine",
    "Record",
    "as_designed",
    "entry_line",
    "entry_lines",
    "record_sheets",
    "revision_words",
    "site_words",
]

NO_JOURNAL = (
    "No journal was given: nothing in this pack tells what was fitted, joined, tested or found on site."
)

_BROUGHT = (
    (
        "S11/01",
        "where the house as found parts from its design",
        "devices fitted and joined, survey corrected",
    ),
    ("S11/02", "what each gang, entry and scene was found to work", "function tests"),
    ("S11/03", "snags from site, open and put right", "snags raised, snags put right, steps not done"),
    ("S11/04", "what happened at each place, and who wrote it", "every entry"),
    ("S11/05", "who put their name to what", "signatures"),
)
"""The sheets that stand in its place once there is a journal."""


def record_sheets(record: Record | None, answers: Sequence[Finding]) -> list[Sheet]:
    """The sheets of the journal; without one, a sheet that says so and can be taken for no record."""
    if record is None:
        ask = (
            "Print the pack again with its journal files, and sheets here tell it: pack HOUSE --journal FILE."
        )
        heads = [column("Sheet", mm=18), column("What it tells", fr=1), column("Out of which entries", fr=1)]
        brought = table(heads, [[ident(number), tells, of] for number, tells, of in _BROUGHT])
        blocks = [para(ask), heading("What a journal brings"), brought]
        return [Sheet("S11/01", "Site record: none", NO_JOURNAL, blocks)]
    return [
        differences_sheet(record, "S11/01"),
        record_sheet(record, "S11/02"),
        site_snags_sheet(record, answers, "S11/03"),
        history_sheet(record, "S11/04"),
        signatures_sheet(record, "S11/05"),
    ]


def site_words(record: Record | None) -> str:
    """For the cover: what was tested, or that nothing tells."""
    return tally(record) if record else NO_JOURNAL
