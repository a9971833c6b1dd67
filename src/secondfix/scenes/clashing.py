"""Scenes that start at the same moment and disagree on a load."""

from collections.abc import Iterator
from itertools import combinations

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Scene, Start
from secondfix.scenes.asked import Asked
from secondfix.scenes.crossing import Crossing, CrossingKind, Resolution
from secondfix.scenes.wording import start_words, to_words

RULE = Rule(
    "scenes.times_clash",
    "Do scenes that start at the same moment agree on every load?",
    "common practice, no source",
)
RULES = (RULE,)
_EVERY_DAY = frozenset({"mon", "tue", "wed", "thu", "fri", "sat", "sun"})
_TOLD = {CrossingKind.SWITCHED, CrossingKind.CANNOT_TELL}


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per scene that starts by time or sun, or one per pair of scenes that clash or may.

    The same moment: the same time of day, or the same offset from the same sunrise or sunset, on a day
    that both have. Leaves out: a clock time that a sunset crosses on a few days of the year.
    """
    timed = [r for r in asked.resolutions if any(map(_moment, _scene(asked, r).starts))]
    troubled: set[str] = set()
    for a, b in combinations(timed, 2):
        shared = _shared(_scene(asked, a), _scene(asked, b))
        if shared is None:
            continue
        found = list(_pair(asked, a, b, shared))
        yield from found
        if found or asked.reaches_any_load(a) or asked.reaches_any_load(b):
            troubled |= {a.scene_id, b.scene_id}
    for one in timed:
        if one.scene_id not in troubled:
            yield passes(RULE, one.scene_id)


def _scene(asked: Asked, resolution: Resolution) -> Scene:
    return asked.schedule.house.scenes[resolution.scene_id]


def _moment(start: Start) -> tuple[str, int] | None:
    """What makes two starts the same moment, days apart."""
    if start.at:
        return start.at, 0
    return (start.sun, start.offset_min or 0) if start.sun else None


def _shared(a: Scene, b: Scene) -> Start | None:
    """A start of the first that is also one of the second, on some day."""
    for one in a.starts:
        for other in b.starts:
            same_day = (frozenset(one.days) or _EVERY_DAY) & (frozenset(other.days) or _EVERY_DAY)
            if _moment(one) and _moment(one) == _moment(other) and same_day:
                return one
    return None


def _pair(asked: Asked, a: Resolution, b: Resolution, start: Start) -> Iterator[Finding]:
    both = [(x, b.crossings[load]) for load, x in a.crossings.items()]
    met = [(x, y) for x, y in both if x.kind in _TOLD and y.kind in _TOLD]
    open_ones = [(x, y) for x, y in met if CrossingKind.CANNOT_TELL in {x.kind, y.kind}]
    clashing = [(x, y) for x, y in met if (x, y) not in open_ones and _demand(x) != _demand(y)]
    words = f"{a.scene_id} and {b.scene_id} both start at {start_words(start)}"
    if clashing:
        yield fails(
            RULE,
            Severity.FAULT,
            a.scene_id,
            f"{words} and say different things: {'; '.join(_words(asked, x, y) for x, y in clashing)}.",
            value=f"{len(clashing)} loads" if len(clashing) > 1 else "1 load",
            limit="one demand per load at one moment; there is no order among scenes",
            remedy="Start one of them some minutes later, or take the load out of one.",
            also=(b.scene_id, *(x.load_id for x, _ in clashing)),
        )
    if open_ones:
        looks = dict.fromkeys(look for pair in open_ones for one in pair for look in one.looks)
        yield cannot_tell(
            RULE,
            Severity.FAULT,
            a.scene_id,
            f"{words}; whether they say the same to every load is not known.",
            looks=list(looks),
            also=(b.scene_id, *(x.load_id for x, _ in open_ones)),
        )


def _demand(crossing: Crossing) -> tuple[str | None, int | None]:
    return crossing.to, crossing.asked_level_pct


def _words(asked: Asked, x: Crossing, y: Crossing) -> str:
    says = [to_words(c.to or "", c.asked_level_pct) for c in (x, y)]
    return f"{asked.load_words(x.load_id)} {says[0]} and {says[1]}"
