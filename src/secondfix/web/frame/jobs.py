"""Long work aside from the pages: started, watched, cancelled, its result fetched. In this process's memory.

A job is plain work over documents that were read before it began: it asks no database. Two run at once; what
is done is kept until later results push it out, or the desk stops.
"""

import logging
import time
from collections import OrderedDict
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from enum import StrEnum
from threading import Event, Lock
from typing import Any
from uuid import uuid4

from secondfix.web.frame.turns import turns

MOST_KEPT = 48
MOST_WAITING = 6
"""Jobs of one person that have not ended."""
MOST_BYTES = 400 * 1024 * 1024
_RUNNERS = 2


class State(StrEnum):
    """How far a job has come."""

    WAITING = "waiting"
    RUNNING = "running"
    DONE = "done"
    FAILED = "failed"
    CANCELLED = "cancelled"


class CancelledError(Exception):
    """Raised inside the work by ``Progress`` once somebody has cancelled it."""


class TooManyError(Exception):
    """This person has as many jobs waiting as anybody may."""


@dataclass
class Job:
    """One piece of work. ``at`` is the step it is at, in words; ``result`` what it made, None until done.

    ``kind`` tells papers, which people look for again, from answers that a sheet waits for.
    """

    id: str
    house_id: str
    by: str
    title: str
    steps: int
    kind: str = "paper"
    done: int = 0
    at: str = ""
    state: State = State.WAITING
    result: Any = None
    size: int = 0
    began: float = field(default_factory=time.monotonic)
    took_s: float = 0.0
    stop: Event = field(default_factory=Event)
    over: Event = field(default_factory=Event)

    @property
    def ended(self) -> bool:
        """Whether nothing of it is still to come."""
        return self.state in {State.DONE, State.FAILED, State.CANCELLED}


Progress = Callable[[str], None]
"""Called by the work before each of its steps, with its words."""

_log = logging.getLogger(__name__)
_jobs: OrderedDict[str, Job] = OrderedDict()
_lock = Lock()
_runners = ThreadPoolExecutor(_RUNNERS, thread_name_prefix="job")


def start(
    *, house_id: str, by: str, title: str, steps: int, work: Callable[[Progress], Any],
    size_of: Callable[[Any], int] = lambda _: 0, kind: str = "paper",
) -> Job:  # fmt: skip
    """Begin ``work`` aside. ``size_of`` says how many bytes its result holds. Raises TooManyError.

    An answer under way that the same person asked under the same title is cancelled: it was asked of an
    earlier edit, or with something else chosen, and nobody waits for it any more.
    """
    job = Job(uuid4().hex, house_id, by, title, max(steps, 1), kind)
    with _lock:
        for older in _jobs.values():
            if kind == older.kind == "answer" and _asks_alike(older, job):
                _stop(older)
        if sum(1 for j in _jobs.values() if j.by == by and not j.ended) >= MOST_WAITING:
            raise TooManyError
        _jobs[job.id] = job
        _make_room()
    _runners.submit(_run, job, work, size_of)
    return job


def find(job_id: str, *, house_id: str) -> Job | None:
    """A job of this house; None where it never was, or was pushed out."""
    with _lock:
        job = _jobs.get(job_id)
    return job if job is not None and job.house_id == house_id else None


def jobs_of(house_id: str) -> tuple[Job, ...]:
    """Jobs of one house, the latest first."""
    with _lock:
        return tuple(job for job in reversed(_jobs.values()) if job.house_id == house_id)


def wait(job: Job, *, most_s: float) -> bool:
    """Whether a job has ended, waiting a while for it."""
    job.over.wait(most_s)
    return job.ended


def cancel(job: Job) -> None:
    """Ask a job to end: one that waits ends now, one that runs before its next step."""
    with _lock:
        _stop(job)


def _stop(job: Job) -> None:
    job.stop.set()
    if job.state is State.WAITING:
        job.state = State.CANCELLED
        job.over.set()


def _asks_alike(one: Job, other: Job) -> bool:
    return (one.house_id, one.by, one.title) == (other.house_id, other.by, other.title)


def _run(job: Job, work: Callable[[Progress], Any], size_of: Callable[[Any], int]) -> None:
    def progress(words: str) -> None:
        turns.give_way()
        if job.stop.is_set():
            raise CancelledError
        job.done, job.at = job.done + bool(job.at), words

    with _lock:
        if job.state is not State.WAITING:
            return
        job.state, job.began = State.RUNNING, time.monotonic()
    try:
        made = work(progress)
    except CancelledError:
        job.state = State.CANCELLED
    except Exception:
        job.state = State.FAILED
        _log.exception("job '%s' failed", job.title)
    else:
        with _lock:
            job.result, job.size, job.done, job.at = made, size_of(made), job.steps, ""
            job.state = State.DONE
            _make_room()
    finally:
        job.took_s = time.monotonic() - job.began
        job.over.set()


def _make_room() -> None:
    """Push out the oldest that have ended, while there are too many or they hold too much."""
    ended = [j for j in _jobs.values() if j.ended]
    for job in ended[:-1]:
        if len(_jobs) <= MOST_KEPT and sum(j.size for j in _jobs.values()) <= MOST_BYTES:
            return
        del _jobs[job.id]
