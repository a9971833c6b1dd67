"""The answer to a swap."""

from dataclasses import dataclass
from enum import StrEnum

from secondfix.findings import Finding
from secondfix.house import House
from secondfix.joining import Worksheet
from secondfix.maintenance.comparing import Change
from secondfix.maintenance.dangers import Reason
from secondfix.maintenance.expected import Expected
from secondfix.maintenance.losses import Loss
from secondfix.maintenance.removal import Removal
from secondfix.maintenance.replacing import Fit
from secondfix.maintenance.teaching import Ask, Teach


class Outcome(StrEnum):
    """What a swap comes to. *Kept*: every scene switches the same loads the same way, and nothing is lost."""

    KEPT = "kept"
    LOSSES = "kept_with_losses"
    REFUSED = "refused"


OUTCOME_WORDS = {
    Outcome.KEPT: "kept",
    Outcome.LOSSES: "kept, with the losses named below, if the customer accepts them",
    Outcome.REFUSED: "refused",
}


@dataclass(frozen=True, slots=True)
class Nearest:
    """A model that would do in the same place, chosen by the same question, and what it would lose."""

    model: str
    title: str
    outcome: Outcome
    losses: tuple[Loss, ...]


class StepKind(StrEnum):
    """What is done in one step of a swap."""

    ASK = "ask"
    CAPTURE = "capture"
    REMOVE = "remove"
    ISOLATE = "isolate"
    FIT = "fit"
    ENERGISE = "energise"
    JOIN = "join"
    SET = "set"
    TEACH = "teach"
    HEAR = "hear"
    TEST = "test"
    RECORD = "record"


@dataclass(frozen=True, slots=True)
class SwapStep:
    """One step of the visit, in words."""

    number: int
    kind: StepKind
    words: str


@dataclass(frozen=True, slots=True)
class OpenSnag:
    """A snag that stands open at the place of the swap: the id of its entry, its subject and words."""

    entry: str
    subject: str
    words: str


@dataclass(frozen=True, slots=True)
class SwapPlan:
    """A swap worked out; nothing is written by it.

    ``open`` are answers about the place that cannot be told: look before fitting. ``after`` is the house as
    the expected entries would make it, None where no such house can be. ``children`` hang on the failed
    device by radio, None where nobody asked radio. ``for_tonight``: something is lost that a model of
    ``nearest`` would keep. ``snags`` stand open at the place, perhaps undone by this swap. Steps,
    entries and sheets are empty where it is refused.
    """

    failed: str
    title: str
    place: str
    outcome: Outcome
    fits: tuple[Fit, ...]
    losses: tuple[Loss, ...]
    reasons: tuple[Reason, ...]
    notes: tuple[str, ...]
    open: tuple[Finding, ...]
    changes: tuple[Change, ...]
    removal: Removal
    asks: tuple[Ask, ...]
    children: tuple[str, ...] | None
    after: House | None
    nearest: tuple[Nearest, ...]
    teach: tuple[Teach, ...] = ()
    steps: tuple[SwapStep, ...] = ()
    sheets: tuple[Worksheet, ...] = ()
    entries: tuple[Expected, ...] = ()
    snags: tuple[OpenSnag, ...] = ()

    @property
    def for_tonight(self) -> bool:
        """Whether it loses what another model at hand would keep."""
        return self.outcome is Outcome.LOSSES and any(n.outcome is Outcome.KEPT for n in self.nearest)
