"""A sheet on the screen: border, title block and register around what a view found."""

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.urls import reverse

from secondfix.store import door
from secondfix.web.frame.sheets import HOUSE_SHEETS, SHEETS

INKS = ("day", "night")


def show(
    request: HttpRequest,
    name: str,
    template: str,
    context: Mapping[str, Any] | None = None,
    *,
    house_id: str | None = None,
    status: int = 200,
) -> HttpResponse:
    """The sheet ``name`` of the register, of a house or of the whole desk. Raises door.UnknownError."""
    frame: dict[str, Any] = {"sheet": SHEETS[name], "today": datetime.now(UTC).date().isoformat()}
    ink = request.COOKIES.get("ink")
    frame["ink"] = ink if ink in INKS else ""
    if house_id is not None:
        row = door.house_row(house_id)
        frame["house"] = row
        frame["sheets"] = [
            {"name": s.name, "number": s.number, "title": s.title, "href": reverse(s.name, args=[house_id])}
            for s in HOUSE_SHEETS
        ]
        frame["issue_line"] = _issue_line(house_id, row.number)
    frame["may_write"] = request.user.is_authenticated and request.user.may_write
    return render(request, template, {**frame, **(context or {})}, status=status)


def _issue_line(house_id: str, number: int) -> str:
    issues = door.issues(house_id)
    if not issues:
        return f"none yet, edit {number}"
    since = number - issues[0].number
    return issues[0].letter + (f", {since} edits since" if since > 1 else ", 1 edit since" if since else "")
