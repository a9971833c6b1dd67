"""Who may ask what: the one place where every address of the desk has its right.

An address without a row is refused to everybody; tests/web/test_access.py names it.
"""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from django.contrib.auth.views import redirect_to_login
from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase

from secondfix.store import door

_LOOKING = {"GET", "HEAD", "OPTIONS"}


class Who(StrEnum):
    """Who may: anybody, whoever reads, whoever writes."""

    ANYBODY = "anybody"
    READER = "reader"
    WRITER = "writer"


@dataclass(frozen=True, slots=True)
class Rule:
    """Who may look (GET, HEAD, OPTIONS) and who may send (every other method)."""

    look: Who
    send: Who


OPEN = Rule(Who.ANYBODY, Who.ANYBODY)
ASKED = Rule(Who.READER, Who.READER)  # only asks, or concerns the person alone
SHEET = Rule(Who.READER, Who.WRITER)
OFFICE = Rule(Who.WRITER, Who.WRITER)

CALLS = "api"
"""The space of names of the calls: a program is told who may come in, not led to a form."""

RULES: dict[str, Rule] = {
    # coming in
    "sign-in": OPEN,
    "first": OPEN,
    "leave": ASKED,
    "ink": OPEN,
    "people": OFFICE,
    "password": ASKED,
    "status": SHEET,
    "backup": OFFICE,
    "phone": OPEN,
    "authority": OPEN,
    # the register
    "register": SHEET,
    "new": OFFICE,
    "house": SHEET,
    "away": SHEET,
    "settle": OFFICE,
    # the sheets of a house
    "checks": ASKED,
    "survey": ASKED,
    "assumptions": SHEET,
    "schedule": ASKED,
    "cells": OFFICE,
    "schedule-back": OFFICE,
    "schedule-out": ASKED,
    "box": SHEET,
    "elevations": ASKED,
    "elevation": ASKED,
    "names": SHEET,
    "scenes": SHEET,
    "scene": SHEET,
    "walk": ASKED,
    "worksheets": ASKED,
    "worksheets-printed": ASKED,
    "worksheet": ASKED,
    # the building and what stands in it
    "building": SHEET,
    "thing": SHEET,
    "plans": ASKED,
    "plan": ASKED,
    "networks": SHEET,
    "choose": SHEET,
    "radio": ASKED,
    "radio-plan": ASKED,
    "radio-work": ASKED,
    "measured-links": SHEET,
    "channels": SHEET,
    # the book: cover sheet, history, issues, key ring
    "cover": SHEET,
    "history": SHEET,
    "edit": SHEET,
    "compare": ASKED,
    "issue": ASKED,
    "issue-paper": ASKED,
    "keys": SHEET,
    # the site
    "journal": SHEET,
    "journal-out": ASKED,
    "entry": OFFICE,
    "as-built": SHEET,
    "function-test": SHEET,
    "papers": ASKED,
    "drawing": ASKED,
    "job": ASKED,
    "job-file": ASKED,
    "page": ASKED,
    "page-png": ASKED,
    "swap": SHEET,
    "swap-out": ASKED,
    "swap-work": ASKED,
    "reconcile": ASKED,
    "reconcile-write": OFFICE,
    "new-list": OFFICE,
    # the calls, and the sheet that lists them
    "calls": ASKED,
    "api:api-root": ASKED,
    "api:openapi-json": ASKED,
    "api:houses": SHEET,
    "api:house": ASKED,
    "api:document": SHEET,
    "api:edits": ASKED,
    "api:edit": ASKED,
    "api:issues": SHEET,
    "api:issue": ASKED,
    "api:journal": SHEET,
    "api:check": ASKED,
    "api:reach": ASKED,
    "api:foresee": ASKED,
    "api:measured": ASKED,
    "api:channels": ASKED,
    "api:select": ASKED,
    "api:names": ASKED,
    "api:scenes": ASKED,
    "api:walk": ASKED,
    "api:worksheet": ASKED,
    "api:assumptions": ASKED,
    "api:firm-assumptions": ASKED,
    "api:code": ASKED,
    "api:as-built": ASKED,
    "api:test": ASKED,
    "api:swap": ASKED,
    "api:suspects": ASKED,
    "api:controller": ASKED,
    "api:reconcile": ASKED,
}


def person(request: HttpRequest) -> door.Account:
    """Whose request it is, past the guard: never a stranger."""
    assert isinstance(request.user, door.Account)  # the table of rights let only accounts come here
    return request.user


class Guard:
    """Middleware that asks the table before any view runs."""

    def __init__(self, answer: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.answer = answer

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """What was answered stays in no cache: nothing of a house is seen after its reader has left."""
        answer = self.answer(request)
        if not answer.has_header("Cache-Control"):
            answer["Cache-Control"] = "no-store"
        return answer

    def process_exception(self, _: HttpRequest, error: Exception) -> None:
        """What the store does not know is not found; what it refuses the account is forbidden."""
        if isinstance(error, door.UnknownError):
            raise Http404(str(error)) from error
        if isinstance(error, door.NotAllowedError):
            raise PermissionDenied(str(error)) from error

    def process_view(self, request: HttpRequest, *_: Any) -> HttpResponseBase | None:
        """None lets the view run; a stranger is led to the door, a reader who would change is refused."""
        assert request.resolver_match is not None  # Django calls this once the address is resolved
        rule = RULES.get(request.resolver_match.view_name)
        if rule is None:
            raise PermissionDenied("no rule for this address")
        who = rule.look if request.method in _LOOKING else rule.send
        if who is Who.ANYBODY:
            return None
        if not request.user.is_authenticated and request.resolver_match.namespace == CALLS:
            return HttpResponse(status=401)
        if not request.user.is_authenticated:
            return redirect_to_login(request.get_full_path())
        if who is Who.WRITER and not request.user.may_write:
            raise PermissionDenied("only a writer may")
        return None
