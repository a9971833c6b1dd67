"""Kinds of entry about devices: fitted, removed, joined, failed to join, excluded, named, skipped."""

from collections.abc import Hashable
from typing import Annotated, ClassVar, Literal, Self

from pydantic import Field, model_validator

from secondfix.house import Eui64, Id, KeyRef, ModelKey, Name, Note, Slot
from secondfix.journal.entry import BODY, Entry, Loose
from secondfix.journal.subject import COLLECTION_OF
from secondfix.terms import Purpose

EntryNumber = Annotated[str, Field(pattern=r"^(0|[1-9][0-9]{0,2})$")]


class Fitted(Entry):
    """A device was fitted. What is left out is as the revision has it.

    ``replaces`` names the device that stood there before and leaves the house with this entry;
    ``takes_over`` says which entry of this device now does what an entry of that one did.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset({"device"})
    kind: Literal["fitted"]
    model: ModelKey | None = None
    box: Id | None = None
    mounts: Annotated[tuple[Slot, ...], Loose] | None = None
    gangs: Annotated[tuple[Slot, ...], Loose] | None = None
    place: Id | None = None
    outputs: dict[Slot, Id] | None = None
    code_ref: KeyRef | None = None
    replaces: Id | None = None
    takes_over: dict[EntryNumber, Annotated[int, Field(ge=0, le=240)]] = Field(default_factory=dict)

    @model_validator(mode="after")
    def _one_stand(self) -> Self:
        if self.box is not None and self.place is not None:
            raise ValueError("a device stands in a box or at a place, not both")
        if self.takes_over and self.replaces is None:
            raise ValueError("takes_over goes with replaces")
        if self.replaces is not None and self.subject == f"device:{self.replaces}":
            raise ValueError("a device does not replace itself")
        return self

    @property
    def aspect(self) -> str:
        return "standing"

    @property
    def ends(self) -> tuple[str, ...]:
        """A model or a code named is a body fitted: settings made before are of the body that stood there."""
        return () if self.model is None and self.code_ref is None else (BODY,)

    @property
    def value(self) -> Hashable:
        outputs = None if self.outputs is None else tuple(sorted(self.outputs.items()))
        return (
            self.model, self.box, self.mounts, self.gangs, self.place, outputs, self.code_ref,
            self.replaces, tuple(sorted(self.takes_over.items())),
        )  # fmt: skip


class Removed(Entry):
    """A device was taken off the wall or away from its place."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"device"})
    kind: Literal["removed"]

    @property
    def aspect(self) -> str:
        return "standing"

    @property
    def value(self) -> Hashable:
        return "removed"


class Joined(Entry):
    """A device joined a network. ``address`` is its EUI-64, ``node`` its node number where it has one."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"device"})
    kind: Literal["joined"]
    network: Id
    address: Eui64 | None = None
    node: int | None = Field(None, ge=1, le=4000)
    entries: int | None = Field(None, ge=0, le=240, description="entries that appeared in the controller")

    @property
    def aspect(self) -> str:
        return "joining"

    @property
    def value(self) -> Hashable:
        return ("joined", self.network, self.address, self.node)


class _OfNetwork(Entry):
    """What came of a device and a network, without an address."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"device"})
    kind: str
    network: Id

    @property
    def aspect(self) -> str:
        return "joining"

    @property
    def value(self) -> Hashable:
        return (self.kind, self.network)


class JoinFailed(_OfNetwork):
    """A device did not join; ``note`` says what was seen."""

    kind: Literal["join_failed"]


class Excluded(_OfNetwork):
    """A device was removed from a network, by the protocol's own way."""

    kind: Literal["excluded"]


class Named(Entry):
    """A thing of the house, or an entry in the controller, was given this name."""

    speaks_of: ClassVar[frozenset[str]] = frozenset(COLLECTION_OF) - {"box", "wall", "door", "window"} | {
        "entry"
    }
    kind: Literal["named"]
    name: Name

    @property
    def value(self) -> Hashable:
        return self.name


class PurposeSet(Entry):
    """What a load is for was set, on the load or on its entry in the controller."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"load", "entry"})
    kind: Literal["purpose_set"]
    purpose: Annotated[Purpose, Loose]

    @property
    def value(self) -> Hashable:
        return self.purpose


Deed = Literal["fit", "join", "name", "purpose", "test", "measure"]
_ASPECT_OF_DEED = {
    "fit": "standing", "join": "joining", "name": "named", "purpose": "purpose_set", "test": "working",
    "measure": "measured",
}  # fmt: skip


class Skipped(Entry):
    """A step was not done, and why. A later entry that does it takes its place; it never hides one."""

    speaks_of: ClassVar[frozenset[str]] = frozenset(
        {"device", "entry", "gang", "load", "scene", "link", "room", "place", "box"}
    )
    kind: Literal["skipped"]
    deed: Deed
    reason: Annotated[Note, Field(min_length=1)]

    @property
    def aspect(self) -> str:
        return f"skipped {self.deed}"

    @property
    def yields_to(self) -> tuple[str, ...]:
        return (self.aspect, _ASPECT_OF_DEED[self.deed])
