"""The verb ``serve``: a real process on a free port, plainly to this machine and encrypted to the network."""

import http.client
import re
import signal
import socket
import ssl
import subprocess
import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing, contextmanager
from pathlib import Path

import pytest

COMMAND = (sys.executable, "-c", "from secondfix.cli import main; main()", "serve")


@contextmanager
def serving(data: Path, *options: str) -> Iterator[list[str]]:
    """The lines that it says once it stands; interrupted at the end as Ctrl-C does."""
    lines = 4 if "--lan" in options else 2
    with subprocess.Popen(
        (*COMMAND, "--data", str(data), "--port", "0", *options), stdout=subprocess.PIPE, text=True
    ) as process:
        assert process.stdout is not None
        try:
            yield [process.stdout.readline().strip() for _ in range(lines)]
        finally:
            process.send_signal(signal.SIGINT)
            assert process.wait(60) == 0


def port_in(line: str) -> int:
    found = re.search(r":(\d+)/", line)
    assert found is not None
    return int(found[1])


def test_it_serves_this_machine_and_stops_when_interrupted(tmp_path: Path) -> None:
    with serving(tmp_path / "data") as said:
        assert "Nobody can come in yet" in said[1]
        with closing(http.client.HTTPConnection("127.0.0.1", port_in(said[0]), timeout=60)) as connection:
            connection.request("GET", "/sign-in")
            assert connection.getresponse().getheader("Location") == "/first"
        assert not reached_from_outside(port_in(said[0]))


def reached_from_outside(port: int) -> bool:
    from secondfix.web.lan.machine import addresses_here  # noqa: PLC0415 - the edge of the desk, no Django

    for address in (a for a in addresses_here() if ":" not in a):
        with socket.socket() as trying:
            trying.settimeout(2)
            if trying.connect_ex((address, port)) == 0:
                return True
    return False


@pytest.fixture(scope="module")
def lan(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Path, list[str]]]:
    """A desk served to the network: its data folder, and what it said."""
    data = tmp_path_factory.mktemp("lan") / "data"
    with serving(data, "--lan") as said:
        yield data, said


def trusted(data: Path, port: int) -> http.client.HTTPSConnection:
    context = ssl.create_default_context(cafile=str(data / "authority/authority.crt"))
    return http.client.HTTPSConnection("localhost", port, context=context, timeout=60)


def test_whoever_trusts_its_authority_reads_encrypted(lan: tuple[Path, list[str]]) -> None:
    data, said = lan
    with closing(trusted(data, port_in(said[0]))) as connection:
        for path in ("/first", "/static/secondfix/ink.css", "/phone"):  # one connection, kept open
            connection.request("GET", path)
            answer = connection.getresponse()
            assert (answer.status, len(answer.read()) > 500) == (200, True)
        connection.request("GET", "/first")
        answer = connection.getresponse()
        answer.read()
        assert "Secure" in (answer.getheader("Set-Cookie") or "")


def test_many_at_once_and_some_that_never_speak(lan: tuple[Path, list[str]]) -> None:
    data, said = lan
    port = port_in(said[0])
    silent = [socket.create_connection(("127.0.0.1", port)) for _ in range(40)]

    def read(_: int) -> int:
        total = 0
        with closing(trusted(data, port)) as connection:
            for _ in range(5):
                connection.request("GET", "/static/django_htmx/htmx-4.min.js")
                total += len(connection.getresponse().read())
        return total

    with ThreadPoolExecutor(12) as crowd:
        totals = set(crowd.map(read, range(36)))
    assert len(totals) == 1
    assert totals.pop() > 50_000
    for one in silent:
        one.close()


def test_who_does_not_trust_it_is_not_served(lan: tuple[Path, list[str]]) -> None:
    _, said = lan
    with pytest.raises(ssl.SSLCertVerificationError):
        http.client.HTTPSConnection(
            "localhost", port_in(said[0]), context=ssl.create_default_context(), timeout=60
        ).request("GET", "/")


def test_the_plain_door_tells_phones_and_sends_all_else_to_the_encrypted_one(
    lan: tuple[Path, list[str]],
) -> None:
    data, said = lan
    with closing(http.client.HTTPConnection("localhost", port_in(said[1]), timeout=60)) as plain:
        plain.request("GET", "/phone/authority.crt")
        assert plain.getresponse().read() == (data / "authority/authority.crt").read_bytes()
        plain.request("GET", "/phone")
        page = plain.getresponse().read().decode()
        assert said[2].removeprefix("Its authority's SHA-256: ") in page
        plain.request("GET", "/sign-in")
        answer = plain.getresponse()
        answer.read()
        assert answer.getheader("Location") == f"https://localhost:{port_in(said[0])}/sign-in"


def test_a_port_that_is_taken_is_told_in_one_line(tmp_path: Path) -> None:
    with socket.socket() as held:
        held.bind(("127.0.0.1", 0))
        held.listen()
        port = str(held.getsockname()[1])
        ended = subprocess.run(
            (*COMMAND, "--data", str(tmp_path / "data"), "--port", port),
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )
    assert ended.returncode == 2
    assert len(ended.stderr.strip().splitlines()) == 1
