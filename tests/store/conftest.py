"""The store's tests run on SQLite and on PostgreSQL, each test on a fresh database."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.desk import (
    PASSWORD,
    desk,
    laid_file,
    laid_postgresql,
    postgresql_desk,
    postgresql_url,
    sqlite_desk,
)
from secondfix.store.door import Account, Right, create_account

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["desk", "laid_file", "laid_postgresql", "postgresql_url"]


@dataclass(frozen=True)
class Store:
    """The store under test: its kind, and how another process reaches it."""

    kind: str
    file: Path | None = None
    url: str = ""


@pytest.fixture(params=["postgresql", "sqlite"])
def store(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Store]:
    """A fresh store that the door speaks to."""
    if request.param == "sqlite":
        with sqlite_desk(request.getfixturevalue("laid_file"), tmp_path / "desk.sqlite3") as file:
            yield Store("sqlite", file=file)
    else:
        with postgresql_desk(request.getfixturevalue("laid_postgresql")) as url:
            yield Store("postgresql", url=url)


@pytest.fixture
def writer(store: Store) -> Account:
    """The first account: a writer."""
    return create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)


@pytest.fixture
def reader(writer: Account) -> Account:
    """An account that only reads."""
    return create_account(username="Osk", password=PASSWORD, right=Right.READER, by=writer)
