"""A served desk killed in the middle of saves, again and again: no edit that a browser was answered is lost.

Both stores; two kills in every run, two hundred in the deep one. Two browsers type into one house at a
time, each into a gang of its own, until SIGKILL ends the server at a random moment after their first answers.
"""

import json
import random
import shutil
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from http.client import HTTPConnection, HTTPException
from pathlib import Path
from threading import Event, Thread
from urllib.parse import urlencode

import pytest
from django.db import connection
from django.test import Client

from tests.desk import FOLDER, PASSWORD, postgresql_desk, sqlite_desk
from tests.store.test_ground import plain
from secondfix.store.door import (
    Account,
    Right,
    Saved,
    begin_house,
    create_account,
    edit_answer,
    edit_bytes,
    edits,
    house_row,
    houses,
    open_house,
)

# ruff: noqa: I001 - the desk begins Django before the door is imported
COMMAND = (sys.executable, "-c", "from secondfix.cli import main; main()", "serve", "--port", "0", "--data")
GANGS = ("B13.1", "B14.1")
TOKEN = "a" * 32  # against requests from elsewhere: the cookie and the form say the same


@dataclass
class Desk:
    """A book that one server after another serves: its folder, and its PostgreSQL where it has one."""

    folder: Path
    url: str = ""

    @contextmanager
    def served(self) -> Iterator[tuple[subprocess.Popen[str], int]]:
        """A real server, and its port."""
        where = {"DATABASE_URL": self.url} if self.url else {}
        with subprocess.Popen(
            [*COMMAND, str(self.folder)], stdout=subprocess.PIPE, text=True, env={**plain(), **where}
        ) as server:
            try:
                assert server.stdout is not None
                yield server, int(server.stdout.readline().split("http://127.0.0.1:")[1].split("/")[0])
            finally:
                server.kill()


@pytest.fixture(params=["postgresql", "sqlite"])
def book(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Desk]:
    """A book that this process and a server both open."""
    shutil.copy(FOLDER / "session.secret", tmp_path)
    if request.param == "sqlite":
        with sqlite_desk(request.getfixturevalue("laid_file"), tmp_path / "desk.sqlite3"):
            yield Desk(tmp_path)
    else:
        with postgresql_desk(request.getfixturevalue("laid_postgresql")) as url:
            yield Desk(tmp_path, url)


@pytest.fixture
def writer(book: Desk) -> Account:
    """The account that both browsers are signed in with."""
    account = create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)
    assert isinstance(account, Account)
    return account


@dataclass
class Browser:
    """Somebody who types one text after another into one gang, and remembers what was answered."""

    gang: str
    cookie: str
    answered: list[tuple[int, str]] = field(default_factory=list)
    begun: Event = field(default_factory=Event)
    refused: str = ""

    def type_until_killed(self, port: int, house_id: str, base: int, words: str) -> None:
        """Save over and over until the server is gone."""
        with closing(HTTPConnection("127.0.0.1", port, timeout=60)) as desk:
            for n in range(100_000):
                try:
                    status, body = self.send(desk, house_id, base, f"{words}-{n}")
                except (OSError, HTTPException):
                    return
                if status != 200:
                    self.refused = f"{status}: {body!r}"
                    return
                base = json.loads(body)["number"]
                self.answered.append((base, f"{words}-{n}"))
                self.begun.set()

    def send(self, desk: HTTPConnection, house_id: str, base: int, note: str) -> tuple[int, bytes]:
        """One text typed into the gang's note, and the answer."""
        cells = json.dumps([[self.gang, "note", note]])
        form = urlencode({"base": base, "cells": cells, "csrfmiddlewaretoken": TOKEN})
        headers = {"Cookie": self.cookie, "Content-Type": "application/x-www-form-urlencoded"}
        desk.request("POST", f"/house/{house_id}/schedule/cells", form, headers)
        answer = desk.getresponse()
        return answer.status, answer.read()


def trial(book: Desk, writer: Account, tree: Path, kills: int, seed: int) -> None:
    """Kill servers one after another, and look for everything that was answered."""
    assert isinstance(begin_house((tree / "demo/house.json").read_bytes(), by=writer), Saved)
    house_id = houses()[0].id
    client = Client(SERVER_NAME="localhost")
    client.force_login(writer, backend="django.contrib.auth.backends.ModelBackend")
    cookie = f"sessionid={client.cookies['sessionid'].value}; csrftoken={TOKEN}"
    browsers = [Browser(gang, cookie) for gang in GANGS]
    draw = random.Random(seed)  # a trial that fails is made again with its seed
    for n in range(kills):
        with book.served() as (server, port):
            base = house_row(house_id).number  # a commit that the last kill met has come to its end by now
            connection.close()
            typing = [
                Thread(target=b.type_until_killed, args=(port, house_id, base, f"{n}"), daemon=True)
                for b in browsers
            ]
            for one in typing:
                one.start()
            for browser in browsers:
                assert browser.begun.wait(60), f"seed {seed}, {server.poll()}, {browser.refused}"
                browser.begun.clear()
            time.sleep(draw.uniform(0, 0.3))
            server.kill()
            for one in typing:
                one.join(60)
                assert not one.is_alive()
            assert not any(browser.refused for browser in browsers), f"seed {seed}, {browsers}"
    all_is_there(house_id, browsers, f"seed {seed}, {kills} kills")
    if not book.url:
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA integrity_check")
            assert cursor.fetchone()[0] == "ok"


def note_at(text: bytes | str, gang: str) -> str:
    """What stands in the note of a gang."""
    box_id, _, number = gang.partition(".")
    return str(json.loads(text)["boxes"][box_id]["gangs"][number]["note"])


def all_is_there(house_id: str, browsers: list[Browser], trial_words: str) -> None:
    """Every edit that was answered stands as it was typed, and the house is what the last one made of it."""
    rows = edits(house_id)
    assert [r.number for r in rows] == list(range(len(rows), 0, -1)), trial_words
    last = next(row.number for row in rows if row.stands)
    text = open_house(house_id).text
    assert edit_bytes(house_id, last).decode() == text, trial_words
    for browser in browsers:
        for number, words in browser.answered:
            assert isinstance(edit_answer(house_id, number), Saved), trial_words
            assert note_at(edit_bytes(house_id, number), browser.gang) == words, trial_words
        told = [tuple(map(int, words.split("-"))) for _, words in browser.answered]
        stands = tuple(map(int, note_at(text, browser.gang).split("-")))
        assert stands >= told[-1], trial_words


def test_nothing_answered_is_lost_when_the_desk_is_killed(book: Desk, writer: Account, tree: Path) -> None:
    trial(book, writer, tree, kills=2, seed=17)


@pytest.mark.deep
def test_nothing_answered_is_lost_in_two_hundred_kills_of_the_desk(
    book: Desk, writer: Account, tree: Path
) -> None:
    trial(book, writer, tree, kills=200, seed=random.SystemRandom().randrange(10**6))
