"""Radio: who is reached, and who falls when something goes, trips or moves."""

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.http import urlencode
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.papers import PlanOnScreen, plan_on_screen
from secondfix.radio import Foreseen
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.ink import INK
from secondfix.web.frame.places import way_to
from secondfix.web.frame.showing import show
from secondfix.web.radio.asking import OnAir, on_air, wait_for
from secondfix.web.radio.devices import HEADS, rows_of
from secondfix.web.radio.going import choices_of, chosen, costs_of, helps_of

SHEETS_OF_RADIO = ("radio",)


@require_GET
def radio(request: HttpRequest, house_id: str) -> HttpResponse:
    """One network: its devices, what may go, and who falls then."""
    air = on_air(house_id)
    house = air.about.house
    network = _named(request, "network", house.networks)
    waited = wait_for(request, air.foreseen) if network else None
    foreseen = waited.answer if waited and isinstance(waited.answer, Foreseen) else None
    if "again" in request.GET:  # begun; a sheet that is looked at again does not begin once more
        return redirect(f"{request.path}?{_query_without_again(request)}")
    context: dict[str, Any] = {"about": air.about, "network": network, "air": air}
    if network:
        case = chosen(house, foreseen, network, request.GET.get("case", "")) if foreseen else None
        numbers = air.enough or "numbers" in request.GET
        storey = _named(request, "storey", house.storeys)
        context |= {
            "case": case,
            "numbers": numbers,
            "asked_numbers": "numbers" in request.GET,
            "heads": (*HEADS, *(("Chance then",) if case else ())) if numbers and foreseen else (),
            "rows": rows_of(house, air.reached, network, foreseen=foreseen, case=case, numbers=numbers),
            "storey": storey,
            "foreseen": foreseen,
            "again": f"{_query_without_again(request)}&again=1",
            "spread": f"{air.reached.spread_db:g}",
            "notes": (*air.reached.notes, *(foreseen.notes if foreseen else ())),
            "job": waited.job if waited else None,
            "faults": (waited.fault,) if waited and waited.fault else (),
            **(_of_network(air, foreseen, network) if foreseen else {}),
            **_picture(air.about, storey),
        }
    return show(request, "radio", "radio/radio.html", context, house_id=house_id)


def _named(request: HttpRequest, key: str, known: dict[str, Any] | Any) -> str:
    """What the address names of these; the first of them where it names none."""
    named = request.GET.get(key, "")
    return named if named in known else next(iter(known), "")


def _query_without_again(request: HttpRequest) -> str:
    return urlencode([(k, str(v)) for k, v in request.GET.items() if k != "again"])


def _of_network(air: OnAir, foreseen: Foreseen, network: str) -> dict[str, Any]:
    drawn = foreseen.networks[network]
    return {
        "drawn": drawn,
        "choices": choices_of(air.about.house, drawn),
        "costs": costs_of(drawn),
        "helps": helps_of(drawn),
    }


@require_http_methods(["GET", "POST"])
def work(request: HttpRequest, house_id: str, job_id: str) -> HttpResponse:
    """How far an answer has come; cancelled where its own person or a writer says so."""
    job = jobs.find(job_id, house_id=house_id)
    if job is None or job.kind != "answer":
        raise door.UnknownError("no such work of this house; later work took its place")
    sheet = request.POST.get("sheet", "radio")
    if request.method == "POST":
        if job.by == person(request).username or person(request).may_write:
            jobs.cancel(job)
            jobs.wait(job, most_s=2)
        return redirect(sheet if sheet in SHEETS_OF_RADIO else "radio", house_id)
    if job.ended:
        return HttpResponse(status=204, headers={"HX-Refresh": "true"})
    return render(request, "radio/waiting.html", {"job": job, "house": door.house_row(house_id)})


def _picture(about: Asked, storey: str) -> dict[str, Any]:
    """The plan of the storey in the page's own ink."""
    if not storey:
        return {}
    plan = about.once(f"plan of {storey}", lambda a: _drawn(a, storey))
    return {
        "picture": mark_safe(plan.svg),  # noqa: S308 - drawn by us, every text of the house escaped
        "storey_name": about.house.storeys[storey].name,
        "remarks": plan.remarks,
    }


def _drawn(about: Asked, storey: str) -> PlanOnScreen:
    house = about.house
    ways = {i: way_to(house, i) for i in (*house.boxes, *house.places)}
    return plan_on_screen(about.rows, storey, about.checked.findings, palette=INK, ways=ways)
