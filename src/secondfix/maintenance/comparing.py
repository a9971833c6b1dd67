"""Scenes before and after a swap, load by load: what each does differently."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from secondfix.findings import Severity
from secondfix.house import House
from secondfix.scenes import Crossing, CrossingKind, Resolution


class Turn(StrEnum):
    """How what a scene does to a load turned with the swap."""

    LEVEL_LOST = "level_lost"
    LEVEL_FOLLOWED = "level_followed"
    NO_LONGER = "no_longer"
    NOT_TOLD = "not_told"
    TOLD_NOW = "told_now"
    SWITCHES_MORE = "switches_more"
    OTHER_WAY = "other_way"
    HAZARD = "hazard"


REFUSED = frozenset({Turn.SWITCHES_MORE, Turn.OTHER_WAY, Turn.HAZARD})
"""What no customer may accept: a scene that reaches what it left alone, or does what a policy refuses."""


@dataclass(frozen=True, slots=True)
class Change:
    """One load of one scene that is switched differently, and why, in one sentence."""

    scene: str
    load: str
    turn: Turn
    words: str


def compare(house: House, before: Sequence[Resolution], after: Sequence[Resolution]) -> tuple[Change, ...]:
    """Every crossing that differs, by scene and load. Both are of houses with the same scenes and loads."""
    return tuple(_changes(house, before, after))


def _changes(house: House, before: Sequence[Resolution], after: Sequence[Resolution]) -> Iterator[Change]:
    for was, now in zip(before, after, strict=True):
        for load_id, old in was.crossings.items():
            new = now.crossings[load_id]
            turn = turned(old, new)
            if turn is not None:
                which = f"'{was.name}' and {load_words(house, load_id)}"
                words = f"{which}: before, {_said(old)}; now, {_said(new)}. {new.why}"
                yield Change(was.scene_id, load_id, turn, words)


def turned(old: Crossing, new: Crossing) -> Turn | None:
    """How one crossing turned, None where it says the same."""
    if new.worst is Severity.DANGER and old.worst is not Severity.DANGER:
        return Turn.HAZARD
    if old.kind is CrossingKind.SWITCHED:
        return _from_switched(old, new)
    if new.kind is old.kind:
        return None
    if new.kind is CrossingKind.CONFLICT:
        return Turn.SWITCHES_MORE
    if old.kind is CrossingKind.LEFT_ALONE:
        return Turn.SWITCHES_MORE if new.kind is CrossingKind.SWITCHED else Turn.NOT_TOLD
    return Turn.NOT_TOLD if new.kind is CrossingKind.CANNOT_TELL else Turn.TOLD_NOW


def _from_switched(old: Crossing, new: Crossing) -> Turn | None:
    if new.kind is CrossingKind.CONFLICT or (new.to is not None and new.to != old.to):
        return Turn.OTHER_WAY
    if new.kind is CrossingKind.SWITCHED:
        if new.level_pct == old.level_pct:
            return None
        return Turn.LEVEL_LOST if new.level_pct is None else Turn.LEVEL_FOLLOWED
    return Turn.NO_LONGER


def load_words(house: House, load_id: str) -> str:
    """``L07 Ceiling (Hall)``."""
    load = house.loads[load_id]
    return f"{load_id} {load.name} ({house.rooms[load.room].name})"


def _said(crossing: Crossing) -> str:
    if crossing.kind is not CrossingKind.SWITCHED:
        return {
            CrossingKind.LEFT_ALONE: "left alone",
            CrossingKind.CONFLICT: "a conflict",
            CrossingKind.CANNOT_TELL: "not to be told",
        }[crossing.kind]
    return f"{crossing.to}" + (f" {crossing.level_pct} %" if crossing.level_pct else "")
