"""The pages under test: a fresh desk, a writer and a reader who are signed in, and the demo house."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from django.test import Client, override_settings

from tests.desk import PASSWORD, desk, laid_file
from secondfix.store import door
from secondfix.web.frame.asked import forget

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["desk", "laid_file"]


@pytest.fixture(autouse=True)
def fresh_answers() -> None:
    """Every test has a store of its own, and the demo house in it the same id."""
    forget()


@pytest.fixture
def office(desk: Path) -> door.Account:
    """The first account: a writer."""
    account = door.create_account(username="Ilka", password=PASSWORD, right=door.Right.WRITER, by=None)
    assert isinstance(account, door.Account)
    return account


@pytest.fixture
def writer(office: door.Account) -> Client:
    """The browser of a writer."""
    return signed_in(office)


@pytest.fixture
def reader(office: door.Account) -> Client:
    """The browser of somebody who may only read."""
    account = door.create_account(username="Osk", password=PASSWORD, right=door.Right.READER, by=office)
    assert isinstance(account, door.Account)
    return signed_in(account)


@pytest.fixture
def house_id(office: door.Account, tree: Path) -> str:
    """The demo house, in the register."""
    saved = door.begin_house((tree / "demo/house.json").read_bytes(), by=office)
    assert isinstance(saved, door.Saved)
    return door.houses()[0].id


@pytest.fixture(autouse=True)
def quick_passwords(settings_quick: None) -> None:
    """Every test of the pages signs in: a real hash would take most of its time."""


@pytest.fixture(scope="session")
def settings_quick() -> Iterator[None]:
    """Django's quickest hash, for as long as these tests run."""
    with override_settings(PASSWORD_HASHERS=["django.contrib.auth.hashers.MD5PasswordHasher"]):
        yield


@pytest.fixture
def stranger(desk: Path) -> Client:
    """The browser of somebody who has not signed in."""
    return Client(SERVER_NAME="localhost")


def signed_in(account: door.Account) -> Client:
    """The browser of an account, on this machine."""
    client = Client(SERVER_NAME="localhost")
    client.force_login(account, backend="django.contrib.auth.backends.ModelBackend")
    return client
