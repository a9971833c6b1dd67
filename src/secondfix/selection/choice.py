"""What is asked at one place, and the answer: which models fit, which do not and why, what would help."""

from dataclasses import dataclass

from secondfix.findings import Finding, Look
from secondfix.house import Duty
from secondfix.terms import PowerLossState, Protocol


@dataclass(frozen=True, slots=True)
class WantedGang:
    """One gang of the switch-to-be, or one output of a module: what it is to do.

    ``id`` is the gang's (``B07.2``), or the load's at a light point; ``dimmed`` where it is to be dimmed.
    """

    id: str
    duty: Duty
    load_id: str | None
    extends: str | None
    dimmed: bool


@dataclass(frozen=True, slots=True)
class Spot:
    """Where one device is to stand: mounts and gangs of a wall box, or a light point with its loads.

    ``device_id`` is the device that stands or is intended there, None where none is; ``protocols`` are those
    that would do, empty where any would; ``instead_of`` the gangs that feed all its loads now, where a light
    point is another way to do what a switch does already.
    """

    place: str
    mounts: tuple[str, ...]
    gangs: tuple[WantedGang, ...]
    device_id: str | None
    protocols: tuple[Protocol, ...]
    in_box: bool
    instead_of: tuple[str, ...] = ()

    @property
    def outputs(self) -> tuple[WantedGang, ...]:
        """The gangs that feed a load."""
        return tuple(g for g in self.gangs if g.duty is Duty.FEEDS)


@dataclass(frozen=True, slots=True)
class Fit:
    """A model against which nothing is found at the place.

    ``set_to`` is the state after a power loss that it must be set to, None where any will do;
    ``used_permille`` how much of its tightest printed current is used, None where that is not known;
    ``advice`` what could still be better.
    """

    model: str
    set_to: PowerLossState | None
    used_permille: int | None
    spare_gangs: int
    advice: tuple[Finding, ...]


@dataclass(frozen=True, slots=True)
class Doubt:
    """A model of which it cannot be told; ``unknown`` says why, each with its looks."""

    model: str
    set_to: PowerLossState | None
    used_permille: int | None
    unknown: tuple[Finding, ...]

    @property
    def looks(self) -> tuple[Look, ...]:
        """Everything that would settle it."""
        return tuple(dict.fromkeys(look for f in self.unknown for look in f.looks))


@dataclass(frozen=True, slots=True)
class Refusal:
    """A model that does not do, by the first rule that says so."""

    model: str
    because: Finding


@dataclass(frozen=True, slots=True)
class Help:
    """One change, tried on a copy of the house, after which ``fits`` fit at ``place``."""

    words: str
    place: str
    fits: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PlaceChoice:
    """The answer at one place. Every model of the catalogue stands in exactly one of the three lists.

    ``fits`` and ``doubts`` come best first: fewest unknowns, then the widest margin. That is no price.
    ``helps`` is filled where nothing fits. ``leans_on`` names the assumptions of all these verdicts.
    """

    spot: Spot
    fits: tuple[Fit, ...]
    doubts: tuple[Doubt, ...]
    refused: tuple[Refusal, ...]
    helps: tuple[Help, ...]
    leans_on: tuple[str, ...] = ()
