"""Radio: who is reached, and who falls when something goes, trips or moves."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.http import urlencode
from django.utils.safestring import mark_safe
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.radio import Foreseen
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.showing import show
from secondfix.web.radio.asking import RadioAsked, Waited, radio_asked, wait_for
from secondfix.web.radio.devices import HEADS, rows_of
from secondfix.web.radio.going import choices_of, chosen, costs_of, helps_of
from secondfix.web.radio.picture import Wanted, drawn, drawn_before

SHEETS_OF_RADIO = ("radio", "measured-links")


@require_GET
def radio(request: HttpRequest, house_id: str) -> HttpResponse:
    """One network: its devices, what may go, and who falls then."""
    look = _look(request, house_id)
    if "again" in request.GET:  # begun; a sheet that is looked at again does not begin once more
        return redirect(f"{request.path}?{_query_without_again(request)}")
    air, foreseen = look.air, look.foreseen
    context: dict[str, Any] = {"about": air.about, "network": look.network, "air": air}
    if look.network:
        case, numbers = look.wanted.case, look.wanted.numbers
        rows = rows_of(
            air.about.house, air.reached, look.network, foreseen=foreseen, case=case, numbers=numbers
        )
        context |= {
            "numbers": numbers,
            "asked_numbers": "numbers" in request.GET,
            "heads": (*HEADS, *(("Chance then",) if case else ())) if numbers and foreseen else (),
            "rows": rows,
            "foreseen": foreseen,
            "again": f"{_query_without_again(request)}&again=1",
            "spread": f"{air.reached.spread_db:g}",
            "notes": (*air.reached.notes, *(foreseen.notes if foreseen else ())),
            "job": look.waited.job,
            "faults": (look.waited.fault,) if look.waited.fault else (),
            **(_of_network(air, foreseen, look.network) if foreseen else {}),
            **_picture(look, now="plan" in request.GET),
        }
    return show(request, "radio", "radio/radio.html", context, house_id=house_id)


@require_GET
def plan(request: HttpRequest, house_id: str) -> HttpResponse:
    """The plan alone, for the sheet that waits for it."""
    look = _look(request, house_id)
    if not look.wanted.storey or not look.network:
        raise door.UnknownError("no storey or no network in this house")
    return render(request, "radio/drawn.html", _picture(look, now=True))


@dataclass(frozen=True, slots=True)
class _Look:
    """What an address of the sheet asks for, and how far its answer is."""

    air: RadioAsked
    network: str
    waited: Waited
    wanted: Wanted

    @property
    def foreseen(self) -> Foreseen | None:
        """The answer of the draws, once it is there."""
        return self.waited.answer if isinstance(self.waited.answer, Foreseen) else None


def _look(request: HttpRequest, house_id: str) -> _Look:
    air = radio_asked(house_id)
    house = air.about.house
    network = _named(request, "network", house.networks)
    waited = wait_for(request, air.foreseen) if network else Waited()
    foreseen = waited.answer
    case = None
    if isinstance(foreseen, Foreseen):
        case = chosen(house, foreseen, network, request.GET.get("case", ""))
    numbers = network != "" and (air.enough or "numbers" in request.GET)
    return _Look(
        air, network, waited, Wanted(network, _named(request, "storey", house.storeys), case, numbers)
    )


def _picture(look: _Look, *, now: bool) -> dict[str, Any]:
    """The plan where it was drawn before, or is to be drawn now."""
    wanted = look.wanted
    if not wanted.storey:
        return {}
    plan = (drawn if now else drawn_before)(look.air, wanted, look.foreseen)
    return {
        "storey": wanted.storey,
        "case": wanted.case,
        "storey_name": look.air.about.house.storeys[wanted.storey].name,
        "plan": plan,
        "picture": mark_safe(plan.svg) if plan else "",  # noqa: S308 - drawn by us, every text of the house escaped
    }


def _named(request: HttpRequest, key: str, known: Mapping[str, object]) -> str:
    """What the address names of these; the first of them where it names none."""
    named = request.GET.get(key, "")
    return named if named in known else next(iter(known), "")


def _query_without_again(request: HttpRequest) -> str:
    return urlencode([(k, str(v)) for k, v in request.GET.items() if k != "again"])


def _of_network(air: RadioAsked, foreseen: Foreseen, network: str) -> dict[str, Any]:
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
