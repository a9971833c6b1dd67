"""Writers killed in the middle of their work, again and again: nothing that was answered is lost.

Both stores; four kills in every run, two hundred in the deep one. Two writers work at one house at a
time, each in a process that SIGKILL ends at a random moment after its first answer.
"""

import json
import random
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from django.db import connection

from secondfix.store.door import Account, begin_house, edit_bytes, edits, journal, open_house
from secondfix.store.models import Edit, JournalEntry
from tests.desk import FOLDER
from tests.store import writing
from tests.store.conftest import Store
from tests.store.examples import HOUSE, TEXT
from tests.store.test_ground import plain


@contextmanager
def writer_at_work(store: Store, folder: Path, seed: int) -> Iterator[subprocess.Popen[str]]:
    """The process of a writer."""
    command = [sys.executable, writing.__file__, str(folder), store.url or "-", str(seed)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=plain()) as process:
        try:
            yield process
        finally:
            process.kill()


def killed(store: Store, folder: Path, seeds: tuple[int, int], draw: random.Random) -> list[tuple[str, ...]]:
    """What two writers were answered before they were killed, one after the other."""
    texts = []
    with writer_at_work(store, folder, seeds[0]) as one, writer_at_work(store, folder, seeds[1]) as other:
        for process in (one, other):
            assert process.stdout is not None
            texts.append(process.stdout.readline())
        for process in draw.sample((one, other), 2):
            time.sleep(draw.uniform(0, 0.15))
            process.kill()
        texts += [process.stdout.read() for process in (one, other) if process.stdout is not None]
    lines = "".join(line for text in texts for line in text.splitlines(keepends=True) if line.endswith("\n"))
    return [tuple(line.split()) for line in lines.splitlines()]


def trial(store: Store, writer: Account, kills: int, seed: int) -> None:
    """Kill writers one after another, and look for everything that they were answered."""
    begin_house(TEXT.encode(), by=writer)
    folder = FOLDER if store.file is None else store.file.parent
    connection.close()
    draw = random.Random(seed)  # a trial that fails is made again with its seed
    told: list[tuple[str, ...]] = []
    for n in range(0, kills, 2):
        told += killed(store, folder, (n, n + 1), draw)
    stood = {str(e.id): e for e in Edit.objects.all()}
    entries = {str(e.id): json.loads(e.line) for e in JournalEntry.objects.all()}
    assert len(told) >= kills
    for kind, one, words in told:
        if kind == "edit":
            assert stood[one].words == words, f"seed {seed}"
            held = json.loads(edit_bytes(HOUSE, stood[one].number))
            box = writing.BOXES[int(words.partition("-")[0]) % 2]
            assert held["boxes"][box]["note"] == words, f"seed {seed}"
        else:
            assert entries[one]["note"] == words, f"seed {seed}"
    rows = edits(HOUSE)
    assert [r.number for r in rows] == list(range(len(rows), 0, -1)), f"seed {seed}"
    assert edit_bytes(HOUSE, rows[0].number).decode() == open_house(HOUSE).text, f"seed {seed}"
    assert journal(HOUSE)[1] == []
    if store.kind == "sqlite":
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA integrity_check")
            assert cursor.fetchone()[0] == "ok"


def test_nothing_answered_is_lost_when_writers_are_killed(store: Store, writer: Account) -> None:
    trial(store, writer, kills=4, seed=11)


@pytest.mark.deep
def test_nothing_answered_is_lost_in_two_hundred_kills(store: Store, writer: Account) -> None:
    trial(store, writer, kills=200, seed=random.SystemRandom().randrange(10**6))
