"""The key ring of a house: which references have a code, one kept, one shown, and to whom each was shown."""

from typing import Any

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods

from secondfix.actions.ring import opened_by
from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.showing import show
from secondfix.web.keys.unheard import unheard

_LONGEST_CODE = 1000
_HEARD = (
    "Codes pass only between this machine and its own browser, or encrypted: begin the desk with "
    "secondfix serve --lan, or put it behind https. Nothing was shown and nothing taken."
)


@never_cache
@sensitive_post_parameters("code")
@require_http_methods(["GET", "POST"])
def keys(request: HttpRequest, house_id: str) -> HttpResponse:
    """References with what each opens; on a post one code is kept, or shown on the answer itself."""
    found: dict[str, Any] = {}
    if request.method == "POST":
        if not unheard(request):
            return _sheet(request, house_id, {"wrong": _HEARD}, status=403)
        try:
            found = (
                _shown(request, house_id) if request.POST.get("act") == "show" else _kept(request, house_id)
            )
        except door.NoRingKeyError as error:
            return _sheet(request, house_id, {"wrong": f"No code opens: {error}."}, status=409)
        if not found:
            return redirect("keys", house_id)
    return _sheet(request, house_id, found, status=422 if "faults" in found else 200)


def _sheet(request: HttpRequest, house_id: str, found: dict[str, Any], *, status: int) -> HttpResponse:
    opens = opened_by(asked(house_id).rows, door.journal(house_id)[0])
    kept = {k.reference: k for k in door.kept_codes(house_id)}
    rows = [(ref, opens.get(ref, ""), kept.get(ref)) for ref in sorted({*opens, *kept})]
    context = {
        "rows": rows,
        "any_kept": bool(kept),
        "trail": door.shown(house_id)[:200],
        "unheard": unheard(request),
        **found,
    }
    return show(request, "keys", "keys/keys.html", context, house_id=house_id, status=status)


def _shown(request: HttpRequest, house_id: str) -> dict[str, Any]:
    reference = request.POST.get("reference", "")
    return {"code": door.show_code(house_id, reference, by=person(request)), "reference": reference}


def _kept(request: HttpRequest, house_id: str) -> dict[str, Any]:
    """Empty once it is kept; else the faults, with the reference that was typed and never the code."""
    form = request.POST
    reference, code = form.get("reference", "").strip(), form.get("code", "").strip()
    if len(code) > _LONGEST_CODE:
        fault = Fault("the code", "", f"{len(code)} characters", f"at most {_LONGEST_CODE}")
        return {"faults": (fault,), "typed": reference}
    devices = asked(house_id).house.devices.values()
    address = next((d.address for d in devices if d.code_ref == reference and d.address), None)
    refused = door.keep_code(
        house_id, reference, code, by=person(request), address=address, replace="replace" in form
    )
    if refused is not None:
        return {"faults": refused.faults, "typed": reference}
    messages.success(request, f"The code of {reference} is kept.")
    return {}
