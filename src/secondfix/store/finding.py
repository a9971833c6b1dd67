"""Houses found by words, in an order, a page at a time: for registers of thousands."""

import re
from collections.abc import Mapping
from dataclasses import asdict
from typing import Any
from uuid import UUID

from django.db import DatabaseError, transaction
from django.db.models import F

from secondfix.store.answers import Found, HouseRow, OpenCounts, Order
from secondfix.store.models import Edit, House, LastCheck, Stage

_LABELS = {stage.value: stage.label for stage in Stage}
_SEARCHED = ("house__stage", "by__username")
_COUNTED: dict[Order, tuple[str, ...]] = {
    "name": (),
    "edit": (),
    "stage": ("house__stage",),
    "open": (
        "house__last_check__danger", "house__last_check__fault", "house__last_check__cannot_tell",
    ),
}  # fmt: skip
_FIGURES = re.compile(r"(\d+)")
_STAGES = {stage.value: place for place, stage in enumerate(Stage)}


def find_houses(words: str = "", *, order: Order = "name", first: int = 0, most: int = 50) -> Found:
    """The houses on the list whose name, stage or latest writer holds every one of ``words``, in any case.

    Ordered by ``name``, by ``edit`` (the latest first), by ``stage``, or by what is ``open`` (most dangers
    first, then faults, then what cannot be told; houses that were never asked at the end). At most ``most``
    rows are given, from the place ``first`` on; ``count`` is how many there are.
    """
    on_list = Edit.objects.filter(house__away_at__isnull=True, number=F("house__number"))
    on_list = on_list.order_by("-at", "house_id") if order == "edit" else on_list.order_by()
    also = (*_SEARCHED, *_COUNTED[order]) if words.split() else _COUNTED[order]
    rows = list(on_list.values_list("house_id", "house__name", *also))  # no more than the question needs
    if words.split():
        rows = [row for row in rows if _holds(row, words.casefold().split())]
    if order != "edit":
        rows.sort(key=lambda row: (_as_read(row[1]), row[0]))
    if order == "stage":
        rows.sort(key=lambda row: _STAGES[row[-1]])
    elif order == "open":
        rows.sort(key=lambda row: (row[-1] is None, *(-(n or 0) for n in row[-3:])))
    ids = [row[0] for row in rows[first : first + most]]
    made = _rows(ids)
    return Found(tuple(made[i] for i in ids if i in made), len(rows))


def _holds(row: tuple[Any, ...], wanted: list[str]) -> bool:
    text = f"{row[1]} {_LABELS[row[2]]} {row[3]}".casefold()
    return all(word in text for word in wanted)


def _as_read(name: str) -> list[str]:
    """The order in which people look: Row 2 before Row 10, whatever the case."""
    return [part.zfill(12) if part.isdecimal() else part for part in _FIGURES.split(name.casefold())]


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
