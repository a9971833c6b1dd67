"""Measured links: written down, held against what was reckoned, and which to measure next."""

from typing import Any

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.utils.http import urlencode
from django.views.decorators.http import require_http_methods

from secondfix.house import Fault
from secondfix.radio import LEAST_FOR_NUMBERS
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import on_site, shown_at
from secondfix.web.journal.writing import write
from secondfix.web.radio.asking import RadioAsked, Waited, radio_asked, wait_for
from secondfix.web.radio.measuring import called, ends_of, next_of, place_of, placed, rows_of, taught_of

LEAST_DBM, MOST_DBM = -130, 20


@require_http_methods(["GET", "POST"])
def measured_links(request: HttpRequest, house_id: str) -> HttpResponse:
    """Readings that stand, the form of one more, what they taught, and which link tells most next."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        faults = _written(request, house_id)
        if not faults:
            kept = urlencode({"network": request.POST.get("network", "")})
            return redirect(f"{reverse('measured-links', args=[house_id])}?{kept}#add")
    air = radio_asked(house_id)
    house = air.about.house
    given = request.POST if request.method == "POST" else request.GET
    named = given.get("network", "")
    network = named if named in house.networks else next(iter(house.networks), "")
    ends = ends_of(house, network) if network else {}
    context: dict[str, Any] = {"about": air.about, "air": air, "network": network, "ends": ends}
    if len(ends) > 1:
        waited = wait_for(request, air.next_links)
        if "again" in request.GET:
            return redirect("measured-links", house_id)
        numbers = air.enough or "numbers" in request.GET
        context |= {
            "typed": given,
            "numbers": numbers,
            "asked_numbers": "numbers" in request.GET,
            "least": LEAST_FOR_NUMBERS,
            "missing": max(LEAST_FOR_NUMBERS - air.measured, 0),
            "rows": rows_of(on_site(house_id), air.before, air.learned) if air.links.measured else (),
            "taught": taught_of(air.learned) if numbers and air.measured else (),
            "notes": (*air.links.notes, *(air.learned.notes if air.links.measured else ())),
            "shown": given.get("shown") or shown_at(),
            "placed": placed(air.about, ends) > 1,
            **_following(air, waited),
        }
        if waited.fault:
            faults = (*faults, waited.fault)
    context["faults"] = faults
    status = 422 if faults else 200
    return show(request, "measured-links", "radio/measured.html", context, house_id=house_id, status=status)


def _following(air: RadioAsked, waited: Waited) -> dict[str, Any]:
    answer = waited.answer
    found = next_of(air.about.house, air.learned, answer) if isinstance(answer, tuple) else None
    return {"following": found, "job": waited.job, "again": "again=1"}


def _written(request: HttpRequest, house_id: str) -> tuple[Fault, ...]:
    """Write the reading of the form into the journal; every field that cannot be."""
    house = radio_asked(house_id).about.house
    a, b = request.POST.get("a", "").strip(), request.POST.get("b", "").strip()
    known = {i for network in house.networks for i in ends_of(house, network)}
    faults = [
        Fault("form", words, f"'{end[:40]}'" if end else "nothing", "a device or the controller of a network")
        for words, end in (("sent by", a), ("heard at", b))
        if end not in known
    ]
    if not faults and a == b:
        faults = [Fault("form", "heard at", f"'{b}' again", "another than the one that sends")]
    own = _level(request.POST.get("level", ""), in_vain="not_heard" in request.POST)
    if isinstance(own, Fault):
        faults.append(own)
    if faults or isinstance(own, Fault):
        return tuple(faults)
    note = request.POST.get("note", "").strip()[:500]
    wanted = {**own, **({"note": note} if note else {})}
    subject = f"link:{place_of(house, a)}>{place_of(house, b)}"
    made = write(request, house_id, [("measured", subject, wanted)])
    for _ in made.taken:
        told = f"Written: {called(house, a)}, heard at {called(house, b)}."
        messages.success(request, " ".join((told, *made.told)))
    return made.faults


def _level(text: str, *, in_vain: bool) -> dict[str, Any] | Fault:
    typed = text.strip().replace("\u2212", "-").removesuffix("dBm").strip()
    if in_vain and not typed:
        return {"not_heard": True}
    if in_vain:
        return Fault(
            "form", "level", f"'{text[:20]}', and not heard", "either a level, or that it was not heard"
        )
    whole = typed.removeprefix("-").isdecimal() and typed.isascii() and len(typed) < 6
    if not whole or not LEAST_DBM <= int(typed) <= MOST_DBM:
        expected = f"whole dBm from {LEAST_DBM} to {MOST_DBM}, such as -71; or a tick at 'not heard'"
        return Fault("form", "level", f"'{text[:20]}'" if typed else "nothing", expected)
    return {"rssi_dbm": int(typed)}
