"""The register of houses, beginning one, putting one away and back, and the first sheet of a house."""

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.register.beginning import begun, demo_names
from secondfix.web.register.finding import ORDERS, page_of, wanted


@require_GET
def register(request: HttpRequest) -> HttpResponse:
    """A page of all houses, or of those that hold every word asked for, in the order asked for."""
    asked_for = wanted(request)
    context = {
        "page": page_of(asked_for),
        "find": asked_for.words,
        "by": asked_for.order,
        "orders": ORDERS,
        "query": asked_for.query,
        "demos": demo_names(),
    }
    return show(request, "register", "register/register.html", context)


@require_http_methods(["GET", "POST"])
def new(request: HttpRequest) -> HttpResponse:
    """A new house from nothing, from a demo house, or from a file."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        made = begun(request)
        if made.known:
            messages.info(request, "This house stands in the register already; what you sent was not taken.")
        if made.house_id:
            return redirect("house", made.house_id)
        faults = made.faults
    context = {"faults": faults, "demos": demo_names(), "named": request.POST.get("name", "")}
    return show(request, "new", "register/new.html", context, status=422 if faults else 200)


@require_http_methods(["GET", "POST"])
def house(request: HttpRequest, house_id: str) -> HttpResponse:
    """The first sheet of a house: its stage, what is open, and the list of its sheets."""
    if request.method == "POST":
        stage = request.POST.get("stage", "")
        if stage in door.Stage.values:
            door.set_stage(house_id, door.Stage(stage), by=person(request))
        elif request.POST.get("act") == "away":
            door.put_away(house_id, by=person(request))
            messages.success(request, "The house is put away. Nothing of it is lost.")
            return redirect("register")
        return redirect("house", house_id)
    about = asked(house_id)
    context = {
        "counts": about.checked.counts,
        "survey": about.checked.survey,
        "stages": door.Stage.choices,
        "bare": not about.house.loads and not about.house.devices,
    }
    return show(request, "house", "register/house.html", context, house_id=house_id)


@require_http_methods(["GET", "POST"])
def away(request: HttpRequest) -> HttpResponse:
    """Houses put away, and the way back."""
    if request.method == "POST":
        door.bring_back(request.POST.get("house", ""), by=person(request))
        return redirect("register")
    return show(request, "away", "register/away.html", {"rows": door.houses(away=True)})
