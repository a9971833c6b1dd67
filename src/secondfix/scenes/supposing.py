"""Every way the unknown facts of one load may turn out, so far as a scene can tell them apart."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from itertools import chain, combinations, product

from secondfix.house import House, Load, SceneRule, Selector
from secondfix.scenes.crossing import To
from secondfix.scenes.deciding import Supposed
from secondfix.scenes.permitting import needs_fitness
from secondfix.scenes.reaching import Via
from secondfix.scenes.selecting import Seen, tags_of
from secondfix.terms import PURPOSES, Purpose

_Reached = frozenset[tuple[Via, To]]


class Unknown(StrEnum):
    """A fact that may be open for a load."""

    PURPOSE = "purpose"
    STOREY = "storey"
    FITNESS = "fitness"
    REACH = "reach"


@dataclass(frozen=True, slots=True)
class Mentioned:
    """Purposes and storeys that the rules of one scene can tell apart."""

    purposes: tuple[Purpose, ...]
    storeys: tuple[str, ...]


def mentioned(rules: Iterable[SceneRule]) -> Mentioned:
    """Those that selectors name; and, of the other purposes, one of each policy."""
    selectors: list[Selector] = [s for rule in rules for s in (rule.select, *rule.leave_out)]
    named = {s.purpose for s in selectors if s.purpose}
    alike = {(p.all_off, p.unattended_on): key for key, p in PURPOSES.items() if key not in named}
    kept = named | set(alike.values())
    storeys = dict.fromkeys(s.storey for s in selectors if s.storey)
    return Mentioned(tuple(p for p in Purpose if p in kept), tuple(storeys))


def suppositions(
    house: House,
    load_id: str,
    mentioned: Mentioned,
    *,
    fit: bool | None,
    surely: _Reached,
    perhaps: _Reached,
) -> dict[tuple[object, ...], Supposed]:
    """Every supposition, by the values of (purpose, storey, fitness, reach) that it supposes.

    One alone where nothing is unknown. Fitness is varied only where some possible purpose leans on it.
    """
    load: Load = house.loads[load_id]
    room = house.rooms[load.room]
    tags = tags_of(house, load)
    purposes = (load.purpose,) if load.purpose else mentioned.purposes
    storeys: tuple[str | None, ...] = (room.storey,) if room.storey else (*mentioned.storeys, None)
    leans = fit is None and any(needs_fitness(p) for p in purposes)
    fits = (True, False) if leans else (bool(fit),)
    open_reach = sorted(perhaps - surely)
    reaches = [surely | frozenset(more) for more in _subsets(open_reach)]
    return {
        values: Supposed(Seen(load_id, load.room, values[1], values[0], tags), values[2], values[3])
        for values in product(purposes, storeys, fits, reaches)
    }


def _subsets(items: list[tuple[Via, To]]) -> Iterable[tuple[tuple[Via, To], ...]]:
    return chain.from_iterable(combinations(items, n) for n in range(len(items) + 1))


def deciding_unknowns(answers: dict[tuple[object, ...], object]) -> tuple[Unknown, ...]:
    """The unknowns on which the answer hangs: those that change it while the others stand still."""
    found = []
    for index, unknown in enumerate(Unknown):
        groups: dict[tuple[object, ...], set[object]] = {}
        for values, answer in answers.items():
            rest = (*values[:index], *values[index + 1 :])
            groups.setdefault(rest, set()).add(answer)
        if any(len(group) > 1 for group in groups.values()):
            found.append(unknown)
    return tuple(found)
