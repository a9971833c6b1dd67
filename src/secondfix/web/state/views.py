"""The state of the desk: its database, its room, its backups; and how a phone comes to trust it."""

from datetime import UTC, datetime
from pathlib import Path

from django.conf import settings
from django.http import FileResponse, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.shortcuts import redirect
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.store import door
from secondfix.web.frame.showing import show
from secondfix.web.lan.authority import Authority
from secondfix.web.state.making import make, making


@require_http_methods(["GET", "POST"])
def status(request: HttpRequest) -> HttpResponse:
    """Where the book is kept and what is wrong with that; a backup is begun here."""
    now = datetime.now(UTC)
    if request.method == "POST":
        make(now)
        return redirect("status")
    stands = door.status(now)
    context = {"state": stands, "making": making()}
    return show(request, "status", "state/status.html", context)


@never_cache
@require_GET
def backup(request: HttpRequest) -> HttpResponseBase:
    """The latest backup that was made from the page."""
    file = making().file
    if file is None:
        raise door.UnknownError("no backup was made here")
    return FileResponse(file.open("rb"), as_attachment=True, filename=file.name)


@require_GET
def phone(request: HttpRequest) -> HttpResponse:
    """How to put this desk's authority on a phone or another machine."""
    held = _authority()
    context = {"fingerprint": held.fingerprint if held else "", "secure": request.is_secure()}
    return show(request, "phone", "state/phone.html", context)


@require_GET
def authority(request: HttpRequest) -> HttpResponse:
    """The authority's certificate: no secret."""
    held = _authority()
    if held is None:
        raise door.UnknownError("this desk has no authority of its own")
    answer = HttpResponse(held.certificate.read_bytes(), content_type="application/x-x509-ca-cert")
    answer["Content-Disposition"] = 'attachment; filename="secondfix-desk.crt"'
    return answer


def _authority() -> Authority | None:
    """The one that this desk is served under now; None where it is served otherwise."""
    if not (settings.OWN_TLS and settings.DATA):
        return None
    folder = Path(settings.DATA) / "authority"
    return Authority(folder / "authority.crt", folder / "served.pem", ())
