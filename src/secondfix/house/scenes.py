"""Scenes: what starts each, which rules it has, and the policy for names."""

from enum import StrEnum
from typing import Annotated, Literal, Self

from pydantic import Field, Strict, model_validator

from secondfix.house.parts import GangId, Id, Name, Note, Part, Tag
from secondfix.terms import Purpose

Loose = Strict(False)
Day = Literal["mon", "tue", "wed", "thu", "fri", "sat", "sun"]
Clock = Annotated[str, Field(pattern=r"^([01][0-9]|2[0-3]):[0-5][0-9]$")]


_MAY = {"time": ("days",), "sun": ("days", "offset_min"), "sensor": ("button", "press")}


class Start(Part):
    """What starts a scene: a press of a gang, a time of day, the sun, or a sensor device."""

    by: Literal["gang", "time", "sun", "sensor"]
    gang: GangId | None = None
    press: Literal["once", "twice", "three_times", "held"] | None = None
    at: Clock | None = None
    days: Annotated[tuple[Day, ...], Loose, Field(max_length=7)] = ()
    sun: Literal["sunrise", "sunset"] | None = None
    offset_min: int | None = Field(None, ge=-360, le=360)
    device: Id | None = None
    button: int | None = Field(None, ge=1, le=8, description="which button of a battery button")

    @model_validator(mode="after")
    def _complete(self) -> Self:
        needs = {"gang": ("gang", "press"), "time": ("at",), "sun": ("sun",), "sensor": ("device",)}[self.by]
        allowed = {"by", *needs, *_MAY.get(self.by, ())}
        missing = [n for n in needs if getattr(self, n) is None]
        if missing:
            raise ValueError(f"a start by {self.by} also states {', '.join(missing)}")
        extra = sorted(n for n in self.model_fields_set - allowed if getattr(self, n) is not None)
        if extra:
            raise ValueError(f"a start by {self.by} does not take {', '.join(extra)}")
        return self


class Selector(Part):
    """Loads that match every criterion given (at least one)."""

    purpose: Annotated[Purpose, Loose] | None = None
    room: Id | None = None
    storey: Id | None = None
    tag: Tag | None = None
    load: Id | None = None
    every_load: Literal[True] | None = None

    @model_validator(mode="after")
    def _not_empty(self) -> Self:
        if all(getattr(self, name) is None for name in self.model_fields_set):
            raise ValueError("a selector states at least one criterion; every load is asked for by name")
        return self


class SceneRule(Part):
    """Switch the selected loads, leaving out every load that an exception matches."""

    select: Selector
    leave_out: Annotated[tuple[Selector, ...], Loose, Field(max_length=50)] = ()
    to: Literal["on", "off"]
    level_pct: int | None = Field(None, ge=1, le=100)

    @model_validator(mode="after")
    def _level_goes_with_on(self) -> Self:
        if self.level_pct is not None and self.to == "off":
            raise ValueError("a level goes with 'on'")
        return self


class Command(Part):
    """A command a scene sends to one entry of one device (0 is the whole-device entry)."""

    device: Id
    entry: int = Field(ge=0, le=240)
    to: Literal["on", "off"]


class Scene(Part):
    """A scene: rules by purpose, room, storey, tag or load; and entries it commands directly."""

    name: Name
    starts: Annotated[tuple[Start, ...], Loose, Field(max_length=20)] = ()
    rules: Annotated[tuple[SceneRule, ...], Loose, Field(max_length=100)] = ()
    commands: Annotated[tuple[Command, ...], Loose, Field(max_length=200)] = ()
    note: Note = ""


class NamePart(StrEnum):
    """What a name may be put together from."""

    ROOM = "room"
    STOREY = "storey"
    LOAD = "load"
    BOX = "box"
    GANG = "gang"
    DEVICE = "device"


Parts = Annotated[tuple[Annotated[NamePart, Loose], ...], Loose, Field(min_length=1, max_length=4)]


class NamingPolicy(Part):
    """How entries are named: parts in order, joined by ``between``.

    A gang entry is named after what it switches, the whole-device entry after its place
    (common practice, no source). ``spoken_language`` is the language that the names are said in; where
    it is not stated, nothing is asked about how they sound.
    """

    gang_entry: Parts = (NamePart.ROOM, NamePart.LOAD)
    whole_entry: Parts = (NamePart.ROOM, NamePart.BOX)
    place_entry: Parts = (NamePart.ROOM, NamePart.DEVICE)
    between: Annotated[str, Field(max_length=3)] = " "
    spoken_language: Literal["en"] | None = None
