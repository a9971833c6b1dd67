"""The scene schedule, and each scene on a form that tells what it would change before it is saved."""

from dataclasses import dataclass
from typing import Any

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_http_methods

from secondfix.house import Change, Fault, House, plain_of
from secondfix.store import door
from secondfix.web.changing import answered, number_of, take, tried
from secondfix.web.frame.asked import Asked, asked, asked_at
from secondfix.web.frame.showing import show
from secondfix.web.scenes.changes import Changes, changes_of
from secondfix.web.scenes.chart import body_of, chart_of, resolved_of, tried_of
from secondfix.web.scenes.choices import LISTS, choices_of
from secondfix.web.scenes.crossing import chosen
from secondfix.web.scenes.typed import form_of, scene_of, texts_of
from secondfix.web.things.ids import largest_used


@require_http_methods(["GET", "POST"])
def scenes(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every load against every scene; one crossing to read about; a new scene by its name."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        scene_id = _free_id(asked(house_id).house)
        scene = {"name": request.POST.get("name", "").strip()}
        answer = take(request, house_id, [Change(f"scenes.{scene_id}", scene)])
        gone = answered(request, house_id, answer, to=reverse("scene", args=[house_id, scene_id]))
        if gone is not None:
            return gone
        assert isinstance(answer, door.Refused)  # the others were answered
        faults = answer.faults
    about = asked(house_id)
    at = request.GET.get("at", "")
    context: dict[str, Any] = {"about": about, "chosen": chosen(about, at)}
    if getattr(request, "htmx", False) and request.method == "GET":
        return render(request, "scenes/crossing.html", context)
    columns = chart_of(about).columns
    named = (request.GET.get("scene", ""), at.partition(".")[0])
    shown = next((c.scene_id for c in columns if c.scene_id in named), columns[0].scene_id if columns else "")
    resolved = resolved_of(about)
    context |= {
        "columns": columns,
        "times": [(c, t.why) for c, t in zip(columns, resolved.times, strict=True) if t.why],
        "shown": shown,
        "rows": mark_safe(body_of(about, shown)),  # noqa: S308 - every text of the house is escaped there
        "findings": [f for f in resolved.findings if f.severity],
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "scenes", "scenes/scenes.html", context, house_id=house_id, status=status)


def _free_id(house: House) -> str:
    """One past every number that a scene bears or bore."""
    numbers = [int(key[1:]) for key in house.scenes if key[1:].isdecimal()]
    return f"S{max([0, *numbers, *largest_used(house.id).get('S', ())]) + 1}"


@dataclass
class _Sheet:
    """What the form of a scene shows: its texts, what is wrong in them, what they would change."""

    texts: dict[str, str]
    faults: tuple[Fault, ...] = ()
    more: tuple[str, ...] = ()
    changes: Changes | None = None


@require_http_methods(["GET", "POST"])
def scene(request: HttpRequest, house_id: str, scene_id: str) -> HttpResponse:
    """One scene: what starts it, its rules, its direct commands; and what an edit of it would change."""
    about = asked(house_id)
    if scene_id not in about.house.scenes:
        raise door.UnknownError(f"no scene {scene_id[:20]} in this house")
    if request.method == "GET":
        texts = texts_of(about.house, about.house.scenes[scene_id])
        return _shown(request, about, scene_id, _Sheet(texts))
    sheet = _Sheet({name: text for name, text in request.POST.items() if isinstance(text, str)})
    act = request.POST.get("act", "")
    if act.startswith("more:"):
        sheet.more = (act.removeprefix("more:"),)
    elif act == "see" or getattr(request, "htmx", False):
        _see(request, about, scene_id, sheet)
    else:
        gone = _saved(request, about, scene_id, sheet)
        if gone is not None:
            return gone
    return _shown(request, about, scene_id, sheet)


def _change(request: HttpRequest, scene_id: str, sheet: _Sheet) -> Change:
    out = request.POST.get("act") == "out"
    return Change(f"scenes.{scene_id}", None if out else scene_of(sheet.texts))


def _see(request: HttpRequest, about: Asked, scene_id: str, sheet: _Sheet) -> None:
    made = tried(request, about.house.id, [_change(request, scene_id, sheet)])
    if isinstance(made, House):
        base = asked_at(about.house.id, number_of(request) or about.number)
        sheet.changes = changes_of(resolved_of(base), tried_of(base, made))
    else:
        sheet.faults = tuple(made)


def _saved(request: HttpRequest, about: Asked, scene_id: str, sheet: _Sheet) -> HttpResponse | None:
    """Where to go once it is saved; None where it was refused, its faults in ``sheet``."""
    house_id, change = about.house.id, _change(request, scene_id, sheet)
    there = reverse("scenes", args=[house_id])
    if change.value == plain_of(about.house)["scenes"][scene_id]:
        messages.info(request, "Nothing differs from what stands.")
        return redirect(f"{there}?scene={scene_id}")
    answer = take(request, house_id, [change])
    if isinstance(answer, door.Saved):
        messages.success(request, f"Saved as edit {answer.number}.")
    to = there if change.value is None else f"{there}?scene={scene_id}#{scene_id}"
    gone = answered(request, house_id, answer, to=to)
    if isinstance(answer, door.Refused):
        sheet.faults = answer.faults
    return gone


def _shown(request: HttpRequest, about: Asked, scene_id: str, sheet: _Sheet) -> HttpResponse:
    context: dict[str, Any] = {
        "about": about,
        "scene_id": scene_id,
        "texts": sheet.texts,
        "faults": sheet.faults,
        "changes": sheet.changes,
    }
    if getattr(request, "htmx", False):
        return render(request, "scenes/changes.html", context)
    context |= {
        "form": form_of(sheet.texts, more=sheet.more),
        "choices": choices_of(about),
        "lists": [(key, choices_of(about)[key]) for key in LISTS],
        "more": bool(sheet.more),
        "base": request.POST.get("base", about.number),
        "findings": [f for f in resolved_of(about).findings if f.severity and f.place == scene_id],
    }
    status = 422 if sheet.faults else 200
    return show(request, "scene", "scenes/scene.html", context, house_id=about.house.id, status=status)
