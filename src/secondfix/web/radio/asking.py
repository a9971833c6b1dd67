"""What is asked of a house's radio: slow answers aside, each once for every edit and what was measured."""

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, field
from threading import Lock, RLock
from typing import Any, Protocol, TypeVar

from django.http import HttpRequest

from secondfix.actions.channels import OnAir, channels, heard_by, heard_in_journal
from secondfix.actions.foresee import foresee
from secondfix.actions.measured import NEXT_LINKS, MeasuredLinks
from secondfix.actions.reach import reach
from secondfix.house import Fault
from secondfix.radio import LEAST_FOR_NUMBERS, Channels, Foreseen, Learned, NextLink, Reach, learn
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.aside import Aside
from secondfix.web.frame.asked import Asked, asked

SOON_S = 0.4
"""How long a sheet waits for an answer before it says that it is being worked out."""
MOST_KEPT = 24
_MOST_HELD = 2
_STEPS_OF_NETWORK = 7
T = TypeVar("T")


@dataclass(frozen=True)
class RadioAsked:
    """A house with what was measured of its links and heard on the air: each question worked out once."""

    about: Asked
    survey: OnAir
    _aside: Aside
    _made: OrderedDict[str, Any] = field(default_factory=OrderedDict, repr=False, compare=False)
    _making: dict[str, RLock] = field(default_factory=dict, repr=False, compare=False)

    def once(self, name: str, make: Callable[[], T]) -> T:
        """What ``make`` makes, made once and kept while few others are asked."""
        with self._making.setdefault(name, RLock()):
            made: T = self._made[name] if name in self._made else make()
            self._made[name] = made
        while len(self._made) > MOST_KEPT:
            self._made.popitem(last=False)
        return made

    def made(self, name: str) -> Any | None:
        """What stands under ``name``, None where nobody asked for it yet."""
        return self._made.get(name)

    @property
    def links(self) -> MeasuredLinks:
        """The links that were measured."""
        return self.about.links

    @property
    def reached(self) -> Reach:
        """The best route of every device, as the measured links teach it."""
        return self.about.reached

    @property
    def learned(self) -> Learned:
        """What the measured links taught."""
        return self.about.checked.answers.learned or self.before

    @property
    def before(self) -> Learned:
        """The same house with nothing measured."""
        about = self.about
        return self.once("before", lambda: learn(about.rows, about.settled, self._computed, ()))

    @property
    def _computed(self) -> Reach:
        """The answer of radio with nothing measured."""
        about = self.about
        if not self.links.measured:
            return about.reached
        return self.once("computed", lambda: reach(about.house, assumptions=about.firm.assumptions))

    @property
    def measured(self) -> int:
        """How many measured links stand behind the answers."""
        return self.reached.measured

    @property
    def enough(self) -> bool:
        """Whether enough links are measured for numbers to be shown unasked."""
        return self.measured >= LEAST_FOR_NUMBERS

    @property
    def channels(self) -> Channels:
        """What each network loses on each channel among those heard."""
        house, given = self.about.house, self.about.firm.assumptions
        return self.once("channels", lambda: channels(house, self.reached, self.survey, assumptions=given))

    def foreseen(self, by: str, *, again: bool = False) -> jobs.Job:
        """The job that draws the mesh, whole and in every case. Raises jobs.TooManyError."""
        house, given = self.about.house, self.about.firm.assumptions

        def work(progress: jobs.Progress) -> Foreseen:
            heard = heard_by(house, self.survey, assumptions=given)
            return foresee(
                house, assumptions=given, measured=self.links.measured, heard=heard, progress=progress
            )

        steps = 2 + _STEPS_OF_NETWORK * len(house.networks)
        return self._aside.job("foreseen", "Who falls", by=by, work=work, steps=steps, again=again)

    def next_links(self, by: str, *, again: bool = False) -> jobs.Job:
        """The job that says which links to measure next. Raises jobs.TooManyError."""

        def work(progress: jobs.Progress) -> tuple[NextLink, ...]:
            progress("what is known of the links")
            learned = self.learned
            progress("what each link would tell")
            return learned.next_links(NEXT_LINKS)

        return self._aside.job(
            "next links", "Which link to measure next", by=by, work=work, steps=2, again=again
        )


@dataclass(slots=True)
class _Held:
    """Who the journal heard on the air, as often as it grows; and the answers of one edit to it."""

    lock: Lock = field(default_factory=Lock)
    size: int = -1
    survey: OnAir = field(default_factory=lambda: OnAir((), (), surveyed=False))
    answers: OrderedDict[OnAir, RadioAsked] = field(default_factory=OrderedDict)


def radio_asked(house_id: str) -> RadioAsked:
    """The house as it stands, with what its journal tells of the air. Raises door.UnknownError."""
    about = asked(house_id)
    held: _Held = about.once("on the air", lambda _: _Held())
    size = door.journal_size(house_id)
    with held.lock:
        if held.size != size:
            held.survey = heard_in_journal(about.house, door.journal(house_id)[0])
            held.size = size
        if held.survey not in held.answers:
            held.answers[held.survey] = RadioAsked(about, held.survey, Aside(house_id))
        while len(held.answers) > _MOST_HELD:
            held.answers.popitem(last=False)
        return held.answers[held.survey]


class Ask(Protocol):
    """A question that a job answers, as a sheet asks it."""

    def __call__(self, by: str, *, again: bool = False) -> jobs.Job:
        """The job, begun where none was."""


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
