"""A load worked from several places: how its conductors were found, and how the other places act on it."""

from enum import StrEnum
from typing import Annotated

from pydantic import Field, Strict

from secondfix.house.parts import Fact, GangId, Part

Loose = Strict(False)


class Arrangement(StrEnum):
    """Where line comes in and where the lamp's core goes out, along the places that work one load."""

    TOGETHER = "together"
    OPPOSITE_ENDS = "opposite_ends"
    SWITCH_LOOP = "switch_loop"
    FEED_AT_LUMINAIRE = "feed_at_luminaire"
    SWITCHED_NEUTRAL = "switched_neutral"
    NOT_JOINED = "not_joined"


class OthersAct(StrEnum):
    """How the places that do not feed the load act on the one that does."""

    INPUT = "input"
    RADIO = "radio"
    IN_SERIES = "in_series"
    IN_PARALLEL = "in_parallel"


class Multiway(Part):
    """The places that work one load, in their order along the conductors.

    ``gangs`` begins at the end at which line comes in (with *together* and *switch loop*: the end with
    line and load). ``spare_cores`` counts the cores that no terminal uses, in the run that has fewest.
    """

    arrangement: Fact[Annotated[Arrangement, Loose]] | None = None
    gangs: Annotated[tuple[GangId, ...], Loose, Field(max_length=8)] = ()
    others: Fact[Annotated[OthersAct, Loose]] | None = Field(
        None, description="how the other places act on the one that feeds the load"
    )
    spare_cores: Fact[Annotated[int, Field(ge=0, le=8)]] | None = None
