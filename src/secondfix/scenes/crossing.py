"""The answer for one scene and one load, and for one scene as a whole."""

from collections import Counter
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Literal

from secondfix.findings import Look, Severity

To = Literal["on", "off"]


class CrossingKind(StrEnum):
    """What a scene does to a load: exactly one of the four."""

    SWITCHED = "switched"
    LEFT_ALONE = "left_alone"
    CONFLICT = "conflict"
    CANNOT_TELL = "cannot_tell"


class Reason(StrEnum):
    """Why a crossing is what it is."""

    RULE = "rule"
    DIRECT_COMMAND = "direct_command"
    WHOLE_ENTRY = "whole_entry"
    NO_RULE = "no_rule"
    EXCEPTION = "exception"
    POLICY = "policy"
    REFUSED = "refused"
    RULES_DIFFER = "rules_differ"
    DIRECT_DIFFERS = "direct_differs"
    DIRECT_LEFT_OUT = "direct_left_out"
    WHOLE_DIFFERS = "whole_differs"
    WHOLE_LEFT_OUT = "whole_left_out"
    PURPOSE_NOT_KNOWN = "purpose_not_known"
    STOREY_NOT_KNOWN = "storey_not_known"
    FITNESS_NOT_KNOWN = "fitness_not_known"
    REACH_NOT_KNOWN = "reach_not_known"
    FED_BY_NOTHING = "fed_by_nothing"
    NO_DEVICE = "no_device"
    NO_OUTPUT = "no_output"


@dataclass(frozen=True, slots=True)
class Crossing:
    """One scene, one load.

    ``to`` and ``level_pct`` (1..100, None where none is set) are given where the load is switched, with the
    device and its entry (gangs from 1). ``asked_level_pct`` is what the rules say, also where the output
    cannot follow. ``by`` are the rules and commands that speak, in words, in alphabetical order.
    ``refused`` holds the demands that the policy of the purpose refuses. ``why`` is one sentence.
    ``worst`` is danger where a demand is refused or a whole-device entry says what is, else how bad a
    *cannot tell* may be; ``looks`` are what would settle one.
    """

    scene_id: str
    load_id: str
    kind: CrossingKind
    reason: Reason
    why: str
    by: tuple[str, ...] = ()
    to: To | None = None
    level_pct: int | None = None
    asked_level_pct: int | None = None
    device_id: str | None = None
    entry: int | None = None
    refused: tuple[To, ...] = ()
    worst: Severity | None = None
    looks: tuple[Look, ...] = ()


@dataclass(frozen=True, slots=True)
class Planned:
    """One command to send: always to the entry of a gang, never to a whole-device entry."""

    device_id: str
    entry: int
    to: To
    level_pct: int | None


@dataclass(frozen=True, slots=True)
class Ledger:
    """How many loads are of each kind; the four add up to all loads of the house."""

    switched: int
    left_alone: int
    conflict: int
    cannot_tell: int

    @property
    def loads(self) -> int:
        """All loads of the house."""
        return self.switched + self.left_alone + self.conflict + self.cannot_tell


@dataclass(frozen=True, slots=True)
class Resolution:
    """One scene: a crossing for every load, in the order of the document; the commands to send, in order."""

    scene_id: str
    name: str
    starts: tuple[str, ...]
    crossings: dict[str, Crossing] = field(default_factory=dict)
    commands: tuple[Planned, ...] = ()

    @property
    def ledger(self) -> Ledger:
        """The count of crossings by kind."""
        counts = Counter(c.kind for c in self.crossings.values())
        return Ledger(*(counts[kind] for kind in CrossingKind))

    @property
    def decided(self) -> bool:
        """Whether no crossing is *cannot tell*."""
        return all(c.kind is not CrossingKind.CANNOT_TELL for c in self.crossings.values())
