"""What happened on site: the journal of a house and all that it says, worked out once for every new entry."""

import os
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cached_property
from threading import RLock
from typing import Any, TypeVar

from django.http import HttpRequest

from secondfix.actions.pack import Site, recorded
from secondfix.house import Fault, uuid7
from secondfix.journal import Journal
from secondfix.papers import EntryLine, Record, entry_lines
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.aside import MOST_ANSWERS, Aside
from secondfix.web.frame.asked import Asked, asked

T = TypeVar("T")


@dataclass(frozen=True)
class OnSite:
    """A house with its journal as it stood when somebody asked; ``faults`` are lines that cannot be read."""

    about: Asked
    journal: Journal
    faults: tuple[Fault, ...]
    size: int

    @cached_property
    def record(self) -> Record:
        """The as-built house, function tests, conflicts and findings."""
        site = Site(self.journal, clock(), revision_of(self.about.number))
        return recorded(self.about.house, site, models=self.about.firm.models)

    @cached_property
    def _working(self) -> RLock:
        return RLock()

    @cached_property
    def _made(self) -> dict[str, Any]:
        return {}

    def once(self, question: str, make: Callable[[], T]) -> T:
        """The answer to a question of this journal, kept while few others are asked."""
        with self._working:
            if question not in self._made:
                for old in list(self._made)[: 1 - MOST_ANSWERS]:
                    del self._made[old]
                self._made[question] = make()
            made: T = self._made[question]
            return made

    @cached_property
    def _aside(self) -> Aside:
        return Aside(self.about.house.id)

    def aside(
        self, question: str, title: str, *, by: str, work: Callable[[jobs.Progress], T], again: bool = False
    ) -> jobs.Job:
        """Work out a slow answer aside, once; the job that does it. Raises jobs.TooManyError.

        One that was cancelled or failed is begun anew where ``again``.
        """
        return self._aside.job(question, title, by=by, work=work, again=again)

    @cached_property
    def lines(self) -> tuple[EntryLine, ...]:
        """Every entry in words, the latest last."""
        return entry_lines(self.record)


class _Latest:
    """The answer for the most entries seen so far of one edit."""

    def __init__(self) -> None:
        self.working = RLock()
        self.answer: OnSite | None = None


def on_site(house_id: str) -> OnSite:
    """The house as it stands, with every entry that stands. Raises door.UnknownError."""
    about = asked(house_id)
    held: _Latest = about.once("on site", lambda _: _Latest())
    size = door.journal_size(house_id)
    with held.working:
        if held.answer is None or held.answer.size != size:
            journal, faults = door.journal(house_id)
            held.answer = OnSite(about, journal, tuple(faults), size)
            _ = held.answer.record  # worked out while nobody else begins the same
        return held.answer


def revision_of(number: int) -> str:
    """What an edit is called in the entries of a journal."""
    return f"edit-{number}"


def clock() -> str:
    """The time of day with offset: printed, and decides nothing."""
    return datetime.now().astimezone().isoformat(timespec="seconds")


def shown_at() -> str:
    """For a form's field ``shown``: entries that come later were not seen by whoever fills it in."""
    return datetime.now(UTC).isoformat()


def seen(request: HttpRequest, house_id: str) -> Journal:
    """The journal as the form that was sent had shown it; all of it where the form does not say."""
    sent = request.POST.get("shown", "")
    try:
        until = datetime.fromisoformat(sent) if sent else None
    except ValueError:
        until = None
    return door.journal(house_id, until=until if until is not None and until.tzinfo else None)[0]


def head_of(request: HttpRequest, kind: str, subject: str, *, number: int, later: int = 0) -> dict[str, Any]:
    """The head of an entry written now over an edit; ``later`` keeps several in their order."""
    now = time.time_ns() // 1_000_000 + later
    return {
        "id": uuid7(unix_ms=now, random=os.urandom(10)),
        "revision": revision_of(number),
        "kind": kind,
        "subject": subject,
        "writer": person(request).username,
        "at": clock(),
    }
