"""What is served unencrypted beside an encrypted desk: how to trust it, and the way to it; nothing else."""

from collections.abc import Collection, Iterable
from typing import Any
from urllib.parse import quote
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from django.http.request import split_domain_port

_OPEN = ("/phone", "/phone/authority.crt")
_FILES = "/static/"


def unencrypted(
    pages: WSGIApplication, *, hosts: Collection[str], otherwise: str, port: int
) -> WSGIApplication:
    """The page about phones, the authority's certificate and what they are drawn with; else the way to https.

    ``hosts`` are the names this desk answers to, ``otherwise`` the one to send people to who asked for
    another; ``port`` that of https.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        path = environ.get("PATH_INFO", "/")
        if environ["REQUEST_METHOD"] not in {"GET", "HEAD"}:
            start("403 Forbidden", [("Content-Type", "text/plain; charset=utf-8")])
            return [b"This door is not encrypted: nothing is taken here. Use https.\n"]
        if path in _OPEN or path.startswith(_FILES):
            return pages({**environ, "HTTP_COOKIE": ""}, _without(start))
        asked, _ = split_domain_port(environ.get("HTTP_HOST", ""))
        host = asked if asked in hosts else otherwise
        query = environ.get("QUERY_STRING", "")
        where = quote(path.encode("latin-1"), safe="/-._~") + (
            f"?{quote(query, safe='=&%+-._~')}" if query else ""
        )
        address = f"https://{host}:{port}/{where.lstrip('/')}"
        start("307 Temporary Redirect", [("Location", address), ("Content-Length", "0")])
        return [b""]

    return answer


def _without(start: StartResponse) -> StartResponse:
    """Without a header that browsers heed on encrypted pages alone, and complain of on others."""

    def begin(status: str, headers: list[tuple[str, str]], *failed: Any) -> Any:
        return start(status, [h for h in headers if h[0].lower() != "cross-origin-opener-policy"], *failed)

    return begin
