"""Answers to calls that no call made: strangers, wrong addresses, bodies too large, and faults of our own."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse
from django.http.response import HttpResponseBase

from secondfix.web.api.refusing import put_into_form

ROOT = "/api/"


class Form:
    """Middleware around all others, so that whoever calls is always answered in JSON."""

    def __init__(self, answer: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.answer = answer

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """Leave pages alone, and calls that were answered in JSON."""
        answer = self.answer(request)
        made_elsewhere = answer.status_code >= 400 and answer.get("Content-Type") != "application/json"
        if request.path_info.startswith(ROOT) and made_elsewhere and isinstance(answer, HttpResponse):
            put_into_form(answer)
        return answer
