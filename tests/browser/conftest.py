"""Debian's Chromium before a desk that is served: a browser a process, a fresh store for each module."""

import os
import shutil
import socket
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Thread

import pytest
from django.core.wsgi import get_wsgi_application
from playwright.sync_api import Browser, BrowserContext, sync_playwright
from waitress.server import create_server

from tests.desk import PASSWORD, laid_file, sqlite_desk
from tests.browser.looking import DESK_SIZE, Watched, begin_house, enter
from secondfix.store import door
from secondfix.web.frame.asked import asked, forget

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["laid_file"]

FLAGS = [
    "--no-sandbox",  # a build runs as root, where Chromium's own walls do not stand; it opens our pages alone
    "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync",
]  # fmt: skip


def chromium() -> str | None:
    """Where Debian's Chromium is."""
    return shutil.which("chromium") or shutil.which("chromium-browser")


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium without a window."""
    found = chromium()
    if found is None:
        pytest.fail("Chromium is not installed: sh requirements/chromium.sh", pytrace=False)
    # Playwright keeps a loop in this thread while it lives; Django would refuse its store beside one.
    with pytest.MonkeyPatch.context() as patch, sync_playwright() as driver:
        patch.setitem(os.environ, "DJANGO_ALLOW_ASYNC_UNSAFE", "1")
        started = driver.chromium.launch(executable_path=found, args=FLAGS)
        yield started
        started.close()


@pytest.fixture(scope="module")
def empty(laid_file: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """A desk nobody has come to yet, served; its address."""
    with sqlite_desk(laid_file, tmp_path_factory.mktemp("desk") / "desk.sqlite3"):
        forget()
        with served() as base:
            yield base
        forget()


@pytest.fixture(scope="module")
def office(empty: str) -> door.Account:
    """The first account of the desk: a writer."""
    account = door.create_account(username="Ilka", password=PASSWORD, right=door.Right.WRITER, by=None)
    assert isinstance(account, door.Account)
    return account


@pytest.fixture(scope="module")
def house_id(office: door.Account, tree: Path) -> str:
    """The demo house, in the register, issued as A."""
    began = begin_house(tree, office)
    door.issue(began, number=1, assumptions=asked(began).settled, by=office, words="for the customer")
    return began


@pytest.fixture
def context(browser: Browser, empty: str) -> Iterator[BrowserContext]:
    """A browser of one's own, nobody signed in, at a desk's size."""
    with opened(browser, viewport=DESK_SIZE) as fresh:
        yield fresh


@pytest.fixture
def watched(context: BrowserContext, office: door.Account, empty: str) -> Iterator[Watched]:
    """A page of the writer, at a desk's size; what it should not have done fails the test."""
    enter(context, office, empty)
    page = Watched(context.new_page(), empty)
    yield page
    assert page.wrong == []


@contextmanager
def opened(browser: Browser, **how: object) -> Iterator[BrowserContext]:
    """A browser's context, closed again."""
    fresh = browser.new_context(**how)
    fresh.set_default_timeout(10_000)
    try:
        yield fresh
    finally:
        fresh.close()


@contextmanager
def served() -> Iterator[str]:
    """The desk of this process on a free port; its address."""
    held = socket.create_server(("127.0.0.1", 0))
    server = create_server(get_wsgi_application(), sockets=[held], threads=4, ident=None)
    serving = Thread(target=server.run, daemon=True)
    serving.start()
    try:
        yield f"http://127.0.0.1:{held.getsockname()[1]}"
    finally:
        server.trigger.pull_trigger(lambda: server.asyncore.close_all(server._map))
        serving.join(10)
        server.task_dispatcher.shutdown()
        held.close()
