"""Calls that read and change what the store holds: houses, documents, edits, issues."""

import json
from dataclasses import asdict
from datetime import datetime
from typing import Annotated, Any

from django.http import HttpRequest, HttpResponse
from ninja import Path, Query, Router, Schema
from pydantic import BaseModel, Field

from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.api.reading import LARGEST_NUMBER, Base, EditId, EditNumber, HouseId, Words
from secondfix.web.api.refusing import ASKED_WRONG, as_json, told
from secondfix.web.api.shapes import kept as shapes
from secondfix.web.frame.asked import asked

router = Router(tags=["Houses, their documents, edits and issues"])

_CHANGED_WRONG = {
    frozenset({401, 403, 404, 413}): shapes.Faults,
    409: shapes.Clash,
    422: shapes.Refused,
}
_DOCUMENT: dict[str, Any] = {
    "requestBody": {
        "required": True,
        "description": "The document of a house, format 1 (docs/house.md), as it stands in its file.",
        "content": {"application/json": {"schema": {"$ref": "#/components/schemas/HouseDocument"}}},
    }
}
Letter = Annotated[str, Path(description="The letter of an issue.", pattern="^[A-Z]{1,4}$")]


@router.get("/houses", url_name="houses", response={200: shapes.Houses, **ASKED_WRONG})
def houses(
    request: HttpRequest, away: Annotated[bool, Query(description="Those put away instead.")] = False
) -> HttpResponse:
    """The houses of the register, by name."""
    return as_json({"houses": [_row(row) for row in door.houses(away=away)]})


@router.post(
    "/houses", url_name="houses", response={201: shapes.Begun, **_CHANGED_WRONG}, openapi_extra=_DOCUMENT
)
def begin_house(request: HttpRequest) -> HttpResponse:
    """Take in a new house from its document. One that stands already is never made twice: 409."""
    answer = door.begin_house(request.body, by=person(request))
    if isinstance(answer, door.Refused):
        return told(answer.faults, status=422)
    if isinstance(answer, door.Known):
        stands = f"'{answer.house_id}', known at edit {answer.number}"
        return told([Fault("house", "id", stands, "save it as an edit of that house")], status=409)
    return as_json({"house": json.loads(request.body)["id"], "number": answer.number}, status=201)


@router.get("/houses/{house_id}", url_name="house", response={200: shapes.House, **ASKED_WRONG})
def house(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """One house of the register."""
    return as_json(_row(door.house_row(house_id)))


@router.get(
    "/houses/{house_id}/document", url_name="document", response={200: shapes.Document, **ASKED_WRONG}
)
def document(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """The document as it stands, with its ``base``: the number to save the next edit with."""
    about = asked(house_id)
    return as_json({"base": about.number, "document": json.loads(about.text)})


@router.put(
    "/houses/{house_id}/document",
    url_name="document",
    response={200: shapes.Saved, **_CHANGED_WRONG},
    openapi_extra=_DOCUMENT,
)
def save(
    request: HttpRequest, house_id: HouseId, base: Base, edit_id: EditId = None, words: Words = ""
) -> HttpResponse:
    """Save a document that was made from edit ``base``; what others did since is put together with it.

    Saved: 200. Two changed one field: 409, with both values; faults: 422. Nothing sent is lost: ``kept`` is
    the edit that it was set aside as. With ``edit_id`` a save may be sent again and is answered the same.
    """
    saved = door.save(house_id, request.body, base=base, by=person(request), words=words, edit_id=edit_id)
    if isinstance(saved, door.IdTaken):
        fault = Fault("query", "edit_id", f"'{saved.id}'", "an id of its own: it stands with another body")
        return told([fault], status=409)
    if isinstance(saved, door.Refused):
        return told(saved.faults, status=422, kept=saved.kept)
    if isinstance(saved, door.Conflicting):
        both = "one value: it was changed by two"
        faults = [Fault("document", c.path, "two values", both) for c in saved.conflicts]
        beside = {k: v for k, v in asdict(saved).items() if k != "kind"}
        return told(faults, status=409, **beside)
    return as_json(asdict(saved))


@router.get("/houses/{house_id}/edits", url_name="edits", response={200: shapes.Edits, **ASKED_WRONG})
def edits(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """The history of a house, the latest first, with edits that were set aside."""
    return as_json({"edits": [_dated(edit, shapes.Edit) for edit in door.edits(house_id)]})


@router.get(
    "/houses/{house_id}/edits/{number}", url_name="edit", response={200: shapes.Document, **ASKED_WRONG}
)
def edit(request: HttpRequest, house_id: HouseId, number: EditNumber) -> HttpResponse:
    """The document of an edit that stood."""
    standing = {e.number for e in door.edits(house_id) if e.stands}
    if number not in standing:
        raise door.UnknownError(f"no edit {number} that stood in this house")
    return as_json({"base": number, "document": json.loads(door.edit_bytes(house_id, number))})


@router.get("/houses/{house_id}/issues", url_name="issues", response={200: shapes.Issues, **ASKED_WRONG})
def issues(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """What went out of the door, the latest first."""
    return as_json({"issues": [_dated(row, shapes.Issue) for row in door.issues(house_id)]})


class NewIssue(Schema):
    """Which edit goes out, and what for."""

    number: Annotated[int, Field(ge=1, le=LARGEST_NUMBER)]
    words: Annotated[str, Field(max_length=2000)] = ""


@router.post("/houses/{house_id}/issues", url_name="issues", response={201: shapes.Issue, **_CHANGED_WRONG})
def issue(request: HttpRequest, house_id: HouseId, new: NewIssue) -> HttpResponse:
    """Issue the current edit under the next letter, frozen with the assumptions that it was made with."""
    about = asked(house_id)
    made = door.issue(
        house_id, number=new.number, assumptions=about.settled, by=person(request), words=new.words
    )
    if made is None:
        stands = f"edit {new.number}; {about.number} is current"
        return told([Fault("body", "number", stands, "the current edit, looked at")], status=409)
    return as_json(_dated(made, shapes.Issue), status=201)


@router.get(
    "/houses/{house_id}/issues/{letter}", url_name="issue", response={200: shapes.IssuedHouse, **ASKED_WRONG}
)
def issued(request: HttpRequest, house_id: HouseId, letter: Letter) -> HttpResponse:
    """An issue as it went out: document, assumptions, editions of the catalogue."""
    out = door.issued(house_id, letter)
    beside = {"document": json.loads(out.text), "assumptions": json.loads(out.assumptions)}
    return as_json({**_dated(out.row, shapes.Issue), **beside, "editions": out.editions})


def _row(row: door.HouseRow) -> dict[str, Any]:
    return _dated(row, shapes.House)


def _dated(row: door.HouseRow | door.EditRow | door.IssueRow, shape: type[BaseModel]) -> dict[str, Any]:
    """What the shape names of a row, times in ISO 8601."""
    held = {name: getattr(row, name) for name in shape.model_fields}
    return {k: v.isoformat() if isinstance(v, datetime) else v for k, v in held.items()}
