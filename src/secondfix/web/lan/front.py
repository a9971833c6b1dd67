"""Encryption before the pages: connections are taken here, and their bytes passed on within this machine.

The pages' own server knows no TLS. Each connection from the network gets one to it over loopback; who is at
its other end is remembered by the port it goes out from, before its first byte does. So nothing is ever read
from, or added to, what a browser sends, and whoever reaches the inner door in another way is turned away.
"""

import asyncio
import logging
import socket
import ssl
from collections.abc import Callable, Iterable
from typing import Any
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

_CHUNK = 64 * 1024
_HANDSHAKE_S = 15
_DAY_S = 24 * 3600.0
_log = logging.getLogger(__name__)


class Front:
    """Takes encrypted connections on ``held`` and passes them to the server at ``inner`` (loopback).

    ``fresh`` is asked once a day for the file with certificate and key, so that one made anew is taken up
    without a new start.
    """

    def __init__(self, held: socket.socket, inner: tuple[str, int], fresh: Callable[[], str]) -> None:
        self._held, self._inner, self._fresh = held, inner, fresh
        self._whence: dict[int, str] = {}
        self._context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        self._context.minimum_version = ssl.TLSVersion.TLSv1_2
        self._context.set_alpn_protocols(["http/1.1"])
        self._context.load_cert_chain(fresh())

    def run(self) -> None:
        """Until the process ends: in a thread of its own."""
        asyncio.run(self._run())

    def known(self, pages: WSGIApplication) -> WSGIApplication:
        """``pages``, told who is at the other end; what did not come through here is refused."""

        def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
            whence = self._whence.get(int(environ.get("REMOTE_PORT") or 0))
            if whence is None:
                start("403 Forbidden", [("Content-Type", "text/plain"), ("Content-Length", "0")])
                return [b""]
            environ["REMOTE_ADDR"] = environ["REMOTE_HOST"] = whence
            environ["wsgi.url_scheme"] = "https"
            return pages(environ, start)

        return answer

    async def _run(self) -> None:
        loop = asyncio.get_running_loop()
        loop.set_exception_handler(_quiet)
        server = await asyncio.start_server(
            self._pass_on, sock=self._held, ssl=self._context, ssl_handshake_timeout=_HANDSHAKE_S
        )
        async with server:
            while True:
                await asyncio.sleep(_DAY_S)
                try:
                    self._context.load_cert_chain(await asyncio.to_thread(self._fresh))
                except (OSError, ValueError) as error:  # the one in use serves on; tomorrow it is tried again
                    _log.warning("the certificate could not be made anew: %s", error)

    async def _pass_on(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        peer = writer.get_extra_info("peername")
        try:
            inward, outward = await asyncio.open_connection(*self._inner)
        except OSError:
            writer.close()
            return
        self._whence[outward.get_extra_info("sockname")[1]] = str(peer[0])
        ways = [asyncio.ensure_future(_copy(*way)) for way in ((reader, outward), (inward, writer))]
        try:
            await asyncio.wait(ways, return_when=asyncio.FIRST_COMPLETED)
        finally:
            for way in ways:
                way.cancel()
            for end in (outward, writer):
                end.close()
            await asyncio.gather(*ways, return_exceptions=True)


async def _copy(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
    try:
        while data := await reader.read(_CHUNK):
            writer.write(data)
            await writer.drain()
    except OSError:  # either end went away, or its encryption is broken (ssl.SSLError is an OSError)
        return


def _quiet(_: asyncio.AbstractEventLoop, context: dict[str, Any]) -> None:
    """A browser that does not trust the authority yet ends the handshake: no news for the terminal."""
    _log.debug("%s", context.get("message"))
