"""Slow answers that a sheet waits for: each question worked out aside once, its job kept a while."""

from collections import OrderedDict
from collections.abc import Callable
from threading import Lock
from typing import Any

from secondfix.web.frame import jobs

MOST_ANSWERS = 24


class Aside:
    """The jobs of one house as it stood when somebody asked, by question."""

    def __init__(self, house_id: str) -> None:
        self._house_id = house_id
        self._held: OrderedDict[str, jobs.Job] = OrderedDict()
        self._lock = Lock()

    def job(
        self,
        question: str,
        title: str,
        *,
        by: str,
        work: Callable[[jobs.Progress], Any],
        steps: int = 1,
        again: bool = False,
    ) -> jobs.Job:
        """The job that answers ``question``, begun where none was. Raises jobs.TooManyError.

        One that was cancelled or failed is the answer too, until somebody asks ``again``.
        """
        with self._lock:
            job = self._held.get(question)
            if job is None or (again and job.state in {jobs.State.CANCELLED, jobs.State.FAILED}):
                job = self._held[question] = jobs.start(
                    house_id=self._house_id, by=by, title=title, steps=steps, kind="answer", work=work
                )
            while len(self._held) > MOST_ANSWERS:
                self._held.popitem(last=False)
        return job
