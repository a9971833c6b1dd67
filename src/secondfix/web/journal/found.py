"""The as-built sheet with its adoption, and the function test."""

import os
import time

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.template.loader import render_to_string
from django.urls import reverse
from django.utils.http import urlencode
from django.views.decorators.http import require_http_methods

from secondfix.actions.as_built import switched
from secondfix.house import Fault, as_canonical_json, is_nec, schedule, uuid7
from secondfix.journal import CAUTION, adopt, as_line
from secondfix.papers import counted
from secondfix.scenes import resolve
from secondfix.store import door
from secondfix.terms import said
from secondfix.web.access import person
from secondfix.web.changing import answered
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import OnSite, clock, on_site, revision_of, shown_at
from secondfix.web.journal import gathering
from secondfix.web.journal.writing import Plain, again, write

MOST_AT_ONCE = 400


@require_http_methods(["GET", "POST"])
def as_built_sheet(request: HttpRequest, house_id: str) -> HttpResponse:
    """What differs from the design, by place; a conflict settled; the as-built house adopted."""
    site = on_site(house_id)
    faults: tuple[Fault, ...] = ()
    gone: HttpResponse | None = None
    if request.method == "POST":
        if "holds" in request.POST:
            faults = _hold(request, house_id, site)
            gone = None if faults else redirect("as-built", house_id)
        else:
            gone, faults = _adopt(request, house_id, site)
        if gone is not None:
            return gone
    record = site.record
    context = {
        "about": site.about,
        "record": record,
        "size": site.size,
        "fresh": len(_fresh(site)),
        "entries": len(record.built.folded.counted),
        "told": site.once("as-built told", lambda: _told(site)),
        "clashes": gathering.clashes(record),
        "shown": shown_at(),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "as-built", "journal/as_built.html", context, house_id=house_id, status=status)


def _told(site: OnSite) -> str:
    """What the journal says, by place, put together once for every entry."""
    record = site.record
    aside = gathering.set_aside(record)
    context = {
        "about": site.about,
        "rooms": gathering.by_room(record),
        "remarks": gathering.remarks(record),
        "aside": {"": aside} if aside else {},
        "findings": gathering.other_findings(record),
        "caution": said(CAUTION, nec=is_nec(record.house)),
    }
    return render_to_string("journal/as_built_told.html", context)


def _fresh(site: OnSite) -> list[str]:
    """What no adoption has taken in; an adoption itself is no news of the house."""
    counted = site.record.built.folded.counted
    return [i for i in site.record.built.fresh if counted[i].kind != "adopted"]


def _hold(request: HttpRequest, house_id: str, site: OnSite) -> tuple[Fault, ...]:
    """One side of a conflict said again by somebody who has seen both."""
    entry = site.record.entry(request.POST["holds"])
    if entry is None:
        return (Fault("form", "entry", "an entry that is not here", "one of those in conflict"),)
    written = write(request, house_id, [again(entry)], anyway=True)
    for one in written.taken:
        messages.success(request, f"Settled: {one.subject}, as {entry.writer} found it.")
    return written.faults


def _adopt(
    request: HttpRequest, house_id: str, site: OnSite
) -> tuple[HttpResponse | None, tuple[Fault, ...]]:
    """An edit equal to the as-built house, then the entry that records what it took in.

    The edit comes first: should the entry then fail to be written, adopting again writes it alone.
    """
    base, built = site.about.number, site.record.built
    if request.POST.get("base") != str(base) or request.POST.get("size") != str(site.size):
        stands, expected = "a sheet that is not the latest", "the sheet as it stands now: look once more"
        return None, (Fault("form", "base", stands, expected),)
    head = {
        "entry_id": uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)),
        "revision": revision_of(base),
        "writer": person(request).username,
        "at": clock(),
    }
    first = adopt(built, **head, to_revision=revision_of(base + 1))
    if isinstance(first, tuple):
        return None, tuple(Fault("adopt", "", cause, "a journal that can be adopted") for cause in first)
    took_in = counted(len(_fresh(site)), "entry", "entries")
    words = f"as-built adopted, {took_in} taken in"
    data = as_canonical_json(first.house).encode()
    answer = door.save(house_id, data, base=base, by=person(request), words=words)
    assert not isinstance(answer, door.IdTaken)  # the store makes the id of this edit
    if isinstance(answer, door.Saved):
        # Where nothing differed no edit was made: the revision taken to is this one, as built.
        to = revision_of(answer.number) if answer.number != base else f"{revision_of(base)}.as-built"
        made = adopt(built, **head, to_revision=to)
        assert not isinstance(made, tuple)  # it could be adopted a moment ago
        door.post_entries(house_id, f"{as_line(made.entry)}\n".encode(), by=person(request))
        messages.success(request, f"Adopted as edit {answer.number}: {took_in} taken in.")
    gone = answered(request, house_id, answer, to=reverse("as-built", args=[house_id]))
    return gone, answer.faults if isinstance(answer, door.Refused) else ()


@require_http_methods(["GET", "POST"])
def function_test_sheet(request: HttpRequest, house_id: str) -> HttpResponse:
    """What each gang and scene should work and did; what was pressed now, written down."""
    site = on_site(house_id)
    rooms = _rooms(site)
    asked_for = request.POST.get("room") or request.GET.get("room", "")
    unfinished = (name for name, (tested, all_) in rooms.items() if tested < all_)
    room = asked_for if asked_for in rooms else next(unfinished, next(iter(rooms), ""))
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        wanted = _pressed(request, site)
        written = write(request, house_id, wanted[:MOST_AT_ONCE])
        faults = written.faults
        if written.taken:
            messages.success(
                request, " ".join((f"{counted(len(written.taken), 'test')} written down.", *written.told))
            )
        if not faults:
            here = reverse("function-test", args=[house_id])
            return redirect(f"{here}?{urlencode({'room': room})}" if room else here)
        site = on_site(house_id)
    record = site.record
    context = {
        "about": site.about,
        "room": room,
        "rooms": _rooms(site),
        "rows": gathering.press_rows(record, room) if room else [],
        "scenes": site.once("scene rows", lambda: gathering.scene_rows(record)),
        "findings": gathering.test_findings(record),
        "tested": sum(tested for tested, _ in _rooms(site).values()),
        "all": len(record.test.presses),
        "caution": said(CAUTION, nec=is_nec(record.house)),
        "shown": shown_at(),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(
        request, "function-test", "journal/function_test.html", context, house_id=house_id, status=status
    )


def _rooms(site: OnSite) -> dict[str, tuple[int, int]]:
    return site.once("rooms to test", lambda: gathering.rooms_to_test(site.record))


def _pressed(request: HttpRequest, site: OnSite) -> list[tuple[str, str, Plain]]:
    """A test for each gang, entry or scene that something was chosen for."""
    revision = site.record.built.revision
    known = {p.subject for p in site.record.test.presses}
    should = {f"scene:{r.scene_id}": switched(r) for r in resolve(schedule(revision, revision.models))}
    wanted: list[tuple[str, str, Plain]] = []
    for subject, chosen in request.POST.items():
        if subject in should and chosen == "as_it_should":
            wanted.append(("function_tested", subject, {"answered": should[subject]}))
        elif subject in known and chosen:
            loads = [] if chosen == "nothing" else str(chosen).split()
            wanted.append(("function_tested", subject, {"answered": dict.fromkeys(loads, "changed")}))
    return wanted
