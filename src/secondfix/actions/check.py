"""Check: everything that is wrong with a house, and everything that cannot be told."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property, partial
from itertools import chain

from secondfix import electrical, joining, naming, radio, scenes
from secondfix.actions.air import air_of
from secondfix.actions.held import Question, holding
from secondfix.actions.leaned import leaned_as_json, leaned_on
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.words import in_words_of
from secondfix.assumptions import Assumption, Assumptions
from secondfix.findings import (
    Finding,
    Rule,
    SurveyLine,
    finding_as_json,
    in_order,
    survey_as_json,
    survey_list,
    tally,
)
from secondfix.house import House, Schedule, schedule

RULES: tuple[Rule, ...] = (
    *electrical.RULES,
    *radio.RULES,
    *naming.RULES,
    *scenes.RULES,
    *joining.RULES,
)


@dataclass(frozen=True, slots=True)
class Answers:
    """What a check was asked and answered, for a later one to take over from; findings by question.

    ``learned`` is what the measured links taught, None where there are none.
    """

    house: House
    settled: Assumptions
    measured: tuple[radio.Measured, ...]
    reached: radio.Reach
    learned: radio.Learned | None
    found: Mapping[Question, tuple[Finding, ...]]


@dataclass(frozen=True, slots=True)
class Checked:
    """Findings worst first, the survey list, the assumptions that findings lean on, and the counts.

    ``counts`` says how many dangers, faults, pieces of advice, cannot-tells, and answers without fault.
    """

    findings: tuple[Finding, ...]
    survey: tuple[SurveyLine, ...]
    leaned_on: tuple[Assumption, ...]
    counts: Mapping[str, int]
    answers: Answers = field(repr=False, compare=False)


def check(
    house: House,
    *,
    assumptions: Assumptions,
    earlier: Checked | None = None,
    measured: Sequence[radio.Measured] = (),
) -> Checked:
    """Ask every rule at every place where it applies. ``assumptions`` are the firm's, or the defaults.

    ``measured`` links take the place of what is assumed of the radio (`measured_of` a journal).
    The answer is the same with and without ``earlier``, a check of the house before an edit: what the edit
    surely leaves as it was (`held.UNREAD`) is taken over from there, which saves most of the time.
    """
    settled = settled_assumptions(house, assumptions)
    answers = _Asking(house, settled, earlier.answers if earlier else None, tuple(measured)).answers()
    if earlier and all(answers.found[q] is earlier.answers.found[q] for q in answers.found):
        return replace(earlier, answers=answers)
    findings = in_order(chain.from_iterable(answers.found.values()))
    return Checked(
        tuple(findings), tuple(survey_list(findings)), leaned_on(findings, settled), tally(findings), answers
    )


class _Asking:
    """One check under way: each question asked, or its answer taken over."""

    def __init__(
        self,
        house: House,
        settled: Assumptions,
        earlier: Answers | None,
        measured: tuple[radio.Measured, ...],
    ) -> None:
        self.house, self.settled, self.earlier, self.measured = house, settled, earlier, measured
        alike = earlier is not None and earlier.settled == settled and earlier.measured == measured
        self.holds = holding(earlier.house, house) if earlier and alike else frozenset[Question]()

    @cached_property
    def rows(self) -> Schedule:
        return schedule(self.house, self.house.models)

    def answers(self) -> Answers:
        reached, learned, same = self._reached()
        air = partial(air_of, self.house, reached)
        links = partial(joining.links_of, reached, self.settled)
        found = {
            Question.ELECTRICAL: self._once(
                Question.ELECTRICAL, lambda: electrical.check(self.rows, self.settled)
            ),
            Question.RADIO: self._once(Question.RADIO, lambda: reached.findings),
            Question.NAMING: self._once(Question.NAMING, lambda: naming.check(self.rows, self.settled)),
            Question.SCENES: self._once(
                Question.SCENES, lambda: scenes.check(self.rows, self.settled, air()), same=same
            ),
            Question.JOINING: self._once(
                Question.JOINING, lambda: joining.check(self.rows, links(), self.settled), same=same
            ),
        }
        return Answers(self.house, self.settled, self.measured, reached, learned, found)

    def _reached(self) -> tuple[radio.Reach, radio.Learned | None, bool]:
        """The answer of radio, what it learned, and whether they are those before."""
        if self.earlier and Question.RADIO in self.holds:
            return self.earlier.reached, self.earlier.learned, True
        paths = self.earlier.reached.paths if self.earlier and Question.PATHS in self.holds else None
        if self.measured:
            return *radio.reach_measured(self.rows, self.settled, self.measured, paths=paths), False
        return radio.reach(self.rows, self.settled, paths=paths), None, False

    def _once(
        self, question: Question, ask: Callable[[], Iterable[Finding]], *, same: bool = True
    ) -> tuple[Finding, ...]:
        """The findings of one question in order; ``same``: what it is handed by radio is as it was."""
        if self.earlier and same and question in self.holds:
            return self.earlier.found[question]
        return tuple(in_order(in_words_of(self.house, ask())))


def checked_as_json(checked: Checked) -> dict[str, object]:
    """``findings`` and ``survey`` (docs/json.md), the counts, and the assumptions leaned on."""
    return {
        "findings": [finding_as_json(f) for f in checked.findings],
        "survey": [survey_as_json(s) for s in checked.survey],
        "counts": dict(checked.counts),
        **leaned_as_json(checked.leaned_on),
    }
