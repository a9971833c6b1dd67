"""From changes to an edit: made on the edit that the person saw, merged with what others did since."""

from collections.abc import Sequence

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from secondfix.house import Change, Fault, House, Written, edited, written
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked_at, keep
from secondfix.web.frame.firm import firm

Answer = door.Saved | door.Conflicting | door.Refused


def number_of(request: HttpRequest) -> int | None:
    """The edit that a form was made from: its field ``base``; None where it is no number."""
    sent = request.POST.get("base", "")
    return int(sent) if sent.isascii() and sent.isdigit() and len(sent) < 10 else None


def tried(request: HttpRequest, house_id: str, changes: Sequence[Change]) -> House | list[Fault]:
    """What the house would be, made on the edit that the form names in ``base``; nothing is saved.

    Raises door.UnknownError.
    """
    base = number_of(request)
    if base is None:
        return [Fault("form", "base", repr(request.POST.get("base", ""))[:40], "the number of an edit")]
    return edited(asked_at(house_id, base).house, changes, models=firm().models)


def take(request: HttpRequest, house_id: str, changes: Sequence[Change], *, words: str = "") -> Answer:
    """Make ``changes`` on the edit that the form names in ``base``, and save. Raises door.UnknownError."""
    made = tried(request, house_id, changes)
    if isinstance(made, list):
        return door.Refused(tuple(made))
    base = number_of(request)
    assert base is not None  # without one nothing was made
    stood = asked_at(house_id, base)
    sent = written(made, before=Written(stood.house, stood.text, pieces=stood.pieces))
    saved = door.save(house_id, sent, base=base, by=person(request), words=words)
    assert not isinstance(saved, door.IdTaken)  # the store makes the id of an edit from a form
    if isinstance(saved, door.Saved) and not saved.others:
        keep(house_id, saved.number, sent)
    return saved


def answered(request: HttpRequest, house_id: str, answer: Answer, *, to: str) -> HttpResponse | None:
    """Where to go: ``to`` once saved, the sheet of the conflict where two met; None where it was refused.

    The view that asked shows the faults of a refusal itself, beside what was typed.
    """
    if isinstance(answer, door.Refused):
        return None
    if isinstance(answer, door.Conflicting):
        to = reverse("settle", args=[house_id, answer.kept])
    if getattr(request, "htmx", False):
        away = HttpResponse(status=204)
        away["HX-Redirect"] = to
        return away
    return redirect(to)
