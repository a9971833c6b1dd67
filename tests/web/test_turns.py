"""Turns at the desk: pages wait while an edit is under way, edits never, and nobody for long."""

import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from threading import Event, Thread

import pytest
from django.test import Client
from django.urls import reverse

from secondfix.web.access import RULES
from secondfix.web.frame import turns as module
from secondfix.web.frame.turns import ASIDE, LONGEST_WAIT_S, MOST_WAITING, Turns
from secondfix.web.serving import THREADS

SOON_S = 5.0  # far longer than anything takes here, so that a slow machine fails nothing
A_WHILE_S = 0.05


class Person(Thread):
    """Somebody in a turn until told to leave."""

    def __init__(self, turn: Callable[[], AbstractContextManager[None]]) -> None:
        super().__init__(daemon=True)
        self.turn, self.inside, self.leave = turn, Event(), Event()
        self.start()

    def run(self) -> None:
        with self.turn():
            self.inside.set()
            self.leave.wait(SOON_S)

    def gets_in(self) -> bool:
        return self.inside.wait(SOON_S)

    def waits(self) -> bool:
        return not self.inside.wait(A_WHILE_S)


@contextmanager
def people(*turns: Callable[[], AbstractContextManager[None]]) -> Iterator[list[Person]]:
    there = [Person(turn) for turn in turns]
    try:
        yield there
    finally:
        for one in there:
            one.leave.set()
        for one in there:
            one.join(SOON_S)
            assert not one.is_alive()


def patient() -> Turns:
    return Turns(at_once=2, longest_wait_s=SOON_S)


def test_pages_go_two_at_a_time() -> None:
    turns = patient()
    with people(turns.page, turns.page) as first:
        assert all(p.gets_in() for p in first)
        with people(turns.page) as (third,):
            assert third.waits()
            first[0].leave.set()
            assert third.gets_in()


def test_a_page_waits_until_the_edit_is_answered() -> None:
    turns = patient()
    with people(turns.edit) as (writer,):
        assert writer.gets_in()
        with people(turns.page) as (reader,):
            assert reader.waits()
            writer.leave.set()
            assert reader.gets_in()


def test_an_edit_waits_for_nobody() -> None:
    turns = patient()
    with people(turns.page, turns.page) as readers:
        assert all(p.gets_in() for p in readers)
        with people(turns.edit, turns.edit) as writers:
            assert all(p.gets_in() for p in writers)


def test_a_page_waits_for_every_edit_under_way() -> None:
    turns = patient()
    with people(turns.edit, turns.edit) as (one, other):
        assert one.gets_in()
        assert other.gets_in()
        with people(turns.page) as (reader,):
            one.leave.set()
            assert reader.waits()
            other.leave.set()
            assert reader.gets_in()


def test_nobody_waits_longer_than_the_longest_wait() -> None:
    turns = Turns(longest_wait_s=0.02)
    with people(turns.edit) as (writer,):
        assert writer.gets_in()
        with people(*[turns.page] * 5) as readers:
            assert all(p.gets_in() for p in readers)
        turns.give_way()


def test_a_page_waits_its_time_once_though_one_edit_follows_another() -> None:
    turns = Turns(longest_wait_s=0.1)
    with people(turns.edit) as (first,):
        assert first.gets_in()
        with people(turns.page) as (reader,), people(turns.edit) as (second,):
            assert second.gets_in()
            first.leave.set()
            assert reader.gets_in()
            assert second.is_alive()


def test_who_comes_on_top_of_many_waiting_goes_at_once() -> None:
    turns = Turns(longest_wait_s=SOON_S, most_waiting=2)
    with people(turns.edit) as (writer,):
        assert writer.gets_in()
        with people(turns.page, turns.page) as waiting:
            assert all(p.waits() for p in waiting)
            with people(turns.page) as (third,):
                assert third.gets_in()
            assert all(p.waits() for p in waiting)
            writer.leave.set()
            assert all(p.gets_in() for p in waiting)


