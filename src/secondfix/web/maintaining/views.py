"""A swap asked, printed and written down; the device list of a controller held against the book."""

import json
from datetime import UTC, datetime

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.actions.swap import Swapped
from secondfix.house import Fault
from secondfix.joining import before_boxes
from secondfix.maintenance import OUTCOME_WORDS, Outcome, SwapPlan
from secondfix.papers import Setting, TitleBlock, counted, swap_pdf, thing_words
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import OnSite, on_site, shown_at
from secondfix.web.journal.writing import Plain, expected_lines, write
from secondfix.web.maintaining.asking import (
    KEPT_WORDS,
    SOON_S,
    SwapQuestion,
    answer_of,
    models_of,
    question_of,
    rebuilt_of,
    suspected,
)


@require_http_methods(["GET", "POST"])
def swap(request: HttpRequest, house_id: str) -> HttpResponse:
    """What a swap comes to, before anything is taken out; its losses accepted; its entries written."""
    site, question = on_site(house_id), question_of(request.GET)
    answer = answer_of(site, question, by=person(request).username, again="again" in request.GET)
    faults = tuple(answer) if isinstance(answer, list) else ()
    if request.method == "POST" and isinstance(answer, Swapped):
        faults = _written(request, house_id, question, answer.plan)
        if not faults and request.POST.get("act") == "accept":
            return redirect(f"{reverse('swap', args=[house_id])}?{request.GET.urlencode()}")
        if not faults:  # the failed device stands no longer: what is left is to press its buttons
            return redirect("function-test", house_id)
    rebuilt = rebuilt_of(site, request)
    house = site.record.house
    plan = answer.plan if isinstance(answer, Swapped) else None
    context = {
        "about": site.about,
        "question": question,
        "query": request.GET.urlencode(),
        "devices": {d: _device_words(site, d) for d in house.devices},
        "models": sorted(models_of(site).items(), key=lambda item: item[1].title),
        "suspects": suspected(site, request),
        "typed": request.GET,
        "kept": KEPT_WORDS.items(),
        "rebuilt": None if isinstance(rebuilt, list) else rebuilt,
        "plan": plan,
        "job": answer if isinstance(answer, jobs.Job) else None,
        **(_plan_context(site, plan) if plan else {}),
        "shown": shown_at(),
        "faults": (*faults, *(rebuilt if isinstance(rebuilt, list) else ())),
    }
    status = 422 if context["faults"] else 200
    return show(request, "swap", "maintaining/swap.html", context, house_id=house_id, status=status)


@require_http_methods(["GET", "POST"])
def swap_work(request: HttpRequest, house_id: str, job_id: str) -> HttpResponse:
    """How far an answer has come, then the way to it; cancelled where its own person or a writer says so."""
    job = jobs.find(job_id, house_id=house_id)
    job = job if job and job.kind == "answer" else None
    query = request.GET.urlencode()
    there = reverse("swap", args=[house_id]) + (f"?{query}" if query else "")
    if job is not None and request.method == "POST":
        if job.by == person(request).username or person(request).may_write:
            jobs.cancel(job)
            jobs.wait(job, most_s=SOON_S)
        return redirect(there)
    if job is None or job.ended:  # of a desk that was started again too: its sheet asks anew
        if not getattr(request, "htmx", False):
            return redirect(there)
        told = HttpResponse(status=204)
        told["HX-Redirect"] = there
        return told
    return render(
        request, "maintaining/waiting.html", {"job": job, "query": query, "house": {"id": house_id}}
    )


def _plan_context(site: OnSite, plan: SwapPlan) -> dict[str, object]:
    """What the page shows of a plan beside the plan itself."""
    house = site.record.house
    refused = plan.outcome is Outcome.REFUSED
    paper = _paper(plan)
    signed = [n for n in site.lines if n.entry.kind == "signed" and paper in n.what]
    return {
        "outcome": OUTCOME_WORDS[plan.outcome],
        "refused": refused,
        "place": thing_words(house, plan.place),
        "cautions": before_boxes(house),
        "looks": list(dict.fromkeys(look.words for f in plan.open for look in f.looks)),
        "children": [thing_words(house, c) for c in plan.children or ()],
        "marks": list(dict.fromkeys(c.words for s in plan.sheets for c in s.cautions)),
        "accepted": signed[-1] if signed and plan.losses else None,
        "expected": [f"{e.kind.replace('_', ' ')}, {e.subject.replace(':', ' ')}" for e in plan.entries],
    }


def _device_words(site: OnSite, device_id: str) -> str:
    device = site.record.house.devices[device_id]
    model = site.record.house.models.get(device.model or "")
    where = thing_words(site.record.house, device.box or device.place or "")
    return ", ".join(w for w in (model.title if model else "model not chosen", where) if w)


def _paper(plan: SwapPlan) -> str:
    """What whoever accepts the losses puts their name to."""
    lost = ", ".join(dict.fromkeys(loss.kind.value.replace("_", " ") for loss in plan.losses))
    return f"losses of the swap of {plan.failed}: {lost}"[:500]


def _written(
    request: HttpRequest, house_id: str, question: SwapQuestion, plan: SwapPlan
) -> tuple[Fault, ...]:
    """A name under the losses, or the entries that the swap leaves behind once it is done."""
    if plan.outcome is Outcome.REFUSED:
        return (Fault("swap", "", "a refused swap", "another model: nothing of it is written"),)
    if request.POST.get("act") == "accept":
        own: Plain = {"name": request.POST.get("name", "").strip(), "paper": _paper(plan)}
        written = write(request, house_id, [("signed", f"device:{plan.failed}", own)])
        for one in written.taken:
            messages.success(request, f"Written down: {own['name']} accepts the losses, {one.at}.")
        return written.faults
    note = {"note": question.reason} if question.reason else {}
    wanted = [
        (e.kind, e.subject, {**e.own, **(note if e.kind == "fitted" else {})})
        for e in plan.entries
        if e.kind != "function_tested"
    ]
    written = write(request, house_id, wanted)
    if written.taken:
        said = counted(len(written.taken), "entry", "entries")
        messages.success(request, " ".join((f"{said} written down. Now the function test.", *written.told)))
    return written.faults


@require_GET
def swap_out(request: HttpRequest, house_id: str, form: str) -> HttpResponse:
    """The worksheet of a swap as a PDF, or its entries to expect as lines to complete on site."""
    site, question = on_site(house_id), question_of(request.GET)
    answer = answer_of(site, question, by=person(request).username)
    if not isinstance(answer, Swapped) or form not in {"pdf", "jsonl"}:
        here = reverse("swap", args=[house_id])
        return redirect(f"{here}?{request.GET.urlencode()}" if request.GET else here)
    if form == "jsonl":
        lines = expected_lines(request, site, answer.plan.entries)
        text = "".join(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n" for line in lines)
        out = HttpResponse(text, content_type="application/jsonl; charset=utf-8")
        out["Content-Disposition"] = 'attachment; filename="swap-entries.jsonl"'
        return out
    issues = door.issues(house_id)
    letter = issues[0].letter if issues and issues[0].number == site.about.number else "draft"
    block = TitleBlock(letter, datetime.now(UTC).date(), person(request).username)
    made = swap_pdf(answer.built.house, answer.plan, setting=Setting(block))
    if isinstance(made, list):
        for fault in made:
            messages.error(request, f"The paper cannot print this: {fault}")
        return redirect(f"{reverse('swap', args=[house_id])}?{request.GET.urlencode()}")
    out = HttpResponse(made, content_type="application/pdf")
    out["Content-Disposition"] = f'inline; filename="swap-{answer.plan.failed}.pdf"'
    return out
