"""Serve the pages until interrupted."""

import socket

from django.core.wsgi import get_wsgi_application
from waitress.server import create_server

THREADS = 8


def serve(held: socket.socket) -> None:
    """Answer on a bound socket until interrupted; `secondfix.store.start.begin` has run."""
    server = create_server(get_wsgi_application(), sockets=[held], threads=THREADS, ident=None)
    try:
        server.run()
    except KeyboardInterrupt:
        pass
    finally:
        server.close()
