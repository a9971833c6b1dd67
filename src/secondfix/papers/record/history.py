"""History of each place, in the order in which those who wrote it knew of one another."""

import heapq
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from secondfix.journal import Entry, Fitted, FunctionTested, SnagRaised, history
from secondfix.papers.blocks import Cell, Sheet, across, column, ident, lines, para, soft, table
from secondfix.papers.places import thing_words
from secondfix.papers.record.record import Record
from secondfix.papers.record.saying import clock_words, deed_words, subject, subject_words

SHOWN = frozenset(
    {
        "fitted", "removed", "joined", "join_failed", "excluded", "named", "purpose_set", "survey_corrected",
        "skipped", "function_tested",
    }
)  # fmt: skip


def history_sheet(record: Record, number: str) -> Sheet:
    """Place by place: who did what. Tests that stand are in their own record; earlier ones are here."""
    rows: list[list[Cell]] = []
    for place, entries in _by_place(record).items():
        rows.append([across(thing_words(record.house, place) if place != record.house.id else "The house")])
        rows += [_row(record, e) for e in entries]
    columns = [
        column("Of", mm=44),
        column("What", fr=3),
        column("Who", mm=26),
        column("When, by own clock", mm=43),
    ]
    says = (
        "Each after what its writer knew of the same thing; where nobody knew, in the order of their ids. "
        "Clocks are printed and decide nothing."
    )
    blocks = [table(columns, rows, dense=True)] if rows else [para("The journal tells of no place.")]
    return Sheet(number, "History of each place", says, blocks)


@dataclass(frozen=True, slots=True)
class EntryLine:
    """One entry in words: ``of`` what it speaks of, ``state`` why it does not speak for it now."""

    entry: Entry
    place: str
    of: str
    what: str
    state: str
    when: str


def entry_lines(record: Record) -> tuple[EntryLine, ...]:
    """Every entry that counts, each after what its writer knew of the same thing, the latest last."""
    folded = record.built.folded
    of: dict[str, list[Entry]] = {}
    for i in reversed(folded.latest_first):
        entry = folded.counted.get(i)
        if entry is not None:
            of.setdefault(entry.subject, []).append(entry)
    return tuple(entry_line(record, e) for e in _merged(of.values()))


def entry_line(record: Record, entry: Entry) -> EntryLine:
    """One entry in words."""
    of, place = subject_words(record.house, subject(entry)), _place(record, entry)
    when = clock_words(entry.at)
    return EntryLine(entry, place, of, deed_words(record, entry), _state(record, entry), when)


def _row(record: Record, entry: Entry) -> list[Cell]:
    what = deed_words(record, entry)
    state = _state(record, entry)
    told: Cell = lines(what, soft(state)) if state else what
    return [ident(subject_words(record.house, subject(entry))), told, entry.writer, clock_words(entry.at)]


def _state(record: Record, entry: Entry) -> str:
    """Why an entry does not speak for its thing now; empty where it does."""
    built = record.built
    aside = [t.words for t in built.told if t.entry == entry.id and t.serious]
    if entry.id in built.folded.withdrawn:
        return "withdrawn"
    if (entry.subject, entry.aspect) in built.folded.disputed and _current(record, entry):
        return "in conflict: it does not decide"
    if aside:
        return f"set aside: {'; '.join(aside)}"
    if isinstance(entry, SnagRaised):
        return "open" if entry in built.folded.open_snags else "cleared"
    return "" if not entry.aspect or _current(record, entry) else "a later entry took its place"


def _current(record: Record, entry: Entry) -> bool:
    return entry in record.built.folded.current.get((entry.subject, entry.aspect), ())


def _by_place(record: Record) -> dict[str, list[Entry]]:
    """Boxes and places in the document's order, then what stands nowhere: loads, circuits, scenes."""
    folded, house = record.built.folded, record.house
    subjects = sorted({e.subject for e in folded.counted.values()})
    streams: dict[str, list[list[Entry]]] = {}
    for text in subjects:
        own = [e for e in history(folded, text) if _is_told(record, e)]
        if own:
            streams.setdefault(_place(record, own[0]), []).append(own)
    order = [*house.boxes, *house.places]
    rest = sorted(p for p in streams if p not in set(order))
    return {p: list(_merged(streams[p])) for p in (*order, *rest) if p in streams}


def _is_told(record: Record, entry: Entry) -> bool:
    if entry.kind not in SHOWN:
        return False
    return not (isinstance(entry, FunctionTested) and _current(record, entry))


def _merged(streams: Iterable[list[Entry]]) -> Iterator[Entry]:
    """Streams put together: each keeps its order; between them ids decide, which grow as they are made."""
    heads = [(s[0].id, n, 0, s) for n, s in enumerate(streams)]
    heapq.heapify(heads)
    while heads:
        _, n, at, stream = heapq.heappop(heads)
        yield stream[at]
        if at + 1 < len(stream):
            heapq.heappush(heads, (stream[at + 1].id, n, at + 1, stream))


def _place(record: Record, entry: Entry) -> str:
    """The box or place at which the thing stands or stood; else the thing itself."""
    of = subject(entry)
    if of.kind not in {"device", "entry", "link"}:
        return of.owner
    for house in (record.house, record.built.revision):
        device = house.devices.get(of.owner)
        if device:
            return device.box or device.place or of.owner
    fitted = [e for e in history(record.built.folded, f"device:{of.owner}") if isinstance(e, Fitted)]
    return next((e.box or e.place or of.owner for e in reversed(fitted)), of.owner)
