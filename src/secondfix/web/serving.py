"""Serve the pages until interrupted: to this machine, or encrypted to the machines of its network."""

import gc
import socket
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from threading import Thread

from django.core.wsgi import get_wsgi_application
from waitress.server import create_server

from secondfix.web.lan.authority import Authority, keep_authority
from secondfix.web.lan.front import Front
from secondfix.web.lan.machine import addresses_here, names_here
from secondfix.web.lan.plain import unencrypted
from secondfix.web.limits import LARGEST_BYTES, ORDINARY_BYTES

__all__ = ["Authority", "Doors", "addresses_here", "keep_authority", "names_here", "serve", "serve_lan"]

THREADS = 24  # most of them may be waiting for their turn: web/frame/turns.py
MOST_CONNECTIONS = 500
# Answers of large houses are kept by the hundred thousand; going through them all for rings of garbage at
# every turn took a fifth of the time of an edit, and they hold none.
GARBAGE_TURNS = (50_000, 20, 100)


def serve(held: socket.socket) -> None:
    """Answer on a bound socket until interrupted; `secondfix.store.start.begin` has run.

    Only this machine reaches it, so what a proxy before it says of a request is passed on to the pages.
    """
    _until_interrupted(
        create_server(
            get_wsgi_application(), sockets=[held], threads=THREADS, ident=None,
            clear_untrusted_proxy_headers=False, connection_limit=MOST_CONNECTIONS,
            max_request_body_size=LARGEST_BYTES,
        )
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Doors:
    """Two bound sockets: ``encrypted`` for the pages, ``plain`` for the way to them."""

    encrypted: socket.socket
    plain: socket.socket


def serve_lan(doors: Doors, *, hosts: Sequence[str], fresh: Callable[[], str]) -> None:
    """Answer on both doors until interrupted. ``hosts`` are this machine's names, first the one to send to.

    ``fresh`` gives the file with certificate and key, and is asked again once a day.
    """
    pages = get_wsgi_application()
    inner = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    inner.bind(("127.0.0.1", 0))
    inner.listen(128)
    front = Front(doors.encrypted, inner.getsockname(), fresh)
    port = doors.encrypted.getsockname()[1]
    way = create_server(
        unencrypted(pages, hosts=frozenset(hosts), otherwise=hosts[0], port=port),
        sockets=[doors.plain], threads=2, ident=None, max_request_body_size=ORDINARY_BYTES,
    )  # fmt: skip
    for work in (front.run, way.run):
        Thread(target=work, daemon=True).start()
    _until_interrupted(
        create_server(
            front.known(pages),
            sockets=[inner],
            threads=THREADS,
            ident=None,
            connection_limit=MOST_CONNECTIONS,
            max_request_body_size=LARGEST_BYTES,
        )
    )


def _until_interrupted(server: "create_server") -> None:
    gc.freeze()  # what is loaded by now stays
    gc.set_threshold(*GARBAGE_TURNS)
    try:
        server.run()
    except KeyboardInterrupt:
        pass
    finally:
        server.close()
