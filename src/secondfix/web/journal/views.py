"""The journal: read, taken in from a file, taken out, and one entry written by a form."""

from django.contrib import messages
from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.house import Fault
from secondfix.joining import before_boxes
from secondfix.journal import path_of
from secondfix.papers import counted
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import on_site, shown_at
from secondfix.web.journal.kinds import FORMS, choices, own_of, subjects
from secondfix.web.journal.writing import write

LARGEST_SENT_BYTES = 20 * 1024 * 1024
PAGE = 150
BACK = ("journal", "function-test", "as-built")


@require_http_methods(["GET", "POST"])
def journal(request: HttpRequest, house_id: str) -> HttpResponse:
    """Entries with the latest last; a journal file in, every line's fate told."""
    posted = _taken_in(request, house_id) if request.method == "POST" else None
    if posted is not None and not posted.faults:
        new = counted(len(posted.taken), "entry", "entries")
        messages.success(request, f"{new} taken in, {len(posted.again)} stood here already.")
        return redirect("journal", house_id)
    site = on_site(house_id)
    words = request.GET.get("find", "").casefold().split()
    lines = [n for n in site.lines if _holds(n.place, n.of, n.what, n.entry.writer, words=words)]
    sent = request.GET.get("to", "")
    end = min(int(sent), len(lines)) if sent.isascii() and sent.isdigit() and len(sent) < 9 else len(lines)
    context = {
        "about": site.about,
        "site": site,
        "lines": lines[max(0, end - PAGE) : end],
        "count": len(lines),
        "earlier": end - PAGE if end > PAGE else None,
        "later": min(end + PAGE, len(lines)) if end < len(lines) else None,
        "find": request.GET.get("find", ""),
        "kinds": FORMS,
        "posted": posted,
        "faults": posted.faults if posted else (),
        "shown": shown_at(),
    }
    status = 422 if posted else 200
    return show(request, "journal", "journal/journal.html", context, house_id=house_id, status=status)


def _holds(*texts: str, words: list[str]) -> bool:
    text = " ".join(texts).casefold()
    return all(w in text for w in words)


def _taken_in(request: HttpRequest, house_id: str) -> door.Posted:
    sent = request.FILES.get("file")
    if not isinstance(sent, UploadedFile):
        return door.Posted((), (), (Fault("form", "file", "nothing", "a journal file"),))
    if (sent.size or 0) > LARGEST_SENT_BYTES:
        fault = Fault("form", "file", f"{sent.size:,} bytes", f"at most {LARGEST_SENT_BYTES:,} bytes")
        return door.Posted((), (), (fault,))
    return door.post_entries(house_id, sent.read(), by=person(request))


@require_GET
def out(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every line word for word, as a file."""
    answer = HttpResponse(door.journal_bytes(house_id), content_type="application/jsonl; charset=utf-8")
    answer["Content-Disposition"] = 'attachment; filename="journal.jsonl"'
    return answer


@require_http_methods(["GET", "POST"])
def entry(request: HttpRequest, house_id: str, kind: str) -> HttpResponse:
    """One entry of this kind, by a form."""
    if kind not in FORMS:
        raise door.UnknownError(f"no entry of the kind {kind[:20]} is written here")
    given = request.POST if request.method == "POST" else request.GET
    typed = {key: value for key, value in given.items() if isinstance(value, str)}
    back = typed.get("back", "")
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        faults = _written(request, house_id, kind, typed)
        if not faults:
            room = typed.get("room", "")
            tail = f"?room={room}" if room in asked(house_id).house.rooms else ""
            return redirect(reverse(back if back in BACK else "journal", args=[house_id]) + tail)
    about = on_site(house_id).about
    house = on_site(house_id).record.house
    named = subjects(house, kind)
    context = {
        "about": about,
        "kind": kind,
        "form": FORMS[kind],
        "asks": [(ask, typed.get(ask.key, "")) for ask in FORMS[kind].asks],
        "subject": typed.get("subject", ""),
        "subjects": named,
        "example": next((s for s in named if not s.startswith("house:")), f"house:{house.id}"),
        "choices": choices(house),
        "cautions": before_boxes(about.house) if FORMS[kind].opens_box else (),
        "shown": typed.get("shown") or shown_at(),
        "back": back,
        "room": typed.get("room", ""),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "entry", "journal/entry.html", context, house_id=house_id, status=status)


def _written(request: HttpRequest, house_id: str, kind: str, typed: dict[str, str]) -> tuple[Fault, ...]:
    own = own_of(kind, typed)
    if isinstance(own, Fault):
        return (own,)
    subject = typed.get("subject", "").strip()
    if kind == "survey_corrected" and not subject:
        try:
            subject = path_of(own.get("path", "")).subject
        except ValueError:
            expected = "a path of the house document, such as boxes.B07.depth_mm"
            return (Fault("form", "path", f"'{own.get('path', '')[:60]}'", expected),)
    written = write(request, house_id, [(kind, subject, own)], anyway="anyway" in typed)
    for one in written.taken:
        messages.success(
            request, " ".join((f"Written: {one.kind.replace('_', ' ')}, {one.subject}.", *written.told))
        )
    return written.faults
