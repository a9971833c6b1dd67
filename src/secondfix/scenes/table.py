"""The scene schedule as data: effects down, causes across, in the manner of a cause-and-effect chart."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.scenes.crossing import Crossing, CrossingKind, Ledger, Reason, Resolution
from secondfix.scenes.timing import SceneTime
from secondfix.scenes.wording import time_words, to_words

_DOT = "·"  # no rule names the load


@dataclass(frozen=True, slots=True)
class Cell:
    """What stands at a crossing: a few words, the sentence behind them, and whether it calls for a note."""

    words: str
    why: str
    noted: bool


@dataclass(frozen=True, slots=True)
class Column:
    """One scene: its name, what starts it, its ledger; ``time`` to complete, one by one and as a group."""

    scene_id: str
    name: str
    starts: tuple[str, ...]
    ledger: Ledger
    time: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True)
class SceneSchedule:
    """Columns are scenes; rows are loads, each with one cell per column."""

    columns: tuple[Column, ...]
    rows: tuple[tuple[str, tuple[Cell, ...]], ...]


def scene_schedule(resolutions: tuple[Resolution, ...], times: Iterable[SceneTime] = ()) -> SceneSchedule:
    """The chart of all scenes; loads in the order of the document; times where they are given."""
    words = {time.scene_id: time_words(time) for time in times}
    columns = tuple(
        Column(r.scene_id, r.name, r.starts, r.ledger, words.get(r.scene_id)) for r in resolutions
    )
    loads = resolutions[0].crossings if resolutions else {}
    rows = tuple((load, tuple(_cell(r.crossings[load]) for r in resolutions)) for load in loads)
    return SceneSchedule(columns, rows)


def _cell(crossing: Crossing) -> Cell:
    noted = bool(crossing.refused) or crossing.kind in {CrossingKind.CONFLICT, CrossingKind.CANNOT_TELL}
    return Cell(_words(crossing), crossing.why, noted)


def _words(crossing: Crossing) -> str:
    if crossing.kind is CrossingKind.SWITCHED:
        return to_words(crossing.to or "", crossing.level_pct)
    if crossing.kind is CrossingKind.LEFT_ALONE:
        return {Reason.NO_RULE: _DOT, Reason.REFUSED: "refused"}.get(crossing.reason, "left alone")
    return "conflict" if crossing.kind is CrossingKind.CONFLICT else "cannot tell"
