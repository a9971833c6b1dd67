"""A controller's device list: held against the book, or the beginning of a house."""

import os
import time

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods, require_POST

from secondfix.actions.reconcile import Held, begin_house, reconcile
from secondfix.exchange import mapping_as_json
from secondfix.house import Fault, as_canonical_json, uuid7
from secondfix.journal import Journal
from secondfix.maintenance import CANNOT_TELL, FAULTS, Begun
from secondfix.papers import counted
from secondfix.store import door
from secondfix.terms import PROTOCOLS, PURPOSES
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.firm import firm
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import OnSite, on_site, shown_at
from secondfix.web.journal.writing import posted_expected, write
from secondfix.web.maintaining.asking import models_of
from secondfix.web.maintaining.mapping_form import COLUMN_LABELS, ListForm, list_form

_HEADS = {
    "missing": "Missing in the list", "extra": "Not in the book", "renamed": "Another name",
    "purpose_missing": "Purpose not set", "purpose_wrong": "Another purpose",
    "purpose_not_told": "Purpose not told", "whole_for_gang": "Whole device for a gang",
    "twice": "Twice in the list", "which_entry": "Which entry is not told", "by_name_alone": "By name alone",
}  # fmt: skip


@require_http_methods(["GET", "POST"])
def reconcile_sheet(request: HttpRequest, house_id: str) -> HttpResponse:
    """The list in, its columns mapped once, and every difference with the step that mends it."""
    site = on_site(house_id)
    form = list_form(request, house_id) if request.method == "POST" else ListForm()
    held = _held(site, form)
    faults = (*form.faults, *(held if isinstance(held, list) else ()))
    good = held if isinstance(held, Held) else None
    context = {
        **_form_context(form, list(models_of(site).items())),
        "about": site.about,
        "networks": site.record.house.networks,
        "found": good,
        "groups": _groups(good) if good else [],
        "writes": sum(1 for d in good.found.differences if d.entry is not None) if good else 0,
        "shown": shown_at(),
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "reconcile", "maintaining/reconcile.html", context, house_id=house_id, status=status)


def _held(site: OnSite, form: ListForm) -> Held | list[Fault] | None:
    if form.file is None or form.table is None or form.mapping is None:
        return None
    return reconcile(
        site.about.house,
        site.journal,
        form.file.data,
        where=form.file.name,
        mapping=form.mapping,
        models=models_of(site),
    )


def _groups(held: Held) -> list[tuple[str, str, list[object]]]:
    """By kind, what is to be mended first: head, shape of the outcome, the differences."""
    groups: dict[str, tuple[str, str, list[object]]] = {}
    for d in sorted(held.found.differences, key=lambda d: d.unlike not in FAULTS):
        shape = "fault" if d.unlike in FAULTS else "cannot_tell" if d.unlike in CANNOT_TELL else "advice"
        groups.setdefault(d.unlike.value, (_HEADS[d.unlike.value], shape, []))[2].append(d)
    return list(groups.values())


def _form_context(form: ListForm, models: list[tuple[str, object]]) -> dict[str, object]:
    return {
        "form": form,
        "labels": [(key, label, form.chosen[key]) for key, label in COLUMN_LABELS.items()],
        "purposes": [(p.value, policy.label) for p, policy in PURPOSES.items()],
        "models": sorted(models, key=lambda item: item[0]),
        "protocols": [(p.value, facts.label) for p, facts in PROTOCOLS.items()],
        "mapping_text": mapping_as_json(form.mapping) if form.mapping else "",
    }


@require_POST
def write_mends(request: HttpRequest, house_id: str) -> HttpResponse:
    """Once the steps were done in the controller: what the journal then records."""
    site = on_site(house_id)
    form = list_form(request, house_id)
    held = _held(site, form)
    if isinstance(held, Held):
        expected = [d.entry for d in held.found.differences if d.entry is not None]
        written = write(request, house_id, [(e.kind, e.subject, dict(e.own)) for e in expected])
        said = counted(len(written.taken), "entry", "entries")
        messages.success(request, f"{said} written down.")
        for fault in written.faults:
            messages.error(request, f"Not written: {fault.stands}; expected {fault.expected}.")
        return redirect("journal", house_id)
    messages.error(request, "The list is not at hand any more. Choose the file once more.")
    return redirect("reconcile", house_id)


def _for(begun: Begun, form: ListForm) -> str:
    """The mapping by which a house was begun, for its next lists: they are of the network it has now."""
    assert form.mapping is not None  # the house was begun by it
    network = next(iter(begun.house.networks), None)
    return mapping_as_json(form.mapping.model_copy(update={"network": network}))


@require_http_methods(["GET", "POST"])
def new_list(request: HttpRequest) -> HttpResponse:
    """A house begun from a list."""
    form = list_form(request, None) if request.method == "POST" else ListForm()
    faults: tuple[Fault, ...] = form.faults
    begun: Begun | None = None
    if form.file is not None and form.mapping is not None and not faults:
        answer = begin_house(
            form.file.data,
            where=form.file.name,
            mapping=form.mapping,
            models=firm().models,
            house_id=uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)),
            name=request.POST.get("name", "").strip() or "House from a list",
        )
        begun = answer if isinstance(answer, Begun) else None
        faults = () if isinstance(answer, Begun) else tuple(answer)
    if begun is not None and request.POST.get("act") == "begin":
        document = as_canonical_json(begun.house).encode()
        saved = door.begin_house(document, by=person(request), words="begun from a device list")
        if isinstance(saved, door.Saved):
            posted_expected(request, OnSite(asked(begun.house.id), Journal(), (), 0), begun.entries)
            door.keep_mapping(begun.house.id, _for(begun, form), by=person(request))
            messages.success(request, "Begun. Boxes are to be surveyed: no list knows them.")
            return redirect("house", begun.house.id)
        faults = saved.faults if isinstance(saved, door.Refused) else ()
    context = {
        **_form_context(form, list(firm().models.items())),
        "begun": begun,
        "name": request.POST.get("name", ""),
        "faults": faults,
    }
    return show(request, "new-list", "maintaining/new_list.html", context, status=422 if faults else 200)
