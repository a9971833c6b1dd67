"""What `foresee` answers: chances by device, and cases of something gone, moved or added."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from secondfix.radio.answers import Word
from secondfix.radio.engine.chances import DeviceChance, Drawn

LEAST_GAIN = 0.05  # of a device: less is next to nothing


class CaseKind(StrEnum):
    """What is different in a case."""

    REPEATER_GONE = "repeater_gone"
    PULLED = "pulled"
    ALL_PULLED = "all_pulled"
    TRIPPED = "tripped"
    CONTROLLER_MOVED = "controller_moved"
    SOCKET_HELPS = "socket_helps"


@dataclass(frozen=True, slots=True)
class Case:
    """One case of one network, its chances counted in the same draws as those without it.

    ``id`` names the device, circuit or place; ``gone`` the devices without power in it, and the network
    where its controller has none. ``chance`` has only the devices whose chance is another then. ``falls``:
    in the mean likely before and not likely then, in the order of the network; ``rises``: the other way.
    Of devices whose word is not known neither is told. ``gained``: how many more devices are reached in
    the mean (below 0: fewer), those that are themselves gone not counted. ``holds``, of a socket: who falls
    when one of the three repeaters goes whose loss costs most, and would not with the device plugged in.
    """

    kind: CaseKind
    network: str
    id: str
    words: str
    gone: tuple[str, ...]
    chance: Mapping[str, Drawn]
    falls: tuple[str, ...]
    rises: tuple[str, ...]
    gained: float
    holds: tuple[str, ...] = ()

    @property
    def helps(self) -> bool:
        """Whether it is worth doing: somebody is reached more often, or hangs on one repeater no longer."""
        return self.gained >= LEAST_GAIN or bool(self.holds)


@dataclass(frozen=True, slots=True)
class NetworkForeseen:
    """One network: every device whose place is known, in its order; ``words`` by device.

    ``not_known`` are the devices of which no chance can be told: their place is not on the plan, or the
    controller's. ``cases`` by kind, then the one that costs or brings most first.
    """

    network: str
    devices: tuple[DeviceChance, ...]
    words: Mapping[str, Word]
    not_known: tuple[str, ...]
    cases: tuple[Case, ...]

    def of_kind(self, *kinds: CaseKind) -> tuple[Case, ...]:
        """The cases of these kinds, in order."""
        return tuple(case for case in self.cases if case.kind in kinds)


@dataclass(frozen=True, slots=True)
class Foreseen:
    """The answer for a house: ``draws`` counted from ``seed``; ``likely`` is the chance called likely.

    ``measured`` links stand behind it: below five of them only words are shown unless numbers are asked
    for. ``notes`` are sentences on what the figures lean on, ``assumptions`` names of those that entered.
    """

    networks: Mapping[str, NetworkForeseen]
    draws: int
    seed: int
    likely: float
    measured: int
    notes: tuple[str, ...]
    assumptions: tuple[str, ...]
