"""The journal: lines taken in word for word, each once, and given out again."""

from datetime import datetime
from uuid import UUID

from django.db import transaction

from secondfix.house import Fault
from secondfix.journal import Entry, Journal, read_journal
from secondfix.store.accounts import require_writer
from secondfix.store.answers import Posted
from secondfix.store.houses import found
from secondfix.store.models import Account, JournalEntry

_OTHER_BODY = "an id of its own: it stands here with another body"


def post_entries(house_id: str, data: bytes, *, by: Account) -> Posted:
    """Take in lines of a journal. Sending them again is fine; an id with another body is told and not taken.

    A line that cannot be read, or that speaks of another house, is told with its number and not taken; the
    others are. When this returns, what was taken is on the disk. Raises UnknownError, NotAllowedError.
    """
    require_writer(by)
    house = found(house_id)
    lines, faults = _lines(data, house_id)
    with transaction.atomic():
        stood = JournalEntry.objects.filter(pk__in=list(lines)).values_list("id", flat=True)
        before = set(map(str, stood))
        JournalEntry.objects.bulk_create(
            [JournalEntry(id=UUID(i), house=house, line=line, by=by) for i, (_, line) in lines.items()],
            ignore_conflicts=True,
            batch_size=500,
        )
        stand = {str(e.id): e for e in JournalEntry.objects.filter(pk__in=list(lines))}
    taken: list[str] = []
    again: list[str] = []
    other: list[str] = []
    for entry_id, (at, line) in lines.items():
        row = stand[entry_id]
        if row.house_id != house.id or not _same(row.line, line):
            other.append(entry_id)
            faults.append(Fault("journal", f"{at}, id", f"'{entry_id}'", _OTHER_BODY))
        else:
            (again if entry_id in before else taken).append(entry_id)
    return Posted(tuple(taken), tuple(again), tuple(faults), tuple(other))


def journal(house_id: str, *, until: datetime | None = None) -> tuple[Journal, list[Fault]]:
    """The journal of a house, and a fault for each line that cannot be read. Raises UnknownError.

    ``until`` leaves out what came to this desk later: what somebody had not yet been shown.
    """
    return read_journal(journal_bytes(house_id, until=until), where="journal")


def journal_bytes(house_id: str, *, until: datetime | None = None) -> bytes:
    """Every line word for word, in the order of ids. Raises UnknownError."""
    rows = JournalEntry.objects.filter(house=found(house_id))
    if until is not None:
        rows = rows.filter(arrived_at__lte=until)
    return "".join(f"{line}\n" for line in rows.order_by("id").values_list("line", flat=True)).encode()


def journal_size(house_id: str) -> int:
    """How many entries stand: they are only ever added, so an equal count is the same journal."""
    return JournalEntry.objects.filter(house=found(house_id)).count()


def _lines(data: bytes, house_id: str) -> tuple[dict[str, tuple[str, str]], list[Fault]]:
    """Lines by id with where they stood; the same line twice is one, an id with two bodies is told."""
    lines: dict[str, tuple[str, str]] = {}
    faults: list[Fault] = []
    for number, raw in enumerate(data.removeprefix(b"\xef\xbb\xbf").split(b"\n"), start=1):
        if not raw.strip():
            continue
        at = f"line {number}"
        entry = _entry(raw)
        if isinstance(entry, Fault):
            path = entry.path.replace("line 1", at, 1) if entry.path.startswith("line 1") else at
            faults.append(Fault("journal", path, entry.stands, entry.expected))
        elif entry.house != house_id:
            faults.append(Fault("journal", f"{at}, house", f"'{entry.house}'", f"this house, {house_id}"))
        elif entry.id in lines and not _same(lines[entry.id][1], raw.decode().strip()):
            faults.append(Fault("journal", f"{at}, id", f"'{entry.id}'", "an id of its own"))
        else:
            lines.setdefault(entry.id, (at, raw.decode().strip()))
    return lines, faults


def _entry(line: bytes) -> Entry | Fault:
    read, faults = read_journal(line, where="journal")
    return faults[0] if faults else next(iter(read))


def _same(one: str, other: str) -> bool:
    """Word for word, or one entry in other spacing."""
    if one == other:
        return True
    both, _ = read_journal(f"{one}\n{other}\n".encode(), where="journal")
    return len(both) == 1
