"""The sheet where two people's changes to one field are settled."""

from dataclasses import dataclass

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from secondfix.house import Side
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.frame.telling import field_words, value_words

SIDES: dict[str, Side] = {"mine": "mine", "theirs": "theirs"}


@dataclass(frozen=True, slots=True)
class Sides:
    """One field that two changed, in words."""

    path: str
    thing: str
    beside: str
    field: str
    was: str
    theirs: str
    mine: str


@require_http_methods(["GET", "POST"])
def settle(request: HttpRequest, house_id: str, kept: int) -> HttpResponse:
    """Every field that two changed apart, both values, and a choice for each."""
    answer = door.edit_answer(house_id, kept)
    if request.method == "POST":
        seen = request.POST.get("seen", "")
        choices = {
            path.removeprefix("side:"): SIDES[side]
            for path, side in request.POST.items()
            if path.startswith("side:") and side in SIDES
        }
        settled = door.settle(
            house_id, kept, choices, seen=int(seen) if seen.isdigit() else 0, by=person(request), words=""
        )
        if isinstance(settled, door.Saved):
            messages.success(request, f"Saved as edit {settled.number}.")
            return redirect("house", house_id)
        if isinstance(settled, door.Conflicting):
            return redirect("settle", house_id, settled.kept)
        assert isinstance(settled, door.Refused)  # the store makes the id of this edit
        answer = settled
    context = {"answer": answer, "kept": kept, "sides": _sides(house_id, answer)}
    wrong = isinstance(answer, door.Refused)
    return show(
        request, "settle", "changing/settle.html", context, house_id=house_id, status=422 if wrong else 200
    )


def _sides(house_id: str, answer: object) -> list[Sides]:
    if not isinstance(answer, door.Conflicting):
        return []
    house = asked(house_id).house
    return [
        Sides(
            c.path,
            *field_words(house, c.path),
            *(value_words(house, c.path, v) for v in (c.base, c.theirs, c.mine)),
        )
        for c in answer.conflicts
    ]
