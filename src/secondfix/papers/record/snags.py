"""Snags raised on site, open and cleared; the open ones bear the numbers of list, plan and elevation."""

from collections.abc import Sequence

from secondfix.findings import Finding
from secondfix.house import is_nec
from secondfix.journal import Entry
from secondfix.papers.blocks import Cell, Sheet, column, heading, lines, para, soft, strong, table
from secondfix.papers.drawing import SHAPE_WORDS
from secondfix.papers.record.record import Record
from secondfix.papers.record.saying import clock_words, subject, subject_words
from secondfix.papers.snags import snags


def site_snags_sheet(record: Record, answers: Sequence[Finding], number: str) -> Sheet:
    """Open ones with their keynote, then cleared ones with how; withdrawn ones are told as such."""
    noun = "Punch list" if is_nec(record.house) else "Snag list"
    counted = record.built.folded.counted
    open_ids = {s.id for s in record.built.folded.open_snags}
    cleared = _clearings(record)
    numbers = {i: s.number for s in snags(answers) for f in s.findings for i in f.also if i in open_ids}
    raised = [e for e in counted.values() if e.kind == "snag_raised"]
    open_ = sorted((e for e in raised if e.id in open_ids), key=lambda e: numbers.get(e.id, 0))
    open_rows: list[list[Cell]] = [_open_row(record, e, numbers) for e in open_]
    closed: list[list[Cell]] = [
        _closed_row(record, e, cleared.get(e.id)) for e in raised if e.id not in open_ids
    ]
    heads = [column("No.", mm=30), column("Of", fr=1), column("In words", fr=2.6), column("Raised", fr=1)]
    closed_heads = [
        column("Of", fr=1), column("In words", fr=2), column("Raised", fr=1), column("Put right", fr=2),
        column("Cleared", fr=1),
    ]  # fmt: skip
    blocks = [
        heading("Open"),
        table(heads, open_rows) if open_rows else para("No snag of the journal is open."),
    ]
    blocks += [heading("Cleared"), table(closed_heads, closed) if closed else para("None was cleared.")]
    says = "Raised on site, in the words of those who raised them. The numbers are those of the sheet S1/01."
    return Sheet(number, f"{noun} from site", says, blocks)


def _clearings(record: Record) -> dict[str, list[Entry]]:
    """The clearings that stand, by the snag that they clear."""
    folded, found = record.built.folded, dict[str, list[Entry]]()
    for entry in folded.counted.values():
        if entry.kind == "snag_cleared" and entry.id not in folded.withdrawn and entry.names:
            found.setdefault(entry.names, []).append(entry)
    return found


def _open_row(record: Record, e: Entry, numbers: dict[str, int]) -> list[Cell]:
    shape = str(e.model_dump(mode="json")["severity"])
    number = str(numbers.get(e.id, ""))
    mark: Cell = {"words": SHAPE_WORDS[shape], "style": "strong", "shape": shape, "number": number}
    return [mark, strong(subject_words(record.house, subject(e))), _words(e), _who(e)]


def _closed_row(record: Record, e: Entry, by: list[Entry] | None) -> list[Cell]:
    of = strong(subject_words(record.house, subject(e)))
    if not by:
        return [of, _words(e), _who(e), soft("withdrawn"), ""]
    return [of, _words(e), _who(e), lines(*(_words(c) or "not said how" for c in by)), lines(*map(_who, by))]


def _words(e: Entry) -> str:
    words = str(e.model_dump(mode="json")["words"])
    return f"{words} {e.note}".strip()


def _who(e: Entry) -> Cell:
    return lines(e.writer, soft(clock_words(e.at)))
