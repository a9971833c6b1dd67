"""The history of a house: its edits, what each changed, the way back; and the issues that went out."""

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from secondfix.house import Fault
from secondfix.journal import Journal
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.changing import answered, number_of
from secondfix.web.frame.asked import asked_at
from secondfix.web.frame.jobs import MOST_WAITING, TooManyError
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import OnSite
from secondfix.web.frame.telling import told
from secondfix.web.history.issued import as_issued, body_of
from secondfix.web.history.telling import MOST, between, standing
from secondfix.web.papers.printing import KINDS, Order, begin

PAGE = 50


@require_http_methods(["GET", "POST"])
def history(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every edit and every issue, the latest first; the current edit can be issued."""
    wrong = ""
    if request.method == "POST":
        row = _issue(request, house_id)
        if row is not None:
            messages.success(request, f"Issue {row.letter} is edit {row.number}.")
            return redirect("issue", house_id, row.letter)
        wrong = "Somebody saved since this sheet was opened: look at the latest edit, then issue it."
    rows = door.edits(house_id)
    page = Paginator(rows, PAGE).get_page(request.GET.get("page"))
    context = {
        "page": page,
        "current": standing(rows)[0],
        "numbers": standing(rows),
        "issues": door.issues(house_id),
        "wrong": wrong,
    }
    status = 409 if wrong else 200
    return show(request, "history", "history/history.html", context, house_id=house_id, status=status)


def _issue(request: HttpRequest, house_id: str) -> door.IssueRow | None:
    number, words = number_of(request), request.POST.get("words", "").strip()[:500]
    if number is None or door.house_row(house_id).number != number:
        return None
    settled = asked_at(house_id, number).settled
    return door.issue(house_id, number=number, assumptions=settled, by=person(request), words=words)


@require_http_methods(["GET", "POST"])
def edit(request: HttpRequest, house_id: str, number: int) -> HttpResponse:
    """What one edit changed, or why it was set aside; the way back to it."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        base = number_of(request) or 0  # no edit has that number: the store says so
        answer = door.go_back(house_id, number, base=base, by=person(request))
        assert not isinstance(answer, door.IdTaken)  # the store makes the id of this edit
        if isinstance(answer, door.Saved):
            words = f"Edit {answer.number} is as edit {number} was; those in between are kept."
            messages.success(request, words)
        gone = answered(request, house_id, answer, to=reverse("history", args=[house_id]))
        if gone is not None:
            return gone
        assert isinstance(answer, door.Refused)  # the others were answered
        faults = answer.faults
    row = door.edit_row(house_id, number)
    context = {"edit": row, "current": door.house_row(house_id).number, "faults": faults}
    if row.stands:
        changes = door.edit_changes(house_id, number) if number > 1 else ()
        context |= {"changes": told(asked_at(house_id, number).house, changes[:MOST]), "count": len(changes)}
    else:
        context["answer"] = door.edit_answer(house_id, number)
    status = 422 if faults else 200
    return show(request, "edit", "history/edit.html", context, house_id=house_id, status=status)


@require_GET
def compare(request: HttpRequest, house_id: str) -> HttpResponse:
    """Two edits beside each other: every field that differs."""
    numbers = standing(door.edits(house_id))
    one, other = (_chosen(request, name, numbers) for name in ("one", "other"))
    changes = between(house_id, one, other)
    context = {
        "numbers": numbers,
        "one": one,
        "other": other,
        "count": len(changes),
        "changes": told(asked_at(house_id, other).house, changes[:MOST]),
    }
    return show(request, "compare", "history/compare.html", context, house_id=house_id)


def _chosen(request: HttpRequest, name: str, numbers: list[int]) -> int:
    """The edit that the address names; else the latest, and the one before it."""
    text = request.GET.get(name, "")
    if text.isascii() and text.isdigit() and int(text[:9]) in numbers:
        return int(text[:9])
    return numbers[0] if name == "other" else numbers[min(1, len(numbers) - 1)]


@require_GET
def issue(request: HttpRequest, house_id: str, letter: str) -> HttpResponse:
    """An issue as it went out: switch schedule, checks under its own assumptions, papers."""
    issued, about = as_issued(house_id, letter)
    own = [a for a in about.firm.assumptions.values() if a.set_by != "default"]
    context = {
        "issued": issued,
        "body": about.once("issue in markup", body_of),
        "counts": about.checked.counts,
        "own": own,
        "papers": {key: title for key, (title, _) in KINDS.items()},
        "issue_line": issued.row.letter,
    }
    return show(request, "issue", "history/issue.html", context, house_id=house_id)


@require_POST
def issue_paper(request: HttpRequest, house_id: str, letter: str, paper: str) -> HttpResponse:
    """A paper of an issue, printed aside: its letter, writer and day in the title block."""
    if paper not in KINDS:
        raise door.UnknownError(f"no paper {paper[:20]}")
    issued, about = as_issued(house_id, letter)
    row = issued.row
    order = Order(paper, row.letter, row.by, row.at.date(), size=None, as_built=False)
    try:
        job = begin(request, OnSite(about, Journal(), (), 0), order)
    except TooManyError:
        messages.error(request, f"{MOST_WAITING} papers of yours are under way: one done or cancelled first.")
        return redirect("issue", house_id, letter)
    return redirect("job", house_id, job.id)
