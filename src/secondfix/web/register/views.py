"""The register of houses, beginning one, putting one away and back, and the first sheet of a house."""

import json
import os
import time

from django.contrib import messages
from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from secondfix.house import LARGEST_FILE_BYTES, begin, plain_of, uuid7
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.register.finding import found


@require_http_methods(["GET"])
def register(request: HttpRequest) -> HttpResponse:
    """All houses, or those whose name or stage holds every word asked for."""
    words = request.GET.get("find", "")
    rows = found(door.houses(), words)
    return show(request, "register", "register/register.html", {"rows": rows, "find": words})


@require_http_methods(["GET", "POST"])
def new(request: HttpRequest) -> HttpResponse:
    """A new house from nothing, or from a file."""
    faults: tuple[object, ...] = ()
    if request.method == "POST":
        document = _document(request)
        answer = door.begin_house(document, by=person(request))
        if isinstance(answer, door.Known):
            messages.info(request, "This house stands in the register already; what you sent was not taken.")
            return redirect("house", answer.house_id)
        if isinstance(answer, door.Saved):
            return redirect("house", json.loads(document)["id"])
        faults = answer.faults
    return show(request, "new", "register/new.html", {"faults": faults}, status=422 if faults else 200)


def _document(request: HttpRequest) -> bytes:
    sent = request.FILES.get("file")
    if isinstance(sent, UploadedFile):
        return bytes(sent.read(LARGEST_FILE_BYTES + 1))
    house_id = uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10))
    named = {**plain_of(begin(house_id=house_id, name="House")), "name": request.POST.get("name", "")}
    return json.dumps(named).encode()  # the store reads it and tells what is wrong with the name


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
    context = {"counts": about.checked.counts, "survey": about.checked.survey, "stages": door.Stage.choices}
    return show(request, "house", "register/house.html", context, house_id=house_id)


@require_http_methods(["GET", "POST"])
def away(request: HttpRequest) -> HttpResponse:
    """Houses put away, and the way back."""
    if request.method == "POST":
        door.bring_back(request.POST.get("house", ""), by=person(request))
        return redirect("register")
    return show(request, "away", "register/away.html", {"rows": door.houses(away=True)})
