"""How large a body each address takes: asked before any of it is read."""

from collections.abc import Callable
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.http.response import HttpResponseBase

from secondfix.exchange import LARGEST_LIST_BYTES
from secondfix.house import LARGEST_FILE_BYTES

ORDINARY_BYTES = 2 * 1024 * 1024
"""A form filled in by hand, or pasted from a spreadsheet."""
_AROUND = 64 * 1024  # the names and boundaries of a form around its file
DOCUMENT_BYTES = LARGEST_FILE_BYTES + _AROUND
LIST_BYTES = LARGEST_LIST_BYTES + _AROUND
JOURNAL_BYTES = 32 * 1024 * 1024 + _AROUND

MOST_BYTES: dict[str, int] = {
    # a file comes in
    "new": DOCUMENT_BYTES,
    "schedule-back": LIST_BYTES,
    "journal": JOURNAL_BYTES,
    "reconcile": LIST_BYTES,
    "new-list": LIST_BYTES,
    # calls
    "api:houses": DOCUMENT_BYTES,
    "api:document": DOCUMENT_BYTES,
    "api:journal": DOCUMENT_BYTES,
    "api:reconcile": LIST_BYTES,
}


class Limits:
    """Middleware that refuses a body larger than its address takes; it comes before any that reads one."""

    def __init__(self, answer: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.answer = answer

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """Nothing to do before the address is known."""
        return self.answer(request)

    def process_view(self, request: HttpRequest, *_: Any) -> HttpResponseBase | None:
        """None lets the view run. Bodies that came in pieces have been measured by the server."""
        assert request.resolver_match is not None  # Django calls this once the address is resolved
        most = MOST_BYTES.get(request.resolver_match.view_name, ORDINARY_BYTES)
        if int(request.META.get("CONTENT_LENGTH") or 0) <= most:
            return None
        words = f"This address takes at most {most // (1024 * 1024)} MB. Nothing of what was sent is kept."
        return HttpResponse(words, status=413, content_type="text/plain; charset=utf-8")


LARGEST_BYTES = max(MOST_BYTES.values())
"""What the server itself lets in."""
