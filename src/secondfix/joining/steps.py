"""The walk as an answer: steps in order, stages, and what was counted."""

from dataclasses import asdict, dataclass
from enum import StrEnum

from secondfix.terms import said


class StepKind(StrEnum):
    """What is done in one step of the walk."""

    ISOLATE = "isolate"
    FIT = "fit"
    ENERGISE = "energise"
    JOIN = "join"
    FUNCTION_TEST = "function_test"


class Mark(StrEnum):
    """What is not as it should be with a step; each is also a finding."""

    LINK_NOT_KNOWN = "link not known"
    NO_GOOD_PARENT = "no good parent"
    CIRCUIT_NOT_KNOWN = "circuit not known"
    NETWORK_NOT_STATED = "network not stated"
    BENCH = "join before fitting, on a bench"


def stage_words(stage: int, *, nec: bool = False) -> str:
    """``Before any isolation``, or ``Stage 3``: the same on the walk and on every sheet."""
    return f"Stage {stage}" if stage else said("Before any isolation", nec=nec)


@dataclass(frozen=True, slots=True)
class WalkStep:
    """One step.

    ``stage`` is 0 for what comes before any isolation; ``place`` a box or place id, empty
    for isolate and energise; ``device`` None there. ``circuits`` are those isolated or energised, or
    those among which a device is fitted. For a join: ``parent`` and ``spare`` are device ids or
    ``controller``, None where there is no good one; ``links`` counts the links to the controller
    through the parent; ``margin_db`` is that of the link to the parent, to a tenth, None where not
    known. For a device joined on a bench they are told by its function test, where it is then fitted.
    """

    number: int
    stage: int
    kind: StepKind
    place: str
    device: str | None
    circuits: tuple[str, ...]
    words: str
    parent: str | None = None
    spare: str | None = None
    links: int | None = None
    margin_db: float | None = None
    marks: tuple[Mark, ...] = ()


@dataclass(frozen=True, slots=True)
class WalkStage:
    """One stage: what is isolated together (none where nothing is), and the places where hands go."""

    number: int
    circuits: tuple[str, ...]
    places: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Walk:
    """The whole order.

    ``isolations`` counts isolated groups, one for each that has wired devices; ``walked_mm`` is the
    way between stops (to and from the board left out); ``exact`` tells that no order is shorter;
    ``unplaced`` are places whose position is not known, for which assumed distances stand.
    """

    steps: tuple[WalkStep, ...]
    stages: tuple[WalkStage, ...]
    isolations: int
    walked_mm: int
    exact: bool
    unplaced: tuple[str, ...]

    def joins(self) -> tuple[WalkStep, ...]:
        """The join steps, one for each device of the house."""
        return tuple(s for s in self.steps if s.kind is StepKind.JOIN)


def walk_as_json(walk: Walk) -> dict[str, object]:
    """The walk as plain values: ``steps``, ``stages`` and the counts; shapes in docs/json.md."""
    return {
        "steps": [_plain(asdict(step)) for step in walk.steps],
        "stages": [_plain(asdict(stage)) for stage in walk.stages],
        "isolations": walk.isolations,
        "walked_mm": walk.walked_mm,
        "exact": walk.exact,
        "unplaced": list(walk.unplaced),
    }


def _plain(fields: dict[str, object]) -> dict[str, object]:
    def value(v: object) -> object:
        if isinstance(v, tuple):
            return [str(x) for x in v]
        return v.value if isinstance(v, StrEnum) else v

    return {k: value(v) for k, v in fields.items()}
