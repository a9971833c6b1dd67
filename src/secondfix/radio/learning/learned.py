"""What was learned of a house from its measured links."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from secondfix.radio.answers import Scale
from secondfix.radio.crossing import Bools, Floats
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.learning.next_links import Drawing, NextLink, next_links, worths_of
from secondfix.radio.links import Links


@dataclass(frozen=True, slots=True)
class Parameter:
    """One thing learned of the whole house: before and after, each as (5 %, middle, 95 %) in ``unit``.

    ``networks`` are those that share it.
    """

    name: str
    networks: tuple[str, ...]
    words: str
    unit: str
    before: tuple[float, float, float]
    after: tuple[float, float, float]


@dataclass(frozen=True, slots=True, eq=False)
class Predicted:
    """For each link of a network: the level that would be read at ``b`` from ``a`` and back, in dBm.

    ``spread_db`` is the standard deviation of such a reading, all that is not known together: nine in
    ten lie within 1.645 of it. ``measured`` tells which links were heard, ``not_heard`` those that were
    listened for in vain.
    """

    ab_dbm: Floats
    ba_dbm: Floats
    spread_db: Floats
    measured: Bools
    not_heard: Bools


@dataclass(frozen=True, slots=True, eq=False)
class OfNetwork:
    """What was learned of one network: its links as `links_of` has them, and the ways it may be."""

    links: Links
    predicted: Predicted
    drawing: Drawing


@dataclass(frozen=True, slots=True, eq=False)
class Learned:
    """The house after its measured links; ``count`` of them, ``not_heard`` among these in vain.

    ``scale`` is the scale with the spread that was learned; ``notes`` say what did not count and why.
    """

    count: int
    not_heard: int
    parameters: tuple[Parameter, ...]
    scale: Scale
    networks: Mapping[str, OfNetwork]
    notes: tuple[str, ...]

    def ways(self, network: str) -> tuple[Sampled, ...]:
        """Equally likely ways that a network of this house may be (KeyError for one without links)."""
        return tuple(self.networks[network].drawing.ways)

    def links(self, network: str) -> Links:
        """The links of a network, margins in three readings as learned.

        The readings are the two ends and the middle of nine ways in ten, told on the house's own spread:
        margin / spread is the chance's argument, also where a measured link has a spread of its own.
        """
        return self.networks[network].links

    def heard(self, network: str) -> frozenset[int]:
        """Numbers of the links of a network whose level was measured."""
        return frozenset(np.flatnonzero(self.networks[network].predicted.measured).tolist())

    def predicted(self, network: str) -> Predicted:
        """What a reading of each link of a network would be."""
        return self.networks[network].predicted

    def next_links(self, most: int) -> tuple[NextLink, ...]:
        """At most ``most`` links to measure next, the one that would tell most of who is reached first."""
        return next_links({key: worths_of(one.drawing) for key, one in self.networks.items()}, most=most)
