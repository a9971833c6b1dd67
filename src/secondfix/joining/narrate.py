"""From rounds of device numbers to steps that a person can follow."""

from collections.abc import Sequence

from secondfix.house import Schedule
from secondfix.joining.circuits import Group, feed_of
from secondfix.joining.fronts import joined_on_bench
from secondfix.joining.links import CONTROLLER
from secondfix.joining.parents import Standing
from secondfix.joining.stages import Round, Site
from secondfix.joining.steps import Mark, StepKind, WalkStage, WalkStep
from secondfix.joining.through import Choice, choice
from secondfix.joining.wording import (
    bench_words,
    energise_words,
    fit_words,
    function_test_words,
    isolate_words,
    join_words,
    seated_words,
)


def narrate(
    schedule: Schedule, site: Site, grouped: Sequence[Group], rounds: Sequence[Round]
) -> tuple[tuple[WalkStep, ...], tuple[WalkStage, ...]]:
    """Steps in order and the stages they belong to; stage 0 is what comes before any isolation.

    What is joined on a bench comes there first of all; it carries nobody until it stands in its place.
    """
    teller = _Teller(schedule, site, grouped)
    first = 0 if rounds and rounds[0].group is None else 1
    teller.on_bench(alone=first == 1)
    for number, one in enumerate(rounds, first):
        teller.tell(number, one)
    return tuple(teller.steps), tuple(teller.stages)


class _Teller:
    """Tells one round after the other, minding what is joined by then."""

    def __init__(self, schedule: Schedule, site: Site, grouped: Sequence[Group]) -> None:
        self.schedule, self.site, self.grouped = schedule, site, grouped
        self.mesh = site.mesh
        self.place = [schedule.place_of_device(d) for d in site.mesh.ids]
        self.bench = [joined_on_bench(schedule.model_of(d)) for d in site.mesh.ids]
        self.joined = 0
        self.stage = 0
        self.steps: list[WalkStep] = []
        self.stages: list[WalkStage] = []

    def on_bench(self, *, alone: bool) -> None:
        """Join what is joined before it is fitted; ``alone``: nothing else comes before any isolation."""
        for n, device_id in enumerate(self.mesh.ids):
            if self.bench[n]:
                networked = self.schedule.house.devices[device_id].network is not None
                chosen = Choice(CONTROLLER, None, 1, None) if networked else None
                marks = (Mark.BENCH,) if networked else (Mark.BENCH, Mark.NETWORK_NOT_STATED)
                words = bench_words(self.schedule, device_id)
                self._add(StepKind.JOIN, words, n, chosen=chosen, marks=marks)
        if alone and self.steps:
            self.stages.append(WalkStage(0, (), ()))

    def tell(self, stage: int, one: Round) -> None:
        """One round: isolate, fit, energise where circuits are touched; then join and test."""
        self.stage = stage
        circuits: tuple[str, ...] = ()
        touched: tuple[str, ...] = ()
        if one.group is not None:
            circuits = self.grouped[one.group].circuits
            touched = self._hands_in(one, one.group)
        for n in one.join:
            if one.group is None or not self._wired(n):
                self._fit(n)
            self._join(n)
        self.stages.append(WalkStage(stage, circuits, touched))

    def _hands_in(self, one: Round, group: int) -> tuple[str, ...]:
        """Isolate, fit, energise; the places touched."""
        here = self.site.fits[group]
        stops = [self.place[s] for s in one.fit]
        fitted = [n for p in stops for n in range(len(self.place)) if here >> n & 1 and self.place[n] == p]
        touched = tuple(dict.fromkeys(self.place[n] for n in fitted))
        house, circuits = self.schedule.house, self.grouped[group].circuits
        marks = () if circuits else (Mark.CIRCUIT_NOT_KNOWN,)
        words = isolate_words(house, self.grouped[group], touched)
        self._add(StepKind.ISOLATE, words, circuits=circuits, marks=marks)
        for n in fitted:
            self._fit(n)
        words = energise_words(house, circuits)
        self._add(StepKind.ENERGISE, words, circuits=circuits, marks=marks)
        return touched

    def _wired(self, n: int) -> bool:
        return any(fits >> n & 1 for fits in self.site.fits)

    def _fit(self, n: int) -> None:
        feed = feed_of(self.schedule, self.place[n])
        wired = self._wired(n)
        marks = (Mark.CIRCUIT_NOT_KNOWN,) if wired and feed.open_ends else ()
        words = fit_words(self.schedule, self.mesh.ids[n])
        self._add(StepKind.FIT, words, n, circuits=feed.circuits if wired else (), marks=marks)

    def _join(self, n: int) -> None:
        device_id = self.mesh.ids[n]
        if not self.schedule.on_radio(device_id):
            self.joined |= 1 << n
            self._add(StepKind.FUNCTION_TEST, function_test_words(self.schedule, device_id), n)
            return
        chosen = choice(self.mesh, n, self.joined)
        self.joined |= 1 << n
        test = function_test_words(self.schedule, device_id)
        if self.bench[n]:
            words = f"{seated_words(self.schedule, device_id, chosen)} {test}"
            self._add(StepKind.FUNCTION_TEST, words, n, chosen=chosen, marks=self._join_marks(n))
            return
        words = join_words(self.schedule, device_id, chosen)
        self._add(StepKind.JOIN, words, n, chosen=chosen, marks=self._join_marks(n))
        self._add(StepKind.FUNCTION_TEST, test, n)

    def _join_marks(self, n: int) -> tuple[Mark, ...]:
        if not self.schedule.house.devices[self.mesh.ids[n]].network:
            return (Mark.NETWORK_NOT_STATED,)
        of_standing = {Standing.NOT_KNOWN: Mark.LINK_NOT_KNOWN, Standing.NONE: Mark.NO_GOOD_PARENT}
        mark = of_standing.get(self.mesh.standing[n])
        return (mark,) if mark else ()

    def _add(
        self,
        kind: StepKind,
        words: str,
        n: int | None = None,
        *,
        circuits: tuple[str, ...] = (),
        chosen: Choice | None = None,
        marks: tuple[Mark, ...] = (),
    ) -> None:
        self.steps.append(
            WalkStep(
                number=len(self.steps) + 1,
                stage=self.stage,
                kind=kind,
                place=self.place[n] if n is not None else "",
                device=self.mesh.ids[n] if n is not None else None,
                circuits=circuits,
                words=words,
                parent=chosen.parent if chosen else None,
                spare=chosen.spare if chosen else None,
                links=chosen.links if chosen else None,
                margin_db=chosen.margin_db if chosen else None,
                marks=marks,
            )
        )
