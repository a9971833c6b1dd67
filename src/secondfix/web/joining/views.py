"""The order of joining, a worksheet for each device, and the same on paper."""

from datetime import UTC, datetime

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.template.loader import render_to_string
from django.urls import reverse
from django.views.decorators.http import require_GET

from secondfix.house import is_nec
from secondfix.joining import before_boxes, to_mind
from secondfix.papers import Setting, TitleBlock
from secondfix.store import door
from secondfix.terms import said, walked_way
from secondfix.web.access import person
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.showing import show
from secondfix.web.joining.asking import laid, printed_of, sheets_of, stages_of, walked_of


@require_GET
def walk(request: HttpRequest, house_id: str) -> HttpResponse:
    """What comes before every box, then each step of the way."""
    about = asked(house_id)
    walked, nec = walked_of(about), is_nec(about.house)
    context = {
        **_cautions(about),
        "table": about.once("walk table", _steps),
        "walk": walked.walk,
        "devices": len(walked.walk.joins()),
        "isolations": said("Isolations", nec=nec),
        "way": walked_way(walked.walk.walked_mm, nec=nec),
        "findings": [f for f in walked.findings if f.severity],
    }
    return show(request, "walk", "joining/walk.html", context, house_id=house_id)


def _steps(about: Asked) -> str:
    return render_to_string("joining/steps.html", {"about": about, "stages": stages_of(about)})


def _sheets(about: Asked) -> str:
    return render_to_string("joining/list.html", {"about": about, "stages": sheets_of(about)})


def _cautions(about: Asked) -> dict[str, object]:
    first, *then = before_boxes(about.house)
    return {"about": about, "first": first, "before": then, "mind": to_mind(about.house)}


@require_GET
def worksheets(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every worksheet in the order of joining, on the screen or on paper."""
    about = asked(house_id)
    table = about.once("worksheet table", _sheets)
    context = {**_cautions(about), "table": table}
    return show(request, "worksheets", "joining/worksheets.html", context, house_id=house_id)


@require_GET
def worksheet(request: HttpRequest, house_id: str, device_id: str) -> HttpResponse:
    """One device: cautions, what to do, which entries must appear, what to test."""
    about = asked(house_id)
    sheet = laid(about, device_id)
    if sheet is None:
        raise door.UnknownError(f"no worksheet of {device_id[:20]} in this house")
    context = {"about": about, "laid": sheet, "w": sheet.sheet}
    return show(request, "worksheet", "joining/worksheet.html", context, house_id=house_id)


@require_GET
def printed(request: HttpRequest, house_id: str) -> HttpResponse:
    """The worksheets of one stage or one device as a PDF; all together are printed among the papers."""
    device, stage = request.GET.get("device", ""), request.GET.get("stage", "")
    if not device and not stage:
        return redirect("papers", house_id)
    about = asked(house_id)
    sheets = [w.device for w in walked_of(about).worksheets if stage in {"", str(w.stage)}]
    only = [d for d in sheets if device in {"", d}]
    if not only:
        raise door.UnknownError("no such worksheet in this house")
    block = TitleBlock(_issue(house_id), datetime.now(UTC).date(), person(request).get_username())
    made = printed_of(about, Setting(block), only)
    if isinstance(made, list):
        for fault in made:
            messages.error(request, str(fault))
        return redirect(reverse("worksheets", args=[house_id]))
    answer = HttpResponse(made, content_type="application/pdf")
    named = device or f"stage-{stage}"
    answer["Content-Disposition"] = f'inline; filename="worksheets-{named}.pdf"'
    return answer


def _issue(house_id: str) -> str:
    """The letter that went out last, where nothing was changed since; else a draft."""
    issues = door.issues(house_id)
    current = door.house_row(house_id).number
    return issues[0].letter if issues and issues[0].number == current else f"draft, edit {current}"
