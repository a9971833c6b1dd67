"""What `reach` answers: a word for each device, its route, its links."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Look
from secondfix.radio.crossing import Floats
from secondfix.radio.links import Links
from secondfix.radio.multiwall import multi_wall_losses_db
from secondfix.radio.paths import Paths
from secondfix.radio.shadowing import chance, shadowing_margin_db


class Word(StrEnum):
    """How a route or link is spoken of while nothing has been measured."""

    LIKELY = "likely"
    DOUBTFUL = "doubtful"
    UNLIKELY = "unlikely"
    NOT_KNOWN = "not known"


@dataclass(frozen=True, slots=True)
class Chances:
    """The chance of a link over the whole range of what is assumed or unknown, from 0 to 1."""

    low: float
    assumed: float
    high: float


@dataclass(frozen=True, slots=True)
class Scale:
    """Spread and thresholds, each as (low, value, high); chances from 0 to 1, spread in dB."""

    spread_db: tuple[float, float, float]
    likely: tuple[float, float, float]
    unlikely: tuple[float, float, float]

    @property
    def good_db(self) -> float:
        """The margin from which a link is likely, all assumptions at their value."""
        return shadowing_margin_db(wanted_chance=self.likely[1], spread_db=self.spread_db[1])

    def chances(self, best_db: float, assumed_db: float, worst_db: float) -> Chances:
        """Chances of a margin in its three readings; either end of the spread may be the worse one."""
        ends = (self.spread_db[0], self.spread_db[2])
        return Chances(
            min(chance(margin_db=worst_db, spread_db=s) for s in ends),
            chance(margin_db=assumed_db, spread_db=self.spread_db[1]),
            max(chance(margin_db=best_db, spread_db=s) for s in ends),
        )

    def word(self, chances: Chances) -> Word:
        """Likely or unlikely if so over the whole range, else doubtful."""
        if chances.low >= self.likely[2]:
            return Word.LIKELY
        return Word.UNLIKELY if chances.high < self.unlikely[0] else Word.DOUBTFUL


def scale_of(assumptions: Assumptions) -> Scale:
    """Read spread and thresholds; a percentage is kept within 1 to 99, a spread at 1 dB or more."""
    low, value, high = (max(float(s), 1.0) for s in assumptions.span("radio_spread_db"))
    likely, unlikely = (
        tuple(min(max(pct, 1), 99) / 100 for pct in assumptions.span(name))
        for name in ("radio_likely_pct", "radio_unlikely_pct")
    )
    return Scale(
        (low, value, high),
        (likely[0], likely[1], likely[2]),
        (unlikely[0], unlikely[1], unlikely[2]),
    )


@dataclass(frozen=True, slots=True)
class DeviceReach:
    """One device: the word, and what stands behind it.

    ``chances`` of the weakest link on its best route, None where nothing can be computed. ``route``
    names the repeaters from the device towards the controller, ``hops`` counts links (0: no route).
    ``hangs_on`` names repeaters any one of which is missed if it goes. ``needs`` is what the survey
    lacks for an answer; ``assumptions`` are those that entered it. Unknown facts count at their worst in
    ``chances.assumed``.
    """

    id: str
    place: str
    network: str | None
    word: Word
    chances: Chances | None = None
    route: tuple[str, ...] = ()
    hops: int = 0
    hangs_on: tuple[str, ...] = ()
    needs: tuple[Look, ...] = ()
    assumptions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Link:
    """One link between two devices, or a device and its controller (whose id is the network's).

    Loss and margins (from ``a`` to ``b`` and back) in dB, at the assumed reading; ``through`` tells the
    surfaces between in words. ``cost231_loss_db`` is the loss by the other model, boxes included, None where
    walls between are not drawn.
    """

    network: str
    a: str
    b: str
    word: Word
    loss_db: float
    margin_ab_db: float
    margin_ba_db: float
    chances: Chances
    through: tuple[str, ...]
    cost231_loss_db: float | None = None


@dataclass(frozen=True, slots=True, eq=False)
class Reach:
    """The answer for a house: devices in the document's order, findings, and the links by network.

    ``notes`` say in a sentence each what the figures lean on beyond their stated range. ``mhz`` gives the
    frequency of each network at the assumed reading. ``measured`` is how many links were measured, and have
    taken the place of what is assumed of all.
    """

    devices: tuple[DeviceReach, ...]
    findings: tuple[Finding, ...]
    notes: tuple[str, ...]
    scale: Scale
    paths: Paths
    networks: Mapping[str, Links]
    mhz: Mapping[str, float] = field(default_factory=dict)
    measured: int = 0

    @property
    def spread_db(self) -> float:
        """The spread that the answers are told with."""
        return self.scale.spread_db[1]

    def links(self) -> Iterator[Link]:
        """Every link that is not unlikely, made when asked for: a large house has many."""
        for network, links in self.networks.items():
            other = self._by_cost231(network, links)
            for n in range(len(links.a)):
                best, assumed, worst = (float(m) for m in links.margin_db[:, n])
                chances = self.scale.chances(best, assumed, worst)
                word = self.scale.word(chances)
                if word is not Word.UNLIKELY:
                    yield Link(
                        network,
                        links.stations[links.a[n]].id,
                        links.stations[links.b[n]].id,
                        word,
                        float(links.loss_db[n]),
                        float(links.margin_ab_db[n]),
                        float(links.margin_ba_db[n]),
                        chances,
                        tuple(surface.words for surface in self.paths.through(int(links.pair[n]))),
                        None if np.isnan(other[n]) else float(other[n]),
                    )

    def _by_cost231(self, network: str, links: Links) -> Floats:
        """The loss of each link by the multi-wall model with what surrounds both ends."""
        if network not in self.mhz:
            return np.full(len(links.a), np.nan)
        around = np.array([s.loss_db[1] for s in links.stations], np.float64)
        between = multi_wall_losses_db(self.paths, frequency_mhz=self.mhz[network])[links.pair]
        out: Floats = between + around[links.a] + around[links.b]
        return out
