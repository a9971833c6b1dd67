"""Selectors that select no load of the house."""

from collections.abc import Iterator

from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import House, Scene, Selector, load_words, purpose_look, storey_look
from secondfix.scenes.asked import Asked
from secondfix.scenes.selecting import tags_of
from secondfix.scenes.wording import selector_words

RULE = Rule("scenes.selects", "Does every selector select at least one load?", "common practice, no source")
RULES = (RULE,)


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per scene, or one per selector without a load."""
    house = asked.schedule.house
    fitting: dict[Selector, list[str] | None] = {}
    for scene_id, scene in house.scenes.items():
        selectors = _selectors(scene)
        for selector in selectors:
            if selector not in fitting:
                fitting[selector] = _perhaps(house, selector)
        found = [f for s in selectors for f in _one(house, scene_id, s, fitting[s])]
        yield from found
        if scene.rules and not found:
            yield passes(RULE, scene_id)


def _selectors(scene: Scene) -> list[Selector]:
    every = [s for rule in scene.rules for s in (rule.select, *rule.leave_out)]
    return list(dict.fromkeys(every))


def _perhaps(house: House, selector: Selector) -> list[str] | None:
    """Loads that it may select where it surely selects none; None where it surely selects one."""
    maybe = []
    for load_id in house.loads:
        fits = _fits(house, load_id, selector)
        if fits:
            return None
        if fits is None:
            maybe.append(load_id)
    return maybe


def _one(house: House, scene_id: str, selector: Selector, maybe: list[str] | None) -> Iterator[Finding]:
    if maybe is None:
        return
    words = selector_words(house, selector)
    if maybe:
        looks = [look for load_id in maybe for look in _looks(house, load_id, selector)]
        says = f"It is not known whether '{words}' selects any load."
        yield cannot_tell(RULE, Severity.ADVICE, scene_id, says, looks=looks, also=maybe)
        return
    yield fails(
        RULE,
        Severity.ADVICE,
        scene_id,
        f"'{words}' selects no load.",
        value="0 loads",
        limit="at least 1 load",
        remedy="Correct the tag, room, storey or purpose, or take the selector out.",
    )


def _fits(house: House, load_id: str, selector: Selector) -> bool | None:
    """Whether a load is selected; None where its purpose or storey would decide and is not known."""
    load = house.loads[load_id]
    storey = house.rooms[load.room].storey
    pairs = (
        (selector.room, load.room, False),
        (selector.load, load_id, False),
        (selector.purpose, load.purpose, load.purpose is None),
        (selector.storey, storey, storey is None),
    )
    if selector.tag and selector.tag not in tags_of(house, load):
        return False
    if any(wanted and not unknown and wanted != stands for wanted, stands, unknown in pairs):
        return False
    return None if any(wanted and unknown for wanted, _, unknown in pairs) else True


def _looks(house: House, load_id: str, selector: Selector) -> Iterator[Look]:
    load = house.loads[load_id]
    if selector.purpose and load.purpose is None:
        yield purpose_look(load_id, load_words(house, load_id))
    if selector.storey and house.rooms[load.room].storey is None:
        yield storey_look(load.room)
