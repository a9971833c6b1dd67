"""Dimmers side by side: a dimmer with warm neighbours carries less."""

from collections.abc import Iterator

from secondfix.assumptions import POWER_FACTORS, Assumptions
from secondfix.catalogue import Output, Rating
from secondfix.electrical.case import Case, Contact, mounts_of
from secondfix.electrical.demand import kind_look
from secondfix.electrical.figures import amperes, amperes_between
from secondfix.electrical.printed import CARRIES, VOLTAGE_LOOK, carried, holds_at, rating_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import model_look, settled
from secondfix.terms import RATING_OF_KIND

_WITH = ("dimmer_one_neighbour_pct", "dimmer_two_neighbours_pct")
RULE = Rule(
    "ganged_dimmers",
    "Does a dimmer beside other dimmers still carry its load?",
    "common practice, no source: with fins broken off less is left to cool by; the maker's figure is better",
    may_lean_on=(*_WITH, *POWER_FACTORS, CARRIES),
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact of a dimmer that takes mounts and has, or may have, a dimmer next to it."""
    beside = {device_id: n for box in case.devices_in for device_id, n in _neighbours(case, box)}
    for contact in case.contacts:
        if contact.model.output is Output.DIMMER and contact.device_id in beside:
            surely, open_ids = beside[contact.device_id]
            if surely or open_ids:
                yield _answer(case, contact, surely, open_ids)


def _neighbours(case: Case, box_id: str) -> Iterator[tuple[str, tuple[int, tuple[str, ...]]]]:
    """For each device on mounts: on how many sides a dimmer is next to it, and which beside it are undecided.

    A device whose model is not decided may stand at any mount of its gangs or behind another there: it
    takes no neighbour's place.
    """
    box, at = case.house.boxes[box_id], dict[int, list[str]]()
    mounts: dict[str, list[int]] = {}
    for device_id in case.devices_in[box_id]:
        model = case.schedule.model_of(device_id)
        if model is None or model.mounts:
            mounts[device_id] = sorted(map(int, mounts_of(case.house.devices[device_id], box)))
            for number in mounts[device_id]:
                at.setdefault(number, []).append(device_id)
    for device_id, numbers in mounts.items():
        surely, perhaps = 0, list[str]()
        for side in (numbers[0] - 1, numbers[-1] + 1) if numbers else ():
            beside = {d: case.schedule.model_of(d) for d in at.get(side, ()) if d != device_id}
            if any(m is not None and m.output is Output.DIMMER for m in beside.values()):
                surely += 1
            else:
                perhaps += [d for d, m in beside.items() if m is None][:1]
        yield device_id, (surely, tuple(perhaps))


def _share(assumptions: Assumptions, neighbours: int) -> tuple[int, int]:
    """What is left of the rating, in per cent, between its bounds."""
    if neighbours == 0:
        return 100, 100
    low, _, high = assumptions.span(_WITH[neighbours - 1])
    return low, high


def _answer(case: Case, contact: Contact, surely: int, open_ids: tuple[str, ...]) -> Finding:
    rating, blocked = _rating(case, contact)
    voltage = case.house.mains_voltage_v
    names = tuple(_WITH[n - 1] for n in range(max(surely, 1), surely + len(open_ids) + 1))
    if voltage is not None:
        names = (*names, *carried(contact.model.ratings, mains_voltage_v=voltage))
    if rating is None or voltage is None:
        return _cannot(contact, blocked, ("not known", "what is left of its rating"), names)
    current = case.current(contact.load_id, mains_voltage_v=voltage)
    most = _share(case.assumptions, surely)[1] * rating.current_ma
    least = _share(case.assumptions, surely + len(open_ids))[0] * rating.current_ma
    names = (*names, *current.assumptions)
    value = amperes_between(current.low_ma, current.high_ma)
    limit = (
        f"{_part(least, most)} of {amperes(rating.current_ma)} beside {surely or 'an undecided'} neighbour"
    )
    if 100 * current.low_ma > most:
        return fails(
            RULE,
            Severity.FAULT,
            contact.place,
            f"{contact.load_words} is too much for a dimmer that stands beside another.",
            value=value,
            limit=limit,
            remedy="Leave a mount free between dimmers, lessen the load, or take a larger dimmer.",
            also=(contact.device_id, contact.load_id),
            assumptions=names,
        )
    if current.high_ma is not None and 100 * current.high_ma <= least:
        also = (contact.device_id, contact.load_id)
        return passes(RULE, contact.place, value=value, limit=limit, also=also, assumptions=names)
    looks = [*current.looks, *dict.fromkeys(model_look(d) for d in open_ids)]
    looks = looks or [*current.narrower, _fins_look(contact)]
    return _cannot(contact, looks, (value, limit), names)


def _rating(case: Case, contact: Contact) -> tuple[Rating | None, list[Look]]:
    """The rating printed for the kind, or what would give it."""
    kind, voltage = settled(contact.load.kind), case.house.mains_voltage_v
    if voltage is None:
        return None, [VOLTAGE_LOOK]
    if kind is None:
        return None, [kind_look(contact.load_id, contact.load_words)]
    rating = contact.model.rating_for(RATING_OF_KIND[kind])
    look = rating_look(contact.model, RATING_OF_KIND[kind], mains_voltage_v=voltage)
    held = rating and holds_at(rating, mains_voltage_v=voltage, assumptions=case.assumptions)
    return (rating, []) if held else (None, [look])


def _fins_look(contact: Contact) -> Look:
    words = f"ask the maker of {contact.model.title} what it carries with dimmers beside it"
    return Look(contact.model.key, "ratings", words)


def _part(least: int, most: int) -> str:
    low, high = amperes(least // 100), amperes(most // 100)
    return low if low == high else f"{low} to {high}"


def _cannot(contact: Contact, looks: list[Look], figures: tuple[str, str], names: tuple[str, ...]) -> Finding:
    return cannot_tell(
        RULE,
        Severity.FAULT,
        contact.place,
        f"Whether the dimmer of {contact.load_words} still carries it beside another is not known.",
        looks=looks,
        value=figures[0],
        limit=figures[1],
        also=(contact.device_id, contact.load_id),
        assumptions=names,
    )
