"""Networks, the devices on them, and uses that the house does not own."""

from typing import Annotated, Literal

from pydantic import Field, Strict

from secondfix.house.parts import Fact, Id, Name, Note, Part, Slot
from secondfix.terms import PowerLossState, Protocol

Loose = Strict(False)
ModelKey = Annotated[str, Field(pattern=r"^[a-z][a-z0-9-]{1,62}@[1-9][0-9]?$")]
KeyRef = Annotated[str, Field(pattern=r"^K[0-9]{2,4}$")]
Eui64 = Annotated[str, Field(pattern=r"^[0-9A-F]{16}$")]


class Network(Part):
    """One radio network and where its controller stands."""

    name: Name
    protocol: Annotated[Protocol, Loose]
    controller_place: Id | None = None
    channel: int | None = Field(None, ge=0, le=26)
    transmit_power_dbm: int | None = Field(None, ge=-30, le=30)
    sensitivity_dbm: int | None = Field(None, ge=-130, le=-40)
    key_ref: KeyRef | None = None


class Device(Part):
    """A device, standing or intended: in a box (mounts, gangs in the device's own order) or at a place.

    A switch names its box, the mounts it takes and the gangs it works: the first gang listed is
    the device's gang 1. A module behind another switch takes no mount. A device elsewhere names
    its place and, where it feeds something, ``outputs`` (its own gang number to load).
    ``power_source`` and ``repeats`` speak for a device whose model is not yet known.
    """

    model: ModelKey | None = None
    network: Id | None = None
    box: Id | None = None
    mounts: Annotated[tuple[Slot, ...], Loose] = ()
    gangs: Annotated[tuple[Slot, ...], Loose] = ()
    place: Id | None = None
    outputs: dict[Slot, Id] = Field(default_factory=dict)
    name: Name | None = None
    power_source: Fact[Literal["mains", "battery"]] | None = None
    repeats: Fact[bool] | None = None
    after_power_loss: Annotated[PowerLossState, Loose] | None = Field(
        None, description="the state it is set to, where it can be set"
    )
    address: Eui64 | None = None
    code_ref: KeyRef | None = None
    note: Note = ""


class OutsideUse(Part):
    """A use of a device that somebody else owns: noted, asked about before removal, never executed."""

    kind: Literal["scene", "routine", "binding", "other"]
    device: Id
    entry: int | None = Field(None, ge=0, le=240)
    words: Note
