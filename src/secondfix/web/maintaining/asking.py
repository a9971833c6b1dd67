"""The question of a swap as its address says it, and its answer kept while the journal stands still."""

from collections.abc import Mapping
from dataclasses import dataclass

from django.http import HttpRequest, QueryDict

from secondfix.actions.swap import Swapped, controller, suspects, swap
from secondfix.catalogue import Model
from secondfix.house import Fault
from secondfix.maintenance import Kept, Rebuilt, Suspects, Unit
from secondfix.web.frame import jobs
from secondfix.web.frame.site import OnSite

MOST_UNITS = 4
MOST_TYPED = 4000
KEPT_WORDS = {Kept.BACKUP_WITH_KEYS: "the backup with its keys", Kept.NOTHING: "nothing"}


@dataclass(frozen=True, slots=True)
class SwapQuestion:
    """What was chosen: the failed device, the new ones, why, and whether whole-device commands go along."""

    failed: str
    units: tuple[Unit, ...]
    reason: str
    whole: bool

    @property
    def rows(self) -> tuple[Unit, ...]:
        """What the form shows: those chosen and one more to choose."""
        return (*self.units, Unit(""))[:MOST_UNITS]


def question_of(asked: QueryDict) -> SwapQuestion:
    """The question that an address asks."""
    columns = [asked.getlist(key)[:MOST_UNITS] for key in ("with", "gangs", "load", "code")]
    height = len(columns[0])
    filled = [[*column, *[""] * height][:height] for column in columns]
    units = tuple(
        Unit(
            model.strip(),
            gangs=tuple(gangs.replace(",", " ").split()) or None,
            load=load.strip() or None,
            code_ref=code.strip() or None,
        )
        for model, gangs, load, code in zip(*filled, strict=True)
        if model.strip()
    )
    reason = asked.get("reason", "").strip()[:500]
    return SwapQuestion(asked.get("failed", "").strip()[:40], units, reason, "gang_by_gang" not in asked)


SOON_S = 1.5
"""How long a sheet waits for an answer before it says that it is being worked out."""


def answer_of(
    site: OnSite, question: SwapQuestion, *, by: str, again: bool = False
) -> Swapped | list[Fault] | jobs.Job | None:
    """The plan, every fault of the question, None while something is still to be chosen.

    In a large house the nearest models take a while to try: it is worked out aside, and the job is the
    answer until it is done. One that was cancelled or failed stays the answer, until asked ``again``.
    """
    if not question.failed or not question.units:
        return None
    key = f"{question.failed} {question.units} {question.whole}"
    try:
        job = site.aside(
            key,
            f"Swap of {question.failed}",
            by=by,
            work=lambda progress: _answer(site, question, progress),
            again=again,
        )
    except jobs.TooManyError:
        said = f"{jobs.MOST_WAITING} questions of yours are being worked out"
        return [Fault("swap", "", said, "one of them answered first")]
    jobs.wait(job, most_s=SOON_S)
    made: Swapped | list[Fault] | None = job.result
    return job if made is None else made


def _answer(site: OnSite, question: SwapQuestion, progress: jobs.Progress) -> Swapped | list[Fault]:
    return swap(
        site.about.house,
        site.journal,
        question.failed,
        question.units,
        models=models_of(site),
        assumptions=site.about.firm.assumptions,
        whole=question.whole,
        progress=progress,
    )


def models_of(site: OnSite) -> Mapping[str, Model]:
    """The editions at hand: the firm's and those the house holds."""
    return {**site.about.firm.models, **site.about.house.models}


def suspected(site: OnSite, request: HttpRequest) -> Suspects | None:
    """Which device fell silent, from what the form says; None where it says nothing."""
    silent, answers = (_listed(request.GET.get(key, "")) for key in ("silent", "answers"))
    if not silent and not answers:
        return None
    return suspects(site.about.house, site.journal, models=models_of(site), silent=silent, answering=answers)


def _listed(text: str) -> list[str]:
    return [word.strip() for word in text[:MOST_TYPED].replace("\n", ",").split(",") if word.strip()]


def rebuilt_of(site: OnSite, request: HttpRequest) -> Rebuilt | list[Fault] | None:
    """What is done after a controller was replaced; None where no network was chosen."""
    network, kept = request.GET.get("network", ""), request.GET.get("kept", "")
    if not network:
        return None
    if kept not in list(Kept):
        return [Fault("form", "kept", f"'{kept[:40]}'", "what is left of the old controller")]
    later = _listed(request.GET.get("later", ""))
    return site.once(
        f"controller {network} {kept} {later}",
        lambda: controller(
            site.about.house,
            site.journal,
            network,
            Kept(kept),
            models=models_of(site),
            assumptions=site.about.firm.assumptions,
            not_in_backup=later,
        ),
    )