def test_work_aside_gives_way_to_an_edit_and_not_to_pages() -> None:
    turns = patient()
    with people(turns.page, turns.page) as readers:
        assert all(p.gets_in() for p in readers)
        turns.give_way()
    with people(turns.edit) as (writer,):
        assert writer.gets_in()
        aside = Thread(target=turns.give_way, daemon=True)
        aside.start()
        aside.join(A_WHILE_S)
        assert aside.is_alive()
        writer.leave.set()
        aside.join(SOON_S)
        assert not aside.is_alive()


def test_a_turn_ends_though_its_holder_fails() -> None:
    turns = Turns(at_once=1, longest_wait_s=SOON_S)
    for turn in (turns.page, turns.edit):
        with pytest.raises(RuntimeError), turn():
            raise RuntimeError
    began = time.monotonic()
    with turns.page():
        pass
    assert time.monotonic() - began < SOON_S


def test_many_at_once_all_come_to_an_end() -> None:
    turns = Turns(at_once=2, longest_wait_s=0.2, most_waiting=4)
    most = [0]
    inside = [0]

    def work(turn: Callable[[], AbstractContextManager[None]]) -> None:
        for _ in range(20):
            with turn():
                inside[0] += 1
                most[0] = max(most[0], inside[0])
                inside[0] -= 1

    threads = [Thread(target=work, args=(t,)) for t in [turns.page] * 6 + [turns.edit] * 2]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(SOON_S)
    assert not any(thread.is_alive() for thread in threads)
    with turns.page(), turns.page():  # nothing was left behind
        assert most[0] >= 1


class Told(Turns):
    """Turns that tell who took one, and when it ended."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[str] = []

    @contextmanager
    def page(self) -> Iterator[None]:
        with self._telling("page"):
            yield

    @contextmanager
    def edit(self) -> Iterator[None]:
        with self._telling("edit"):
            yield

    @contextmanager
    def _telling(self, what: str) -> Iterator[None]:
        self.told.append(what)
        yield
        self.told.append(f"{what} over")


@pytest.fixture
def told(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    turns = Told()
    monkeypatch.setattr(module, "turns", turns)
    return turns.told


def test_a_sheet_of_a_house_takes_the_turn_of_a_page(writer: Client, house_id: str, told: list[str]) -> None:
    assert writer.get(reverse("schedule", args=[house_id])).status_code == 200
    assert told == ["page", "page over"]


def test_what_is_typed_takes_the_turn_of_an_edit(writer: Client, house_id: str, told: list[str]) -> None:
    cells = {"base": 1, "cells": '[["B01.1", "note", "seen twice"]]'}
    assert writer.post(reverse("cells", args=[house_id]), cells).status_code == 200
    assert told == ["edit", "edit over"]


def test_calls_take_turns_too(writer: Client, house_id: str, told: list[str]) -> None:
    assert writer.get(reverse("api:check", args=[house_id])).status_code == 200
    assert told == ["page", "page over"]


def test_what_is_not_there_ends_its_turn_and_is_not_found(writer: Client, told: list[str]) -> None:
    assert writer.get(reverse("schedule", args=["nowhere"])).status_code == 404
    assert told == ["page", "page over"]


def test_work_aside_and_sheets_of_no_house_take_none(writer: Client, house_id: str, told: list[str]) -> None:
    writer.get("/")
    writer.get(reverse("swap", args=[house_id]))
    writer.get(reverse("job", args=[house_id, "none"]))
    assert told == []


def test_who_is_not_let_in_waits_for_no_turn(stranger: Client, house_id: str, told: list[str]) -> None:
    assert stranger.get(reverse("schedule", args=[house_id])).status_code == 302
    assert told == []


def test_the_server_has_threads_for_edits_beside_pages_that_wait() -> None:
    assert THREADS >= MOST_WAITING + 4
    assert LONGEST_WAIT_S <= 1


def test_sheets_that_take_no_turn_are_addresses_of_the_desk() -> None:
    assert set(RULES) >= ASIDE
