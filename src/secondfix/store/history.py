"""The history of a house, and going back in it."""

import json

from secondfix.house import FieldChange, field_changes
from secondfix.store.answers import EditRow, IdTaken, UnknownError
from secondfix.store.houses import found
from secondfix.store.models import Account, Edit
from secondfix.store.packing import unpack
from secondfix.store.saving import edit_of, save
from secondfix.store.told import Answer, told_again


def edits(house_id: str) -> tuple[EditRow, ...]:
    """Every edit, the latest first, those set aside too. Raises UnknownError."""
    rows = Edit.objects.filter(house=found(house_id)).select_related("by").defer("packed", "told")
    return tuple(map(_row, rows.order_by("-number")))


def edit_row(house_id: str, number: int) -> EditRow:
    """One edit as the list has it. Raises UnknownError."""
    return _row(edit_of(house_id, number))


def _row(e: Edit) -> EditRow:
    return EditRow(e.number, e.base, e.stands, e.at, e.by.username, e.words)


def edit_bytes(house_id: str, number: int) -> bytes:
    """The document of an edit: canonical where it stood, byte for byte as sent where it was set aside."""
    return unpack(edit_of(house_id, number).packed)


def edit_answer(house_id: str, number: int) -> Answer:
    """What was answered when the edit came: its faults or conflicts, where it was set aside."""
    return told_again(edit_of(house_id, number).told)


def edit_changes(house_id: str, number: int) -> tuple[FieldChange, ...]:
    """What an edit that stood changed against the one that stood before it. Raises UnknownError."""
    edit = edit_of(house_id, number)
    if not edit.stands:
        raise UnknownError(f"edit {number} was set aside")
    earlier = Edit.objects.filter(house=edit.house_id, stands=True, number__lt=number)
    before = earlier.order_by("-number").first()
    was = json.loads(unpack(before.packed)) if before else {}
    return field_changes(was, json.loads(unpack(edit.packed)))


def go_back(house_id: str, number: int, *, base: int, by: Account) -> Answer | IdTaken:
    """A new edit with the document of an old one, saved like any other: nothing in between is lost."""
    data = edit_bytes(house_id, number)
    return save(house_id, data, base=base, by=by, words=f"as edit {number} was")
