"""The sheet that lists the calls, and the way from the root of the calls to their description."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_GET

from secondfix.web.api.calls import api
from secondfix.web.api.listing import HERE, listed
from secondfix.web.frame.showing import show


@require_GET
def root(request: HttpRequest) -> HttpResponse:
    """Every call is described in one place."""
    return redirect("api:openapi-json")


@require_GET
def calls(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every call with method, address and what it answers, for this house."""
    context = {"groups": listed(api, house_id), "here": HERE}
    return show(request, "calls", "api/calls.html", context, house_id=house_id)
