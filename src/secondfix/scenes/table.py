"""The scene schedule as data: effects down, causes across, in the manner of a cause-and-effect chart."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.findings import Severity
from secondfix.house import House
from secondfix.scenes.crossing import Crossing, CrossingKind, Ledger, Reason, Resolution
from secondfix.scenes.timing import SceneTime
from secondfix.scenes.wording import time_words, to_words

_DOT = "·"  # no rule names the load


@dataclass(frozen=True, slots=True)
class Cell:
    """What stands at a crossing: a few words, and the sentence behind them.

    ``shape`` is that of the legend which a crossing that calls for a note wears: danger, fault or
    cannot_tell; empty for any other.
    """

    words: str
    why: str
    shape: str

    @property
    def noted(self) -> bool:
        """Whether it calls for a note."""
        return bool(self.shape)

    @property
    def named(self) -> bool:
        """Whether any rule or command speaks of the load."""
        return self.words != _DOT


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
    rows = tuple((load, tuple(cell_of(r.crossings[load]) for r in resolutions)) for load in loads)
    return SceneSchedule(columns, rows)


def by_room(house: House, chart: SceneSchedule) -> list[tuple[str, tuple[Cell, ...]]]:
    """The rows, room by room in the order of the document."""
    rooms = list(house.rooms)
    return sorted(chart.rows, key=lambda row: rooms.index(house.loads[row[0]].room))


def cell_of(crossing: Crossing) -> Cell:
    """What the chart shows at one crossing."""
    return Cell(_words(crossing), crossing.why, _shape(crossing))


def _shape(crossing: Crossing) -> str:
    if crossing.kind is CrossingKind.CANNOT_TELL:
        return "cannot_tell"
    if crossing.kind is CrossingKind.CONFLICT:
        return "danger" if crossing.worst is Severity.DANGER else "fault"
    return "danger" if crossing.refused else ""


def _words(crossing: Crossing) -> str:
    if crossing.kind is CrossingKind.SWITCHED:
        return to_words(crossing.to or "", crossing.level_pct)
    if crossing.kind is CrossingKind.LEFT_ALONE:
        return {Reason.NO_RULE: _DOT, Reason.REFUSED: "refused"}.get(crossing.reason, "left alone")
    return "conflict" if crossing.kind is CrossingKind.CONFLICT else "cannot tell"
