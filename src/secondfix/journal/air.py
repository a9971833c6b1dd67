"""A kind of entry about the air: who was heard at 2.4 GHz, in the house or at one place."""

from typing import Annotated, ClassVar, Literal, Self

from pydantic import Field, model_validator

from secondfix.house import Id, Part
from secondfix.journal.entry import Entry, Loose

MOST_TRANSMITTERS = 500


class HeardOnAir(Part):
    """One transmitter: its own channel number, width and level, and the share of time that it sends.

    ``kind``: ``wifi`` is on channel 1 to 14 and 20, 22 or 40 MHz wide (then with its ``second_channel``, four
    away); ``mesh`` on 11 to 26. Without ``duty_permille`` the share is not known. ``place``: the box or place
    where it was heard, in an entry that speaks of the house.
    """

    kind: Literal["wifi", "mesh"] = "wifi"
    channel: int = Field(ge=1, le=26)
    second_channel: int | None = Field(None, ge=1, le=13)
    width_mhz: Literal[2, 20, 22, 40] | None = None
    level_dbm: int = Field(ge=-130, le=20)
    duty_permille: int | None = Field(None, ge=0, le=1000)
    place: Id | None = None
    name: Annotated[str, Field(max_length=80)] = ""

    @model_validator(mode="after")
    def _channel_of_kind(self) -> Self:
        mesh = self.kind == "mesh"
        if not (11 <= self.channel <= 26 if mesh else self.channel <= 14):
            raise ValueError("a wifi channel is 1 to 14, a mesh channel 11 to 26")
        if self.width_mhz is not None and (self.width_mhz == 2) != mesh:
            raise ValueError("a mesh is 2 MHz wide, wifi 20, 22 or 40")
        second = self.second_channel
        if (self.width_mhz == 40) != (second is not None):
            raise ValueError("a second channel is named by what is 40 MHz wide, and by that alone")
        if second is not None and abs(second - self.channel) != 4:
            raise ValueError("the second channel is four from the first")
        return self


class AirHeard(Entry):
    """A channel survey of the house, or at one box or place: all that was heard there, perhaps nobody.

    A later survey takes the place of those that its writer knew; surveys that did not know of each other
    stand side by side.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset({"house", "box", "place"})
    kind: Literal["air_heard"]
    transmitters: Annotated[tuple[HeardOnAir, ...], Loose, Field(max_length=MOST_TRANSMITTERS)]

    @model_validator(mode="after")
    def _one_place(self) -> Self:
        if not self.subject.startswith("house:") and any(one.place for one in self.transmitters):
            raise ValueError(
                "a survey at one place names no other: its transmitters have no place of their own"
            )
        return self
