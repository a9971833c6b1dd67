"""The cover sheet: names and addresses of people, written, and erased for good when asked twice."""

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_http_methods

from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.showing import show

# What each field holds at most, as the store has it.
FIELDS = {"customer": 200, "address": 500, "reached_by": 500, "note": 2000}


@never_cache
@require_http_methods(["GET", "POST"])
def cover(request: HttpRequest, house_id: str) -> HttpResponse:
    """What stands on it, as a form; saved, or erased after the second question."""
    form = request.POST
    faults: list[Fault] = []
    typed = None
    if form.get("act") == "erase" and form.get("sure") == "yes":
        door.erase_cover(house_id, by=person(request))
        messages.success(request, "Names and addresses are erased. Backups made before still hold them.")
        return redirect("cover", house_id)
    if form.get("act") == "write":
        values = {name: form.get(name, "").replace("\r\n", "\n").strip() for name in FIELDS}
        typed = door.Cover(**values)
        faults = [
            Fault("cover sheet", name.replace("_", " "), f"{len(values[name])} characters", f"at most {most}")
            for name, most in FIELDS.items()
            if len(values[name]) > most
        ]
        if not faults:
            door.write_cover(house_id, typed, by=person(request))
            messages.success(request, "The cover sheet is kept.")
            return redirect("cover", house_id)
    context = {
        "cover": typed or door.cover(house_id),
        "asked": form.get("act") == "erase",
        "most": FIELDS,
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "cover", "cover/cover.html", context, house_id=house_id, status=status)
