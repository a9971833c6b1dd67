"""Multi-way supply: permanent line and neutral can reach the module under the arrangement."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from secondfix.catalogue import Form, NeutralNeed
from secondfix.electrical.case import Case
from secondfix.electrical.multiway.as_found import LAMP
from secondfix.electrical.multiway.conductors import Wish
from secondfix.electrical.multiway.conversion import alternatives, convert
from secondfix.electrical.multiway.subject import Subject, circuit_of, feed_look, subjects
from secondfix.electrical.multiway.words import ARRANGEMENTS, point_words
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import (
    ABSENT,
    DEAD_FIRST,
    EARTH,
    Arrangement,
    OthersAct,
    Row,
    line_look,
    neutral_look,
    settled,
)
from secondfix.terms import WiringRules

RULE = Rule(
    "multiway_supply",
    "Do permanent line, neutral and signal reach the module over the conductors of this arrangement?",
    "common practice, no source: counting conductors; marks by IEC 60445, NEC 200.7(C) (secondary)",
)
_MOST_SPARE = 8  # the most that the document can state
_LIMIT = "a core for each thing that must pass"


@dataclass(frozen=True, slots=True)
class Bounds:
    """The least and the most that the facts leave open, with what would settle it."""

    worst: Wish
    best: Wish
    least_spare: int
    most_spare: int
    looks: tuple[Look, ...]


def answers(case: Case) -> Iterator[Finding]:
    """One answer per load of known arrangement and order that a device of a decided model is to feed."""
    for subject in subjects(case):
        asked = subject.arrangement not in {None, Arrangement.SWITCHED_NEUTRAL}
        ordered = len(subject.multiway.gangs) > 1 and subject.module is not None
        if asked and ordered and subject.model is not None:
            yield _answer(case, subject)


def _answer(case: Case, subject: Subject) -> Finding:
    deaf = [row.id for row in subject.others if has_no_radio(row)]
    if deaf and subject.act is OthersAct.RADIO:
        return _no_radio(subject, deaf)
    bounds = bounds_of(case, subject)
    if _possible(subject, bounds.worst, bounds.least_spare):
        return _passes(case, subject, bounds)
    if _possible(subject, bounds.best, bounds.most_spare):
        says = f"Whether enough conductors reach the module of {subject.words} is not known."
        return cannot_tell(
            RULE,
            Severity.FAULT,
            subject.place,
            says,
            looks=bounds.looks,
            value=_value(subject),
            limit=_LIMIT,
            also=subject.also,
        )
    return _fails(subject, bounds)


def _possible(subject: Subject, wish: Wish, spare: int) -> bool:
    assert subject.arrangement is not None
    return convert(subject.arrangement, len(subject.multiway.gangs), wish, spare_cores=spare).possible


def _value(subject: Subject) -> str:
    assert subject.arrangement is not None
    at = point_words(subject.module or "", subject.names)
    return f"{ARRANGEMENTS[subject.arrangement].name}, module at {at}"


def bounds_of(case: Case, subject: Subject) -> Bounds:
    """Unknowns at their worst and at their best: more sources, more cores and fewer needs never hinder."""
    looks: list[Look] = []
    model, module = subject.model, subject.module
    assert model is not None
    assert module is not None
    need = None if model.neutral is None else model.neutral is NeutralNeed.NEEDED
    if need is None:
        looks.append(sheet_look(model, "neutral", "whether it needs a neutral"))
    spare = settled(subject.multiway.spare_cores)
    if spare is None:
        looks.append(spare_look(subject))
    if subject.act not in {OthersAct.INPUT, OthersAct.RADIO}:  # else they will have to act otherwise
        looks.append(subject.acts_look())
    neutral_sure, neutral_maybe = neutrals_at(case, subject, looks)
    line_sure, line_maybe = _lines(case, subject, looks)
    others = frozenset(str(n) for n in range(1, len(subject.multiway.gangs) + 1)) - {module}
    worst = Wish(
        module,
        need is not False,
        frozenset() if subject.act is OthersAct.RADIO else others,
        line_sure,
        neutral_sure,
    )
    best = replace(
        worst,
        needs_neutral=bool(need),
        inputs=others if subject.act is OthersAct.INPUT else frozenset(),
        line_at=line_sure | line_maybe,
        neutral_at=neutral_sure | neutral_maybe,
    )
    return Bounds(worst, best, spare or 0, _MOST_SPARE if spare is None else spare, tuple(looks))


def spare_look(subject: Subject) -> Look:
    """The look for cores that no terminal uses."""
    words = f"{DEAD_FIRST}, count the cores that no terminal uses in every run of {subject.words}"
    return Look(subject.load_id, "multiway.spare_cores", words)


def _rows(case: Case, subject: Subject) -> Iterator[tuple[str, Row]]:
    for number, gang in enumerate(subject.multiway.gangs, 1):
        if gang in case.schedule.rows:
            yield str(number), case.schedule.rows[gang]


def neutrals_at(case: Case, subject: Subject, looks: list[Look]) -> tuple[frozenset[str], frozenset[str]]:
    """Points where a neutral was found; where one may be. A neutral that is not of this circuit is none."""
    circuit = circuit_of(case, subject)
    sure: set[str] = set()
    maybe: set[str] = set()
    for number, row in _rows(case, subject):
        neutral = settled(row.mount.neutral)
        if neutral is None:
            looks.append(neutral_look(row.box_id, row.gang.mount))
            maybe.add(number)
        elif neutral not in {ABSENT, EARTH}:
            (sure if neutral == circuit else maybe if circuit is None else set()).add(number)
    if circuit is None and subject.module != LAMP:
        looks.append(feed_look(case, subject))
    return frozenset(sure), frozenset(maybe)


def _lines(case: Case, subject: Subject, looks: list[Look]) -> tuple[frozenset[str], frozenset[str]]:
    """Points whose box has line of this circuit for another load; where it may have."""
    circuit = circuit_of(case, subject)
    mine = set(subject.multiway.gangs)
    sure: set[str] = set()
    maybe: set[str] = set()
    for number, row in _rows(case, subject):
        for other in case.schedule.rows.values():
            if other.box_id != row.box_id or other.id in mine or other.load_id is None:
                continue
            line = settled(other.gang.line)
            if line is not None and circuit is not None:
                (sure if line == circuit else set()).add(number)
            else:
                maybe.add(number)
                looks.append(line_look(other.box_id, other.gang_no))
    return frozenset(sure), frozenset(maybe)


def has_no_radio(row: Row) -> bool:
    return row.model is not None and row.model.form is Form.EXTENSION_UNIT


def _passes(case: Case, subject: Subject, bounds: Bounds) -> Finding:
    assert subject.arrangement is not None
    rules = case.house.wiring_rules or WiringRules.IEC
    made = convert(
        subject.arrangement,
        len(subject.multiway.gangs),
        bounds.worst,
        spare_cores=bounds.least_spare,
        rules=rules,
        names=subject.names,
    )
    altered = sum(change.altered for change in made.changes)
    value = f"{_value(subject)}; {altered} cores change"
    return passes(RULE, subject.place, value=value, limit=_LIMIT, also=subject.also)


def _fails(subject: Subject, bounds: Bounds) -> Finding:
    assert subject.arrangement is not None
    places = len(subject.multiway.gangs)
    made = convert(
        subject.arrangement, places, bounds.best, spare_cores=bounds.most_spare, names=subject.names
    )
    instead = alternatives(
        subject.arrangement, places, bounds.best, spare_cores=bounds.most_spare, names=subject.names
    )
    remedy = f"Take {', or '.join(instead)}; or pull a further core." if instead else "Pull a further core."
    return fails(
        RULE,
        Severity.FAULT,
        subject.place,
        f"{subject.words}: {made.why_not[0].lower()}{made.why_not[1:]}",
        value=_value(subject),
        limit=_LIMIT,
        remedy=remedy,
        also=subject.also,
    )


def _no_radio(subject: Subject, deaf: list[str]) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        subject.place,
        f"{', '.join(deaf)} is said to work {subject.words} by radio, and an extension unit has none.",
        value="an extension unit, by radio",
        limit="an input, or a device with a radio",
        remedy="Wire the extension unit to the module's input, or take a radio button.",
        also=subject.also,
    )
