"""A light worked from several places, as its sheet shows it: test, ways to convert it, what is not told."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from secondfix.assumptions import Assumptions
from secondfix.electrical.case import Case, case_of
from secondfix.electrical.multiway.arrangement_known import arrangement_look, order_lacks, order_look
from secondfix.electrical.multiway.conductors import Wish
from secondfix.electrical.multiway.conversion import Conversion, alternatives, convert
from secondfix.electrical.multiway.subject import Subject, subjects
from secondfix.electrical.multiway.supply import (
    bounds_of,
    has_no_radio,
    neutrals_at,
    spare_look,
)
from secondfix.electrical.multiway.telling import Answers, hypotheses
from secondfix.findings import Look
from secondfix.house import Arrangement, OthersAct, Schedule, settled
from secondfix.terms import WiringRules


@dataclass(frozen=True, slots=True)
class Way:
    """One way in which the other places may act, the conversion with it, or what can be ``instead``."""

    words: str
    made: Conversion
    instead: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Light:
    """One light. ``gangs`` are its places in order where that is told, else all that are known.

    ``circuits`` are all whose line or neutral enters one of its boxes: each is isolated. ``ways`` is empty
    where no conversion can be drawn yet: ``untold`` then says what is not known.
    """

    load_id: str
    words: str
    place: str
    arrangement: Arrangement | None
    gangs: tuple[str, ...]
    ordered: bool
    boxes: tuple[str, ...]
    circuits: tuple[str, ...]
    ways: tuple[Way, ...]
    untold: tuple[Look, ...]


def lights(schedule: Schedule, assumptions: Assumptions) -> tuple[Light, ...]:
    """Every light that the multi-way rules ask about, in the document's order.

    Unknown facts count at their worst, as in the rule: a neutral that nobody saw is none, cores that
    nobody counted are none. Where it is not known how the other places act, each way has its conversion.
    """
    case = case_of(schedule, assumptions)
    return tuple(_light(case, subject) for subject in subjects(case))


def _light(case: Case, subject: Subject) -> Light:
    told = subject.arrangement is not None and not order_lacks(subject)
    known = dict.fromkeys([*([subject.row.id] if subject.row else []), *(r.id for r in subject.others)])
    gangs = subject.multiway.gangs if told else tuple(known)
    boxes = tuple(dict.fromkeys(gang.split(".")[0] for gang in gangs))
    ready = told and subject.arrangement is not Arrangement.SWITCHED_NEUTRAL
    ready = ready and subject.model is not None and subject.module is not None
    return Light(
        subject.load_id,
        subject.words,
        subject.place,
        subject.arrangement,
        gangs,
        told,
        boxes,
        tuple(sorted(_circuits(case, boxes))),
        tuple(_ways(case, subject)) if ready else (),
        tuple(dict.fromkeys(_untold(case, subject, ready=ready))),
    )


def _circuits(case: Case, boxes: tuple[str, ...]) -> set[str]:
    """Circuits whose line or neutral is known to enter one of the boxes."""
    found: set[str | None] = set()
    for box_id in boxes:
        box = case.house.boxes[box_id]
        found |= {settled(g.line) for g in box.gangs.values()}
        found |= {settled(m.neutral) for m in box.mounts.values()}
    return {c for c in found if c in case.house.circuits}


def _ways(case: Case, subject: Subject) -> Iterator[Way]:
    bounds = bounds_of(case, subject)
    others = frozenset(str(n) for n in range(1, len(subject.multiway.gangs) + 1)) - {subject.module or ""}
    deaf = any(has_no_radio(row) for row in subject.others)
    if subject.act is not OthersAct.RADIO:
        yield _way(case, subject, "the other places on an input of the module", bounds.worst, others)
    if subject.act is not OthersAct.INPUT and not deaf:
        yield _way(case, subject, "the other places by radio", bounds.worst, frozenset())


def _way(case: Case, subject: Subject, words: str, wish: Wish, inputs: frozenset[str]) -> Way:
    assert subject.arrangement is not None
    places, spare = len(subject.multiway.gangs), settled(subject.multiway.spare_cores) or 0
    wanted, rules = replace(wish, inputs=inputs), case.house.wiring_rules or WiringRules.IEC
    made = convert(
        subject.arrangement,
        places,
        wanted,
        spare_cores=spare,
        rules=rules,
        names=subject.names,
    )
    instead = (
        ()
        if made.possible
        else alternatives(subject.arrangement, places, wanted, spare_cores=spare, names=subject.names)
    )
    return Way(words, made, instead)


def _untold(case: Case, subject: Subject, *, ready: bool) -> Iterator[Look]:
    """Everything that is not known of it, in the order in which it is found out."""
    if subject.arrangement is None:
        yield arrangement_look(subject)
    if order_lacks(subject):
        yield order_look(subject)
    if subject.model is None:
        place = subject.device_id or subject.load_id
        yield Look(place, "model", f"choose the device that feeds {subject.words}")
    if ready:
        unjoined = subject.arrangement is Arrangement.NOT_JOINED  # no run, so no core in one
        looks_left = bounds_of(case, subject).looks
        yield from (k for k in looks_left if not (unjoined and k.field == "multiway.spare_cores"))
    else:
        looks: list[Look] = []
        neutrals_at(case, subject, looks)
        if settled(subject.multiway.spare_cores) is None:
            looks.append(spare_look(subject))
        if subject.act is None:
            looks.append(subject.acts_look())
        yield from looks


def patterns() -> tuple[tuple[Answers, Arrangement], ...]:
    """Every set of answers that has a name, the first place of the order being *this end box*.

    At the other end the first two answers stand for the third and fourth.
    """
    return tuple((answers, told.arrangement) for told, answers in hypotheses() if told.line_end != "there")
