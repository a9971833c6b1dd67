"""Which loads a selector selects, once the load's purpose and storey are supposed."""

from dataclasses import dataclass

from secondfix.house import House, Load, SceneRule, Selector
from secondfix.terms import Purpose


@dataclass(frozen=True, slots=True)
class Seen:
    """A load as a selector sees it; ``storey`` is None for a storey that no selector of the scene names.

    Its tags are its own and those of its room.
    """

    load_id: str
    room: str
    storey: str | None
    purpose: Purpose
    tags: frozenset[str]


def tags_of(house: House, load: Load) -> frozenset[str]:
    """A load answers to its own tags and to those of its room."""
    return frozenset((*load.tags, *house.rooms[load.room].tags))


def selects(selector: Selector, seen: Seen) -> bool:
    """Whether every criterion given fits; ``every_load`` fits all."""
    pairs = (
        (selector.purpose, seen.purpose),
        (selector.room, seen.room),
        (selector.storey, seen.storey),
        (selector.load, seen.load_id),
    )
    return all(wanted is None or wanted == stands for wanted, stands in pairs) and (
        selector.tag is None or selector.tag in seen.tags
    )


def left_out(rule: SceneRule, seen: Seen) -> bool:
    """Whether an exception of the rule takes the load out of it."""
    return any(selects(selector, seen) for selector in rule.leave_out)


def names_itself(rule: SceneRule) -> bool:
    """Whether the rule names one load, and not a kind of load."""
    return rule.select.load is not None
