"""What the people of a desk wait for: every sheet of a large house, and an edit with its answers.

A real `secondfix serve` with a terrace of 300 boxes; four people at it who rest a moment between sheets.
Times are those of the whole request, beside the sheet for signing in, which asks nothing of any house. Typed
are a note, a power, a count and a plate by turns: a note asks no rule again, a plate the radio too.
"""

from __future__ import annotations

import json
import random
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from functools import cache, partial
from http.client import HTTPConnection
from itertools import cycle
from pathlib import Path
from threading import Event
from urllib.parse import urlencode

from bench.figures import Pair, figure
from bench.terrace import terrace
from secondfix.store.start import Whereabouts, begin
from secondfix.web.frame.sheets import HOUSE_SHEETS

DEMO = Path(__file__).parents[1] / "demo" / "house.json"
SECONDFIX = str(Path(sys.executable).with_name("secondfix"))
BOXES = 300
NAMES = ("Ilka", "Osk", "Bex", "Tamsin")
PEOPLE = len(NAMES)
ROUNDS = 4
RESTS_S = (0.2, 0.6)
NO_REST_S = (0.0, 0.0)
EDITS = 16
CELLS: dict[str, Callable[[int], str]] = {
    "note": lambda n: f"seen {n} times",
    "power": lambda n: str(20 + n),
    "count": lambda n: str(2 + n % 7),
    "plate": lambda n: ("Metal", "Plastic")[n // 4 % 2],
}
TOKEN = "b" * 32  # against requests from elsewhere: the cookie and the form say the same
BARE = "/sign-in"


@dataclass
class Waited:
    """Seconds by address: in passing, first after an edit; and those of edits."""

    passing: dict[str, list[float]] = field(default_factory=dict)
    after_an_edit: dict[str, float] = field(default_factory=dict)
    edits_alone: list[float] = field(default_factory=list)
    edits_among_others: list[float] = field(default_factory=list)
    edits_without_pause: list[float] = field(default_factory=list)


@dataclass
class Person:
    """Somebody at the desk: one connection, signed in."""

    port: int
    cookie: str
    house_id: str
    base: int = 1

    def reads(self, path: str) -> float:
        """Seconds until a sheet has come whole."""
        return self._asks("GET", path, "")

    def types(self, gang: str, number: int) -> float:
        """Seconds until an edit of one cell has come back with its answers: of each column in turn."""
        column = list(CELLS)[number % len(CELLS)]
        cells = json.dumps([[gang, column, CELLS[column](number)]])
        form = {"base": self.base, "csrfmiddlewaretoken": TOKEN, "cells": cells}
        return self._asks("POST", f"/house/{self.house_id}/schedule/cells", urlencode(form))

    def _asks(self, method: str, path: str, form: str) -> float:
        headers = {"Cookie": self.cookie, "Content-Type": "application/x-www-form-urlencoded"}
        with closing(HTTPConnection("127.0.0.1", self.port, timeout=120)) as desk:
            start = time.perf_counter()
            desk.request(method, path, form or None, headers)
            answer = desk.getresponse()
            body = answer.read()
            seconds = time.perf_counter() - start
        if answer.status not in {200, 302}:  # signing in again leads away
            raise RuntimeError(f"{method} {path} was answered with {answer.status}: {body[:300]!r}")
        if method == "POST":
            self.base = json.loads(body)["number"]
        return seconds


@contextmanager
def desk() -> Iterator[Callable[[], Person]]:
    """A desk with the terrace in its book, served; who is asked for sits down at it under an own name."""
    with tempfile.TemporaryDirectory() as folder:
        begin(Whereabouts(Path(folder)))
        from django.test import Client  # noqa: PLC0415 - Django has to begin first

        from secondfix.store import door  # noqa: PLC0415 - as above

        cookies = []
        account: door.Account | None = None
        for name in NAMES:
            made = door.create_account(
                username=name, password="three grey herons", right=door.Right.WRITER, by=account
            )
            assert isinstance(made, door.Account)
            account = account or made
            client = Client()
            client.force_login(made, backend="django.contrib.auth.backends.ModelBackend")
            cookies.append(f"sessionid={client.cookies['sessionid'].value}; csrftoken={TOKEN}")
        assert account is not None
        house = terrace(json.loads(DEMO.read_text(encoding="utf-8")), boxes=BOXES)
        door.begin_house(json.dumps(house).encode(), by=account)
        with subprocess.Popen(
            [SECONDFIX, "serve", "--data", folder, "--port", "0"], stdout=subprocess.PIPE, text=True
        ) as server:
            assert server.stdout is not None
            try:
                port = int(server.stdout.readline().split("127.0.0.1:")[1].split("/")[0])
                by_turns = cycle(cookies)
                yield lambda: Person(port, next(by_turns), house["id"])
            finally:
                server.terminate()


@cache
def waited() -> Waited:
    """One day at the desk, in a minute or two."""
    out = Waited()
    with desk() as sits:
        one = sits()
        paths = [BARE, *(path_of(sheet.name, one.house_id) for sheet in HOUSE_SHEETS)]
        gang, other = _gangs_that_feed()[:2]
        one.reads(paths[1])  # the first check of all
        out.edits_alone = [one.types(gang, n) for n in range(EDITS + 4)][4:]
        out.after_an_edit = {path: one.reads(path) for path in paths}
        out.passing = {path: [] for path in paths}
        at_once(*(partial(passing, sits(), paths, out.passing, seed) for seed in range(PEOPLE)))
        for rests_s, waited_for in ((RESTS_S, out.edits_among_others), (NO_REST_S, out.edits_without_pause)):
            over = Event()
            readers = [
                partial(turning_pages, sits(), paths, seed, rests_s, over) for seed in range(PEOPLE - 1)
            ]
            at_once(partial(typing, one, other, waited_for, over), *readers)
    return out


def _gangs_that_feed() -> list[str]:
    house = terrace(json.loads(DEMO.read_text(encoding="utf-8")), boxes=BOXES)
    boxes = house["boxes"].items()
    return [f"{box}.{key}" for box, b in boxes for key, gang in b["gangs"].items() if "load" in gang]


def path_of(name: str, house_id: str) -> str:
    """The address of a sheet of the house."""
    from django.urls import reverse  # noqa: PLC0415 - Django has to begin first

    return reverse(name, args=[house_id])


def at_once(*people: Callable[[], None]) -> None:
    """Let each do their work beside the others; whoever was refused something fails the whole day."""
    with ThreadPoolExecutor(len(people)) as threads:
        for done in [threads.submit(work) for work in people]:
            done.result()


def passing(person: Person, paths: list[str], into: dict[str, list[float]], seed: int) -> None:
    """Sheet after sheet in an order of one's own, a rest after each."""
    draw = random.Random(seed)
    for _ in range(ROUNDS):
        for path in draw.sample(paths, len(paths)):
            into[path].append(person.reads(path))
            time.sleep(draw.uniform(*RESTS_S))


def turning_pages(
    person: Person, paths: list[str], seed: int, rests_s: tuple[float, float], over: Event
) -> None:
    """Sheet after sheet until told to stop."""
    draw = random.Random(seed)
    while not over.is_set():
        person.reads(draw.choice(paths))
        time.sleep(draw.uniform(*rests_s))


def typing(person: Person, gang: str, into: list[float], over: Event) -> None:
    """One edit after another, a rest after each."""
    draw = random.Random(1)
    try:
        for n in range(EDITS):
            into.append(person.types(gang, n))
            time.sleep(draw.uniform(*RESTS_S))
    finally:
        over.set()


def ninety_fifth(seconds: list[float]) -> float:
    """The time that one request in twenty exceeds."""
    return statistics.quantiles(seconds, n=20, method="inclusive")[-1]


def bare() -> float:
    """The sheet that asks nothing, among the same people."""
    return statistics.median(waited().passing[BARE])


def sheets() -> dict[str, list[float]]:
    """The sheets of the house alone."""
    return {path: seconds for path, seconds in waited().passing.items() if path != BARE}


def median_of(number: int) -> Pair:
    """One sheet of the register, by its place in it."""
    return statistics.median(list(sheets().values())[number]), bare()


for at, sheet in enumerate(HOUSE_SHEETS):
    figure(f"sheet {sheet.name} of 300 boxes, four people, median, against signing in", unit="s")(
        partial(median_of, at)
    )


@figure("slowest sheet of 300 boxes, four people, one request in twenty, against signing in", unit="s")
def slowest_of_twenty() -> Pair:
    return max(map(ninety_fifth, sheets().values())), bare()


@figure("slowest sheet of 300 boxes, asked first after an edit, against signing in", unit="s")
def first_after_an_edit() -> Pair:
    return max(seconds for path, seconds in waited().after_an_edit.items() if path != BARE), bare()


@figure("edit of a cell of 300 boxes with its answers, median, alone, against signing in", unit="s")
def edit_alone() -> Pair:
    return statistics.median(waited().edits_alone), bare()


@figure("edit of a cell of 300 boxes with its answers, median, three others reading, against alone", unit="s")
def edit_among_others() -> Pair:
    return statistics.median(waited().edits_among_others), statistics.median(waited().edits_alone)


@figure(
    "edit of a cell of 300 boxes with its answers, median, three reading without pause, against alone",
    unit="s",
)
def edit_without_pause() -> Pair:
    return statistics.median(waited().edits_without_pause), statistics.median(waited().edits_alone)


@figure(
    "edit of a cell of 300 boxes with its answers, slowest, three reading without pause, against alone",
    unit="s",
)
def slowest_edit() -> Pair:
    return max(waited().edits_without_pause), statistics.median(waited().edits_alone)
