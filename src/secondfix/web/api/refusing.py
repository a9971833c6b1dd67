"""Faults of calls in one form: a list, each with its place, what stands there and what was expected."""

import json
from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpRequest, HttpResponse
from ninja import NinjaAPI
from ninja.errors import HttpError, ValidationError

from secondfix.house import MOST_FAULTS, Fault
from secondfix.store import door
from secondfix.web.api.shapes.kept import Faults

_WORDS = {
    400: ("a request that cannot be read", "a request of HTTP to a name of this desk"),
    401: ("nobody who may come in", "a session of this desk"),
    403: ("a right that is missing", "an account that may, and X-CSRFToken beside a session"),
    404: ("nothing of this name", "an address and ids that stand in the register"),
    405: ("a method that this address does not take", "one that the header Allow names"),
    413: ("a body larger than this address takes", "a smaller body"),
    429: ("too many calls", "a call later"),
}  # fmt: skip
ASKED_WRONG = {frozenset({401, 403, 404, 413, 422}): Faults}
"""For the description of a call: what it answers beside what was asked for."""
_OURS = ("a fault of the desk", "its log holds more")


class UnreadableError(ValueError):
    """A body that is no JSON of ours, with its faults."""

    def __init__(self, faults: list[Fault]) -> None:
        self.faults = faults
        super().__init__("unreadable")  # no word of what was sent: it may be a code


def told(faults: Iterable[Fault], *, status: int, **beside: Any) -> HttpResponse:
    """The answer of a call that was not taken; above ``MOST_FAULTS`` the first of them and how many."""
    every = list(faults)
    shown = [asdict(f) for f in every[:MOST_FAULTS]]
    if len(every) > MOST_FAULTS:
        shown.append(asdict(Fault("and more", "", f"{len(every)} in all", f"the first {MOST_FAULTS} mended")))
    return as_json({"faults": shown, **beside}, status=status)


def as_json(value: object, *, status: int = 200) -> HttpResponse:
    """One JSON object as an answer."""
    return sent(encoded(value), status=status)


def encoded(value: object) -> bytes:
    """JSON in UTF-8, as the command line prints it but on one line."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode()


def sent(body: bytes, *, status: int = 200) -> HttpResponse:
    """A JSON text as an answer."""
    return HttpResponse(body, status=status, content_type="application/json")


def put_into_form(answer: HttpResponse) -> None:
    """Let an answer that was made elsewhere (no such address, too large a body) speak as the calls do."""
    stands, expected = _WORDS.get(answer.status_code, _OURS)
    fault = Fault("call", "", stands, expected)
    answer.content = encoded({"faults": [asdict(fault)]})
    answer["Content-Type"] = "application/json"
    answer["Content-Length"] = str(len(answer.content))


def take_errors(api: NinjaAPI) -> None:
    """Lead every error of a call to its answer; one that is our own fault is left to the server's log."""
    api.add_exception_handler(ValidationError, _unfit)
    api.add_exception_handler(HttpError, _other)
    for kind, status in (
        (Http404, 404),
        (door.UnknownError, 404),
        (PermissionDenied, 403),
        (door.NotAllowedError, 403),
    ):
        api.add_exception_handler(kind, _plainly(status))


def _plainly(status: int) -> Any:
    def handler(_: HttpRequest, error: Exception) -> HttpResponse:
        stands, expected = _WORDS[status]
        return told([Fault("call", "", str(error) or stands, expected)], status=status)

    return handler


def _unfit(_: HttpRequest, error: ValidationError | type[ValidationError]) -> HttpResponse:
    assert isinstance(error, ValidationError)  # the library types it as if a class could be raised
    return told(map(_fault, error.errors), status=422)


def _fault(error: dict[str, Any]) -> Fault:
    """What pydantic told, without the value that was sent: it may be a code."""
    where, *path = map(str, error["loc"])
    stands = "nothing" if error["type"] == "missing" else "a value that does not fit"
    expected = error["msg"].removeprefix("Input should be ").removeprefix("Value error, ")
    return Fault(where, ".".join(path), stands, expected[:1].lower() + expected[1:])


def _other(_: HttpRequest, error: HttpError | type[HttpError]) -> HttpResponse:
    assert isinstance(error, HttpError)  # as above
    if isinstance(error.__cause__, UnreadableError):
        return told(error.__cause__.faults, status=422)
    return told([Fault("call", "", *_WORDS.get(error.status_code, _WORDS[400]))], status=error.status_code)
