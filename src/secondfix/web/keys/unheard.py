"""Whether a code may travel with this request: encrypted, or without leaving this machine."""

from ipaddress import ip_address

from django.http import HttpRequest
from django.http.request import split_domain_port

_OWN_NAMES = {"localhost", "127.0.0.1", "[::1]"}
_PASSED_ON = ("HTTP_FORWARDED", "HTTP_X_FORWARDED_FOR", "HTTP_X_FORWARDED_HOST", "HTTP_VIA")


def unheard(request: HttpRequest) -> bool:
    """True where nobody between the browser and the desk can read along.

    Over plain http only a browser on this very machine counts: it asks for this machine by its own name,
    from its own address, and no other program says that it passed the request on.
    """
    if request.is_secure():
        return True
    if any(header in request.META for header in _PASSED_ON):
        return False
    host, _ = split_domain_port(request.get_host())
    try:
        here = ip_address(request.META.get("REMOTE_ADDR", "")).is_loopback
    except ValueError:
        return False
    return here and host in _OWN_NAMES
