"""Answers about a house as it was found: as-built, function test, swap, a controller's list."""

from typing import Any, Literal

from secondfix.maintenance import Ask, Kept, Loss, Reason, Suspect, Teach, Unlike, Way
from secondfix.web.api.shapes.base import Shape
from secondfix.web.api.shapes.found import Finding


class Difference(Shape):
    """Where the house was found other than it was designed."""

    place: str
    field: str
    designed: str
    found: str
    says: str
    entries: list[str]


class Remark(Shape):
    """What an entry shows beside the document."""

    place: str
    says: str
    entry: str


class Conflict(Shape):
    """Entries that differ and did not see each other."""

    subject: str
    aspect: str
    entries: list[dict[str, Any]]


class ToldOfEntry(Shape):
    """What is told of one entry."""

    entry: str
    words: str
    serious: bool


class AsBuilt(Shape):
    """The answer of as-built (docs/journal.md)."""

    house: str
    differences: list[Difference]
    remarks: list[Remark]
    conflicts: list[Conflict]
    open_snags: list[dict[str, Any]]
    unknown: list[dict[str, Any]]
    told: list[ToldOfEntry]
    counted: int
    withdrawn: list[str]
    not_adopted: list[str]
    findings: list[Finding]


class Press(Shape):
    """One gang or entry of the function test."""

    subject: str
    place: str
    device: str | None
    expected: list[str] | None
    answered: list[str]
    also_answered: str
    worked: str
    entry: str | None
    since: str | None


class Crossed(Shape):
    """Gangs or entries whose loads are exchanged."""

    gangs: list[str]
    exchange: list[list[str]]
    rename: dict[str, str]


class Shared(Shape):
    """A load that several gangs work."""

    load: str
    gangs: list[str]


class TestedScene(Shape):
    """One scene of the function test."""

    scene: str
    tested: str | None
    disputed: bool
    as_expected: bool
    missing: list[str]
    extra: list[str]
    wrong_way: list[str]
    also_answered: str
    since: str | None


class Tested(Shape):
    """The answer of test (docs/journal.md)."""

    presses: list[Press]
    true_map: dict[str, list[str]]
    crossed_gangs: list[Crossed]
    crossed_entries: list[Crossed]
    shared: list[Shared]
    scenes: list[TestedScene]
    findings: list[Finding]


class Fit(Shape):
    """One device that takes over."""

    device: str
    model: str
    network: str | None
    box: str | None
    mounts: list[str]
    gangs: list[str]
    place: str | None
    outputs: dict[str, str]
    takes_over: dict[str, int]


class NearestModel(Shape):
    """A model near to what stood there."""

    model: str
    outcome: Literal["kept", "kept_with_losses", "refused"]
    losses: list[Loss]


class Removal(Shape):
    """How the failed device leaves its network."""

    way: Way
    keeps_node: bool
    source: str


class Snag(Shape):
    """A snag that stands open at the place."""

    entry: str
    subject: str
    words: str


class SwapStep(Shape):
    """One step of the visit."""

    number: int
    kind: str
    words: str


class Swapped(Shape):
    """The answer of swap."""

    device: str
    title: str
    place: str
    outcome: Literal["kept", "kept_with_losses", "refused"]
    for_tonight: bool
    fits: list[Fit]
    losses: list[Loss]
    reasons: list[Reason]
    nearest: list[NearestModel]
    notes: list[str]
    open: list[Finding]
    removal: Removal
    outside_uses: list[Ask]
    teach: list[Teach]
    children: list[str] | None
    open_snags: list[Snag]
    steps: list[SwapStep]
    entries: list[dict[str, Any]]


class Suspected(Shape):
    """Which devices may have fallen silent."""

    suspects: list[Suspect]
    unknown: list[str]


class Rejoin(Shape):
    """One device to be joined again."""

    device: str
    place: str
    words: str
    removal: str


class WorkPart(Shape):
    """One part of the work: how often, and minutes as low, value, high."""

    what: str
    count: int
    minutes: list[float]


class Rebuilt(Shape):
    """What is to be done after a controller was replaced."""

    network: str
    kept: Kept
    survives: list[str]
    again: list[str]
    outside_uses: list[str]
    order: list[Rejoin]
    parts: list[WorkPart]
    minutes: list[float]
    assumptions: list[str]
    entries: list[dict[str, Any]]


class Unlikeness(Shape):
    """One row or device in which list and house differ, and the step that mends it."""

    kind: Unlike
    row: int | None
    device: str | None
    entry: int | None
    says: str
    step: str
    writes: dict[str, Any] | None


class Held(Shape):
    """The answer of a list held against the house."""

    rows: int
    agreed: int
    told: list[str]
    differences: list[Unlikeness]
