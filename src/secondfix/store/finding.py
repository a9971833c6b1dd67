"""Houses found by words, in an order, a page at a time: for registers of thousands."""

from collections.abc import Mapping
from dataclasses import asdict
from uuid import UUID

from django.db import DatabaseError, transaction
from django.db.models import F

from secondfix.store.answers import Found, HouseRow, OpenCounts, Order
from secondfix.store.models import Edit, House, LastCheck, Stage

_STAGES = {stage.value: place for place, stage in enumerate(Stage)}


def find_houses(words: str = "", *, order: Order = "name", first: int = 0, most: int = 50) -> Found:
    """The houses on the list whose name, stage or latest writer holds every one of ``words``, in any case.

    Ordered by ``name``, by ``edit`` (the latest first), by ``stage``, or by what is ``open`` (most dangers
    first, then faults, then what cannot be told; houses that were never asked at the end). At most ``most``
    rows are given, from the place ``first`` on; ``count`` is how many there are.
    """
    columns = (
        "house_id", "house__name", "house__stage", "by__username", "at",
        "house__last_check__danger", "house__last_check__fault", "house__last_check__cannot_tell",
    )  # fmt: skip
    on_list = Edit.objects.filter(house__away_at__isnull=True, number=F("house__number"))
    wanted = words.casefold().split()
    labels = {stage.value: stage.label.casefold() for stage in Stage}
    rows = [
        row
        for row in on_list.order_by().values_list(*columns)
        if not wanted or all(w in f"{row[1]} {labels[row[2]]} {row[3]}".casefold() for w in wanted)
    ]
    rows.sort(key=lambda row: (row[1].casefold(), row[0]))
    if order == "edit":
        rows.sort(key=lambda row: row[4], reverse=True)
    elif order == "stage":
        rows.sort(key=lambda row: _STAGES[row[2]])
    elif order == "open":
        rows.sort(key=lambda row: (row[5] is None, *(-(n or 0) for n in row[5:8])))
    ids = [row[0] for row in rows[first : first + most]]
    made = _rows(ids)
    return Found(tuple(made[i] for i in ids if i in made), len(rows))


def _rows(ids: list[UUID]) -> Mapping[UUID, HouseRow]:
    edits = (
        Edit.objects.filter(house__in=ids, number=F("house__number"))
        .select_related("house", "house__last_check", "by")
        .defer("packed", "told", "house__document")
    )
    return {edit.house_id: _row(edit) for edit in edits}


def _row(edit: Edit) -> HouseRow:
    house = edit.house
    counted = getattr(house, "last_check", None)
    opens = counted and OpenCounts(
        counted.number, counted.danger, counted.fault, counted.cannot_tell, counted.advice
    )
    return HouseRow(
        str(house.id), house.name, house.stage, edit.number, edit.at, edit.by.username, house.away_at, opens
    )


def keep_counts(house_id: str, counts: OpenCounts) -> None:
    """Keep what a check of the house as it stands has counted; of an earlier edit nothing is kept.

    A database that cannot take it now is no reason to fail: the counts are worked out again when asked.
    """
    values = asdict(counts)
    try:
        held = LastCheck.objects.filter(house_id=UUID(house_id), **values)
        if House.objects.filter(pk=UUID(house_id), number=counts.number).exists() and not held.exists():
            with transaction.atomic():
                LastCheck.objects.update_or_create(house_id=UUID(house_id), defaults=values)
    except DatabaseError:  # busy or read-only: see above
        return


def house_begun_with(words: str) -> str | None:
    """The id of a house on the list whose first edit says ``words``: the latest begun of several."""
    first = Edit.objects.filter(number=1, words=words, house__away_at__isnull=True).order_by("-at").first()
    return str(first.house_id) if first else None
