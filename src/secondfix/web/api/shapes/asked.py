"""Answers about a house as it is meant: radio, choice, names, scenes, walk and worksheets."""

from typing import Literal

from secondfix.joining import Worksheet as WorksheetShape
from secondfix.terms import PowerLossState, Protocol
from secondfix.web.api.shapes.base import Shape
from secondfix.web.api.shapes.found import Assumption, Finding, Look


class Chance(Shape):
    """A chance between 0 and 1, with its range."""

    low: float
    assumed: float
    high: float


class ReachedDevice(Shape):
    """Whether radio is likely to carry one device."""

    id: str
    place: str
    network: str | None
    word: str
    chance: Chance | None
    route: list[str]
    hops: int | None
    hangs_on: list[str]
    needs: list[Look]


class RadioLink(Shape):
    """One link that is not unlikely."""

    network: str
    a: str
    b: str
    word: str
    loss_db: float | None
    cost231_loss_db: float | None
    margin_ab_db: float | None
    margin_ba_db: float | None
    chance: Chance | None
    through: list[str]


class Reached(Shape):
    """The answer of reach; what is null here has a call of its own."""

    devices: list[ReachedDevice]
    links: list[RadioLink]
    foreseen: None
    measured: None
    channels: None
    spread_db: float
    notes: list[str]
    findings: list[Finding]
    assumptions: list[Assumption]


class NamedEntry(Shape):
    """One entry of a device, and what it is called."""

    entry: int
    endpoint: int | None
    kind: str
    name: str
    place: str
    room: str | None
    duty: str | None
    load: str | None
    purpose: str | None
    protocol: Protocol | None
    address: str | None
    stands: bool
    explained: bool


class NamedDevice(Shape):
    """The entries of one device."""

    device: str
    entries: list[NamedEntry]


class Named(Shape):
    """The answer of names."""

    devices: list[NamedDevice]
    findings: list[Finding]
    assumptions: list[Assumption]
    not_asked: list[str]


class WantedGang(Shape):
    """What one gang of a place is to do."""

    id: str
    duty: str
    load: str | None
    extends: str | None
    dimmed: bool


class Wanted(Shape):
    """What a place asks of a model."""

    mounts: list[str]
    protocols: list[Protocol]
    instead_of: list[str]
    gangs: list[WantedGang]


class ModelThatFits(Shape):
    """A model that fits."""

    model: str
    after_power_loss: PowerLossState | None
    used_permille: int | None
    spare_gangs: int
    advice: list[Finding]


class ModelInDoubt(Shape):
    """A model of which it cannot be told."""

    model: str
    after_power_loss: PowerLossState | None
    used_permille: int | None
    unknown: list[Finding]


class ModelRefused(Shape):
    """A model that does not fit, by the first rule that refuses it."""

    model: str
    because: Finding


class Help(Shape):
    """A change that would let models fit."""

    words: str
    place: str
    fits: list[str]


class PlaceChoice(Shape):
    """The choice at one place."""

    place: str
    device: str | None
    wanted: Wanted
    fits: list[ModelThatFits]
    cannot_tell: list[ModelInDoubt]
    refused: list[ModelRefused]
    helps: list[Help]


class Selected(Shape):
    """The answer of select."""

    places: list[PlaceChoice]
    assumptions: list[Assumption]


class Ledger(Shape):
    """The four sums of a scene, and their sum."""

    switched: int
    left_alone: int
    conflict: int
    cannot_tell: int
    loads: int


class Crossing(Shape):
    """What a scene does to one load, and why."""

    load: str
    kind: str
    reason: str
    why: str
    by: list[str]
    to: str | None
    level_pct: int | None
    asked_level_pct: int | None
    device: str | None
    entry: int | None
    refused: list[str]
    worst: str | None
    looks: list[Look]


class SceneCommand(Shape):
    """One command of a scene."""

    device: str
    entry: int
    to: str
    level_pct: int | None


class Span(Shape):
    """A time in milliseconds, with its range."""

    low: int
    value: int
    high: int


class NetworkTime(Shape):
    """How long the commands on one network take."""

    network: str
    protocol: Protocol
    commands: int
    one_by_one_ms: Span | None
    group: str
    as_group_ms: Span | None
    why: str


class SceneTime(Shape):
    """How long a scene takes."""

    one_by_one_ms: Span | None
    as_group_ms: Span | None
    why: str
    networks: list[NetworkTime]


class Scene(Shape):
    """One scene resolved."""

    scene: str
    name: str
    starts: list[str]
    ledger: Ledger
    crossings: list[Crossing]
    commands: list[SceneCommand]
    time: SceneTime | None


class Coming(Shape):
    """When a start comes next; null where it cannot be told."""

    scene: str
    start: str
    at: str | None
    note: str


class Scenes(Shape):
    """The answer of scenes."""

    scenes: list[Scene]
    coming: list[Coming] | None
    findings: list[Finding]
    assumptions: list[Assumption]


class WalkStep(Shape):
    """One step of the walk."""

    number: int
    stage: int
    kind: Literal["isolate", "fit", "energise", "join", "function_test"]
    place: str
    device: str | None
    circuits: list[str]
    words: str
    parent: str | None
    spare: str | None
    links: int | None
    margin_db: float | None
    marks: list[str]


class WalkStage(Shape):
    """What is isolated together, and where hands go."""

    number: int
    circuits: list[str]
    places: list[str]


class Walked(Shape):
    """The answer of walk."""

    steps: list[WalkStep]
    stages: list[WalkStage]
    isolations: int
    walked_mm: int
    exact: bool
    unplaced: list[str]
    findings: list[Finding]
    assumptions: list[Assumption]


class Worksheets(Shape):
    """The answer of worksheet, in the order of the walk."""

    worksheets: list[WorksheetShape]


class CodeRemark(Shape):
    """A fault or warning of a code."""

    id: str
    says: str


class CodeField(Shape):
    """One field of a code; its value is null where it is hidden."""

    name: str
    value: str | int | bool | None
    secret: bool


class CodePart(Shape):
    """One reading."""

    kind: str
    ok: bool
    faults: list[CodeRemark]
    warnings: list[CodeRemark]
    fields: list[CodeField]
    parts: list["CodePart"]


class Agreement(Shape):
    """Whether a text and a manual code say the same; null where it cannot be told."""

    agrees: bool | None
    says: str


class CodeRead(CodePart):
    """The answer of code."""

    agreement: Agreement | None
