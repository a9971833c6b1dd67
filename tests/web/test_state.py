"""The state of the desk, backups made from the page, and the page about phones."""

import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from time import monotonic, sleep

import pytest
from django.conf import settings
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door
from secondfix.web.lan.authority import keep_authority
from secondfix.web.state import making as made

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
WRITES = "import pathlib, sys; pathlib.Path(sys.argv[1]).write_bytes(b'all of it')"
FAILS = "import sys; sys.exit('no room on the disk')"


@pytest.fixture(autouse=True)
def data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A data folder of the test's own."""
    monkeypatch.setattr(settings, "DATA", str(tmp_path))
    yield tmp_path
    made._said.clear()


def backed_up(writer: Client, monkeypatch: pytest.MonkeyPatch, program: str) -> str:
    """The status page once the backup that was asked for has ended."""
    monkeypatch.setattr(made, "_COMMAND", (sys.executable, "-c", program))
    assert writer.post("/status")["Location"] == "/status"
    until = monotonic() + 30
    while made.making().running:
        assert monotonic() < until
        sleep(0.02)
    return writer.get("/status").content.decode()


def test_a_desk_without_a_backup_says_so(writer: Client) -> None:
    page = writer.get("/status").content.decode()
    assert "no backup was ever made" in page
    assert "SQLite" in page
    assert "Free there" in page
    assert writer.get("/status/backup").status_code == 404


def test_a_backup_is_made_aside_and_downloaded(
    writer: Client, data: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (data / "backups").mkdir()
    (data / "backups/secondfix-20260102-030405.backup").write_bytes(b"older")
    assert "Download secondfix-" in backed_up(writer, monkeypatch, WRITES)
    answer = writer.get("/status/backup")
    assert b"".join(answer) == b"all of it"  # type: ignore[arg-type] # a response that streams
    assert "no-store" in answer["Cache-Control"]
    assert len(list((data / "backups").iterdir())) == 1


def test_a_backup_that_fails_says_why(writer: Client, monkeypatch: pytest.MonkeyPatch) -> None:
    assert "was not made: no room on the disk" in backed_up(writer, monkeypatch, FAILS)
    assert writer.get("/status/backup").status_code == 404


def test_a_reader_makes_and_takes_no_backup(reader: Client) -> None:
    assert reader.post("/status").status_code == 403
    assert reader.get("/status/backup").status_code == 403
    assert "Make a backup" not in reader.get("/status").content.decode()


def test_the_last_backup_is_told_with_its_age(
    writer: Client, office: door.Account, data: Path, tmp_path: Path
) -> None:
    made_at = door.back_up(tmp_path / "book.backup")
    assert isinstance(made_at, door.BackedUp)
    assert "book.backup" in writer.get("/status").content.decode()
    later = datetime.now(UTC).replace(year=datetime.now(UTC).year + 1)
    assert any("the last backup is 36" in words for words in door.status(later).warnings)


def test_the_authority_is_offered_only_where_the_desk_has_one(
    stranger: Client, data: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert "serve --lan" in stranger.get("/phone").content.decode()
    assert stranger.get("/phone/authority.crt").status_code == 404
    monkeypatch.setattr(settings, "OWN_TLS", True)
    held = keep_authority(data / "authority", ("localhost",), now=datetime.now(UTC))
    assert held.fingerprint in stranger.get("/phone").content.decode()
    answer = stranger.get("/phone/authority.crt")
    assert answer.content == held.certificate.read_bytes()
    assert b"PRIVATE" not in answer.content
