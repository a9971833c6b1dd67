"""Every way the unknown facts of one load may turn out, so far as a scene can tell them apart."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from itertools import chain, combinations, product

from secondfix.house import House, SceneRule, Selector
from secondfix.scenes.crossing import To
from secondfix.scenes.deciding import Supposed
from secondfix.scenes.permitting import needs_fitness
from secondfix.scenes.reaching import Via
from secondfix.scenes.selecting import Seen, tags_of
from secondfix.terms import PURPOSES, Purpose

Reached = frozenset[tuple[Via, To]]
Values = tuple[object, ...]


class Unknown(StrEnum):
    """A fact that may be open for a load."""

    PURPOSE = "purpose"
    STOREY = "storey"
    FITNESS = "fitness"
    REACH = "reach"


@dataclass(frozen=True, slots=True)
class Mentioned:
    """What the rules of one scene can tell apart."""

    purposes: tuple[Purpose, ...]
    storeys: frozenset[str]
    loads: frozenset[str]
    rooms: frozenset[str]
    tags: frozenset[str]


@dataclass(frozen=True, slots=True)
class Known:
    """What is known of a load, as far as the rules of one scene can tell: equal for loads they treat alike.

    What no selector names is an empty word. ``purpose`` and ``fit`` are None where not known.
    """

    load_id: str
    room: str
    storey: str | None
    storey_known: bool
    purpose: Purpose | None
    tags: frozenset[str]
    fit: bool | None
    surely: Reached
    perhaps: Reached


def mentioned(rules: Iterable[SceneRule]) -> Mentioned:
    """What selectors name; and, of the purposes that none names, one of each policy."""
    selectors: list[Selector] = [s for rule in rules for s in (rule.select, *rule.leave_out)]
    named = {s.purpose for s in selectors if s.purpose}
    alike = {(p.all_off, p.unattended_on): key for key, p in PURPOSES.items() if key not in named}
    kept = named | set(alike.values())
    return Mentioned(
        tuple(p for p in Purpose if p in kept),
        frozenset(s.storey for s in selectors if s.storey),
        frozenset(s.load for s in selectors if s.load),
        frozenset(s.room for s in selectors if s.room),
        frozenset(s.tag for s in selectors if s.tag),
    )


def known(
    house: House, load_id: str, told: Mentioned, *, fit: bool | None, surely: Reached, perhaps: Reached
) -> Known:
    """What is known of one load; ``surely`` and ``perhaps`` are the direct commands that reach it or may."""
    load = house.loads[load_id]
    storey = house.rooms[load.room].storey
    return Known(
        load_id if load_id in told.loads else "",
        load.room if load.room in told.rooms else "",
        storey if storey in told.storeys else None,
        storey is not None or not told.storeys,
        load.purpose,
        tags_of(house, load) & told.tags,
        fit,
        surely,
        perhaps - surely,
    )


def suppositions(one: Known, told: Mentioned) -> dict[Values, Supposed]:
    """Every supposition, by the values of (purpose, storey, fitness, reach) that it supposes.

    One alone where nothing is unknown. Fitness is varied only where some possible purpose leans on it.
    """
    purposes = (one.purpose,) if one.purpose else told.purposes
    storeys = (one.storey,) if one.storey_known else (*sorted(told.storeys), None)
    leans = one.fit is None and any(needs_fitness(p) for p in purposes)
    fits = (True, False) if leans else (bool(one.fit),)
    reaches = [one.surely | frozenset(more) for more in _subsets(sorted(one.perhaps))]
    return {
        values: Supposed(Seen(one.load_id, one.room, values[1], values[0], one.tags), values[2], values[3])
        for values in product(purposes, storeys, fits, reaches)
    }


def _subsets(items: list[tuple[Via, To]]) -> Iterable[tuple[tuple[Via, To], ...]]:
    return chain.from_iterable(combinations(items, n) for n in range(len(items) + 1))


def deciding_unknowns(answers: Mapping[Values, object]) -> tuple[Unknown, ...]:
    """The unknowns on which the answer hangs: those that change it while the others stand still."""
    found = []
    for index, unknown in enumerate(Unknown):
        groups: dict[Values, set[object]] = {}
        for values, answer in answers.items():
            rest = (*values[:index], *values[index + 1 :])
            groups.setdefault(rest, set()).add(answer)
        if any(len(group) > 1 for group in groups.values()):
            found.append(unknown)
    return tuple(found)
