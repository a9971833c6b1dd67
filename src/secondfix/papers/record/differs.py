"""The as-built sheet: where the house as found parts from its revision; what is told of single entries."""

from secondfix.papers.blocks import Block, Cell, Sheet, column, heading, lines, para, soft, strong, table
from secondfix.papers.places import thing_words
from secondfix.papers.record.record import Record
from secondfix.papers.record.saying import clock_words, subject, subject_words
from secondfix.papers.words import counted, sentence

_MOST_NAMED = 2  # entries named beside one difference


def differences_sheet(record: Record, number: str) -> Sheet:
    """Differences with who says so; remarks; conflicts; entries that do not count, or are not known here."""
    built = record.built
    rows: list[list[Cell]] = [
        [strong(thing_words(record.house, d.place)), d.says, _who(record, d.entries)]
        for d in built.differences
    ]
    heads = [column("Of", fr=1), column("Revision and as found", fr=3.2), column("Who", fr=1.2)]
    blocks: list[Block] = [
        table(heads, rows)
        if rows
        else para("The house is as the revision says, as far as the journal tells.")
    ]
    remarks: list[list[Cell]] = [
        [strong(thing_words(record.house, r.place)), r.says, _who(record, (r.entry,))] for r in built.remarks
    ]
    if remarks:
        heads = [column("Of", fr=1), column("What no document holds", fr=3.2), column("Who", fr=1.2)]
        blocks += [heading("Remarks"), table(heads, remarks, dense=True)]
    blocks += [*_conflicts(record), *_told(record)]
    entries = counted(len(built.folded.counted), "entry", "entries")
    writers = counted(len({e.writer for e in built.folded.counted.values()}), "writer")
    says = (
        f"Revision {record.revision} with {entries} of {writers}. Every plan and schedule of this pack shows "
        "the house as built."
    )
    return Sheet(number, "As-built", says, blocks)


def _conflicts(record: Record) -> list[Block]:
    rows: list[list[Cell]] = [
        [
            {"words": "Fault", "style": "strong", "shape": "fault"},
            strong(c.subject.replace(":", " ")),
            f"Entries differ on '{c.aspect}', and their writers did not know of each other: none decides.",
            lines(*(f"{e.writer}, {clock_words(e.at)}" for e in c.entries)),
        ]
        for c in record.built.folded.conflicts
    ]
    heads = [column("", mm=24), column("Of", mm=40), column("What", fr=2), column("Who", fr=1.2)]
    return [heading("Conflicts"), table(heads, rows)] if rows else []


def _told(record: Record) -> list[Block]:
    """Nothing is dropped in silence: what was set aside, withdrawn, or is of a kind not known."""
    rows: list[list[Cell]] = []
    for t in record.built.told:
        entry = record.entry(t.entry)
        of = subject_words(record.house, subject(entry)) if entry else "not of this house's count"
        rows.append([strong(of), sentence(f"it {t.words}"), _who(record, (t.entry,))])
    rows += [
        [strong(u.subject.replace(":", " ")), f"Its kind '{u.kind}' is not known to this edition.", u.writer]
        for u in record.built.folded.unknown
    ]
    heads = [column("Of", fr=1), column("What is told of the entry", fr=3.2), column("Who", fr=1.2)]
    return [heading("Entries to look at"), table(heads, rows, dense=True)] if rows else []


def _who(record: Record, ids: tuple[str, ...]) -> Cell:
    """The latest who said so, and how many more did."""
    found = [e for i in sorted(ids) if (e := record.entry(i))]
    more = len(found) - _MOST_NAMED
    rest = [soft(f"and {more} before")] if more > 0 else []
    said = [soft(f"{e.writer}, {clock_words(e.at)}") for e in found[-_MOST_NAMED:]]
    return lines(*said, *rest) if found else soft("not said")
