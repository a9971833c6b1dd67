"""The switch schedule: filled in on the screen, taken out to a spreadsheet and in again; a box on a form."""

from typing import Any

from django.contrib import messages
from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from secondfix.exchange import LARGEST_LIST_BYTES, as_csv, as_xlsx, choices_of, shown_table
from secondfix.house import Fault
from secondfix.store import door
from secondfix.terms import KNOWN_LABELS
from secondfix.web.changing import answered, take
from secondfix.web.frame.asked import asked, asked_at
from secondfix.web.frame.showing import show
from secondfix.web.schedule import asking
from secondfix.web.schedule.rows import ANSWERS_AFTER, changed_rows, heads, rows_of


@require_GET
def schedule(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every gang a row."""
    return _sheet(request, house_id)


def _sheet(request: HttpRequest, house_id: str, faults: tuple[Fault, ...] = ()) -> HttpResponse:
    about = asked(house_id)
    context = {
        "about": about,
        "heads": heads(about),
        "answers_after": ANSWERS_AFTER,
        "rows": mark_safe("\n".join(rows_of(about).values())),  # noqa: S308 - every text of the house is escaped there
        "choices": choices_of(about.house),
        "knowns": KNOWN_LABELS.items(),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "schedule", "schedule/schedule.html", context, house_id=house_id, status=status)


@require_POST
def cells(request: HttpRequest, house_id: str) -> HttpResponse:
    """Cells as they were typed or pasted: saved at once, answered with the rows that look different now."""
    before = asked_at(house_id, asking.base_of(request))
    read = asking.cells_read(before.rows, request)
    if read.faults:
        return JsonResponse({"faults": [_told(f) for f in read.faults]}, status=422)
    answer = take(request, house_id, read.changes)
    if isinstance(answer, door.Conflicting):
        return JsonResponse({"settle": reverse("settle", args=[house_id, answer.kept])}, status=409)
    if isinstance(answer, door.Refused):
        return JsonResponse({"faults": [_told(f) for f in answer.faults]}, status=422)
    after = asked_at(house_id, answer.number)
    stand = rows_of(after, before)
    typed = {place: stand[place] for place in read.places if place in stand}
    rows = {**typed, **changed_rows(before, after)}
    gone = [place for place in rows_of(before) if place not in stand]
    told: dict[str, Any] = {
        "number": answer.number,
        "rows": rows,
        "gone": gone,
        "choices": choices_of(after.house),
    }
    return JsonResponse({**told, "counts": after.checked.counts})


def _told(fault: Fault) -> dict[str, str]:
    return {"where": fault.where, "path": fault.path, "says": f"{fault.stands}; expected {fault.expected}"}


@require_GET
def out(request: HttpRequest, house_id: str, form: str) -> HttpResponse:
    """The sheet as a file for a spreadsheet."""
    about = asked(house_id)
    table = shown_table(about.rows)
    if form == "csv":
        answer = HttpResponse(as_csv(*table), content_type="text/csv; charset=utf-8")
    elif form == "xlsx":
        kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
        answer = HttpResponse(as_xlsx(*table, title="Switch schedule"), content_type=kind)
    else:
        raise door.UnknownError(f"no switch schedule as {form[:10]}")
    answer["Content-Disposition"] = f'attachment; filename="switch-schedule.{form}"'
    return answer


@require_POST
def back(request: HttpRequest, house_id: str) -> HttpResponse:
    """A spreadsheet in again: only what differs from the sheet is changed."""
    sent = request.FILES.get("file")
    if not isinstance(sent, UploadedFile):
        return _sheet(request, house_id, (Fault("form", "file", "nothing", "a CSV or XLSX file"),))
    about = asked_at(house_id, asking.base_of(request))
    data = sent.read(LARGEST_LIST_BYTES + 1)
    read = asking.file_read(about.rows, data, sent.name or "file", asking.known_of(request))
    if read.faults:
        return _sheet(request, house_id, read.faults)
    here = reverse("schedule", args=[house_id])
    if not read.changes:
        messages.info(request, " ".join(("Nothing in it differs from the sheet.", *read.told)))
        return redirect(here)
    answer = take(request, house_id, read.changes, words=f"switch schedule from {sent.name}"[:200])
    if isinstance(answer, door.Saved):
        messages.success(request, " ".join((f"{len(read.changes)} fields taken in.", *read.told)))
    gone = answered(request, house_id, answer, to=here)
    if gone is not None:
        return gone
    assert isinstance(answer, door.Refused)  # the others were answered
    return _sheet(request, house_id, answer.faults)


@require_http_methods(["GET", "POST"])
def box(request: HttpRequest, house_id: str, box_id: str) -> HttpResponse:
    """One wall box as a form, for a phone or without scripts."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        about = asked_at(house_id, asking.base_of(request))
        read = asking.form_read(about.rows, box_id, request)
        if not read.faults and not read.changes:
            return redirect(reverse("schedule", args=[house_id]) + f"#{box_id}")
        answer = door.Refused(read.faults) if read.faults else take(request, house_id, read.changes)
        gone = answered(request, house_id, answer, to=reverse("schedule", args=[house_id]) + f"#{box_id}")
        if gone is not None:
            return gone
        assert isinstance(answer, door.Refused)  # the others were answered
        faults = answer.faults
    about = asked(house_id)
    if box_id not in about.house.boxes:
        raise door.UnknownError(f"no box {box_id[:20]} in this house")
    context = {
        "about": about,
        "box_id": box_id,
        "gangs": asking.fields_of(about.rows, box_id, request),
        "choices": choices_of(about.house),
        "knowns": KNOWN_LABELS.items(),
        "faults": faults,
        "findings": [f for f in about.checked.findings if f.severity and f.place.split(".")[0] == box_id],
    }
    status = 422 if faults else 200
    return show(request, "box", "schedule/box.html", context, house_id=house_id, status=status)
