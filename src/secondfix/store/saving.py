"""Save with a base: later savers are told what differs, fields are merged, and nothing sent is lost."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any
from uuid import UUID

from django.db import transaction
from django.db.models import Max

from secondfix.house import (
    LARGEST_FILE_BYTES,
    Fault,
    FieldChange,
    Merged,
    Side,
    Written,
    as_canonical_json,
    changes_between,
    field_changes,
    merge_documents,
    read_house,
)
from secondfix.house import House as Document
from secondfix.store.accounts import require_writer
from secondfix.store.answers import Conflicting, IdTaken, Refused, Saved, UnknownError
from secondfix.store.houses import found
from secondfix.store.ids import new_id
from secondfix.store.models import Account, Edit, House
from secondfix.store.packing import digest_of, pack, unpack
from secondfix.store.plain import plain
from secondfix.store.told import Answer, told, told_again


@dataclass(frozen=True, slots=True)
class _Sent:
    """One save on its way."""

    data: bytes
    base: int
    by: Account
    words: str
    edit_id: UUID
    choices: Mapping[str, Side]
    read: Written | None = None  # the document of ``data``, where that is its canonical text


def save(
    house_id: str,
    data: bytes | Written,
    *,
    base: int,
    by: Account,
    words: str = "",
    edit_id: str | None = None,
) -> Answer | IdTaken:
    """Save the bytes of a document that was made from edit ``base``; one just read is not read again.

    - Nobody saved since: it becomes current (Saved).
    - Others saved since: fields that only one side changed are put together and become current (Saved, with
      ``others``); a field that both changed apart makes it Conflicting.
    - It has faults, by itself or put together with what others did: Refused, with all of them.

    What is not made current is kept as an edit set aside, byte for byte. With ``edit_id`` (a UUIDv7 of
    the client's) a save may be sent again: the same answer, no second edit; other contents: IdTaken.
    ``words`` say what was changed; where left out they are made from what differs. When this returns, the
    edit is on the disk. Raises UnknownError, NotAllowedError, ValueError for an id that is no UUID.
    """
    made = new_id() if edit_id is None else UUID(edit_id)
    read = data if isinstance(data, Written) else None
    sent = data.text.encode() if isinstance(data, Written) else data
    return _save(house_id, _Sent(sent, base, by, plain(words), made, {}, read))


def settle(
    house_id: str, kept: int, choices: Mapping[str, Side], *, seen: int, by: Account, words: str = ""
) -> Answer | IdTaken:
    """Save an edit that was set aside, taking a side (``mine``, ``theirs``) for each path in conflict.

    ``seen`` is the ``current`` that the conflict was shown against: a choice counts only while the other
    side still has the value that was shown, so that nobody overrules what they have not seen. Whatever is
    not chosen is Conflicting again. Raises UnknownError, NotAllowedError.
    """
    edit = edit_of(house_id, kept)
    data = unpack(edit.packed)
    still = choices
    current = found(house_id)
    if current.number != seen and not edit.stands:
        base, mine = _stood(house_id, edit.base), json.loads(data)
        shown = _theirs(merge_documents(base, _stood(house_id, seen), mine))
        stands = _theirs(merge_documents(base, json.loads(current.document), mine))
        still = {p: side for p, side in choices.items() if p in stands and shown.get(p) == stands[p]}
    return _save(house_id, _Sent(data, edit.base, by, plain(words), new_id(), still))


def _theirs(merged: Merged) -> dict[str, str]:
    return {c.path: json.dumps(c.theirs, sort_keys=True) for c in merged.conflicts}


def _save(house_id: str, sent: _Sent) -> Answer | IdTaken:
    require_writer(sent.by)
    if len(sent.data) > LARGEST_FILE_BYTES:
        stands = f"{len(sent.data):,} bytes"
        return Refused((Fault("document", "", stands, f"at most {LARGEST_FILE_BYTES:,} bytes"),))
    if sent.read is None:
        mine = _read(sent.data, house_id, "document")
    else:
        mine = _of_house(sent.read.house, house_id, "document")
    with transaction.atomic():
        house = found(house_id, lock=True)
        again = Edit.objects.filter(pk=sent.edit_id).first()
        if again is not None:
            same = again.house_id == house.id and bytes(again.asked) == digest_of(sent.base, sent.data)
            return told_again(again.told) if same else IdTaken(str(sent.edit_id))
        number = 1 + (house.edits.aggregate(last=Max("number"))["last"] or 0)
        if isinstance(mine, list):
            return _set_aside(house, sent, Refused(tuple(mine), number))
        if not house.edits.filter(number=sent.base, stands=True).exists():
            fault = Fault("document", "base", str(sent.base), "an edit that stood in this house")
            return _set_aside(house, sent, Refused((fault,), number))
        return _put(house, sent, mine, number)


def _put(house: House, sent: _Sent, mine: Document, number: int) -> Answer:
    """Make it current, together with what others did since its base."""
    text = as_canonical_json(mine) if sent.read is None else sent.data.decode()
    together: tuple[FieldChange, ...] = ()
    if sent.base != house.number:
        base, current = _stood(str(house.id), sent.base), json.loads(house.document)
        together = field_changes(base, current)
        merged = merge_documents(base, current, json.loads(text), sent.choices)
        if merged.conflicts:
            answer = Conflicting(number, house.number, merged.conflicts, together)
            return _set_aside(house, sent, answer)
        joined = _read(json.dumps(merged.document).encode(), str(house.id), "both together")
        if isinstance(joined, list):
            return _set_aside(house, sent, Refused(tuple(joined), number))
        mine, text = joined, as_canonical_json(joined)
    if text == house.document:
        return Saved(house.number, together, new=False)
    saved = Saved(number, together)
    words = sent.words or _in_words(_changes(house.document, sent, mine, text))
    _keep(house, sent, saved, number=number, body=text.encode(), words=words)
    house.number, house.document, house.name = number, text, plain(mine.name)
    house.save(update_fields=["number", "document", "name"])
    return saved


def _set_aside(house: House, sent: _Sent, answer: Conflicting | Refused) -> Answer:
    assert answer.kept is not None
    _keep(house, sent, answer, number=answer.kept, body=sent.data, words=sent.words)
    return answer


def _keep(house: House, sent: _Sent, answer: Answer, *, number: int, body: bytes, words: str) -> None:
    Edit.objects.create(
        id=sent.edit_id, house=house, number=number, base=sent.base, stands=isinstance(answer, Saved),
        by=sent.by, words=words, packed=pack(body), asked=digest_of(sent.base, sent.data), told=told(answer),
    )  # fmt: skip


def edit_of(house_id: str, number: int) -> Edit:
    """The row of an edit. Raises UnknownError."""
    edit = Edit.objects.filter(house=found(house_id), number=number).select_related("by").first()
    if edit is None:
        raise UnknownError(f"no edit {number} of this house")
    return edit


def _stood(house_id: str, number: int) -> dict[str, Any]:
    plain_document: dict[str, Any] = json.loads(unpack(edit_of(house_id, number).packed))
    return plain_document


def _read(data: bytes, house_id: str, where: str) -> Document | list[Fault]:
    document = read_house(data, where=where, models={})
    return _of_house(document, house_id, where) if isinstance(document, Document) else document


def _of_house(document: Document, house_id: str, where: str) -> Document | list[Fault]:
    if document.id != house_id:
        return [Fault(where, "id", f"'{document.id}'", f"the id of this house, {house_id}")]
    return document


def _changes(before: str, sent: _Sent, mine: Document, text: str) -> tuple[FieldChange, ...]:
    """What the save changes; read out of what the client made it from, where just that stood."""
    if sent.read is not None and sent.read.before is not None and sent.read.before.text == before:
        return changes_between(sent.read.before.house, mine)
    return field_changes(json.loads(before), json.loads(text))


def _in_words(changes: tuple[FieldChange, ...]) -> str:
    """The first changes, and how many more: enough to know an edit again in a list."""
    words = "; ".join(str(c)[:200] for c in changes[:4])
    return words + (f"; and {len(changes) - 4} more" if len(changes) > 4 else "")
