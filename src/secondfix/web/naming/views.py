"""Names of every entry, and the policy that they are put together by."""

from typing import Any

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from secondfix.actions.names import Renamed, not_asked, renamed, standing
from secondfix.house import Change, Fault, House, plain_of
from secondfix.store import door
from secondfix.web.changing import answered, take, tried
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.sheets import SHEETS
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
    given = _given(about)
    context |= {
        "rows": rows_of(about, given),
        "told": bool(given),
        "policy_open": request.method == "POST",
        "policy": policy_fields(about.house, request.POST.dict()),
        "between": request.POST.get("between", about.house.naming.between),
        "spoken": request.POST.get("spoken_language", about.house.naming.spoken_language or ""),
        "parts": {part.value: words for part, words in PART_WORDS.items()},
        "others": [f for f in named_of(about).findings if f.severity],
        "not_asked": not_asked(about.house),
        "networks": "networks" in SHEETS,
        "base": request.POST.get("base", about.number),
    }
    status = 422 if context["faults"] else 200
    return show(request, "names", "naming/names.html", context, house_id=house_id, status=status)


def _given(about: Asked) -> dict[tuple[str, int], str]:
    """Names given on site, worked out once for every entry that came."""
    house_id = about.house.id
    size = door.journal_size(house_id)
    return about.once(f"names at {size}", lambda a: standing(a.house, door.journal(house_id)[0]))


def _seen(request: HttpRequest, about: Asked, change: Change) -> _Told:
    made = tried(request, about.house.id, [change])
    if isinstance(made, House):
        return {"differs": renamed(named_of(about).names.entries(), made)}
    return {"faults": tuple(made)}


def _saved(request: HttpRequest, about: Asked, change: Change) -> HttpResponse | tuple[Fault, ...]:
    here = reverse("names", args=[about.house.id])
    if change.value == plain_of(about.house).get("naming"):
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
