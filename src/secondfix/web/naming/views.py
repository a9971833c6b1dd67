"""Names of every entry, and the policy that they are put together by."""

from typing import Any

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.template.loader import render_to_string
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from secondfix.actions.names import Renamed, not_asked, renamed, standing
from secondfix.house import Change, Fault, House
from secondfix.store import door
from secondfix.web.changing import answered, take, tried
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.showing import show
from secondfix.web.naming.asking import PART_WORDS, named_of, policy_fields, policy_of, rows_of

_Told = dict[str, tuple[Fault, ...] | tuple[Renamed, ...]]


@require_http_methods(["GET", "POST"])
def names(request: HttpRequest, house_id: str) -> HttpResponse:
    """What to call every entry; another policy tells what it would rename before it is saved."""
    about = asked(house_id)
    context: dict[str, Any] = {"about": about, "faults": (), "differs": None}
    if request.method == "POST":
        change = Change("naming", policy_of({k: str(v) for k, v in request.POST.items()}))
        if request.POST.get("act") == "see" or getattr(request, "htmx", False):
            context |= _seen(request, about, change)
        else:
            sent = _saved(request, about, change)
            if isinstance(sent, HttpResponse):
                return sent
            context["faults"] = sent
    if getattr(request, "htmx", False):
        return render(request, "naming/changes.html", context)
    context |= {
        **_entries(about),
        "policy_open": request.method == "POST",
        "policy": policy_fields(about.house, request.POST.dict()),
        "between": request.POST.get("between", about.house.naming.between),
        "spoken": request.POST.get("spoken_language", about.house.naming.spoken_language or ""),
        "parts": {part.value: words for part, words in PART_WORDS.items()},
        "others": [f for f in named_of(about).findings if f.severity],
        "not_asked": not_asked(about.house),
        "base": request.POST.get("base", about.number),
    }
    status = 422 if context["faults"] else 200
    return show(request, "names", "naming/names.html", context, house_id=house_id, status=status)


def _entries(about: Asked) -> dict[str, Any]:
    """The table of entries, put together once for every edit and every entry of the journal that came."""

    def made(about: Asked) -> dict[str, Any]:
        given = standing(about.house, door.journal(about.house.id)[0])
        rows = rows_of(about, given)
        context = {"about": about, "rows": rows, "told": bool(given)}
        return {**context, "table": render_to_string("naming/rows.html", context) if rows else ""}

    return about.once(f"names, {door.journal_size(about.house.id)} entries", made)


def _seen(request: HttpRequest, about: Asked, change: Change) -> _Told:
    made = tried(request, about.house.id, [change])
    if isinstance(made, House):
        return {"differs": renamed(named_of(about).names.entries(), made)}
    return {"faults": tuple(made)}


def _saved(request: HttpRequest, about: Asked, change: Change) -> HttpResponse | tuple[Fault, ...]:
    here = reverse("names", args=[about.house.id])
    if change.value == about.house.naming.model_dump(mode="json", exclude_none=True):
        messages.info(request, "Nothing differs from what stands.")
        return redirect(here)
    answer = take(request, about.house.id, [change])
    if isinstance(answer, door.Saved):
        messages.success(request, f"Saved as edit {answer.number}.")
    gone = answered(request, about.house.id, answer, to=here)
    if gone is not None:
        return gone
    assert isinstance(answer, door.Refused)  # the others were answered
    return answer.faults
