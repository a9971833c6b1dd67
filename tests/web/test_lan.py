"""The desk's own authority: what it may vouch for, when its certificate is made anew, who is let through."""

import socket
import ssl
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from cryptography import x509

from secondfix.web.lan.authority import keep_authority
from secondfix.web.lan.front import Front
from secondfix.web.lan.machine import addresses_here, names_here
from secondfix.web.lan.plain import unencrypted

NOW = datetime(2026, 3, 9, 14, 20, tzinfo=UTC)
NAMES = ("192.168.4.17", "localhost", "till.local")


def served(folder: Path, names: tuple[str, ...] = NAMES, now: datetime = NOW) -> x509.Certificate:
    held = keep_authority(folder, names, now=now)
    return x509.load_pem_x509_certificate(held.served.read_bytes())


def test_its_keys_are_the_owners_alone(tmp_path: Path) -> None:
    keep_authority(tmp_path / "authority", NAMES, now=NOW)
    files = {f.name: f.stat().st_mode & 0o777 for f in (tmp_path / "authority").iterdir()}
    assert files == {"authority.crt": 0o600, "authority.key": 0o600, "served.pem": 0o600}


def test_the_certificate_stays_until_a_month_of_it_is_left(tmp_path: Path) -> None:
    first = served(tmp_path)
    assert served(tmp_path, now=NOW + timedelta(days=365)) == first
    renewed = served(tmp_path, now=NOW + timedelta(days=367))
    assert renewed != first
    assert renewed.not_valid_after_utc > first.not_valid_after_utc
    assert renewed.issuer == first.issuer


def test_another_address_of_the_machine_makes_another_certificate_of_the_same_authority(
    tmp_path: Path,
) -> None:
    first = served(tmp_path)
    moved = served(tmp_path, ("10.7.0.3", "localhost"))
    names = moved.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert {str(n.value) for n in names} == {"10.7.0.3", "localhost"}
    assert moved.issuer == first.issuer


def test_it_vouches_for_no_name_or_address_of_the_world(tmp_path: Path) -> None:
    keep_authority(tmp_path, NAMES, now=NOW)
    later = keep_authority(tmp_path, (*NAMES, "post.example", "203.0.113.9", "fenwick.home.arpa"), now=NOW)
    assert later.left_out == ("post.example", "203.0.113.9")


def test_a_name_that_was_wanted_from_the_first_is_vouched_for(tmp_path: Path) -> None:
    assert keep_authority(tmp_path, ("book.fenwick.example", "localhost"), now=NOW).left_out == ()


@pytest.mark.parametrize("spoilt", [b"", b"-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n"])
def test_a_spoilt_certificate_is_made_anew(tmp_path: Path, spoilt: bytes) -> None:
    keep_authority(tmp_path, NAMES, now=NOW)
    (tmp_path / "served.pem").write_bytes(spoilt)
    assert served(tmp_path).subject


def test_a_browser_that_trusts_the_authority_trusts_the_desk(tmp_path: Path) -> None:
    held = keep_authority(tmp_path, NAMES, now=datetime.now(UTC))
    here, there = (
        ssl.create_default_context(cafile=str(held.certificate)),
        ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER),
    )
    there.load_cert_chain(held.served)
    for name in NAMES:
        assert shaken(here, there, name)
    with pytest.raises(ssl.SSLCertVerificationError):
        shaken(here, there, "localhost.example")


def shaken(here: ssl.SSLContext, there: ssl.SSLContext, name: str) -> bool:
    """A handshake in memory."""
    to_here, to_there = ssl.MemoryBIO(), ssl.MemoryBIO()
    ours = here.wrap_bio(to_here, to_there, server_hostname=name)
    theirs = there.wrap_bio(to_there, to_here, server_side=True)
    for _ in range(4):
        for side in (ours, theirs):
            try:
                side.do_handshake()
            except ssl.SSLWantReadError:
                continue
    return bool(ours.getpeercert())


def test_this_machine_has_names_and_no_loopback_among_its_addresses() -> None:
    assert "localhost" in names_here()
    assert not any(a.startswith("127.") or a == "::1" for a in addresses_here())


def plainly(path: str, *, method: str = "GET", host: str = "192.168.4.17:8732") -> tuple[str, dict[str, str]]:
    """Status and headers of an answer of the unencrypted door."""
    found: dict[str, Any] = {}

    def pages(environ: Any, start: Any) -> list[bytes]:
        assert environ["HTTP_COOKIE"] == ""
        start("200 OK", [])
        return [b""]

    def start(status: str, headers: list[tuple[str, str]]) -> None:
        found.update(status=status, headers=dict(headers))

    path, _, query = path.partition("?")
    door = unencrypted(pages, hosts=frozenset(NAMES), otherwise=NAMES[0], port=8731)
    environ = {
        "REQUEST_METHOD": method, "PATH_INFO": path, "QUERY_STRING": query, "HTTP_HOST": host,
        "HTTP_COOKIE": "sessionid=1",
    }  # fmt: skip
    b"".join(door(environ, start))  # type: ignore[arg-type] # as much of WSGI as the door asks
    return found["status"], found["headers"]


@pytest.mark.parametrize("path", ["/phone", "/phone/authority.crt", "/static/secondfix/ink.css"])
def test_unencrypted_is_only_what_a_phone_needs_before_it_trusts(path: str) -> None:
    assert plainly(path)[0] == "200 OK"


@pytest.mark.parametrize(
    ("path", "host", "to"),
    [
        ("/house/x/keys?a=b", "192.168.4.17:8732", "https://192.168.4.17:8731/house/x/keys?a=b"),
        ("/", "evil.example", "https://192.168.4.17:8731/"),
        ("//evil.example/x", "till.local", "https://till.local:8731/evil.example/x"),
        ("/a\r\nSet-Cookie: b", "till.local", "https://till.local:8731/a%0D%0ASet-Cookie%3A%20b"),
        ("/phonebook", "localhost", "https://localhost:8731/phonebook"),
    ],
)
def test_everything_else_is_sent_to_the_encrypted_door_of_this_desk(path: str, host: str, to: str) -> None:
    status, headers = plainly(path, host=host)
    assert (status[:3], headers["Location"]) == ("307", to)


def test_nothing_is_taken_unencrypted() -> None:
    assert plainly("/phone", method="POST")[0] == "403 Forbidden"


def test_who_reaches_the_pages_past_the_encrypted_door_is_turned_away(tmp_path: Path) -> None:
    held = keep_authority(tmp_path, NAMES, now=datetime.now(UTC))
    said: list[str] = []
    with socket.socket() as outer:
        front = Front(outer, ("127.0.0.1", 9), lambda: str(held.served))
        answer = front.known(lambda *_: pytest.fail("a page was asked for"))
        for port in ("1", "", None):
            environ = {"REMOTE_PORT": port, "REMOTE_ADDR": "127.0.0.1"}
            b"".join(answer(environ, lambda status, _: said.append(status)))  # type: ignore[arg-type] # as much of WSGI as it asks
    assert said == ["403 Forbidden"] * 3
