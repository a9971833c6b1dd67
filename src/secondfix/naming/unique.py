"""No two names of a house read alike."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import duty_look, model_look
from secondfix.naming.folding import folded
from secondfix.naming.named import Called, Named

RULE = Rule(
    "names.unique",
    "Is every name the only one of its kind over rooms, scenes and entries?",
    "common practice, no source",
)


def check(called: Called) -> Iterator[Finding]:
    """One answer per name; names that clash answer once, at the first of them in the document's order."""
    groups: dict[str, list[Named]] = {}
    for thing in called.things:
        groups.setdefault(folded(thing.name), []).append(thing)
    for group in groups.values():
        settled = [t for t in group if t.settled]
        if len(settled) > 1:
            yield _clash(group)
        elif len(group) > 1:
            yield _perhaps(called, group)
        elif settled:
            yield passes(RULE, group[0].place, value=group[0].name, also=group[0].also)


def _clash(group: list[Named]) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        group[0].place,
        f"'{group[0].name}' is the name of {_listed(group)}.",
        value=", ".join(f"'{t.name}'" for t in group),
        limit="one name each, whatever the case and the spaces",
        remedy="Rename all but one of them, or take a further part into the naming policy.",
        also=_also(group),
    )


def _perhaps(called: Called, group: list[Named]) -> Finding:
    unknown = [t for t in group if not t.settled]
    looks = tuple(
        model_look(t.place)
        if t.place in called.schedule.house.devices
        else duty_look(called.schedule.rows[t.place])
        for t in unknown
    )
    return cannot_tell(
        RULE,
        Severity.FAULT,
        group[0].place,
        f"'{group[0].name}' may become the name of {_listed(group)}.",
        looks=looks,
        limit="one name each, whatever the case and the spaces",
        also=_also(group),
    )


def _listed(group: list[Named]) -> str:
    return " and of ".join(t.words for t in group)


def _also(group: list[Named]) -> tuple[str, ...]:
    ids = [i for t in group for i in (t.place, *t.also)]
    return tuple(i for i in dict.fromkeys(ids) if i != group[0].place)
