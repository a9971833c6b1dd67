"""Calls about what happened on site: the journal, the as-built house, tests, swaps, a controller's list."""

from typing import Annotated, Any

from django.http import HttpRequest, HttpResponse
from ninja import File, Router, Schema
from ninja.files import UploadedFile
from pydantic import Field

from secondfix.actions.as_built import Found, found_as_json, tested_as_json
from secondfix.actions.reconcile import held_as_json, reconcile
from secondfix.actions.swap import (
    controller,
    rebuilt_as_json,
    suspects,
    suspects_as_json,
    swap,
    swapped_as_json,
)
from secondfix.exchange import LARGEST_LIST_BYTES, read_mapping
from secondfix.house import LARGEST_FILE_BYTES
from secondfix.maintenance import Kept, Unit
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.api.reading import HouseId
from secondfix.web.api.refusing import ASKED_WRONG, as_json, encoded, sent, told
from secondfix.web.api.shapes import site as shapes
from secondfix.web.api.shapes.kept import Faults, Posted
from secondfix.web.frame.site import on_site

router = Router(tags=["What happened on site"])

LINES = "application/x-ndjson"
_TEXT = {LINES: {"schema": {"type": "string", "description": "A journal file (docs/journal.md)."}}}
_POSTED = {
    200: Posted,
    409: Posted,
    422: Posted | Faults,
    frozenset({401, 403, 404, 413}): Faults,
}
Word = Annotated[str, Field(min_length=1, max_length=120)]
Some = Annotated[tuple[Word, ...], Field(max_length=200)]


@router.get(
    "/houses/{house_id}/journal",
    url_name="journal",
    response={**ASKED_WRONG},
    openapi_extra={"responses": {200: {"description": "The lines of the journal.", "content": _TEXT}}},
)
def journal(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """The journal of a house, a line an entry, word for word as it came."""
    return HttpResponse(door.journal_bytes(house_id), content_type=f"{LINES}; charset=utf-8")


@router.post(
    "/houses/{house_id}/journal",
    url_name="journal",
    response=_POSTED,
    openapi_extra={"requestBody": {"required": True, "content": _TEXT}},
)
def post_entries(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """Take in lines of a journal. Sending them again is fine.

    A line that cannot be read is told, the others are taken (422); an id with another body is told too (409).
    """
    posted = door.post_entries(house_id, request.body, by=person(request))
    beside = {"taken": posted.taken, "again": posted.again, "id_taken": posted.id_taken}
    status = 409 if posted.id_taken else 422 if posted.faults else 200
    return told(posted.faults, status=status, **beside)


@router.get("/houses/{house_id}/as-built", url_name="as-built", response={200: shapes.AsBuilt, **ASKED_WRONG})
def as_built(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """The house as its journal found it, and how it differs from the design."""
    return sent(encoded(found_as_json(_found(house_id))))


@router.get("/houses/{house_id}/test", url_name="test", response={200: shapes.Tested, **ASKED_WRONG})
def test(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """The function test: what each gang and scene really works, what is crossed or dead, what mends it."""
    return sent(encoded(tested_as_json(_found(house_id))))


class NewDevice(Schema):
    """One device that is to take over; what is left out the book chooses."""

    model: Word
    gangs: Some | None = None
    mounts: Some | None = None
    load: Word | None = None
    network: Word | None = None
    code_ref: Annotated[str | None, Field(pattern="^K[0-9]{2,4}$")] = None


class Replacement(Schema):
    """Which device failed (or its box, gang or place), and what stands in for it, if that is known."""

    failed: Word
    units: Annotated[tuple[NewDevice, ...], Field(max_length=20)] = ()
    gang_by_gang: bool = False


@router.post("/houses/{house_id}/swap", url_name="swap", response={200: shapes.Swapped, **ASKED_WRONG})
def swap_(request: HttpRequest, house_id: HouseId, new: Replacement) -> HttpResponse:
    """Replace a failed device so that every button does again what it did. Only asked: nothing is written."""
    on = on_site(house_id)
    units = [_unit(one) for one in new.units]
    answer = swap(
        on.about.house, on.journal, new.failed, units, models=on.about.firm.models,
        assumptions=on.about.firm.assumptions, whole=not new.gang_by_gang,
    )  # fmt: skip
    return told(answer, status=422) if isinstance(answer, list) else as_json(swapped_as_json(answer))


class Silence(Schema):
    """Entries, addresses or names that fell silent, and those that still answer."""

    silent: Some
    answers: Some = ()


@router.post(
    "/houses/{house_id}/suspects", url_name="suspects", response={200: shapes.Suspected, **ASKED_WRONG}
)
def suspects_(request: HttpRequest, house_id: HouseId, heard: Silence) -> HttpResponse:
    """Which device has fallen silent, from what no longer answers and what still does."""
    on = on_site(house_id)
    found = suspects(
        on.about.house, on.journal, models=on.about.firm.models, silent=heard.silent, answering=heard.answers
    )
    return as_json(suspects_as_json(found))


class NewController(Schema):
    """The network whose controller was replaced, and what is left of the old one."""

    network: Word
    kept: Kept
    not_in_backup: Some = ()


@router.post(
    "/houses/{house_id}/controller", url_name="controller", response={200: shapes.Rebuilt, **ASKED_WRONG}
)
def controller_(request: HttpRequest, house_id: HouseId, new: NewController) -> HttpResponse:
    """What is to be done after the controller of a network was replaced."""
    on = on_site(house_id)
    answer = controller(
        on.about.house, on.journal, new.network, new.kept, models=on.about.firm.models,
        assumptions=on.about.firm.assumptions, not_in_backup=new.not_in_backup,
    )  # fmt: skip
    return told(answer, status=422) if isinstance(answer, list) else as_json(rebuilt_as_json(answer))


@router.post("/houses/{house_id}/reconcile", url_name="reconcile", response={200: shapes.Held, **ASKED_WRONG})
def reconcile_(
    request: HttpRequest, house_id: HouseId, device_list: File[UploadedFile], mapping: File[UploadedFile]
) -> HttpResponse:
    """Hold a controller's device list (CSV, XLSX) against the house; ``mapping`` tells its columns."""
    on = on_site(house_id)
    read = read_mapping(mapping.read(LARGEST_FILE_BYTES + 1), where="mapping")
    if isinstance(read, list):
        return told(read, status=422)
    held = reconcile(
        on.about.house, on.journal, device_list.read(LARGEST_LIST_BYTES + 1),
        where="device_list", mapping=read, models=on.about.firm.models,
    )  # fmt: skip
    return told(held, status=422) if isinstance(held, list) else as_json(held_as_json(held))


def _found(house_id: str) -> Found:
    record = on_site(house_id).record
    return Found(record.built, record.test, record.scenes, record.findings)


def _unit(new: NewDevice) -> Unit:
    plain: dict[str, Any] = new.model_dump()
    several = {k: None if plain[k] is None else tuple(plain[k]) for k in ("gangs", "mounts")}
    return Unit(**{**plain, **several})
