"""Reconcile: a controller's device list held against the book, and the step that mends each difference."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from secondfix.house import Schedule
from secondfix.journal import Folded
from secondfix.maintenance.device_list import ListRow
from secondfix.maintenance.expected import Expected
from secondfix.maintenance.matching import Book, By, Matched, match
from secondfix.naming import Entry, EntryKind, Names
from secondfix.terms import PROTOCOLS, PURPOSES


class Unlike(StrEnum):
    """How list and book differ."""

    MISSING = "missing"
    EXTRA = "extra"
    RENAMED = "renamed"
    PURPOSE_MISSING = "purpose_missing"
    PURPOSE_WRONG = "purpose_wrong"
    PURPOSE_NOT_TOLD = "purpose_not_told"
    WHOLE_FOR_GANG = "whole_for_gang"
    TWICE = "twice"
    WHICH_ENTRY = "which_entry"
    BY_NAME_ALONE = "by_name_alone"


FAULTS = frozenset(
    {
        Unlike.MISSING, Unlike.EXTRA, Unlike.PURPOSE_MISSING, Unlike.PURPOSE_WRONG, Unlike.WHOLE_FOR_GANG,
        Unlike.TWICE,
    }
)  # fmt: skip
"""What must be mended; a renamed entry changes nothing, and the rest cannot be told."""
CANNOT_TELL = frozenset({Unlike.WHICH_ENTRY, Unlike.BY_NAME_ALONE, Unlike.PURPOSE_NOT_TOLD})


@dataclass(frozen=True, slots=True)
class Difference:
    """One difference: the row of the list and the entry of the book, where each is there, and what mends it.

    ``entry`` is what the journal then records, None where nothing is to be written.
    """

    unlike: Unlike
    row: int | None
    device: str | None
    number: int | None
    says: str
    step: str
    entry: Expected | None = None


@dataclass(frozen=True, slots=True)
class Reconciled:
    """``agreed`` counts rows that say what the book says; every other row has a difference."""

    rows: int
    agreed: int
    differences: tuple[Difference, ...]


def reconcile(
    rows: Schedule, folded: Folded, names: Names, listed: Sequence[ListRow], *, network: str | None = None
) -> Reconciled:
    """Hold the rows against the as-built house; ``network`` is the one the list is of, None for all.

    Identity is address (or node) and endpoint. A row without either is matched by its name alone, and that
    is told. Leaves out: devices of the house on other networks. Pure, time linear in both.
    """
    book = Book(rows, folded, names, network)
    found = match(book, listed)
    of_rows = [*_of_rows(book, found, listed)]
    missing = [*_missing(rows, book, found)]
    unlike = {d.row for d in of_rows}
    agreed = sum(1 for row in listed if row.number not in unlike)
    return Reconciled(len(listed), agreed, (*of_rows, *missing))


def _of_rows(book: Book, found: Matched, listed: Sequence[ListRow]) -> Iterator[Difference]:
    for i, row in enumerate(listed):
        if i in found.extra:
            yield _extra(row)
        elif i in found.which:
            yield _which(row, found.which[i])
        elif i in found.twice:
            yield _twice(row, listed[found.twice[i]])
        else:
            yield from _matched(book, found, i, row)


def _extra(row: ListRow) -> Difference:
    return Difference(
        Unlike.EXTRA, row.number, None, None,
        f"{row.words} is in the list and not in the book.",
        "Find it: make it blink or switch it. If it is an old device, remove its entry; else survey it in.",
    )  # fmt: skip


def _which(row: ListRow, device: str) -> Difference:
    at = f"endpoint {row.endpoint}" if row.endpoint is not None else "no endpoint"
    return Difference(
        Unlike.WHICH_ENTRY, row.number, device, None,
        f"{row.words} is of {device}, and {at} is told: which of its entries it is cannot be told.",
        "Switch it, see which load answers, and write the endpoint down.",
    )  # fmt: skip


def _twice(row: ListRow, first: ListRow) -> Difference:
    return Difference(
        Unlike.TWICE, row.number, None, None,
        f"{row.words} has the address and endpoint of {first.words}.",
        "Remove the entry that does not answer.",
    )  # fmt: skip


def _matched(book: Book, found: Matched, i: int, row: ListRow) -> Iterator[Difference]:
    entry = found.entries[i]
    at = (row.number, entry.device_id, entry.number)
    if found.by[i] is By.NAME:
        yield Difference(
            Unlike.BY_NAME_ALONE, *at,
            f"{row.words} is known by its name alone, and a name is only a name.",
            f"See that it is {entry.device_id}, and write its address down.",
            _address(book, entry, row),
        )  # fmt: skip
    if entry.kind is EntryKind.WHOLE_DEVICE:
        yield from _whole(book, entry, row)
        return
    if row.name and row.name != book.recorded(entry):
        yield Difference(
            Unlike.RENAMED, *at,
            f"{row.words} is called '{book.recorded(entry)}' in the book. This changes nothing that it does.",
            "Give it the name of the book again, or write the new name into the journal.",
            Expected("named", f"entry:{entry.device_id}.{entry.number}", {"name": row.name[:80]}),
        )  # fmt: skip
    yield from _purpose(entry, row)


def _address(book: Book, entry: Entry, row: ListRow) -> Expected | None:
    network = book.networks[entry.device_id]
    if row.address is None or network is None:
        return None
    return Expected("joined", f"device:{entry.device_id}", {"network": network, "address": row.address})


def _whole(book: Book, entry: Entry, row: ListRow) -> Iterator[Difference]:
    """The whole-device entry bears a gang's name, or a purpose, as only a gang's entry should."""
    gangs = [e for e in book.shown(entry.device_id) if e.kind is EntryKind.GANG]
    taken = next((e for e in gangs if row.name and book.recorded(e) == row.name), None)
    if taken is None and row.purpose is None:
        if row.name and row.name != book.recorded(entry):
            yield Difference(
                Unlike.RENAMED, row.number, entry.device_id, 0,
                f"{row.words}, the whole-device entry, is called '{book.recorded(entry)}' in the book.",
                "Give it the name of the book again, or write the new name into the journal.",
                Expected("named", f"entry:{entry.device_id}.0", {"name": row.name[:80]}),
            )  # fmt: skip
        return
    what = f"bears the name of gang {taken.number}" if taken else "has a purpose"
    yield Difference(
        Unlike.WHOLE_FOR_GANG, row.number, entry.device_id, 0,
        f"{row.words} is the whole-device entry of {entry.device_id} and {what}: it was taken for a gang.",
        f"Name it '{book.recorded(entry)}', take its purpose away, and take it out of every scene; put the "
        "gang's own entry in its stead.",
        Expected("named", f"entry:{entry.device_id}.0", {"name": book.recorded(entry)}),
    )  # fmt: skip


def _purpose(entry: Entry, row: ListRow) -> Iterator[Difference]:
    at = (row.number, entry.device_id, entry.number)
    wanted = entry.purpose
    if not row.has_purpose or wanted is None or row.purpose is wanted:
        return
    label = PURPOSES[wanted].label
    mends = Expected("purpose_set", f"entry:{entry.device_id}.{entry.number}", {"purpose": wanted.value})
    if row.purpose is not None:
        says = f"{row.words} has the purpose {PURPOSES[row.purpose].label}; the book says {label}."
        yield Difference(Unlike.PURPOSE_WRONG, *at, says, f"Set the purpose to {label}.", mends)
    elif row.purpose_said:
        says = f"{row.words} has the purpose '{row.purpose_said}', which the mapping leads nowhere."
        step = f"Add '{row.purpose_said}' to the mapping; the book says {label}."
        yield Difference(Unlike.PURPOSE_NOT_TOLD, *at, says, step)
    else:
        says = f"{row.words} has no purpose; the book says {label}."
        yield Difference(Unlike.PURPOSE_MISSING, *at, says, f"Set the purpose to {label}.", mends)


def _missing(rows: Schedule, book: Book, found: Matched) -> Iterator[Difference]:
    there = {(e.device_id, e.number) for e in found.entries.values()}
    half = set(found.which.values())
    for device in book.members:
        entries = book.shown(device)
        lacking = [e for e in entries if (device, e.number) not in there]
        if not lacking:
            continue
        if len(lacking) == len(entries) and device not in half:
            yield _device_missing(rows, device)
        elif device not in half:
            for e in lacking:
                which = "the whole-device entry" if e.kind is EntryKind.WHOLE_DEVICE else f"gang {e.number}"
                yield Difference(
                    Unlike.MISSING, None, device, e.number,
                    f"{device} is in the list, and {which}, '{book.recorded(e)}', is not.",
                    "Ask the device for its entries anew; if it stays away, join the device again.",
                )  # fmt: skip


def _device_missing(rows: Schedule, device: str) -> Difference:
    network = rows.house.devices[device].network
    verb = PROTOCOLS[rows.house.networks[network].protocol].join if network else "join"
    unknown = rows.house.devices[device].address is None
    perhaps = (
        " Its address is not in the book: perhaps it is one of those that the book lacks." if unknown else ""
    )
    return Difference(
        Unlike.MISSING, None, device, None,
        f"{device} at {rows.place_of_device(device)} is in the book and not in the list.{perhaps}",
        f"See whether it has power and answers; if it does not, {verb} it again, or swap it.",
    )  # fmt: skip
