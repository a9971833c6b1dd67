"""What is asked of a house's radio: worked out aside, once for every edit and every measured link."""

from collections import OrderedDict
from dataclasses import dataclass, field
from functools import cached_property
from threading import Lock, RLock
from typing import Protocol

from django.http import HttpRequest

from secondfix.actions.foresee import foresee
from secondfix.house import Fault
from secondfix.radio import LEAST_FOR_NUMBERS, Foreseen, Reach
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.aside import Aside
from secondfix.web.frame.asked import Asked, asked

SOON_S = 0.4
"""How long a sheet waits for an answer before it says that it is being worked out."""
_MOST_HELD = 3
_STEPS_OF_NETWORK = 7


@dataclass(frozen=True)
class OnAir:
    """A house with what was measured of its links: what is asked of both is worked out once."""

    about: Asked
    _aside: Aside
    _working: RLock = field(default_factory=RLock, repr=False, compare=False)

    @property
    def measured(self) -> int:
        """How many measured links stand behind the answers."""
        return self.reached.measured

    @property
    def reached(self) -> Reach:
        """The best route of every device."""
        return self.about.reached

    @cached_property
    def enough(self) -> bool:
        """Whether enough links are measured for numbers to be shown unasked."""
        return self.measured >= LEAST_FOR_NUMBERS

    def foreseen(self, by: str, *, again: bool = False) -> jobs.Job:
        """The job that draws the mesh, whole and in every case. Raises jobs.TooManyError."""
        house, given = self.about.house, self.about.firm.assumptions

        def work(progress: jobs.Progress) -> Foreseen:
            return foresee(house, assumptions=given, progress=progress)

        steps = 2 + _STEPS_OF_NETWORK * len(house.networks)
        return self._aside.job("foreseen", "Who falls", by=by, work=work, steps=steps, again=again)


class Ask(Protocol):
    """A question that a job answers, as a sheet asks it."""

    def __call__(self, by: str, *, again: bool = False) -> jobs.Job:
        """The job, begun where none was."""


@dataclass(slots=True)
class _Held:
    """The answers of one edit, for what was measured last."""

    lock: Lock = field(default_factory=Lock)
    answers: OrderedDict[object, OnAir] = field(default_factory=OrderedDict)


def on_air(house_id: str) -> OnAir:
    """The house as it stands, with what its journal tells of the air. Raises door.UnknownError."""
    about = asked(house_id)
    held: _Held = about.once("on the air", lambda _: _Held())
    key = ()
    with held.lock:
        if key not in held.answers:
            held.answers[key] = OnAir(about, Aside(house_id))
        while len(held.answers) > _MOST_HELD:
            held.answers.popitem(last=False)
        return held.answers[key]


@dataclass(frozen=True, slots=True)
class Waited:
    """What a job came to within a moment: its answer, or the job that is still to be watched, or a fault."""

    answer: object = None
    job: jobs.Job | None = None
    fault: Fault | None = None


def wait_for(request: HttpRequest, question: Ask, *, most_s: float | None = None) -> Waited:
    """Ask aside and wait a moment; ``again`` in the address begins anew what was cancelled."""
    try:
        job = question(person(request).username, again="again" in request.GET)
    except jobs.TooManyError:
        said = f"{jobs.MOST_WAITING} questions of yours are being worked out"
        return Waited(fault=Fault("radio", "", said, "one of them answered first"))
    jobs.wait(job, most_s=SOON_S if most_s is None else most_s)
    return Waited(answer=job.result) if job.state is jobs.State.DONE else Waited(job=job)
