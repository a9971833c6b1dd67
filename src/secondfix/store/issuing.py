"""Issues: revisions that went out of the door, frozen with all that they were made with."""

import json
from collections.abc import Mapping
from dataclasses import asdict

from django.db import transaction

from secondfix.assumptions import Assumption
from secondfix.store.accounts import require_writer
from secondfix.store.answers import Issued, IssueRow, UnknownError
from secondfix.store.houses import document_of, found
from secondfix.store.models import Account, Issue
from secondfix.store.packing import unpack
from secondfix.store.plain import plain
from secondfix.store.saving import edit_of

# I and O are left out: on a drawing they read as 1 and 0 (common practice; ASME Y14.35, from memory).
LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"


def issue(
    house_id: str, *, number: int, assumptions: Mapping[str, Assumption], by: Account, words: str = ""
) -> IssueRow | None:
    """Issue edit ``number`` under the next letter, with the assumptions and editions it was made with.

    None where the edit is not the current one any more: look at it again first. Raises UnknownError,
    NotAllowedError.
    """
    require_writer(by)
    with transaction.atomic():
        house = found(house_id, lock=True)
        if house.number != number:
            return None
        made = Issue.objects.create(
            house=house,
            letter=letter(house.issues.count()),
            edit=edit_of(house_id, number),
            by=by,
            words=plain(words),
            assumptions=json.dumps({k: asdict(a) for k, a in sorted(assumptions.items())}),
            editions=json.dumps(sorted(document_of(house.document).models)),
        )
    return _row(made)


def issues(house_id: str) -> tuple[IssueRow, ...]:
    """Every issue, the latest first. Raises UnknownError."""
    rows = found(house_id).issues.select_related("by", "edit").defer("edit__packed")
    return tuple(map(_row, rows.order_by("-edit__number", "-at")))


def issue_row(house_id: str, letter: str) -> IssueRow:
    """One issue as the list has it. Raises UnknownError."""
    return _row(_one(house_id, letter))


def issued(house_id: str, letter: str) -> Issued:
    """An issue as it went out. Raises UnknownError."""
    row = _one(house_id, letter)
    text = unpack(row.edit.packed).decode()
    return Issued(_row(row), document_of(text), text, row.assumptions, tuple(json.loads(row.editions)))


def _one(house_id: str, letter: str) -> Issue:
    row = found(house_id).issues.filter(letter=letter).select_related("by", "edit").first()
    if row is None:
        raise UnknownError(f"no issue {letter[:8]} of this house")
    return row


def letter(count: int) -> str:
    """The letter after ``count`` issues: A, B, … Z, AA, AB, …"""
    name = ""
    count += 1
    while count:
        count, rest = divmod(count - 1, len(LETTERS))
        name = LETTERS[rest] + name
    return name


def _row(row: Issue) -> IssueRow:
    return IssueRow(row.letter, row.edit.number, row.at, row.by.username, row.words)
