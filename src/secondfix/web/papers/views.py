"""Papers and drawings: chosen, printed aside, opened."""

from datetime import UTC, datetime

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.actions.pack import drawings
from secondfix.house import Fault
from secondfix.papers import SheetSize, page_count, page_picture
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import on_site
from secondfix.web.papers.printing import (
    KINDS,
    Printed,
    begin,
    order_of,
    titles,
    today,
    usual_issue,
    zipped,
)

_ALL = "all.zip"
_PAGE_PX = 1600
_TYPES = {"pdf": "application/pdf", "svg": "image/svg+xml", "zip": "application/zip"}


@require_http_methods(["GET", "POST"])
def papers(request: HttpRequest, house_id: str) -> HttpResponse:
    """What can be printed, the title block, and what was made lately."""
    site = on_site(house_id)
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        order = order_of(request, site.about, request.POST)
        if isinstance(order, list):
            faults = tuple(order)
        else:
            try:
                return redirect("job", house_id, begin(request, site, order).id)
            except jobs.TooManyError:
                said = f"{jobs.MOST_WAITING} papers of yours are under way"
                faults = (Fault("papers", "", said, "one of them done or cancelled first"),)
    given = request.POST
    context = {
        "about": site.about,
        "kinds": KINDS.items(),
        "what": given.get("what", "findings"),
        "issue": given.get("issue") or usual_issue(site.about),
        "drawn_by": given.get("drawn_by") or person(request).username,
        "on": given.get("on") or today().isoformat(),
        "sizes": [(s.value, s.value.replace("us-letter", "Letter").replace("a4", "A4")) for s in SheetSize],
        "size": given.get("size", ""),
        "entries": site.size,
        "jobs": [j for j in jobs.jobs_of(house_id) if j.kind == "paper"],
        "drawings": titles(site.about),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "papers", "papers/papers.html", context, house_id=house_id, status=status)


@require_GET
def drawing(request: HttpRequest, house_id: str, drawing_file: str) -> HttpResponse:
    """One plan or elevation as a picture, as the pack has it."""
    about = asked(house_id)
    draw = drawings(about.rows).get(f"{drawing_file}.svg")
    if draw is None:
        raise door.UnknownError(f"no drawing {drawing_file[:40]} of this house")
    made = about.once(f"drawing {drawing_file}", lambda a: draw(a.checked.findings))
    return _file(f"{drawing_file}.svg", made)


@require_http_methods(["GET", "POST"])
def job(request: HttpRequest, house_id: str, job_id: str) -> HttpResponse:
    """How far it has come; cancelled where its own person or a writer says so."""
    found = _found(house_id, job_id)
    if found is None:
        return _gone(request, house_id)
    if request.method == "POST":
        if found.by == person(request).username or person(request).may_write:
            jobs.cancel(found)
        return redirect("job", house_id, job_id)
    context = {"job": found, "printed": found.result if isinstance(found.result, Printed) else None}
    if request.htmx and not request.htmx.boosted:  # type: ignore[attr-defined] # django_htmx puts it there
        door.house_row(house_id)
        return render(request, "papers/progress.html", {**context, "house": {"id": house_id}})
    return show(request, "job", "papers/job.html", context, house_id=house_id)


@require_GET
def job_file(request: HttpRequest, house_id: str, job_id: str, name: str) -> HttpResponse:
    """One file that a job made, or all in one."""
    printed = _printed(house_id, job_id)
    if printed is None or (name != _ALL and name not in printed.files):
        raise door.UnknownError(f"no file {name[:40]} of this work")
    return _file(name, zipped(printed.files, datetime.now(UTC)) if name == _ALL else printed.files[name])


@require_GET
def page(request: HttpRequest, house_id: str, job_id: str, name: str, number: int) -> HttpResponse:
    """One page of a paper on the screen, with the way to the next."""
    pages = page_count(_pdf(house_id, job_id, name))
    if not 1 <= number <= pages:
        raise door.UnknownError(f"no page {number} of {name[:40]}")
    context = {"job_id": job_id, "name": name, "number": number, "pages": pages}
    return show(request, "page", "papers/page.html", context, house_id=house_id)


@require_GET
def page_png(request: HttpRequest, house_id: str, job_id: str, name: str, number: int) -> HttpResponse:
    """The picture of that page."""
    try:
        made = page_picture(_pdf(house_id, job_id, name), page=number, width_px=_PAGE_PX)
    except IndexError as error:
        raise door.UnknownError(str(error)) from error
    return HttpResponse(made, content_type="image/png")


def _pdf(house_id: str, job_id: str, name: str) -> bytes:
    printed = _printed(house_id, job_id)
    if printed is None or name not in printed.files or not name.endswith(".pdf"):
        raise door.UnknownError(f"no paper {name[:40]} of this work")
    return printed.files[name]


def _found(house_id: str, job_id: str) -> jobs.Job | None:
    found = jobs.find(job_id, house_id=house_id)
    return found if found and found.kind == "paper" else None


def _printed(house_id: str, job_id: str) -> Printed | None:
    found = _found(house_id, job_id)
    return found.result if found and isinstance(found.result, Printed) else None


def _gone(request: HttpRequest, house_id: str) -> HttpResponse:
    """Work is kept in memory alone: after a new start of the desk its sheet says so, with a way on."""
    door.house_row(house_id)
    if request.htmx and not request.htmx.boosted:  # type: ignore[attr-defined] # django_htmx puts it there
        return render(request, "papers/gone.html", {"house": {"id": house_id}})
    return show(request, "job", "papers/job.html", {"job": None}, house_id=house_id, status=404)


def _file(name: str, data: bytes) -> HttpResponse:
    kind = name.rpartition(".")[2]
    answer = HttpResponse(data, content_type=_TYPES[kind])
    how = "attachment" if kind == "zip" else "inline"
    answer["Content-Disposition"] = f'{how}; filename="{name}"'
    return answer
